package org.roastfield.lab.calibration;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Probabilities of several tests, so that all of them together alarm as seldom as one [Holm1979].
 */
final class Holm {

  private Holm() {}

  /**
   * The least level for all tests together at which each is rejected.
   *
   * @param probabilities of the tests by themselves, each in [0, 1]
   * @return in the same order
   */
  static double[] adjusted(double... probabilities) {
    int n = probabilities.length;
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingDouble(i -> probabilities[i]));
    double[] adjusted = new double[n];
    double reached = 0;
    for (int k = 0; k < n; k++) {
      double p = Numbers.inRange("probability", probabilities[order[k]], 0, 1);
      reached = Math.max(reached, Math.min(1, (n - k) * p));
      adjusted[order[k]] = reached;
    }
    return adjusted;
  }
}
