package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;

/**
 * What stands between the temperature at a probe's tip and the number it shows, in this order: heat
 * along the stem, a lag of first order, a constant bias, and rounding.
 *
 * @param responseTime τ of eq. (55) [s], at least 0: 63 % of a step. In food the food limits it,
 *     about 2-4 r²/α: 35-70 s for a probe 3 mm thick and 140-280 s for 6 mm (calculated); in air
 *     30-90 s, by makers' tables
 * @param stem heat that it carries to the tip
 * @param bias of the reading [K]
 * @param resolution step of the display [K], counted from 0 °C; 0 for none
 */
public record Instrument(double responseTime, Stem stem, double bias, double resolution) {

  /** Shows the temperature at its tip. */
  public static final Instrument IDEAL = new Instrument(0, Stem.NONE, 0, 0);

  /**
   * @throws IllegalArgumentException if a number is not finite, or a time or resolution is negative
   */
  public Instrument {
    Check.notNegative("responseTime", responseTime);
    Check.finite("bias", bias);
    Check.notNegative("resolution", resolution);
  }

  /** The same with another response time [s]. */
  public Instrument withResponseTime(double responseTime) {
    return new Instrument(responseTime, stem, bias, resolution);
  }

  /** The same with another stem. */
  public Instrument withStem(Stem stem) {
    return new Instrument(responseTime, stem, bias, resolution);
  }

  /** The same with another bias [K]. */
  public Instrument withBias(double bias) {
    return new Instrument(responseTime, stem, bias, resolution);
  }

  /** The same with another resolution [K]. */
  public Instrument withResolution(double resolution) {
    return new Instrument(responseTime, stem, bias, resolution);
  }

  /** Whether it shows the temperature at its tip. */
  public boolean isIdeal() {
    return equals(IDEAL);
  }
}
