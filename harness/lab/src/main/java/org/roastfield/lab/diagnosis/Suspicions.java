package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.inference.AddedTerm;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.Explanation;
import org.roastfield.core.inference.FirstOrder;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogPackage;

/** Everything that may be wrong with one log of a calibration. */
final class Suspicions {

  /** Beliefs about a cut or probe that is not as stated: assumed. */
  private static final String ASSUMED = "assumed: not as stated";

  private static final Parameter ANY_SIZE =
      Parameter.multiplier("size", Owner.CUT, 0.3, 0.4, 2.5, ASSUMED);

  /** How far the weight of another cut is from that of its thickness and the stated length. */
  private static final double ANY_LENGTH = 0.5;

  private static final Parameter ANY_DIFFUSIVITY =
      Parameter.multiplier("diffusivity", Owner.CUT, 0.15, 0.5, 2, ASSUMED);
  private static final Parameter SLIP =
      Parameter.offset("slip", "1", Owner.PROBE, 1, -4, 4, ASSUMED);
  private static final Parameter OPENING =
      new Parameter("opening", "1", Owner.COOKER, Scale.PLAIN, 1, 1, 0, 8, ASSUMED);

  /** How far a probe that slipped moves, for a multiplier of 1 [m]. */
  static final double SLIPPED = 0.010;

  /** Share of long openings that a chamber's probe does not show: assumed. */
  private static final double UNSEEN = 0.3;

  /** Places in the log at which a slip and an opening are tried. */
  private static final int SLIPS = 40;

  private static final int OPENINGS = 14;

  private final CookerLogs logs;
  private final FirstOrder around;
  private final Calibration calibration;
  private final MapEstimate estimate;
  private final Simulator simulator;
  private final int log;
  private final String name;
  private final List<Suspicion> found = new ArrayList<>();

  Suspicions(CookerLogs logs, FirstOrder around, Simulator simulator, int log) {
    this.logs = logs;
    this.around = around;
    calibration = around.calibration();
    estimate = around.estimate();
    this.simulator = simulator;
    this.log = log;
    name = logs.cases().get(log).name();
  }

  /**
   * All that can be tried.
   *
   * @param written the package of the log
   * @param probe that the core readings are from, if the file leaves that open
   */
  List<Suspicion> all(LogPackage written, LogSpan span, Optional<String> probe) {
    size();
    probePlaces();
    if (hasCourse(logs.cases().get(log))) {
      slips();
      openings(written, span, probe);
    }
    otherCut();
    return List.copyOf(found);
  }

  /** Whether a log has readings of the cut at two times at least, between which things happen. */
  static boolean hasCourse(LoggedCase log) {
    return log.traces().stream()
        .map(trace -> trace.readings())
        .anyMatch(series -> series.time(series.size() - 1) > series.time(0));
  }

  private Rework rework() {
    return new Rework(logs, calibration.prior(), estimate, simulator, log);
  }

  private String id(String own) {
    return own + "/" + name;
  }

  private void size() {
    widened(Suspect.SIZE, ANY_SIZE);
  }

  /** Each probe of the log, anywhere in the cut. */
  private void probePlaces() {
    double half = half();
    for (Parameter place : probes()) {
      boolean middle = place.median() > 0;
      double far = 0.9 * half;
      widened(
          Suspect.PROBE_PLACE,
          middle
              ? new Parameter(
                  place.id(), "m", Owner.PROBE, Scale.PLAIN, far / 3, far / 3, 0, far, ASSUMED)
              : Parameter.offset(
                  place.id(), "m", Owner.PROBE, 0.015, 2 * place.low(), 2 * place.high(), ASSUMED));
    }
  }

  private double half() {
    return shape().halfThickness();
  }

  private Shape shape() {
    return logs.cases().get(log).cook().file().cook().cut().shape();
  }

  private List<Parameter> probes() {
    String offset = CookParameters.PROBE_OFFSET.id();
    return logs.cases().get(log).parameters().list().stream()
        .filter(one -> one.id().equals(offset) || one.id().startsWith(offset + "."))
        .toList();
  }

  private void widened(Suspect suspect, Parameter wide) {
    Rework rework = rework().with(wide);
    Explanation explanation =
        new Explanation(
            suspect + " " + id(wide.id()), suspect.odds(), rework.calibration(), rework.start());
    found.add(
        new Suspicion(
            name, suspect, Double.NaN, promise(suspect, wide), explanation, id(wide.id())));
  }

  /** A wider prior is a term more along the same column. */
  private double promise(Suspect suspect, Parameter wide) {
    boolean free = calibration.prior().parameters().has(id(wide.id()));
    double step = 0.1 * wide.spread();
    Optional<double[]> change =
        rework().with(wide).change(Map.of(wide.id(), free ? step : wide.centre() + step));
    int at = free ? calibration.prior().parameters().index(id(wide.id())) : -1;
    double before = free ? calibration.prior().mean()[at] : neutral(wide);
    double known = free ? calibration.prior().spread(at) : 0;
    double more = Math.sqrt(Math.max(0, wide.spread() * wide.spread() - known * known));
    if (change.isEmpty() || more == 0) {
      return Double.NaN;
    }
    double[] column = change.get();
    for (int i = 0; i < column.length; i++) {
      column[i] /= step;
    }
    double median = wide.centre() - before;
    Parameter term =
        new Parameter(
            "more",
            wide.unit(),
            wide.owner(),
            Scale.PLAIN,
            median,
            more,
            median - 100 * more,
            median + 100 * more,
            ASSUMED);
    return StrictMath.log(suspect.odds()) + AddedTerm.of(term, column).promise(around).gain();
  }

  private static double neutral(Parameter wide) {
    return wide.scale().coordinate(wide.scale() == Scale.LOGARITHM ? 1 : 0);
  }

  /** The core's probe, from one of several times on as far out as its multiple says. */
  private void slips() {
    if (probes().isEmpty()) {
      return;
    }
    Parameter place = probes().get(0);
    LogPlace rows = LogPlace.of(logs, log);
    Optional<double[]> out = rework().with(place).change(Map.of(place.id(), SLIPPED));
    if (out.isEmpty()) {
      return;
    }
    double first = rows.times().get(0);
    double last = rows.times().get(rows.times().size() - 1);
    Scan scan = new Scan(around);
    for (int i = 1; i < SLIPS; i++) {
      double time = first + i * (last - first) / SLIPS;
      scan.add(time, AddedTerm.of(SLIP, rows.from(time, out.get())));
    }
    add(Suspect.PROBE_SLIPPED, 1, scan, SLIP.id());
  }

  private void openings(LogPackage written, LogSpan span, Optional<String> probe) {
    LogPlace rows = LogPlace.of(logs, log);
    double first = rows.times().get(0);
    double last = rows.times().get(rows.times().size() - 1);
    Scan scan = new Scan(around);
    for (int i = 0; i < OPENINGS; i++) {
      double time = first + (i + 0.5) * (last - first) / OPENINGS;
      VariedCook opened =
          OpenLid.cook(logs.cases().get(log).cook().file(), written, span, probe, time);
      rework()
          .cooking(opened)
          .change(Map.of())
          .ifPresent(column -> scan.add(time, AddedTerm.of(OPENING, column)));
    }
    boolean logged =
        written.readings().channel(CookLog.CHAMBER).filter(one -> one.size() > 0).isPresent();
    add(Suspect.LID_OPEN, logged ? UNSEEN : 1, scan, OPENING.id());
  }

  private double hours() {
    List<Double> times = LogPlace.of(logs, log).times();
    return (times.get(times.size() - 1) - times.get(0)) / 3600;
  }

  private void add(Suspect suspect, double seen, Scan scan, String id) {
    scan.best()
        .ifPresent(
            best -> {
              double odds = suspect.odds() * hours() * seen * scan.share();
              found.add(
                  new Suspicion(
                      name,
                      suspect,
                      best.time(),
                      StrictMath.log(odds) + best.promise().gain(),
                      new Explanation(
                          suspect + " " + name,
                          odds,
                          best.term().addedTo(calibration),
                          started(best)),
                      id));
            });
  }

  private List<Double> started(Scan.Tried best) {
    List<Double> start = new ArrayList<>();
    for (double each : estimate.coordinates()) {
      start.add(each);
    }
    Parameter term = best.term().parameter();
    start.add(Math.max(term.low(), Math.min(term.high(), best.promise().value())));
    return start;
  }

  private void otherCut() {
    Parameter start =
        logs.cases()
            .get(log)
            .cook()
            .parameters()
            .get(logs.cases().get(log).cook().parameters().index("start"));
    Parameter anyStart =
        Parameter.offset("start", "K", Owner.CUT, 6, Math.max(-15, start.low()), 25, ASSUMED);
    List<UnaryOperator<Cook>> shapes = OtherShape.all(shape());
    for (int i = 0; i < shapes.size(); i++) {
      UnaryOperator<Cook> shape = shapes.get(i);
      Rework rework =
          rework()
              .with(ANY_SIZE)
              .with(ANY_DIFFUSIVITY)
              .with(anyStart)
              .weighing(ANY_LENGTH)
              .cooking(point -> shape.apply(logs.observed().get(log).cooks().apply(point)));
      Explanation explanation =
          new Explanation(
              Suspect.OTHER_CUT + " " + i + " " + name,
              Suspect.OTHER_CUT.odds() / shapes.size(),
              rework.calibration(),
              rework.start());
      found.add(
          new Suspicion(name, Suspect.OTHER_CUT, Double.NaN, Double.NaN, explanation, id("size")));
    }
  }
}
