package org.roastfield.core.integration;

/** Running sums over the steps of a cook that no single state holds. */
final class Balances implements StepListener {

  private final int cells;
  private double lowest;
  private double highest;
  private double turnover;
  private double hottest = Double.NEGATIVE_INFINITY;
  private double coldest = Double.POSITIVE_INFINITY;
  private double timeOutside;

  /**
   * @param lowest lower end of the range of the material's curves [K]
   * @param highest upper end [K]
   */
  Balances(int cells, double lowest, double highest) {
    this.cells = cells;
    this.lowest = lowest;
    this.highest = highest;
  }

  /** Begins another cook. */
  void reset(double lowest, double highest) {
    this.lowest = lowest;
    this.highest = highest;
    turnover = 0;
    hottest = Double.NEGATIVE_INFINITY;
    coldest = Double.POSITIVE_INFINITY;
    timeOutside = 0;
  }

  @Override
  public void accepted(DenseStep step) {
    State from = step.from();
    State to = step.to();
    double stepHottest = Double.NEGATIVE_INFINITY;
    double stepColdest = Double.POSITIVE_INFINITY;
    for (int f = 0; f < 2; f++) {
      turnover += Math.abs(to.heatTaken[f] - from.heatTaken[f]);
    }
    for (int i = 0; i < cells; i++) {
      stepHottest = Math.max(stepHottest, to.temperature[i]);
      stepColdest = Math.min(stepColdest, to.temperature[i]);
    }
    hottest = Math.max(hottest, stepHottest);
    coldest = Math.min(coldest, stepColdest);
    if (stepHottest > highest || stepColdest < lowest) {
      timeOutside += step.end() - step.start();
    }
  }

  /** Sum of absolute heat through the faces, in the unit of {@link State#heatTaken} [K]. */
  double turnover() {
    return turnover;
  }

  /** Highest cell temperature at the end of a step [K]; negative infinity before the first. */
  double hottest() {
    return hottest;
  }

  /** Lowest cell temperature at the end of a step [K]; infinity before the first. */
  double coldest() {
    return coldest;
  }

  /** Time in which some cell was outside the range of the material's curves [s], to the step. */
  double timeOutside() {
    return timeOutside;
  }
}
