package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.Sensitivities;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;

/**
 * What computed cooks say of everything that was measured of them, over the coordinates of all
 * their parameters. Immutable; one model serves any number of threads.
 *
 * <p>Derivatives are those of the kernel: what is read is read from the result moved a little to
 * each side along them, to one side where a bound is nearer than that. So a reading through a stem
 * that lags, a weight or a highest core needs no derivative of its own, and no cook is computed but
 * the one at the point. A parameter that moves probes alone moves nothing else.
 */
public final class CookModel implements ForwardModel {

  /** Half the difference over a parameter's spread: the moved result is linear in it. */
  private static final double DIFFERENCE = 1e-3;

  private final ParameterSet parameters;
  private final List<ObservedCook> cooks;
  private final Simulator simulator;
  private final Evidence evidence;
  private final int[][] places;

  private CookModel(
      ParameterSet parameters, List<ObservedCook> cooks, Simulator simulator, Evidence evidence) {
    this.parameters = parameters;
    this.cooks = cooks;
    this.simulator = simulator;
    this.evidence = evidence;
    this.places =
        cooks.stream()
            .map(cook -> cook.ids().stream().mapToInt(parameters::index).toArray())
            .toArray(int[][]::new);
  }

  /**
   * Model of cooks.
   *
   * @param parameters of the calibration, among them all that the cooks have
   * @param cooks at least one
   * @param simulator computes them
   * @throws IllegalArgumentException if a cook has a parameter that is not there, or there is none
   */
  public static CookModel of(
      ParameterSet parameters, List<ObservedCook> cooks, Simulator simulator) {
    List<Series> series = new ArrayList<>();
    List<SingleReading> singles = new ArrayList<>();
    for (ObservedCook cook : cooks) {
      cook.traces().forEach(trace -> series.add(trace.readings()));
      cook.numbers().forEach(number -> singles.add(number.reading()));
    }
    return new CookModel(parameters, List.copyOf(cooks), simulator, new Evidence(series, singles));
  }

  /** Everything that was measured: the traces of all cooks, then the numbers of all cooks. */
  public Evidence evidence() {
    return evidence;
  }

  /** The parameters of the calibration. */
  public ParameterSet parameters() {
    return parameters;
  }

  /** The cooks. */
  public List<ObservedCook> cooks() {
    return cooks;
  }

  /** The own point of a cook at coordinates of all parameters. */
  public ParameterPoint point(int cook, double[] coordinates) {
    ParameterPoint point = ParameterPoint.empty();
    for (int own = 0; own < places[cook].length; own++) {
      Parameter parameter = parameters.get(places[cook][own]);
      double value = parameter.scale().value(coordinates[places[cook][own]]);
      double scale =
          switch (parameter.scale()) {
            case LOGARITHM -> value;
            case PLAIN -> parameter.spread();
          };
      point = point.with(cooks.get(cook).own().get(own), value, scale);
    }
    return point;
  }

  /**
   * A cook at coordinates of all parameters, computed.
   *
   * @throws IllegalArgumentException if it cannot be built
   */
  public Outcome run(int cook, double[] coordinates) {
    return simulator.run(cooks.get(cook).cooks().apply(point(cook, coordinates)));
  }

  @Override
  public boolean at(double[] coordinates, double[] predicted, double @Nullable [][] derivatives) {
    if (derivatives != null) {
      for (double[] row : derivatives) {
        Arrays.fill(row, 0);
      }
    }
    int trace = 0;
    int number = evidence.size() - evidence.singles().size();
    for (int c = 0; c < cooks.size(); c++) {
      ObservedCook cook = cooks.get(c);
      Rows rows = new Rows(cook, trace, number);
      if (!at(c, rows, coordinates, predicted, derivatives)) {
        return false;
      }
      trace += rows.readings;
      number += cook.numbers().size();
    }
    return true;
  }

  private boolean at(
      int cook,
      Rows rows,
      double[] coordinates,
      double[] predicted,
      double @Nullable [][] derivatives) {
    Cook built = built(cook, coordinates);
    if (built == null) {
      return false;
    }
    if (derivatives == null) {
      Outcome outcome = simulator.run(built);
      if (outcome instanceof Outcome.Completed completed) {
        rows.read(built, completed.result(), predicted);
      }
      return outcome instanceof Outcome.Completed;
    }
    Sensitivities around =
        simulator.sensitivities(point(cook, coordinates), cooks.get(cook).cooks());
    if (!(around.outcome() instanceof Outcome.Completed)) {
      return false;
    }
    rows.read(built, around.result(), predicted);
    for (int own = 0; own < places[cook].length; own++) {
      differentiate(cook, own, rows, coordinates, around, derivatives[places[cook][own]]);
    }
    return true;
  }

  private void differentiate(
      int cook, int own, Rows rows, double[] coordinates, Sensitivities around, double[] out) {
    int place = places[cook][own];
    Parameter parameter = parameters.get(place);
    double half = DIFFERENCE * parameter.spread();
    double at = coordinates[place];
    double high = at + half <= parameter.highest() ? at + half : at;
    double low = at - half >= parameter.lowest() ? at - half : at;
    double[] below = new double[out.length];
    read(cook, own, rows, coordinates, high, around, out);
    read(cook, own, rows, coordinates, low, around, below);
    rows.subtract(below, high - low, out);
  }

  private void read(
      int cook,
      int own,
      Rows rows,
      double[] coordinates,
      double to,
      Sensitivities around,
      double[] out) {
    int place = places[cook][own];
    Parameter parameter = parameters.get(place);
    double amount = parameter.scale().value(to) - parameter.scale().value(coordinates[place]);
    ParameterPoint point = point(cook, moved(coordinates, place, to));
    Cook built = cooks.get(cook).cooks().apply(point);
    rows.read(built, around.moved(own, amount, built), out);
  }

  private @Nullable Cook built(int cook, double[] coordinates) {
    try {
      return cooks.get(cook).cooks().apply(point(cook, coordinates));
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  private static double[] moved(double[] coordinates, int place, double value) {
    double[] moved = coordinates.clone();
    moved[place] = value;
    return moved;
  }

  static Probe probe(Cook cook, String name) {
    if (name.equals(Probe.CORE.name())) {
      return Probe.CORE;
    }
    if (name.equals(Probe.SURFACE.name())) {
      return Probe.SURFACE;
    }
    for (Probe probe : cook.probes()) {
      if (probe.name().equals(name)) {
        return probe;
      }
    }
    throw new IllegalStateException("probe must be one of the cook's, was " + name);
  }

  /** Where the numbers of one cook stand among all of them. */
  private static final class Rows {

    private final ObservedCook cook;
    private final int firstReading;
    private final int firstNumber;
    private final int readings;

    Rows(ObservedCook cook, int firstReading, int firstNumber) {
      this.cook = cook;
      this.firstReading = firstReading;
      this.firstNumber = firstNumber;
      this.readings = cook.traces().stream().mapToInt(trace -> trace.readings().size()).sum();
    }

    void read(Cook built, SimulationResult result, double[] out) {
      int row = firstReading;
      for (ObservedTrace trace : cook.traces()) {
        ProbeTrace shown = result.shownBy(probe(built, trace.probe()), trace.air());
        Series series = trace.readings();
        for (int k = 0; k < series.size(); k++) {
          out[row++] = shown.at(series.time(k));
        }
      }
      row = firstNumber;
      for (ObservedNumber number : cook.numbers()) {
        out[row++] = number.computed().applyAsDouble(built, result);
      }
    }

    void subtract(double[] below, double over, double[] out) {
      for (int i = firstReading; i < firstReading + readings; i++) {
        out[i] = (out[i] - below[i]) / over;
      }
      for (int i = firstNumber; i < firstNumber + cook.numbers().size(); i++) {
        out[i] = (out[i] - below[i]) / over;
      }
    }
  }
}
