package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.ObservedCook;
import org.roastfield.core.inference.ObservedNumber;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.SingleReading;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerLogs;

/**
 * The calibration of a cooker's logs with other priors of some of one log's numbers, or another
 * cook: numbers that were not free become so.
 */
final class Rework {

  private final CookerLogs logs;
  private final Prior prior;
  private final MapEstimate estimate;
  private final Simulator simulator;
  private final int log;
  private final List<Parameter> own = new ArrayList<>();
  private Function<ParameterPoint, Cook> cooks;
  private double lengthUnknown;

  /**
   * @param prior of the calibration of {@code logs}
   * @param estimate of it
   * @param log index of the log
   */
  Rework(CookerLogs logs, Prior prior, MapEstimate estimate, Simulator simulator, int log) {
    this.logs = logs;
    this.prior = prior;
    this.estimate = estimate;
    this.simulator = simulator;
    this.log = log;
    cooks = logs.observed().get(log).cooks();
  }

  /** With another prior of one of the log's own numbers. */
  Rework with(Parameter parameter) {
    own.add(parameter);
    return this;
  }

  /** With other cooks at the same numbers. */
  Rework cooking(Function<ParameterPoint, Cook> others) {
    cooks = others;
    return this;
  }

  /**
   * With the cut's length or breadth unknown, so that a weight tells less of its thickness.
   *
   * @param share spread of the weight beside what is believed of it, as a share of it
   */
  Rework weighing(double share) {
    lengthUnknown = share;
    return this;
  }

  private String id(Parameter parameter) {
    return CookerLogs.id(parameter, logs.cases().get(log).name());
  }

  private ParameterSet parameters() {
    ParameterSet set = ParameterSet.empty();
    for (Parameter old : prior.parameters().list()) {
      Parameter now = old;
      for (Parameter each : own) {
        now = id(each).equals(old.id()) ? each.called(old.id()) : now;
      }
      set = set.with(now);
    }
    for (Parameter each : own) {
      set = set.has(id(each)) ? set : set.with(each.called(id(each)));
    }
    return set;
  }

  private boolean isOwn(Parameter parameter) {
    return own.stream().anyMatch(each -> id(each).equals(parameter.id()));
  }

  private Prior prior(ParameterSet parameters) {
    int n = parameters.size();
    double[] mean = parameters.centre();
    double[][] covariance = new double[n][n];
    for (int p = 0; p < n; p++) {
      double spread = parameters.get(p).spread();
      covariance[p][p] = spread * spread;
    }
    for (int p = 0; p < prior.size(); p++) {
      if (isOwn(parameters.get(p))) {
        continue;
      }
      mean[p] = prior.mean()[p];
      for (int q = 0; q < prior.size(); q++) {
        covariance[p][q] = isOwn(parameters.get(q)) ? 0 : prior.covariance(p, q);
      }
    }
    return Prior.of(parameters, mean, covariance);
  }

  /** The log's cook with its numbers and those that became free. */
  private ObservedCook observed() {
    ObservedCook old = logs.observed().get(log);
    List<String> names = new ArrayList<>(old.own());
    List<String> ids = new ArrayList<>(old.ids());
    for (Parameter each : own) {
      if (!names.contains(each.id())) {
        names.add(each.id());
        ids.add(id(each));
      }
    }
    return new ObservedCook(old.name(), names, ids, cooks, old.traces(), numbers(old));
  }

  private List<ObservedNumber> numbers(ObservedCook old) {
    String weight = logs.cases().get(log).weightName();
    List<ObservedNumber> numbers = new ArrayList<>();
    for (ObservedNumber number : old.numbers()) {
      numbers.add(number.reading().name().equals(weight) ? looser(number) : number);
    }
    return numbers;
  }

  private ObservedNumber looser(ObservedNumber weight) {
    SingleReading reading = weight.reading();
    double spread = Math.hypot(reading.spread(), lengthUnknown * reading.value());
    return new ObservedNumber(
        new SingleReading(reading.name(), reading.value(), spread, reading.resolution()),
        weight.computed());
  }

  Calibration calibration() {
    ParameterSet parameters = parameters();
    List<ObservedCook> observed = new ArrayList<>(logs.observed());
    observed.set(log, observed());
    CookModel model = CookModel.of(parameters, observed, simulator);
    return Calibration.of(prior(parameters), model.evidence(), model);
  }

  /** Coordinates to search from: the estimate's, and medians of what became free. */
  List<Double> start() {
    List<Double> start = new ArrayList<>();
    for (Parameter parameter : parameters().list()) {
      start.add(
          prior.parameters().has(parameter.id())
              ? estimate.coordinates()[prior.parameters().index(parameter.id())]
              : parameter.centre());
    }
    return start;
  }

  /**
   * Change of the evidence's predictions by this log's other cooks, from the estimate's.
   *
   * @param moved how far one number moves from the estimate, or from what changes nothing [its
   *     coordinate]; by id of the log's own
   * @return empty if they cannot be computed
   */
  Optional<double[]> change(Map<String, Double> moved) {
    ObservedCook now = observed();
    CookModel before = CookModel.of(parameters(), List.of(logs.observed().get(log)), simulator);
    CookModel after = CookModel.of(parameters(), List.of(now), simulator);
    double[] at = start().stream().mapToDouble(each -> each).toArray();
    double[] from = new double[before.evidence().size()];
    double[] to = new double[from.length];
    boolean computed = before.at(at, from, null);
    for (Map.Entry<String, Double> each : moved.entrySet()) {
      at[parameters().index(now.ids().get(now.own().indexOf(each.getKey())))] += each.getValue();
    }
    if (!computed || !after.at(at, to, null)) {
      return Optional.empty();
    }
    for (int i = 0; i < to.length; i++) {
      to[i] -= from[i];
    }
    return Optional.of(LogPlace.of(logs, log).column(to));
  }
}
