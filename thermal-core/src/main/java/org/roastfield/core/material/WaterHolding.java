package org.roastfield.core.material;

import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.units.Temperatures;

/**
 * How much of its water lean meat presses out by its highest temperature, eq. (69), and how soon
 * that drains, eq. (100). Immutable.
 *
 * @param drop share of the raw mass that great heat presses out, greater than 0, below 1
 * @param middle temperature of half of it [K]
 * @param slope steepness [1/K], greater than 0
 * @param drainTime by which what drains lags behind what is set free [s], greater than 0
 */
public record WaterHolding(double drop, double middle, double slope, double drainTime) {

  /**
   * Beef: 0.345 of the raw mass, half of it at 65.6 °C, 0.25 per kelvin. A curve of roasting models
   * that was written down from memory, so assumed. It drains by a lag of 5 min, estimated from
   * three means of measured cook losses of chicken breasts (Pang and others 2020): known to a
   * factor of two.
   */
  public static final WaterHolding BEEF =
      new WaterHolding(0.345, Temperatures.celsius(52) + StrictMath.log(30) / 0.25, 0.25, 300);

  private static final String SOURCE = "assumed: kinds of meat, animals, and a curve from memory";

  private static final Parameter DROP =
      new Parameter("water-drop", "1", Owner.CUT, Scale.PLAIN, BEEF.drop, 0.04, 0.22, 0.42, SOURCE);

  private static final Parameter MIDDLE =
      new Parameter(
          "water-middle",
          "K",
          Owner.CUT,
          Scale.PLAIN,
          BEEF.middle,
          2.5,
          Temperatures.celsius(58),
          Temperatures.celsius(72),
          SOURCE);

  private static final Parameter SLOPE =
      new Parameter(
          "water-slope", "1/K", Owner.CUT, Scale.PLAIN, BEEF.slope, 0.06, 0.1, 0.4, SOURCE);

  private static final Parameter DRAIN_TIME =
      new Parameter(
          "drain-time",
          "s",
          Owner.CUT,
          Scale.LOGARITHM,
          BEEF.drainTime,
          0.5,
          60,
          1800,
          "estimated from means of three measured cook losses, known to a factor of two");

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public WaterHolding {
    Check.positive("drop", drop);
    Check.positive("1 - drop", 1 - drop);
    Check.positive("middle", middle);
    Check.positive("slope", slope);
    Check.positive("drainTime", drainTime);
  }

  /** Share of the raw mass pressed out at a highest temperature [K]. */
  public double pressedOut(double temperature) {
    return drop / (1 + StrictMath.exp(-slope * (temperature - middle)));
  }

  /** The four numbers with what is believed of them, in the order of the components. */
  public static ParameterSet parameters() {
    return ParameterSet.of(DROP, MIDDLE, SLOPE, DRAIN_TIME);
  }

  /** Of values of {@link #parameters}. */
  public static WaterHolding of(double[] values) {
    return new WaterHolding(values[0], values[1], values[2], values[3]);
  }

  /** Beef that holds its water less well, and drains sooner, by one spread but of the slope. */
  public static WaterHolding looser() {
    return new WaterHolding(
        BEEF.drop + DROP.spread(),
        BEEF.middle - MIDDLE.spread(),
        BEEF.slope,
        BEEF.drainTime * StrictMath.exp(-DRAIN_TIME.spread()));
  }

  /** Beef that holds it better, and drains later, by as much. */
  public static WaterHolding tighter() {
    return new WaterHolding(
        BEEF.drop - DROP.spread(),
        BEEF.middle + MIDDLE.spread(),
        BEEF.slope,
        BEEF.drainTime * StrictMath.exp(DRAIN_TIME.spread()));
  }

  /** The same that drains by another lag [s]. */
  public WaterHolding draining(double time) {
    return new WaterHolding(drop, middle, slope, time);
  }
}
