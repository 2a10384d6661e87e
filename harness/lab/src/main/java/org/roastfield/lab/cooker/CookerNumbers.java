package org.roastfield.lab.cooker;

import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * The numbers that a profile may hold of a cooker: how it heats a cut, and what its air does by
 * itself and under an open lid ({@link FireParameters#ofHabit}).
 */
public final class CookerNumbers {

  private static final ParameterSet HABIT = FireParameters.ofHabit();

  private CookerNumbers() {}

  /** All of them. */
  static ParameterSet all() {
    ParameterSet all = CookParameters.all().of(Owner.COOKER);
    for (Parameter parameter : HABIT.list()) {
      all = all.with(parameter);
    }
    return all;
  }

  /** Whether a number is one of its air's habit, which cores say nothing of. */
  static boolean isHabit(Parameter parameter) {
    return HABIT.has(parameter.id());
  }

  /** Standard deviation from cook to cook of a coordinate. */
  static double betweenCooks(String id) {
    return HABIT.has(id) ? FireParameters.betweenCooks(id) : CookParameters.betweenCooks(id);
  }

  /** Those of a profile that cores tell of. */
  static ParameterSet ofCores(ParameterSet parameters) {
    ParameterSet some = ParameterSet.empty();
    for (Parameter parameter : parameters.list()) {
      some = isHabit(parameter) ? some : some.with(parameter);
    }
    return some;
  }

  /**
   * Belief about some of the parameters, whatever the others are.
   *
   * @param some all among those of {@code all}
   */
  public static Prior part(Prior all, ParameterSet some) {
    int n = some.size();
    double[] mean = new double[n];
    double[][] covariance = new double[n][n];
    for (int a = 0; a < n; a++) {
      int from = all.parameters().index(some.get(a).id());
      mean[a] = all.mean()[from];
      for (int b = 0; b < n; b++) {
        covariance[a][b] = all.covariance(from, all.parameters().index(some.get(b).id()));
      }
    }
    return Prior.of(some, mean, covariance);
  }
}
