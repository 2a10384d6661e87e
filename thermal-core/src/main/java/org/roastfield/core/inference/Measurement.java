package org.roastfield.core.inference;

import java.util.Arrays;
import org.roastfield.core.internal.Check;

/**
 * A measurement that could be made: when, with what errors, and how what it would show depends on
 * the coordinates. Its value is not needed: what it teaches follows from the derivatives alone.
 * Immutable.
 */
public final class Measurement {

  private final String name;
  private final double[][] whitened;

  private Measurement(String name, double[][] whitened) {
    this.name = name;
    this.whitened = whitened;
  }

  /**
   * Readings over time whose errors drift.
   *
   * @param name for messages
   * @param times strictly increasing [s], at least one
   * @param derivatives of what it would show, one row a coordinate, as long as {@code times}
   * @param errors of what it shows
   * @throws IllegalArgumentException if there are no times, they do not increase, or a row has
   *     another length
   */
  public static Measurement over(
      String name, double[] times, double[][] derivatives, ErrorModel errors) {
    Series series = Series.of(name, times, new double[times.length], errors);
    double[] ones = new double[series.size()];
    Arrays.fill(ones, 1);
    Whitening whitening = new Whitening(series.times(), errors, ones);
    double[][] whitened = new double[derivatives.length][series.size()];
    for (int p = 0; p < derivatives.length; p++) {
      Check.inRange("length of derivatives", derivatives[p].length, times.length, times.length);
      whitening.apply(derivatives[p], 0, whitened[p], 0);
    }
    return new Measurement(name, whitened);
  }

  /**
   * One number.
   *
   * @param name for messages
   * @param derivatives of it, by coordinate
   * @param spread standard deviation of its error, greater than 0
   */
  public static Measurement once(String name, double[] derivatives, double spread) {
    Check.notBlank("name", name);
    Check.positive("spread", spread);
    double[][] whitened = new double[derivatives.length][1];
    for (int p = 0; p < derivatives.length; p++) {
      whitened[p][0] = derivatives[p] / spread;
    }
    return new Measurement(name, whitened);
  }

  /** Name for messages. */
  public String name() {
    return name;
  }

  /**
   * What it would teach after an estimate, to first order.
   *
   * @throws IllegalArgumentException if it has derivatives by another number of coordinates
   */
  public Lesson after(MapEstimate estimate) {
    double[][] before = estimate.covariance();
    Check.inRange("rows of derivatives", whitened.length, before.length, before.length);
    Linearisation linear = new Linearisation(new double[whitened[0].length], whitened);
    double[][] information =
        GaussNewton.sum(Cholesky.of(before).inverse(), linear.information(linear.all()));
    return new Lesson(estimate.prior(), before, Cholesky.of(information).inverse());
  }

  /** What a measurement would teach. */
  public static final class Lesson {

    private final Prior prior;
    private final double[][] before;
    private final double[][] after;

    Lesson(Prior prior, double[][] before, double[][] after) {
      this.prior = prior;
      this.before = before;
      this.after = after;
    }

    /** Standard deviation of a coordinate with it. */
    public double spread(int parameter) {
      return Math.sqrt(after[parameter][parameter]);
    }

    /** Share of a coordinate's prior variance that would then be gone. */
    public double contraction(int parameter) {
      double spread = prior.spread(parameter);
      return 1 - after[parameter][parameter] / (spread * spread);
    }

    /**
     * Standard deviation without it of a number that depends on the coordinates, such as a time to
     * target: √(gᵀCg).
     *
     * @param gradient of the number by the coordinates
     */
    public double spreadBefore(double[] gradient) {
      return spread(before, gradient);
    }

    /** The same with it. */
    public double spreadAfter(double[] gradient) {
      return spread(after, gradient);
    }

    private static double spread(double[][] covariance, double[] gradient) {
      double[] product = GaussNewton.product(covariance, gradient);
      double sum = 0;
      for (int p = 0; p < gradient.length; p++) {
        sum += gradient[p] * product[p];
      }
      return Math.sqrt(sum);
    }
  }
}
