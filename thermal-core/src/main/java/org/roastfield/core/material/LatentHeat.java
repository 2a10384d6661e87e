package org.roastfield.core.material;

import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * Heat that a food takes up over a range of temperature beside its sensible heat, such as that of
 * melting fat; given back on the way down.
 *
 * <p>By temperature T the share S = s⁴ (35 − 84 s + 70 s² − 20 s³) of it is taken up, with s = (T −
 * lowest)/(highest − lowest) held to [0, 1], eq. (39). The apparent heat capacity that follows, 140
 * s³ (1 − s)³ heat/(highest − lowest), begins and ends with zero slope and curvature, so that time
 * steps keep their order, and sums exactly to the heat.
 *
 * @param name what takes it up
 * @param heat in all [J per kg of food], greater than 0
 * @param lowest where it begins [K]
 * @param highest where it is complete [K], above {@code lowest}
 */
public record LatentHeat(String name, double heat, double lowest, double highest) {

  /**
   * @throws IllegalArgumentException if {@code name} is blank, {@code heat} or {@code lowest} is
   *     not finite and positive, or the range is empty
   */
  public LatentHeat {
    Check.notBlank("name", name);
    Check.positive("heat", heat);
    Check.positive("lowest", lowest);
    Check.inRange("highest", highest, Math.nextUp(lowest), Double.MAX_VALUE);
  }

  /** Heat taken up from {@code lowest} to a temperature [K], from 0 to {@code heat} [J/kg]. */
  public double takenUp(double temperature) {
    return heat * share(held((temperature - lowest) / (highest - lowest)));
  }

  /** What this adds to the heat capacity at a temperature [K]: apparent, [J/(kg·K)]. */
  public double heatCapacity(double temperature) {
    double width = highest - lowest;
    return heat / width * shareSlope(held((temperature - lowest) / width));
  }

  /**
   * Adds the scaled heat taken up from 273.15 K to many temperatures.
   *
   * @param temperatures [K], not modified
   * @param scale by which J/kg are multiplied
   * @param values added to, as long as {@code temperatures}
   */
  public void addTakenUp(double[] temperatures, double scale, double[] values) {
    double inverse = 1 / (highest - lowest);
    double strength = scale * heat;
    double shift = scale * takenUp(Temperatures.ZERO_CELSIUS);
    for (int i = 0; i < values.length; i++) {
      double s = held((temperatures[i] - lowest) * inverse);
      values[i] += strength * share(s) - shift;
    }
  }

  /**
   * Adds the scaled apparent heat capacity at many temperatures.
   *
   * @param temperatures [K], not modified
   * @param scale by which J/(kg·K) are multiplied
   * @param values added to, as long as {@code temperatures}
   */
  public void addHeatCapacities(double[] temperatures, double scale, double[] values) {
    double inverse = 1 / (highest - lowest);
    double strength = scale * heat * inverse;
    for (int i = 0; i < values.length; i++) {
      double s = held((temperatures[i] - lowest) * inverse);
      values[i] += strength * shareSlope(s);
    }
  }

  /** s held to [0, 1], without branches, so that loops become vector instructions. */
  private static double held(double s) {
    return 0.5 * (Math.abs(s) - Math.abs(s - 1) + 1);
  }

  private static double share(double s) {
    double square = s * s;
    return square * square * (((-20 * s + 70) * s - 84) * s + 35);
  }

  private static double shareSlope(double s) {
    double product = s * (1 - s);
    return 140 * product * product * product;
  }
}
