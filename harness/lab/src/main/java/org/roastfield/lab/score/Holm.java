package org.roastfield.lab.score;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Several tests at once without more false alarms than of one [Holm1979]. */
public final class Holm {

  private Holm() {}

  /**
   * Adjusted probabilities: a test whose own is at most α fails, and all together raise a false
   * alarm with probability α at most, however they depend on each other.
   *
   * @param probabilities of each test under its hypothesis, in [0, 1]; not modified
   * @return adjusted ones in the same order, each at least as large
   */
  public static double[] adjusted(double[] probabilities) {
    int n = probabilities.length;
    for (double probability : probabilities) {
      Check.inRange("probabilities", probability, 0, 1);
    }
    int[] order =
        IntStream.range(0, n)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> probabilities[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] adjusted = new double[n];
    double reached = 0;
    for (int rank = 0; rank < n; rank++) {
      reached = Math.max(reached, Math.min(1, (n - rank) * probabilities[order[rank]]));
      adjusted[order[rank]] = reached;
    }
    return adjusted;
  }
}
