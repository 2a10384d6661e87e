package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.List;

/** Numbers gathered from cases. */
final class Tally {

  private final List<Double> values = new ArrayList<>();

  void add(double value) {
    values.add(value);
  }

  int count() {
    return values.size();
  }

  double mean() {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
  }

  /** Standard deviation around the mean. */
  double spread() {
    double mean = mean();
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares / (count() - 1));
  }

  /** Standard error of the mean of values of which each two are a pair. */
  double errorByPairs() {
    Tally pairs = new Tally();
    for (int i = 0; i + 1 < count(); i += 2) {
      pairs.add(0.5 * (values.get(i) + values.get(i + 1)));
    }
    return pairs.spread() / Math.sqrt(pairs.count());
  }
}
