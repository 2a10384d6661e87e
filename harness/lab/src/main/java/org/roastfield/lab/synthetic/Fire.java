package org.roastfield.lab.synthetic;

/**
 * How a made-up chamber strays from its setting. Figures of the physics of charcoal pits, none
 * measured: tended by hand 6-10 K over 20-60 min, by a thermostat 2-5 K; fuel burns down by 10-25 K
 * until more is added.
 *
 * @param deviation standard deviation of the drift [K], at least 0
 * @param correlationTime of the drift [s], above 0
 * @param lidInterval mean time between openings of the lid [s], above 0; infinite for a lid that
 *     stays closed
 * @param sagInterval mean time between sags of the fire [s], above 0; infinite for none
 */
public record Fire(
    double deviation, double correlationTime, double lidInterval, double sagInterval) {

  /** Checks the ranges. */
  public Fire {
    if (!(deviation >= 0 && deviation < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("deviation must be at least 0, was " + deviation);
    }
    checkPositive("correlationTime", correlationTime);
    checkPositive("lidInterval", lidInterval);
    checkPositive("sagInterval", sagInterval);
  }

  private static void checkPositive(String name, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + " must be above 0, was " + value);
    }
  }
}
