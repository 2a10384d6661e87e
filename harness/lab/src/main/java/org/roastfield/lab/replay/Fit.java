package org.roastfield.lab.replay;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.StageSetup;

/**
 * Fits a few numbers of a cook to the core of its log. The face dries and is fed by one law with
 * one set of defaults; the cook file's first stage gives air, walls, humidity, convection and
 * contact, the log its chamber if it has one. What is compared is what the probe would show,
 * without the steps of its display while fitting.
 */
public final class Fit {

  /** How far above its freezing point a fitted cut starts at least [K]. */
  private static final double ABOVE_FREEZING = 0.1;

  private final LoggedCook logged;
  private final Simulator simulator;

  private Fit(LoggedCook logged, Simulator simulator) {
    this.logged = logged;
    this.simulator = simulator;
  }

  /**
   * Prepares a fit.
   *
   * @throws IllegalArgumentException if the log has fewer than two core readings between, or it is
   *     not clear which probe they are from
   */
  public static Fit of(CookFile file, CookLog log, ComparisonOptions options, Simulator simulator) {
    return new Fit(LoggedCook.ofFirstStage(file, log, options), simulator);
  }

  /**
   * What came of a fit.
   *
   * @param values of all parameters, fitted or given
   * @param compared the cook with those values beside the log
   * @param assumptions inputs that the log does not hold, in words, each with where it came from
   * @param result the cook with those values
   */
  public record Fitted(
      Map<FitParameter, Double> values,
      Compared compared,
      List<String> assumptions,
      SimulationResult result) {

    /** Copies map and list. */
    public Fitted {
      values = Map.copyOf(values);
      assumptions = List.copyOf(assumptions);
    }

    /** Summary of the errors of the core. */
    public ErrorSummary errors() {
      return compared.errors();
    }
  }

  /**
   * Fits.
   *
   * @param free parameters to fit, from their given values on; a size or convection without one
   *     from the best of a few. With none free the cook is only compared
   * @param given values of parameters; those missing are neutral
   * @throws IllegalArgumentException if a given value is out of its bounds, there are no more
   *     readings than numbers to fit, or the cook cannot be computed with the values found
   */
  public Fitted fit(List<FitParameter> free, Map<FitParameter, Double> given) {
    given.forEach(FitParameter::check);
    int n = free.size();
    if (logged.used() <= n) {
      throw new IllegalArgumentException(
          "core readings must be more than the numbers to fit, " + n + ", were " + logged.used());
    }
    double[] step = new double[n];
    double[] low = new double[n];
    double[] high = new double[n];
    for (int p = 0; p < n; p++) {
      FitParameter parameter = free.get(p);
      step[p] = parameter.step();
      low[p] = Math.max(parameter.lowest(), unfrozen(parameter));
      high[p] = parameter.highest();
    }
    BoundedSearch.Residuals residuals = x -> residuals(values(free, x, given));
    BoundedSearch search = new BoundedSearch(residuals, logged.used(), step, low, high);
    double[] found =
        new FirstGuesses(free, given)
            .best(residuals).stream()
                .map(search::solve)
                .min(Comparator.comparingDouble(x -> BoundedSearch.squares(residuals.at(x))))
                .orElseThrow();
    Map<FitParameter, Double> values = values(free, found, given);
    Outcome outcome = simulator.run(cook(values));
    if (outcome instanceof Outcome.Failed failed) {
      throw new IllegalArgumentException(failed.message() + "; " + failed.advice());
    }
    SimulationResult result = outcome.orElseThrow();
    double size = value(values, FitParameter.SIZE);
    Readout readout = logged.readout();
    Compared compared = logged.compared(result, size, readout.scaled(size), readout.words());
    return new Fitted(
        values, compared, Assumptions.ofFit(logged, logged.file().cook().cut()), result);
  }

  /** Start temperatures at which the cut would be frozen are none. */
  private double unfrozen(FitParameter parameter) {
    Cut stated = logged.file().cook().cut();
    return parameter == FitParameter.START
        ? stated.material().freezingPoint() + ABOVE_FREEZING - stated.startTemperature()
        : Double.NEGATIVE_INFINITY;
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
      double[] none = new double[logged.used()];
      Arrays.fill(none, Double.POSITIVE_INFINITY);
      return none;
    }
    Readout readout = logged.readout().smooth().scaled(value(values, FitParameter.SIZE));
    return logged.pairs(outcome.orElseThrow(), readout).stream()
        .mapToDouble(Comparison::error)
        .toArray();
  }

  /** The cook with given values of the parameters, until the last reading. */
  Cook cook(Map<FitParameter, Double> values) {
    CookFile file = logged.file();
    Cut stated = file.cook().cut();
    double size = value(values, FitParameter.SIZE);
    double start = stated.startTemperature() + value(values, FitParameter.START);
    Cut cut = new Cut(stated.shape().scaled(size), stated.material(), start);
    StageSetup first = file.stages().get(0);
    SurfaceLaw upper = law(first.upper(), values);
    SurfaceLaw lower = first.lower().equals(first.upper()) ? upper : law(first.lower(), values);
    StageEnd end = StageEnd.after(logged.end());
    return Cook.of(cut, new Stage("logged cook", upper, lower, end));
  }

  private SurfaceLaw law(FaceSetup face, Map<FitParameter, Double> values) {
    SurfaceLaw stated =
        face.dryingLaw(
            logged.air(face.air()),
            logged.file().pressure(),
            value(values, FitParameter.DRIVE),
            value(values, FitParameter.CONVECTION));
    return stated.scaled(value(values, FitParameter.SIZE));
  }

  private static double value(Map<FitParameter, Double> values, FitParameter parameter) {
    return values.getOrDefault(parameter, parameter.neutral());
  }
}
