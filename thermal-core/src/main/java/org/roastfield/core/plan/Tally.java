package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.List;

/**
 * Final cores of draws against what was asked for.
 *
 * @param expectedLoss in the unit of the loss
 * @param under share below the wish
 * @param over share above it
 * @param minima that were demanded
 * @param chances of each of them
 * @param missing largest temperature by which one is missed at its chance [K]; 0 if all are met
 */
record Tally(
    double expectedLoss,
    double under,
    double over,
    List<Minimum> minima,
    List<Double> chances,
    double missing) {

  /** More is not told apart [K]. */
  private static final double MOST_MISSED = 100;

  /**
   * @param cores final cores of the planned cook and of each station, over draws [K]
   */
  static Tally of(double[][] cores, PlanRequest request) {
    return of(cores, request, new boolean[cores[0].length]);
  }

  /**
   * @param byClock whether the clock takes a draw off before its display says so: what is too cold
   *     of them goes back to the heat, and loses no more than what is late
   */
  static Tally of(double[][] cores, PlanRequest request, boolean[] byClock) {
    int count = cores[0].length;
    double[] losses = new double[count];
    double[] coldest = coldest(cores);
    for (int s = 0; s < cores.length; s++) {
      CoreWish wish = s == 0 ? request.wish() : request.stations().get(s - 1).wish();
      for (int i = 0; i < count; i++) {
        losses[i] += request.loss().of(cores[s][i], wish) / cores.length;
      }
    }
    double missed = missed(request);
    double loss = 0;
    for (int i = 0; i < count; i++) {
      boolean late = byClock[i] && cores[0][i] < request.wish().middle();
      loss += late ? Math.min(missed, losses[i]) : losses[i];
    }
    List<Double> chances =
        request.minima().stream().map(one -> shareFrom(one.temperature(), coldest)).toList();
    return new Tally(
        loss / count,
        under(cores[0], request.wish()),
        over(cores[0], request.wish()),
        request.minima(),
        chances,
        missing(request.minima(), coldest));
  }

  /** The coldest station of each draw. */
  static double[] coldest(double[][] cores) {
    double[] coldest = cores[0].clone();
    for (double[] station : cores) {
      Arrays.setAll(coldest, i -> Math.min(coldest[i], station[i]));
    }
    return coldest;
  }

  /** What a cook loses that misses its window. */
  static double missed(PlanRequest request) {
    CoreWish wish = request.wish();
    return request.loss().of(wish.middle() - request.service().missed(), wish);
  }

  private static double missing(List<Minimum> minima, double[] coldest) {
    double most = 0;
    for (Minimum one : minima) {
      double reached = Spread.quantile(1 - one.chance(), coldest);
      most = Math.max(most, Math.min(MOST_MISSED, one.temperature() - reached));
    }
    return most;
  }

  /** Share of final cores below a wish. */
  static double under(double[] cores, CoreWish wish) {
    return 1 - shareFrom(wish.low(), cores);
  }

  /** Share of final cores above a wish. */
  static double over(double[] cores, CoreWish wish) {
    return shareFrom(Math.nextUp(wish.high()), cores);
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
