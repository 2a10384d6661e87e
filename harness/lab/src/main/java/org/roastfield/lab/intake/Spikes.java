package org.roastfield.lab.intake;

/**
 * Single readings that are off both neighbours by far more than the trace's own noise, there and as
 * a whole.
 */
final class Spikes {

  /**
   * Standard deviations of the noise; a normal law has one in 1e8 beyond as many of how far a
   * reading is off its neighbours.
   */
  private static final double DEVIATIONS = 6.5;

  /** Least height [K]; assumed: what is lower changes no decision of a cook. */
  private static final double SMALLEST = 3;

  private final Series series;
  private final Noise noise;
  private final double least;

  Spikes(Series series, Noise noise) {
    this.series = series;
    this.noise = noise;
    this.least = Math.max(SMALLEST, DEVIATIONS * noise.deviation());
  }

  /**
   * Height of a spike over its neighbours [K], NaN if the reading is none.
   *
   * @param i neither the first nor the last
   */
  double height(int i) {
    double off = noise.off(i);
    double size = Math.abs(off);
    return size > least && isAlone(i, size) && size > DEVIATIONS * noise.deviation(i)
        ? off
        : Double.NaN;
  }

  /** Whether the reading before and that after are near each other. */
  private boolean isAlone(int i, double height) {
    return Math.abs(series.at(i + 1) - series.at(i - 1)) < height / 2;
  }
}
