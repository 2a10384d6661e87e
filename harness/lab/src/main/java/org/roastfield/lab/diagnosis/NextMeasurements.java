package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Measurement;
import org.roastfield.core.inference.ObservedCook;
import org.roastfield.core.inference.ObservedNumber;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Series;
import org.roastfield.core.inference.SingleReading;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.cooker.CookerLogs;

/**
 * What one more measurement in a cook like a logged one would teach, from the derivatives alone:
 * the spread of a time to target with it and without it.
 */
final class NextMeasurements {

  /** Spacing of readings that could have been taken [s]: more would teach next to nothing. */
  private static final double SPACING = 300;

  /** Errors of a probe at the surface [K]; assumed. */
  private static final ErrorModel SURFACE = new ErrorModel(4, 2700, 1, 0);

  /** Error of a share lost that was weighed, with what drip by rule of thumb adds; assumed. */
  private static final double LOSS = 0.03;

  private static final String HALF_WAY = "half way out";

  /** Share of the core's rise at which the time to target is asked. */
  private static final double TARGET = 0.9;

  private final CookerLogs logs;
  private final MapEstimate estimate;
  private final Simulator simulator;
  private final int log;
  private final double[] times;

  NextMeasurements(CookerLogs logs, MapEstimate estimate, Simulator simulator, int log) {
    this.logs = logs;
    this.estimate = estimate;
    this.simulator = simulator;
    this.log = log;
    List<Double> logged = LogPlace.of(logs, log).times();
    double last = Math.max(SPACING, logged.stream().mapToDouble(each -> each).max().orElse(0));
    times = new double[Math.max(2, (int) (last / SPACING))];
    for (int k = 0; k < times.length; k++) {
      times[k] = last * (k + 1) / times.length;
    }
  }

  /** A sentence, if the cook can be computed and its core rises. */
  Optional<Finding> finding() {
    Series read = Series.of("what would be read", times, new double[times.length], SURFACE);
    ObservedCook old = logs.observed().get(log);
    ObservedCook now =
        new ObservedCook(
            old.name(),
            old.own(),
            old.ids(),
            point -> withHalfWay(old.cooks().apply(point)),
            List.of(
                new ObservedTrace(read, Probe.CORE.name(), Signal.constant(0)),
                new ObservedTrace(read, Probe.SURFACE.name(), Signal.constant(0)),
                new ObservedTrace(read, HALF_WAY, Signal.constant(0))),
            List.of(
                new ObservedNumber(
                    new SingleReading("share lost", 0, LOSS, 0),
                    (cook, result) -> Juice.of(result).total())));
    CookModel model = CookModel.of(logs.parameters(), List.of(now), simulator);
    double[] predicted = new double[model.evidence().size()];
    double[][] derivatives = new double[logs.parameters().size()][predicted.length];
    if (!model.at(estimate.coordinates(), predicted, derivatives)) {
      return Optional.empty();
    }
    return toTarget(predicted, derivatives).map(gradient -> words(gradient, derivatives));
  }

  private static Cook withHalfWay(Cook cook) {
    List<Probe> probes = new ArrayList<>(cook.probes());
    double half = cook.cut().shape().halfThickness() / 2;
    probes.add(new Probe(HALF_WAY, Double.POSITIVE_INFINITY, half, Instrument.IDEAL));
    return new Cook(cook.cut(), cook.stages(), probes);
  }

  /** Gradient of the time at which the core has made most of its rise [s]. */
  private Optional<double[]> toTarget(double[] predicted, double[][] derivatives) {
    double most = predicted[0];
    for (int k = 0; k < times.length; k++) {
      most = Math.max(most, predicted[k]);
    }
    double target = predicted[0] + TARGET * (most - predicted[0]);
    int at = 1;
    while (at < times.length && predicted[at] < target) {
      at++;
    }
    if (at == times.length) {
      return Optional.empty();
    }
    double slope = (predicted[at] - predicted[at - 1]) / (times[at] - times[at - 1]);
    if (!(slope > 0)) {
      return Optional.empty();
    }
    double[] gradient = new double[derivatives.length];
    for (int p = 0; p < gradient.length; p++) {
      gradient[p] = -derivatives[p][at] / slope;
    }
    return Optional.of(gradient);
  }

  private Finding words(double[] gradient, double[][] derivatives) {
    int n = times.length;
    List<Measurement> could =
        List.of(
            Measurement.once("the weight afterwards", at(derivatives, 3 * n), LOSS),
            Measurement.over("a probe at the surface", times, part(derivatives, n), SURFACE),
            Measurement.over(
                "a second probe half way out", times, part(derivatives, 2 * n), ErrorModel.CORE));
    double now = could.get(0).after(estimate).spreadBefore(gradient);
    Measurement best =
        could.stream()
            .min(Comparator.comparingDouble(one -> one.after(estimate).spreadAfter(gradient)))
            .orElseThrow();
    StringBuilder each = new StringBuilder();
    for (Measurement one : could) {
      each.append(
          String.format(
              Locale.ROOT,
              "%s%s %.0f min",
              each.isEmpty() ? "" : ", ",
              one.name(),
              one.after(estimate).spreadAfter(gradient) / 60));
    }
    return Finding.of(
        Finding.Kind.NEXT,
        Finding.Weight.NOTE,
        logs.cases().get(log).name(),
        String.format(
            Locale.ROOT,
            "in a cook like this one, what is not known of it leaves a time to target ± %.0f min;"
                + " with one more measurement: %s. The most would come from %s%s",
            now / 60,
            each,
            best.name(),
            ofCooker(best.after(estimate))));
  }

  /** Which number of the cooker a measurement would tell most of. */
  private String ofCooker(Measurement.Lesson lesson) {
    int most = -1;
    double least = 1;
    for (int p = 0; p < logs.parameters().size(); p++) {
      double left = lesson.spread(p) / estimate.spread(p);
      if (logs.parameters().get(p).owner() == Owner.COOKER && left < least) {
        most = p;
        least = left;
      }
    }
    return most < 0
        ? ""
        : String.format(
            Locale.ROOT,
            "; of the cooker it would tell of %s, and leave %.0f %% of its spread",
            ParameterWords.of(logs.parameters().get(most).id()),
            100 * least);
  }

  private static double[] at(double[][] derivatives, int row) {
    double[] at = new double[derivatives.length];
    for (int p = 0; p < at.length; p++) {
      at[p] = derivatives[p][row];
    }
    return at;
  }

  private double[][] part(double[][] derivatives, int from) {
    double[][] part = new double[derivatives.length][];
    for (int p = 0; p < part.length; p++) {
      part[p] = Arrays.copyOfRange(derivatives[p], from, from + times.length);
    }
    return part;
  }
}
