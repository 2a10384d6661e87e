package org.roastfield.core.integration;

/**
 * Temperature at one place inside one step, eq. (19): a Hermite cubic for the cells' share and a
 * cubic through four stages for the faces' share.
 */
final class StepReading {

  private static final int PEAK_BISECTIONS = 30;

  private double length;
  private double from;
  private double fromRate;
  private double to;
  private double toRate;
  private double face0;
  private double face1;
  private double face2;
  private double face3;

  /** Sets the cells' share and clears the faces'. */
  StepReading cells(double length, double from, double fromRate, double to, double toRate) {
    this.length = length;
    this.from = from;
    this.fromRate = fromRate;
    this.to = to;
    this.toRate = toRate;
    face0 = 0;
    face1 = 0;
    face2 = 0;
    face3 = 0;
    return this;
  }

  /** Adds a face's share: its weight times its temperatures at the four stages of {@link Cubic}. */
  StepReading addFace(double weight, double y0, double y1, double y2, double y3) {
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

  /** Value at the share θ in [0, 1] of the step. */
  double at(double theta) {
    return Cubic.hermite(theta, length, from, fromRate, to, toRate)
        + Cubic.throughStages(theta, face0, face1, face2, face3);
  }

  /**
   * Share θ of a maximum inside the step where the cells' share rises at its start and falls at its
   * end; 0 if it does not.
   */
  double peak() {
    if (!(fromRate > 0 && toRate < 0)) {
      return 0;
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < PEAK_BISECTIONS; i++) {
      double middle = 0.5 * (low + high);
      if (Cubic.hermiteSlope(middle, length, from, fromRate, to, toRate) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
