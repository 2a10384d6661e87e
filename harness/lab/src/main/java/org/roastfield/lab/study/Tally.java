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

  double[] values() {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
