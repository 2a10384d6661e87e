package org.roastfield.lab.files;

/**
 * A chamber without a probe: what its setting says, and how far the air may have been from that.
 *
 * @param temperature of the setting [K]
 * @param biasDeviation standard deviation of the whole cook's mean from the setting [K], above 0
 * @param driftDeviation standard deviation of what drifts about that mean [K], above 0
 * @param driftTime over which the drift forgets itself [s], above 0
 */
public record ChamberSetting(
    double temperature, double biasDeviation, double driftDeviation, double driftTime) {

  /** Assumed of a setting that nobody measured: dials are off by some percent of the span [K]. */
  public static final double USUAL_BIAS_DEVIATION = 8;

  /**
   * Assumed: an oven's thermostat swings by some kelvin, a fire by about ten (13.6 K were measured
   * in one charcoal cook of 9.6 h with its lid openings) [K].
   */
  public static final double USUAL_DRIFT_DEVIATION = 8;

  /** Assumed: half an hour, as of a fire between two looks after it [s]. */
  public static final double USUAL_DRIFT_TIME = 1800;

  /** Checks that they are possible. */
  public ChamberSetting {
    Notes.checkTemperature("temperature", temperature);
    checkPositive("biasDeviation", biasDeviation);
    checkPositive("driftDeviation", driftDeviation);
    checkPositive("driftTime", driftTime);
  }

  /** Setting with the usual prior. */
  public static ChamberSetting of(double temperature) {
    return new ChamberSetting(
        temperature, USUAL_BIAS_DEVIATION, USUAL_DRIFT_DEVIATION, USUAL_DRIFT_TIME);
  }

  private static void checkPositive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be above 0 and finite, was " + value);
    }
  }
}
