package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Temperatures that a map of temperature draws lines at: close together where meat cooks, wide
 * apart in a crust.
 */
final class Isotherms {

  /** Above this the lines are far apart [°C]. */
  private static final double FINE_BELOW = 100;

  private static final double COARSE_STEP = 50;
  private static final int MOST_FINE = 20;

  /** Below this there is nothing to see but rounding [K]. */
  private static final double LEAST_RANGE = 0.1;

  private Isotherms() {}

  /**
   * Levels [°C] strictly between {@code lowest} and {@code highest}, increasing.
   *
   * @param lowest of the map [°C]
   * @param highest of the map [°C]; no levels if hardly above {@code lowest}
   */
  static List<Double> between(double lowest, double highest) {
    List<Double> levels = new ArrayList<>();
    if (!(highest - lowest > LEAST_RANGE)) {
      return levels;
    }
    double fineEnd = Math.min(highest, FINE_BELOW);
    if (fineEnd > lowest) {
      double step = Ticks.decimalStep(lowest, fineEnd, MOST_FINE);
      addMultiples(lowest, fineEnd, step, levels);
    }
    double coarseStart = Math.max(lowest, FINE_BELOW);
    if (highest > coarseStart) {
      addMultiples(coarseStart, highest, COARSE_STEP, levels);
    }
    return levels.stream().filter(level -> level > lowest && level < highest).distinct().toList();
  }

  /** A level in words, with as many digits as tell it from its neighbours. */
  static String text(List<Double> levels, int index) {
    double step = levels.size() > 1 ? levels.get(1) - levels.get(0) : 1;
    return Numbers.decimal(levels.get(index), Numbers.digits(step));
  }

  private static void addMultiples(double low, double high, double step, List<Double> levels) {
    for (long k = (long) Math.ceil(low / step); k * step <= high; k++) {
      levels.add(k * step);
    }
  }
}
