package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Single readings that are linear in their coordinates: everything has a closed form. */
final class LinearCook {

  static final double NOISE = 0.5;

  private final double[][] rows;
  private final ParameterSet parameters;

  /**
   * @param rows derivatives of each reading by the coordinates
   * @param spreads of the priors, around 0
   */
  LinearCook(double[][] rows, double... spreads) {
    this.rows = rows;
    ParameterSet set = ParameterSet.empty();
    for (int p = 0; p < spreads.length; p++) {
      set =
          set.with(
              Parameter.offset("number-" + p, "K", Owner.COOKER, spreads[p], -1e3, 1e3, "made up"));
    }
    parameters = set;
  }

  /** Readings of drawn rows. */
  static LinearCook drawn(int readings, SplittableRandom random, double... spreads) {
    double[][] rows = new double[readings][spreads.length];
    for (double[] row : rows) {
      for (int p = 0; p < row.length; p++) {
        row[p] = StudentProposal.normal(random);
      }
    }
    return new LinearCook(rows, spreads);
  }

  ParameterSet parameters() {
    return parameters;
  }

  /** What would be read with true coordinates. */
  double[] read(double[] truth, SplittableRandom random) {
    double[] values = new double[rows.length];
    for (int k = 0; k < rows.length; k++) {
      values[k] = product(rows[k], truth) + NOISE * StudentProposal.normal(random);
    }
    return values;
  }

  /** Calibration of some of the readings. */
  Calibration calibration(double[] values, int from, int to) {
    return calibration(Prior.of(parameters), values, from, to);
  }

  Calibration calibration(Prior prior, double[] values, int from, int to) {
    List<SingleReading> readings = new ArrayList<>();
    for (int k = from; k < to; k++) {
      readings.add(new SingleReading("reading " + k, values[k], NOISE, 0));
    }
    return Calibration.of(
        prior,
        new Evidence(List.of(), readings),
        (z, predicted, derivatives) -> {
          for (int k = from; k < to; k++) {
            predicted[k - from] = product(rows[k], z);
            for (int p = 0; derivatives != null && p < z.length; p++) {
              derivatives[p][k - from] = rows[k][p];
            }
          }
          return true;
        });
  }

  static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
