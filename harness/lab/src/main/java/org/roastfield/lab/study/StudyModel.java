package org.roastfield.lab.study;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.inference.ForwardModel;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.Sensitivities;
import org.roastfield.core.simulation.SensitivityTrace;
import org.roastfield.core.simulation.Simulator;

/** What the probe of a {@link StudyCook} shows at times of its log. */
final class StudyModel implements ForwardModel {

  private static final int BIAS = StudyCook.PARAMETERS.index(StudyCook.PROBE_BIAS.id());

  private final StudyCook cook;
  private final double[] times;
  private final Simulator simulator = Simulator.withDefaults();

  /**
   * @param times increasing [s]
   */
  StudyModel(StudyCook cook, double[] times) {
    this.cook = cook;
    this.times = times.clone();
  }

  @Override
  public boolean at(double[] coordinates, double[] predicted, double @Nullable [][] derivatives) {
    ParameterPoint point = StudyCook.point(coordinates);
    if (derivatives == null) {
      return simulator.run(cook.at(point)) instanceof Outcome.Completed completed
          && shown(completed, coordinates, predicted);
    }
    Sensitivities sensitivities = simulator.sensitivities(point, cook::at);
    if (!(sensitivities.outcome() instanceof Outcome.Completed completed)) {
      return false;
    }
    SensitivityTrace by = sensitivities.probe(StudyCook.probe(completed.result().cook()));
    for (int p = 0; p < derivatives.length; p++) {
      boolean logarithm = StudyCook.PARAMETERS.get(p).scale() == Scale.LOGARITHM;
      double slope = logarithm ? point.coordinate(p).value() : 1;
      for (int k = 0; k < times.length; k++) {
        derivatives[p][k] = slope * by.at(p, times[k]);
      }
    }
    Arrays.fill(derivatives[BIAS], 1);
    return shown(completed, coordinates, predicted);
  }

  private boolean shown(Outcome.Completed completed, double[] coordinates, double[] predicted) {
    ProbeTrace trace = completed.result().shownBy(StudyCook.probe(completed.result().cook()));
    for (int k = 0; k < times.length; k++) {
      predicted[k] = trace.at(times[k]) + coordinates[BIAS];
    }
    return true;
  }
}
