package org.roastfield.core.reference;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Robin heating of one body with constant properties, from {@code reference/rs1/linear.json}.
 *
 * @param mode shape
 * @param radiusMetres R, half thickness or radius
 * @param heatTransferCoefficient h [W/(m²·K)]
 * @param conductivity k [W/(m·K)]
 * @param volumetricHeatCapacity [J/(m³·K)]
 * @param ambientCelsius constant temperature of the surroundings
 * @param startCelsius uniform temperature at the start
 * @param roots first eigenvalues
 * @param arrivals when the centre reaches given temperatures
 * @param states temperatures at every full minute
 */
public record LinearReference(
    RadialMode mode,
    double radiusMetres,
    double heatTransferCoefficient,
    double conductivity,
    double volumetricHeatCapacity,
    double ambientCelsius,
    double startCelsius,
    List<Double> roots,
    List<Arrival> arrivals,
    List<State> states) {

  public LinearReference {
    roots = List.copyOf(roots);
    arrivals = List.copyOf(arrivals);
    states = List.copyOf(states);
  }

  /**
   * Time at which the centre reaches a temperature.
   *
   * @param centreCelsius temperature
   * @param seconds time from the start
   */
  public record Arrival(double centreCelsius, double seconds) {}

  /**
   * Temperatures at one time.
   *
   * @param seconds time from the start
   * @param centreCelsius r = 0
   * @param middleCelsius r = R / 2
   * @param surfaceCelsius r = R
   */
  public record State(
      double seconds, double centreCelsius, double middleCelsius, double surfaceCelsius) {}

  /** Reads the body of one shape. */
  public static LinearReference load(RadialMode mode) {
    JsonNode node = ReferenceFiles.json("/reference/rs1/linear.json").required(mode.shape());
    List<Double> roots = new ArrayList<>();
    node.required("first_roots").forEach(root -> roots.add(root.doubleValue()));
    return new LinearReference(
        mode,
        node.required("R").doubleValue(),
        node.required("h").doubleValue(),
        node.required("k").doubleValue(),
        node.required("rho").doubleValue() * node.required("cp").doubleValue(),
        node.required("Ta").doubleValue(),
        node.required("T0").doubleValue(),
        roots,
        arrivals(node.required("time_centre_reaches")),
        states(node.required("rows")));
  }

  /** Bi = h R / k. */
  public double biotNumber() {
    return heatTransferCoefficient * radiusMetres / conductivity;
  }

  /** Fo = α t / R². */
  public double fourierNumber(double seconds) {
    return conductivity * seconds / (volumetricHeatCapacity * radiusMetres * radiusMetres);
  }

  /** Temperature of which θ = (T − Ta) / (T0 − Ta) is given. */
  public double celsius(double theta) {
    return ambientCelsius + theta * (startCelsius - ambientCelsius);
  }

  private static List<Arrival> arrivals(JsonNode node) {
    List<Arrival> arrivals = new ArrayList<>();
    node.fieldNames()
        .forEachRemaining(
            celsius ->
                arrivals.add(
                    new Arrival(
                        Double.parseDouble(celsius), node.required(celsius).doubleValue())));
    return arrivals;
  }

  private static List<State> states(JsonNode rows) {
    List<State> states = new ArrayList<>();
    rows.forEach(
        row ->
            states.add(
                new State(
                    row.required(0).doubleValue(),
                    row.required(1).doubleValue(),
                    row.required(2).doubleValue(),
                    row.required(3).doubleValue())));
    return states;
  }
}
