package org.roastfield.core.integration;

/** A number of each lane at the start of a step and at the end of an attempt at one. */
final class TurnedRow {

  /** At the start of the step [lanes]. */
  double[] start;

  /** At the end of the attempt [lanes]. */
  double[] end;

  TurnedRow(int width) {
    start = new double[width];
    end = new double[width];
  }

  /** Makes the ends of the attempt the starts of the next. */
  void turn() {
    double[] former = start;
    start = end;
    end = former;
  }

  /** Undoes the attempt of a lane before {@link #turn()}. */
  void repeat(int lane) {
    end[lane] = start[lane];
  }

  /** Copies the start of a lane into another lane. */
  void move(int from, int to) {
    start[to] = start[from];
  }
}
