package org.roastfield.core.plan;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stem;

/**
 * One draw: a cook, and the probe that decides in it.
 *
 * @param cook as drawn
 * @param tip an ideal probe where the tip is
 * @param instrument of the display
 * @param insertion of the stem in the food [m]
 */
record Member(Cook cook, Probe tip, Instrument instrument, double insertion) {

  static Member of(Cook cook, Probe probe) {
    return new Member(
        cook,
        probe.with(Instrument.IDEAL),
        probe.instrument(),
        probe.insertion(cook.cut().shape()));
  }

  /** Whether its display needs to know how the cut warms, beside its temperature. */
  boolean follows() {
    return instrument.responseTime() > 0 || instrument.stem().conducts();
  }

  /**
   * Temperature of the tip when the display first shows a reading, eq. (74).
   *
   * @param reading [K]
   * @param rate of the tip [K/s]
   * @param difference between surface and core [K]
   */
  double atTip(double reading, double rate, double difference) {
    double early = instrument.responseTime() * rate;
    double rounding = 0.5 * instrument.resolution();
    return reading - instrument.bias() - rounding + early - stemExcess(difference);
  }

  /** What the stem adds to the tip in a parabola, eq. (52) [K]. */
  private double stemExcess(double difference) {
    Stem stem = instrument.stem();
    if (!stem.conducts()) {
      return 0;
    }
    double lengths = insertion / stem.finLength();
    return 2 * difference / (lengths * lengths) + stem.entryExcess() / StrictMath.cosh(lengths);
  }
}
