package org.roastfield.core.chamber;

/** One step of a fire, and the cubic in it. */
final class FireStep {

  final double from;
  final double to;
  final Tending tending;
  private final double[] first;
  private final double[] last;
  private final double[] firstSlope;
  private final double[] lastSlope;

  FireStep(
      double from,
      double to,
      Tending tending,
      double[] first,
      double[] last,
      double[] firstSlope,
      double[] lastSlope) {
    this.from = from;
    this.to = to;
    this.tending = tending;
    this.first = first;
    this.last = last;
    this.firstSlope = firstSlope;
    this.lastSlope = lastSlope;
  }

  double value(int component, double time) {
    double h = to - from;
    double s = Math.max(0, Math.min(1, (time - from) / h));
    double r = 1 - s;
    return r * r * (1 + 2 * s) * first[component]
        + s * s * (3 - 2 * s) * last[component]
        + h * s * r * (r * firstSlope[component] - s * lastSlope[component]);
  }

  double last(int component) {
    return last[component];
  }
}
