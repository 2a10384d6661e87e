package org.roastfield.lab.report;

import java.util.List;

/**
 * A marked place on an axis.
 *
 * @param value where
 * @param label what is written there
 */
record Tick(double value, String label) {

  /** Ticks at round numbers, labelled with as many digits as they need. */
  static List<Tick> decimal(double low, double high, int most) {
    int digits = Numbers.digits(Ticks.decimalStep(low, high, most));
    return Ticks.decimal(low, high, most).stream()
        .map(value -> new Tick(value, Numbers.decimal(value, digits)))
        .toList();
  }
}
