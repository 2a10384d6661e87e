package org.roastfield.core.plan;

import java.util.List;

/**
 * Final cores of draws against what was asked for.
 *
 * @param expectedLoss in the unit of the loss
 * @param under share below the wish
 * @param over share above it
 * @param minima that were demanded
 * @param chances of each of them
 */
record Tally(
    double expectedLoss, double under, double over, List<Minimum> minima, List<Double> chances) {

  static Tally of(double[] finalCores, PlanRequest request) {
    double loss = 0;
    double under = 0;
    double over = 0;
    for (double core : finalCores) {
      loss += request.loss().of(core, request.wish());
      under += core < request.wish().low() ? 1 : 0;
      over += core > request.wish().high() ? 1 : 0;
    }
    int count = finalCores.length;
    List<Double> chances =
        request.minima().stream().map(one -> shareFrom(one.temperature(), finalCores)).toList();
    return new Tally(loss / count, under / count, over / count, request.minima(), chances);
  }

  boolean meetsMinima() {
    return shortage() <= 0;
  }

  /** Largest lack of a chance that a minimum demands; 0 if all are met. */
  double shortage() {
    double largest = 0;
    for (Minimum one : minima) {
      largest = Math.max(largest, one.chance() - chanceOf(one));
    }
    return largest;
  }

  double chanceOf(Minimum minimum) {
    return chances.get(minima.indexOf(minimum));
  }

  private static double shareFrom(double temperature, double[] finalCores) {
    double count = 0;
    for (double core : finalCores) {
      count += core >= temperature ? 1 : 0;
    }
    return count / finalCores.length;
  }
}
