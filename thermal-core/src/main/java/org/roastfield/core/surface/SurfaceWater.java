package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * Water within reach of a face: what it holds, how wet that makes it, and how fast more comes from
 * inside, eqs. (43)-(45).
 *
 * <p>The defaults were chosen, one set for all, on a nine-hour cook, a rib roast and two small
 * blocks in a hot oven; they are assumed for any other food. Decision 15 has the numbers.
 *
 * @param capacity C [kg/m²]: most that stays, and what a fresh cut holds; 0.9 is the water of 1.2
 *     mm
 * @param halfWet W½ [kg/m²]: water at which the face evaporates half of what a wet one would
 * @param supply S at 65 °C to a face without water [kg/(m²·s)]
 * @param activationEnergy of the supply [J/mol], as of water that diffuses in food and of juice
 * @param runOffTime of water beyond the capacity [s], greater than 0
 */
public record SurfaceWater(
    double capacity, double halfWet, double supply, double activationEnergy, double runOffTime) {

  private static final double GAS_CONSTANT = 8.314462618;
  private static final double REFERENCE = 338.15;
  private static final SurfaceWater MEAT = new SurfaceWater(0.9, 0.3, 1.3 / 3600, 30_000, 60);

  /**
   * @throws IllegalArgumentException if an argument is negative, or half-wet or run-off time 0
   */
  public SurfaceWater {
    Check.notNegative("capacity", capacity);
    Check.positive("halfWet", halfWet);
    Check.notNegative("supply", supply);
    Check.notNegative("activationEnergy", activationEnergy);
    Check.positive("runOffTime", runOffTime);
    if (supply > 0) {
      Check.positive("capacity of a face that is fed", capacity);
    }
  }

  /** Bare meat; assumed, from three measured cooks. */
  public static SurfaceWater ofMeat() {
    return MEAT;
  }

  /** A face that holds no water and gets none. */
  public static SurfaceWater none() {
    return new SurfaceWater(0, 1, 0, 0, 1);
  }

  /**
   * The same with capacity and supply multiplied, as of a face partly under fat, or a moister food.
   *
   * @param drive at least 0; 1 is no change
   */
  public SurfaceWater times(double drive) {
    Check.notNegative("drive", drive);
    return new SurfaceWater(
        drive * capacity, halfWet, drive * supply, activationEnergy, runOffTime);
  }

  /** S at a temperature, eq. (44) [kg/(m²·s)]. */
  double supplyAt(double temperature) {
    if (supply == 0) {
      return 0;
    }
    double exponent = activationEnergy / GAS_CONSTANT * (1 / REFERENCE - 1 / temperature);
    return supply * StrictMath.exp(exponent);
  }

  /**
   * Share of the supply that is left when a share x of all that can come from inside has come, eq.
   * (97): 1 − x⁴, so that it is constant at first and falls to nothing.
   */
  static double shareOfSupply(double x) {
    double squared = x * x;
    return 1 - squared * squared;
  }

  /** Slope of {@link #shareOfSupply}. */
  static double shareSlope(double x) {
    return -4 * x * x * x;
  }

  /** Slope of ln S with temperature [1/K]. */
  double logSlopeAt(double temperature) {
    return activationEnergy / (GAS_CONSTANT * temperature * temperature);
  }

  /** Share W/(W + W½) of a wet face's vapour flux. */
  double wetness(double water) {
    return water > 0 ? water / (water + halfWet) : 0;
  }

  /** Slope of the wetness by water [m²/kg]. */
  double wetnessSlope(double water) {
    double sum = water + halfWet;
    return water > 0 ? halfWet / (sum * sum) : 0;
  }
}
