package org.roastfield.core.inference;

import java.util.List;

/**
 * All that was measured, in the order in which a {@link ForwardModel} computes it: the readings of
 * each series, then the single readings.
 *
 * @param series logged traces
 * @param singles single readings
 */
public record Evidence(List<Series> series, List<SingleReading> singles) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if there is nothing at all
   */
  public Evidence {
    series = List.copyOf(series);
    singles = List.copyOf(singles);
    if (series.isEmpty() && singles.isEmpty()) {
      throw new IllegalArgumentException("evidence must hold a reading, was empty");
    }
  }

  /** How many numbers were measured. */
  public int size() {
    int size = singles.size();
    for (Series each : series) {
      size += each.size();
    }
    return size;
  }

  /** Whether the same was measured, whatever is believed of the errors of single readings. */
  boolean isOfTheSame(Evidence other) {
    boolean same = series.equals(other.series) && singles.size() == other.singles.size();
    for (int i = 0; same && i < singles.size(); i++) {
      SingleReading one = singles.get(i);
      SingleReading another = other.singles.get(i);
      same = one.name().equals(another.name()) && one.value() == another.value();
    }
    return same;
  }

  /** Residuals, model less measured, of predictions in order. */
  double[] residuals(double[] predicted) {
    double[] residuals = new double[predicted.length];
    int row = 0;
    for (Series each : series) {
      for (int k = 0; k < each.size(); k++, row++) {
        residuals[row] = predicted[row] - each.value(k);
      }
    }
    for (SingleReading each : singles) {
      residuals[row] = predicted[row] - each.value();
      row++;
    }
    return residuals;
  }
}
