package org.roastfield.lab.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.LogChannel;

/**
 * Fits a few numbers of a cook to the core of its log. The face dries and is fed by one law with
 * one set of defaults; the cook file's first stage gives air, walls, humidity, convection and
 * contact, the log its chamber if it has one.
 */
public final class Fit {

  private final CookFile file;
  private final LogChannel core;
  private final Signal air;
  private final double from;
  private final Simulator simulator;

  private Fit(CookFile file, LogChannel core, Signal air, double from, Simulator simulator) {
    this.file = file;
    this.core = core;
    this.air = air;
    this.from = from;
    this.simulator = simulator;
  }

  /**
   * Prepares a fit.
   *
   * @param from readings before are left out [s]
   * @param until readings after are left out [s]
   * @throws IllegalArgumentException if the log has fewer than two core readings between
   */
  public static Fit of(CookFile file, CookLog log, double from, double until, Simulator simulator) {
    LogChannel core =
        log.channel(CookLog.CORE)
            .orElseThrow(
                () -> new IllegalArgumentException(log.fileName() + " has no core channel to fit"))
            .until(until);
    int used = 0;
    for (int i = 0; i < core.size(); i++) {
      used += core.time(i) >= from ? 1 : 0;
    }
    if (used < 2) {
      throw new IllegalArgumentException(
          log.fileName() + " must have at least two core readings to fit, has " + used);
    }
    FaceSetup face = file.stages().get(0).upper();
    Signal air =
        log.channel(CookLog.CHAMBER)
            .map(channel -> Replay.signal(channel.until(until)))
            .orElse(Signal.constant(face.air()));
    return new Fit(file, core, air, from, simulator);
  }

  /**
   * What came of a fit.
   *
   * @param values of all parameters, fitted or given
   * @param errors of the core at the readings used
   * @param result the cook with those values
   */
  public record Fitted(
      Map<FitParameter, Double> values, ErrorSummary errors, SimulationResult result) {

    /** Copies the map. */
    public Fitted {
      values = Map.copyOf(values);
    }
  }

  /**
   * Fits.
   *
   * @param free parameters to fit, from their given values on; with none the cook is only compared
   * @param given values of parameters; those missing are neutral
   * @throws IllegalArgumentException if the cook cannot be computed with the values found
   */
  public Fitted fit(List<FitParameter> free, Map<FitParameter, Double> given) {
    int n = free.size();
    double[] start = new double[n];
    double[] step = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    for (int p = 0; p < n; p++) {
      FitParameter parameter = free.get(p);
      start[p] = given.getOrDefault(parameter, parameter.neutral());
      step[p] = parameter.step();
      low[p] = parameter.lowest();
      high[p] = parameter.highest();
    }
    double[] found =
        new LeastSquares(x -> residuals(values(free, x, given)), step, low, high).solve(start);
    Map<FitParameter, Double> values = values(free, found, given);
    Outcome outcome = simulator.run(cook(values));
    if (outcome instanceof Outcome.Failed failed) {
      throw new IllegalArgumentException(failed.message() + "; " + failed.advice());
    }
    SimulationResult result = outcome.orElseThrow();
    return new Fitted(values, ErrorSummary.of(pairs(result), core.missing()), result);
  }

  private static Map<FitParameter, Double> values(
      List<FitParameter> free, double[] x, Map<FitParameter, Double> given) {
    Map<FitParameter, Double> values = new EnumMap<>(FitParameter.class);
    for (FitParameter parameter : FitParameter.values()) {
      values.put(parameter, given.getOrDefault(parameter, parameter.neutral()));
    }
    for (int p = 0; p < x.length; p++) {
      values.put(free.get(p), x[p]);
    }
    return values;
  }

  /** Computed less measured; infinite for a cook that cannot be computed. */
  private double[] residuals(Map<FitParameter, Double> values) {
    Outcome outcome = simulator.run(cook(values));
    if (outcome instanceof Outcome.Failed) {
      double[] none = new double[core.size()];
      Arrays.fill(none, Double.POSITIVE_INFINITY);
      return none;
    }
    return pairs(outcome.orElseThrow()).stream().mapToDouble(Comparison::error).toArray();
  }

  private List<Comparison> pairs(SimulationResult result) {
    List<Comparison> pairs = new ArrayList<>();
    for (int i = 0; i < core.size(); i++) {
      if (core.time(i) >= from) {
        double computed = result.core().at(core.time(i));
        pairs.add(new Comparison(core.time(i), core.temperature(i), computed));
      }
    }
    return pairs;
  }

  /** The cook with given values of the parameters, until the last reading. */
  Cook cook(Map<FitParameter, Double> values) {
    Cut stated = file.cook().cut();
    double size = value(values, FitParameter.SIZE);
    double start = stated.startTemperature() + value(values, FitParameter.START);
    Cut cut = new Cut(scaled(stated.shape(), size), stated.material(), start);
    FaceSetup face = file.stages().get(0).upper();
    double drive = value(values, FitParameter.DRIVE);
    double convection = value(values, FitParameter.CONVECTION);
    SurfaceLaw law = face.dryingLaw(air, file.pressure(), drive, convection);
    double last = core.time(core.size() - 1);
    return Cook.of(cut, Stage.allRound("logged cook", law, StageEnd.after(last)));
  }

  private static double value(Map<FitParameter, Double> values, FitParameter parameter) {
    return values.getOrDefault(parameter, parameter.neutral());
  }

  private static Shape scaled(Shape shape, double factor) {
    double half = factor * shape.halfThickness();
    if (shape instanceof Cylinder) {
      return Cylinder.ofRadius(half);
    }
    if (shape instanceof Sphere) {
      return Sphere.ofRadius(half);
    }
    if (shape instanceof Slab) {
      return Slab.ofThickness(2 * half);
    }
    if (shape instanceof Compact piece) {
      return piece.scaled(factor);
    }
    throw new IllegalArgumentException("shape must be one that can be scaled, was " + shape);
  }
}
