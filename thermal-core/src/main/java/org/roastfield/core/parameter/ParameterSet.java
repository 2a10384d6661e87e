package org.roastfield.core.parameter;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;

/** Parameters in the order in which they were added. Immutable. */
public final class ParameterSet {

  private static final ParameterSet EMPTY = new ParameterSet(List.of());

  private final List<Parameter> parameters;
  private final Names ids;

  private ParameterSet(List<Parameter> parameters) {
    this.parameters = List.copyOf(parameters);
    this.ids = new Names("id", parameters.stream().map(Parameter::id).toList());
  }

  /** No parameters. */
  public static ParameterSet empty() {
    return EMPTY;
  }

  /**
   * Parameters in a given order.
   *
   * @throws IllegalArgumentException if two have one id
   */
  public static ParameterSet of(Parameter... parameters) {
    return new ParameterSet(List.of(parameters));
  }

  /**
   * The same with one more.
   *
   * @throws IllegalArgumentException if its id is taken
   */
  public ParameterSet with(Parameter parameter) {
    List<Parameter> more = new ArrayList<>(parameters);
    more.add(parameter);
    return new ParameterSet(more);
  }

  /**
   * The same without one.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  public ParameterSet without(String id) {
    List<Parameter> fewer = new ArrayList<>(parameters);
    fewer.remove(index(id));
    return new ParameterSet(fewer);
  }

  /** Those of one owner, in order. */
  public ParameterSet of(Owner owner) {
    return new ParameterSet(parameters.stream().filter(p -> p.owner() == owner).toList());
  }

  /** How many. */
  public int size() {
    return parameters.size();
  }

  /** One by its index from 0. */
  public Parameter get(int index) {
    return parameters.get(Check.inRange("index", index, 0, size() - 1));
  }

  /** All of them. */
  public List<Parameter> list() {
    return parameters;
  }

  /** Whether there is one of that id. */
  public boolean has(String id) {
    return ids.has(id);
  }

  /**
   * Index of one from 0.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  public int index(String id) {
    return ids.index("id", id);
  }

  /** Medians of the priors as coordinates. */
  public double[] centre() {
    return parameters.stream().mapToDouble(Parameter::centre).toArray();
  }

  /** Values at coordinates. */
  public double[] values(double[] coordinates) {
    double[] values = new double[size()];
    for (int p = 0; p < values.length; p++) {
      values[p] = get(p).scale().value(coordinates[p]);
    }
    return values;
  }

  /**
   * The point at coordinates: its names are the ids, its scales the spreads of the parameters, in
   * the units of the values.
   */
  public ParameterPoint point(double[] coordinates) {
    double[] values = values(coordinates);
    double[] scales = new double[size()];
    for (int p = 0; p < scales.length; p++) {
      Parameter parameter = get(p);
      boolean relative = parameter.scale() == Scale.LOGARITHM;
      Check.finite(parameter.id(), values[p]);
      scales[p] = parameter.spread() * (relative ? values[p] : 1);
    }
    return new ParameterPoint(ids, values, scales);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterSet set && parameters.equals(set.parameters);
  }

  @Override
  public int hashCode() {
    return parameters.hashCode();
  }

  @Override
  public String toString() {
    return parameters.stream().map(Parameter::id).toList().toString();
  }
}
