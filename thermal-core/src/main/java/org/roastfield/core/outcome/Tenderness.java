package org.roastfield.core.outcome;

import org.roastfield.core.units.Temperatures;

/**
 * What heat did to muscle, connective tissue and fat, in shares in [0, 1].
 *
 * @param actin mean share of actin denatured, which hardens
 * @param actinAtCore the same in the coldest place
 * @param collagen mean share of collagen turned to gelatine, which matters in slow cuts
 * @param collagenAtCore the same in the coldest place
 * @param fatMelted mean share of fat that was molten at its hottest
 */
public record Tenderness(
    double actin, double actinAtCore, double collagen, double collagenAtCore, double fatMelted) {

  /** Share of molten fat that is taken to run off; a judgement. */
  public static final double RUN_OFF = 0.3;

  /** What melting and run-off rest on: a range of 20-50 °C from memory. */
  public static final Status FAT_STATUS = Status.ASSUMED;

  private static final double MELTS_FROM = Temperatures.celsius(20);
  private static final double MELTS_TO = Temperatures.celsius(50);

  /** Of a computed cook. */
  public static Tenderness of(CookedCut cut) {
    CrossSection actin = cut.over(FirstOrder.ACTIN::changed);
    CrossSection collagen = cut.over(FirstOrder.COLLAGEN::changed);
    return new Tenderness(
        actin.mean(),
        actin.least(),
        collagen.mean(),
        collagen.least(),
        cut.over(place -> melted(place.highest())).mean());
  }

  /** Share of fat molten at a temperature [K], eq. (70). */
  public static double melted(double temperature) {
    double share = (temperature - MELTS_FROM) / (MELTS_TO - MELTS_FROM);
    return Math.max(0, Math.min(1, share));
  }

  /** Share of fat that runs off; assumed. */
  public double runOff() {
    return RUN_OFF * fatMelted;
  }
}
