package org.roastfield.lab.heldout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.DriftState;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.CookerNumbers;
import org.roastfield.lab.cooker.CookerSearch;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.score.Interval;
import org.roastfield.lab.score.Predictive;

/**
 * How the later readings of a trace lie in what was foretold from the earlier ones, in the chamber
 * as it was logged: what is foretold is the cut, not the fire.
 *
 * @param log that the trace is of
 * @param trace its name
 * @param after time of the last reading that was used [s]
 * @param readings later ones
 * @param inside how many of them lie in their bands of {@value #LEVEL}
 * @param width mean of the bands [K]
 * @param rootMeanSquare of the bands' medians less the readings [K]
 * @param lost draws that could not be computed, of {@value #DRAWS}
 */
public record LaterReadings(
    String log,
    String trace,
    double after,
    int readings,
    int inside,
    double width,
    double rootMeanSquare,
    int lost) {

  /** Chance of a reading to lie in its band. */
  public static final double LEVEL = 0.9;

  /** Draws of each log. */
  public static final int DRAWS = 199;

  /**
   * Compares what was foretold with what came.
   *
   * @param found by the earlier readings
   * @param belief of all coordinates of {@code found}
   * @param free that the search left free
   * @param whole the logs with their later readings, in the order of {@code found}
   * @return of each trace with an earlier and a later reading
   * @throws IllegalArgumentException if fewer than half of a log's draws can be computed
   */
  public static List<LaterReadings> of(
      CookerSearch.Found found,
      Prior belief,
      Predicate<Parameter> free,
      List<LoggedCase> whole,
      Simulator simulator,
      RandomGenerator random) {
    List<LaterReadings> all = new ArrayList<>();
    int series = 0;
    for (int c = 0; c < whole.size(); c++) {
      List<ObservedTrace> early = found.logs().cases().get(c).traces();
      List<ErrorModel> errors = new ArrayList<>();
      for (int t = 0; t < early.size(); t++) {
        errors.add(found.estimate().errors(series++));
      }
      all.addAll(new Rest(whole.get(c), early, errors, belief, free, simulator).all(random));
    }
    return all;
  }

  /** Share of the later readings that lie in their bands. */
  public double share() {
    return (double) inside / readings;
  }

  /** One log. */
  private record Rest(
      LoggedCase whole,
      List<ObservedTrace> early,
      List<ErrorModel> errors,
      Prior belief,
      Predicate<Parameter> free,
      Simulator simulator) {

    List<LaterReadings> all(RandomGenerator random) {
      CookModel model = CookerLogs.of(List.of(whole), free).model(simulator);
      Prior prior = known(model.parameters());
      List<double[]> drawn = new ArrayList<>();
      for (int d = 0; d < DRAWS; d++) {
        double[] predicted = new double[model.evidence().size()];
        if (model.at(prior.draw(random), predicted, null)) {
          drawn.add(predicted);
        }
      }
      if (2 * drawn.size() < DRAWS) {
        throw new IllegalArgumentException(
            "most draws of log "
                + whole.name()
                + " must be such as can be computed to its end, were "
                + drawn.size()
                + " of "
                + DRAWS);
      }
      List<LaterReadings> all = new ArrayList<>();
      int row = 0;
      for (ObservedTrace trace : whole.traces()) {
        int first = row;
        row += trace.readings().size();
        errors(trace)
            .flatMap(error -> compared(trace.readings(), error, drawn, first, random))
            .ifPresent(all::add);
      }
      return all;
    }

    /** What the earlier readings say of the log's numbers; of those that come later, the priors. */
    private Prior known(ParameterSet parameters) {
      ParameterSet common = ParameterSet.empty();
      for (Parameter parameter : parameters.list()) {
        common = belief.parameters().has(parameter.id()) ? common.with(parameter) : common;
      }
      return Prior.of(parameters).with(CookerNumbers.part(belief, common));
    }

    /** Errors of the earlier part of a trace, if it has one. */
    private Optional<ErrorModel> errors(ObservedTrace trace) {
      for (int t = 0; t < early.size(); t++) {
        if (early.get(t).readings().name().equals(trace.readings().name())) {
          return Optional.of(errors.get(t));
        }
      }
      return Optional.empty();
    }

    private int seen(Series series) {
      for (ObservedTrace trace : early) {
        if (trace.readings().name().equals(series.name())) {
          return trace.readings().size();
        }
      }
      return 0;
    }

    private Optional<LaterReadings> compared(
        Series series, ErrorModel error, List<double[]> drawn, int first, RandomGenerator random) {
      int seen = seen(series);
      int later = series.size() - seen;
      if (later == 0) {
        return Optional.empty();
      }
      double[] times = new double[series.size()];
      Arrays.setAll(times, series::time);
      double[][] shown = new double[later][drawn.size()];
      for (int d = 0; d < drawn.size(); d++) {
        double[] predicted = drawn.get(d);
        double[] residuals = new double[seen];
        Arrays.setAll(residuals, k -> series.value(k) - predicted[first + k]);
        double[] drift =
            DriftState.after(error, Arrays.copyOf(times, seen), residuals)
                .path(Arrays.copyOfRange(times, seen, times.length), random);
        for (int k = 0; k < later; k++) {
          double white = error.noise() * random.nextGaussian();
          shown[k][d] = predicted[first + seen + k] + drift[k] + white;
        }
      }
      int inside = 0;
      double width = 0;
      double squares = 0;
      for (int k = 0; k < later; k++) {
        Predictive predictive = Predictive.ofDraws(shown[k]);
        Interval band = predictive.interval(LEVEL);
        double value = series.value(seen + k);
        inside += band.covers(value) ? 1 : 0;
        width += band.width() / later;
        squares += Math.pow(predictive.median() - value, 2) / later;
      }
      return Optional.of(
          new LaterReadings(
              whole.name(),
              series.name(),
              times[seen - 1],
              later,
              inside,
              width,
              Math.sqrt(squares),
              DRAWS - drawn.size()));
    }
  }
}
