package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/** Means over cooks, and what they would be of other cookers: cookers drawn with replacement. */
final class Resampling {

  private static final int RESAMPLES = 2000;

  private final List<List<Tried>> cookers;

  Resampling(List<Tried> tried) {
    Map<Integer, List<Tried>> byCooker = new LinkedHashMap<>();
    for (Tried one : tried) {
      byCooker.computeIfAbsent(one.cooker(), number -> new ArrayList<>()).add(one);
    }
    this.cookers = List.copyOf(byCooker.values());
  }

  int cookers() {
    return cookers.size();
  }

  /**
   * Ratios of sums over cookers.
   *
   * @param above summed above the line, [cooker][column]
   * @param below summed below it
   * @return of each resample, [resample][column]; NaN where nothing is below
   */
  static double[][] ratios(double[][] above, double[][] below) {
    int columns = above[0].length;
    SplittableRandom random = new SplittableRandom(1);
    double[][] ratios = new double[RESAMPLES][columns];
    for (double[] ratio : ratios) {
      double[] under = new double[columns];
      for (int i = 0; i < above.length; i++) {
        int drawn = random.nextInt(above.length);
        for (int c = 0; c < columns; c++) {
          ratio[c] += above[drawn][c];
          under[c] += below[drawn][c];
        }
      }
      for (int c = 0; c < columns; c++) {
        ratio[c] /= under[c];
      }
    }
    return ratios;
  }

  /** Sums over the cooks of each cooker, [cooker][1]. */
  double[][] sums(ToDoubleFunction<Tried> number) {
    double[][] sums = new double[cookers.size()][1];
    for (int i = 0; i < sums.length; i++) {
      sums[i][0] = cookers.get(i).stream().mapToDouble(number).sum();
    }
    return sums;
  }

  /** The cooks of each cooker. */
  List<List<Tried>> groups() {
    return cookers;
  }

  /** 95 % interval of the mean of a number over cooks. */
  double[] interval(ToDoubleFunction<Tried> number) {
    double[][] ratios = ratios(sums(number), sums(one -> 1));
    double[] means = Arrays.stream(ratios).mapToDouble(ratio -> ratio[0]).sorted().toArray();
    return new double[] {means[RESAMPLES / 40], means[RESAMPLES - 1 - RESAMPLES / 40]};
  }
}
