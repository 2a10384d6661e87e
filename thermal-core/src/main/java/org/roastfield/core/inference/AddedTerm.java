package org.roastfield.core.inference;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.Parameter;

/**
 * Something that a model leaves out, as a multiple of a known change of its predictions: a lid
 * opening at some time, a probe that slipped. Immutable.
 */
public final class AddedTerm {

  private final Parameter parameter;
  private final double[] column;

  private AddedTerm(Parameter parameter, double[] column) {
    this.parameter = parameter;
    this.column = column;
  }

  /**
   * A term.
   *
   * @param parameter what it is multiplied by: the coordinate itself is
   * @param column change of each prediction by the coordinate, in the order of the evidence, finite
   */
  public static AddedTerm of(Parameter parameter, double[] column) {
    for (double each : column) {
      Check.finite("column of " + parameter.id(), each);
    }
    return new AddedTerm(parameter, column.clone());
  }

  /** What it is multiplied by. */
  public Parameter parameter() {
    return parameter;
  }

  /**
   * What the term would bring, to first order.
   *
   * @param value of its coordinate that would be found
   * @param gain logarithm of the ratio of the evidence with the term to that without [nat]
   */
  public record Promise(double value, double gain) {}

  /**
   * What a calibration with the term would find and how much better it would explain the evidence,
   * all coordinates fitted anew, to first order and under the estimate's errors. Exact for a linear
   * model with known errors. Where errors had to grow to make up for what is missing, it says too
   * little; the parameter's bounds are not looked at.
   */
  public Promise promise(FirstOrder around) {
    MapEstimate estimate = around.estimate();
    Linearisation linear = around.linear();
    double[] white = around.calibration().whitened(estimate, column);
    boolean[] all = linear.all();
    Prior prior = estimate.prior();
    Linearisation alone = new Linearisation(linear.residuals(), new double[][] {white});
    double[] across = new Linearisation(white, linear.columns()).gradient(all);
    double[][] covariance = GaussNewton.covariance(prior, linear, all);
    double[] rest = GaussNewton.step(prior, estimate.coordinates(), linear, all);
    double information =
        alone.information(all)[0][0]
            - GaussNewton.product(across, GaussNewton.product(covariance, across));
    double pull = alone.gradient(all)[0] + GaussNewton.product(across, rest);
    double median = parameter.centre();
    double precision = 1 / (parameter.spread() * parameter.spread());
    double value = (median * precision - pull) / (information + precision);
    double gain =
        0.5 * value * value * (information + precision)
            - 0.5 * median * median * precision
            - 0.5 * StrictMath.log(1 + information / precision);
    return new Promise(value, gain);
  }

  /** The calibration with the term, its parameter the last one and independent of the others. */
  public Calibration addedTo(Calibration calibration) {
    Prior old = calibration.prior();
    int n = old.size();
    double[] mean = new double[n + 1];
    double[][] covariance = new double[n + 1][n + 1];
    for (int p = 0; p < n; p++) {
      mean[p] = old.mean()[p];
      for (int q = 0; q < n; q++) {
        covariance[p][q] = old.covariance(p, q);
      }
    }
    mean[n] = parameter.centre();
    covariance[n][n] = parameter.spread() * parameter.spread();
    int size = Check.inRange("length of the column", column.length, 1, Integer.MAX_VALUE);
    Check.inRange("size of the evidence", calibration.evidence().size(), size, size);
    return Calibration.of(
        Prior.of(old.parameters().with(parameter), mean, covariance),
        calibration.evidence(),
        new Extended(calibration.model(), n));
  }

  /** The model and the term. */
  private final class Extended implements ForwardModel {

    private final ForwardModel model;
    private final int last;

    Extended(ForwardModel model, int last) {
      this.model = model;
      this.last = last;
    }

    @Override
    public boolean at(double[] coordinates, double[] predicted, double @Nullable [][] derivatives) {
      double[] others = Arrays.copyOf(coordinates, last);
      double[][] rows = derivatives == null ? null : Arrays.copyOf(derivatives, last);
      if (!model.at(others, predicted, rows)) {
        return false;
      }
      for (int i = 0; i < column.length; i++) {
        predicted[i] += coordinates[last] * column[i];
      }
      if (derivatives != null) {
        System.arraycopy(column, 0, derivatives[last], 0, column.length);
      }
      return true;
    }
  }
}
