package org.roastfield.core.integration;

/**
 * Temperature at one place inside one step, eq. (19): a Hermite cubic for the cells' share and a
 * cubic through four stages for the faces' share.
 */
final class StepReading {

  private double length;
  private double from;
  private double fromRate;
  private double to;
  private double toRate;
  private boolean hasFace;
  private double face0;
  private double face1;
  private double face2;
  private double face3;
  private double highest;

  /** Sets the cells' share and clears the faces'. */
  StepReading cells(double length, double from, double fromRate, double to, double toRate) {
    this.length = length;
    this.from = from;
    this.fromRate = fromRate;
    this.to = to;
    this.toRate = toRate;
    hasFace = false;
    face0 = 0;
    face1 = 0;
    face2 = 0;
    face3 = 0;
    highest = 0;
    return this;
  }

  /**
   * Adds a face's share: its weight times its temperatures at the four stages of {@link Cubic}, and
   * times what the cubic through them may not pass.
   */
  StepReading addFace(double weight, double highest, double y0, double y1, double y2, double y3) {
    hasFace = true;
    this.highest += weight * highest;
    face0 += weight * y0;
    face1 += weight * y1;
    face2 += weight * y2;
    face3 += weight * y3;
    return this;
  }

  double start() {
    return from + face0;
  }

  double end() {
    return to + face3;
  }

  /** Rate at the end [K/s]. */
  double endRate() {
    return hasFace ? toRate + Cubic.slopeAtEnd(face0, face1, face2, face3) / length : toRate;
  }

  /** Value at the share θ in [0, 1] of the step. */
  double at(double theta) {
    double cells = Cubic.hermite(theta, length, from, fromRate, to, toRate);
    return hasFace
        ? cells + Math.min(highest, Cubic.throughStages(theta, face0, face1, face2, face3))
        : cells;
  }

  /**
   * A bound that no value inside the step is above: the highest control point of the cells' cubic,
   * infinite if a face has a share.
   */
  double upperBound() {
    double third = length / 3;
    double inner = Math.max(from + third * fromRate, to - third * toRate);
    return hasFace ? Double.POSITIVE_INFINITY : Math.max(Math.max(from, to), inner);
  }

  /** A bound that no value inside the step is below; see {@link #upperBound()}. */
  double lowerBound() {
    double third = length / 3;
    double inner = Math.min(from + third * fromRate, to - third * toRate);
    return hasFace ? Double.NEGATIVE_INFINITY : Math.min(Math.min(from, to), inner);
  }

  /**
   * Share θ of a maximum inside the step where the cells' share rises at its start and falls at its
   * end; 0 if it does not.
   */
  double peak() {
    if (!(fromRate > 0 && toRate < 0)) {
      return 0;
    }
    double rise = to - from;
    double start = length * fromRate;
    double end = length * toRate;
    double square = 3 * (start + end) - 6 * rise;
    double middle = 3 * rise - 2 * start - end;
    double root = Math.sqrt(middle * middle - square * start);
    return middle > 0 ? (middle + root) / -square : start / (root - middle);
  }
}
