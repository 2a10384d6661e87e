package org.roastfield.lab.study;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.score.Predictive;
import org.roastfield.lab.synthetic.Noise;

/**
 * What is said of a cook before it is known: its core at some times, and when it gets to the
 * target.
 *
 * @param core at {@link #TIMES} [K]
 * @param timeToTarget [s]; the horizon if it does not get there
 */
record Forecast(List<Predictive> core, Predictive timeToTarget) {

  /** At which the core is foretold [s]. */
  static final List<Double> TIMES = List.of(1800.0, 3600.0, 5400.0, 7200.0, 9000.0);

  /** How many draws: between the 10th from either end lie nine tenths of 200 gaps. */
  static final int DRAWS = 199;

  /** Of draws from a distribution, for a cook whose chamber is known. */
  static Forecast of(Prior from, StudyLog cook, RandomGenerator random) {
    double[][] core = new double[TIMES.size()][DRAWS];
    double[] times = new double[DRAWS];
    for (int d = 0; d < DRAWS; d++) {
      SimulationResult result = cook.at(from.draw(random));
      for (int k = 0; k < core.length; k++) {
        core[k][d] = result.core().at(TIMES.get(k));
      }
      times[d] = StudyLog.timeToTarget(result.core());
    }
    return of(core, times);
  }

  /** The same with what the model leaves out: a drift of the core, as calibrations believe it. */
  static Forecast withDrift(Prior from, StudyLog cook, RandomGenerator random, Noise noise) {
    double[][] core = new double[TIMES.size()][DRAWS];
    double[] times = new double[DRAWS];
    int count = (int) (StudyCook.HORIZON / StudyCook.INTERVAL) + 1;
    for (int d = 0; d < DRAWS; d++) {
      SimulationResult result = cook.at(from.draw(random));
      ErrorModel errors = StudyLog.drawnErrors(noise);
      double[] path =
          noise.correlated(count, StudyCook.INTERVAL, errors.driftSpread(), errors.driftTime());
      for (int k = 0; k < count; k++) {
        path[k] += result.core().at(k * StudyCook.INTERVAL);
      }
      for (int k = 0; k < core.length; k++) {
        core[k][d] = path[(int) Math.round(TIMES.get(k) / StudyCook.INTERVAL)];
      }
      times[d] = crossing(path);
    }
    return of(core, times);
  }

  /** When readings first get to the target, straight between them. */
  private static double crossing(double[] path) {
    for (int k = 1; k < path.length; k++) {
      if (path[k] >= StudyCook.TARGET) {
        double share = (StudyCook.TARGET - path[k - 1]) / (path[k] - path[k - 1]);
        return (k - 1 + Math.max(0, share)) * StudyCook.INTERVAL;
      }
    }
    return StudyCook.HORIZON;
  }

  private static Forecast of(double[][] core, double[] times) {
    return new Forecast(
        Arrays.stream(core).map(Predictive::ofDraws).toList(), Predictive.ofDraws(times));
  }

  /** Share of the times at which the 90 % interval holds a core. */
  double coreCovered(SimulationResult truth) {
    int covered = 0;
    for (int k = 0; k < TIMES.size(); k++) {
      covered += core.get(k).interval(0.9).covers(truth.core().at(TIMES.get(k))) ? 1 : 0;
    }
    return (double) covered / TIMES.size();
  }

  /** 1 if the 90 % interval holds a time, else 0. */
  double timeCovered(double time) {
    return timeToTarget.interval(0.9).covers(time) ? 1 : 0;
  }
}
