package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

class LessonsTest {

  private static final ParameterSet PARAMETERS =
      ParameterSet.of(CookParameters.CONVECTION, size("a"), size("b"));

  private static Parameter size(String log) {
    Parameter size = CookParameters.SIZE;
    return new Parameter(
        size.id() + "/" + log,
        size.unit(),
        size.owner(),
        size.scale(),
        size.median(),
        size.spread(),
        size.low(),
        size.high(),
        size.source());
  }

  private static List<String> words(Prior before, Prior after) {
    return new Lessons(before, after).all().stream().map(Finding::words).toList();
  }

  /** Belief whose covariance is given in the parameters' own spreads. */
  private static Prior belief(RealMatrix relative) {
    int n = PARAMETERS.size();
    double[] mean = new double[n];
    double[][] covariance = new double[n][n];
    for (int p = 0; p < n; p++) {
      mean[p] = PARAMETERS.get(p).centre();
      for (int q = 0; q < n; q++) {
        covariance[p][q] =
            relative.getEntry(p, q) * PARAMETERS.get(p).spread() * PARAMETERS.get(q).spread();
      }
    }
    return Prior.of(PARAMETERS, mean, covariance);
  }

  /** Each of two logs knows its size with the cooker's convection: their sizes are not paired. */
  @Test
  void sizesOfTwoCuts_areNotPaired() {
    RealMatrix seen = MatrixUtils.createRealMatrix(new double[][] {{1, 1, 0}, {1, 0, 1}});
    RealMatrix precision =
        MatrixUtils.createRealIdentityMatrix(3)
            .add(seen.transpose().multiply(seen).scalarMultiply(1e3));
    Prior after = belief(new LUDecomposition(precision).getSolver().getInverse());
    List<String> words = words(Prior.of(PARAMETERS), after);
    for (String log : List.of("a", "b")) {
      String pair =
          "convection cannot be told from size of the cut of "
              + log
              + ": what they do together is known (1.00), none of them alone (at most 0.67)";
      assertTrue(words.contains(pair), words::toString);
    }
    assertFalse(
        words.stream().anyMatch(each -> each.contains("of a") && each.contains("of b")),
        words::toString);
  }

  /** What older logs told is not called what was believed before all logs. */
  @Test
  void numberThatOlderLogsTold_isSaidToBeKnownByThem() {
    Prior before = belief(MatrixUtils.createRealDiagonalMatrix(new double[] {0.25, 1, 1}));
    Prior after = belief(MatrixUtils.createRealDiagonalMatrix(new double[] {0.2, 0.9, 0.5}));
    assertEquals(
        List.of(
            "convection: 0.80 of the variance from before its first log is gone, most of it by the"
                + " older logs (these took 0.20 of what was left), 1.00 ± 13 %",
            "size of the cut of b: 0.50 of its prior variance is gone, 1.00 ± 5 %",
            "nothing is claimed for size of the cut of a: what is given for them leans on"
                + " what was believed before"),
        words(before, after));
  }
}
