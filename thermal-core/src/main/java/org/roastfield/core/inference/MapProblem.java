package org.roastfield.core.inference;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whitened residuals of evidence and prior over free numbers, for fixed error models: half their
 * sum of squares is the part of the objective that parameters change.
 */
final class MapProblem implements LeastSquaresProblem {

  private final Prior prior;
  private final Evidence evidence;
  private final ForwardModel model;
  private final BoundedCoordinates bounds;
  private final List<Whitening> whitenings;
  private final double[] predicted;
  private final double[][] derivatives;

  MapProblem(
      Prior prior,
      Evidence evidence,
      ForwardModel model,
      BoundedCoordinates bounds,
      List<Whitening> whitenings) {
    this.prior = prior;
    this.evidence = evidence;
    this.model = model;
    this.bounds = bounds;
    this.whitenings = List.copyOf(whitenings);
    predicted = new double[evidence.size()];
    derivatives = new double[prior.size()][evidence.size()];
  }

  @Override
  public int unknowns() {
    return prior.size();
  }

  @Override
  public int residuals() {
    return evidence.size() + prior.size();
  }

  @Override
  public boolean at(double[] free, double[] r, double @Nullable [][] jacobian) {
    double[] z = bounds.coordinates(free);
    if (!model.at(z, predicted, jacobian == null ? null : derivatives)) {
      return false;
    }
    whiten(evidence.residuals(predicted), r);
    double[] byPrior = prior.whitened(z);
    System.arraycopy(byPrior, 0, r, evidence.size(), byPrior.length);
    if (jacobian != null) {
      differentiate(bounds.slopes(free), jacobian);
    }
    return true;
  }

  /**
   * Whitened residuals and derivatives of the evidence alone, by the coordinates themselves.
   *
   * @throws IllegalArgumentException if the model cannot be computed there
   */
  Linearisation linearised(double[] z) {
    if (!model.at(z, predicted, derivatives)) {
      throw new IllegalArgumentException("coordinates must be some that the model can compute");
    }
    double[] residuals = new double[evidence.size()];
    whiten(evidence.residuals(predicted), residuals);
    double[][] columns = new double[prior.size()][evidence.size()];
    for (int p = 0; p < columns.length; p++) {
      whiten(derivatives[p], columns[p]);
    }
    return new Linearisation(residuals, columns);
  }

  private void differentiate(double[] slopes, double[][] jacobian) {
    int n = slopes.length;
    for (int p = 0; p < n; p++) {
      double[] unit = new double[n];
      unit[p] = 1;
      double[] row = jacobian[p];
      whiten(derivatives[p], row);
      System.arraycopy(prior.factor().whitened(unit), 0, row, evidence.size(), n);
      for (int i = 0; i < row.length; i++) {
        row[i] *= slopes[p];
      }
    }
  }

  /** Whitens a column of the evidence. */
  void whiten(double[] column, double[] out) {
    int row = 0;
    for (int s = 0; s < whitenings.size(); s++) {
      whitenings.get(s).apply(column, row, out, row);
      row += evidence.series().get(s).size();
    }
    for (SingleReading single : evidence.singles()) {
      out[row] = column[row] / single.totalSpread();
      row++;
    }
  }
}
