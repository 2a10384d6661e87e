package org.roastfield.core.parameter;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * Named numbers that a cook is made from: a point in the space of its parameters. Immutable, in the
 * order in which they were added.
 */
public final class ParameterPoint {

  private static final ParameterPoint EMPTY = new ParameterPoint(List.of());

  private final List<Coordinate> coordinates;

  private ParameterPoint(List<Coordinate> coordinates) {
    this.coordinates = List.copyOf(coordinates);
  }

  /**
   * One of the numbers.
   *
   * @param name unique in its point
   * @param value finite, in any unit
   * @param scale over which the cook's own numbers change smoothly, in the unit of the value,
   *     greater than 0; differences are taken over 2e-5 of it
   */
  public record Coordinate(String name, double value, double scale) {

    /**
     * @throws IllegalArgumentException if the name is blank, the value not finite or the scale not
     *     positive
     */
    public Coordinate {
      Check.notBlank("name", name);
      Check.finite("value", value);
      Check.positive("scale", scale);
    }
  }

  /** No parameters. */
  public static ParameterPoint empty() {
    return EMPTY;
  }

  /**
   * The same with one more parameter, whose scale is the size of its value.
   *
   * @param value finite and not 0
   * @throws IllegalArgumentException if the name is taken or blank, or the value 0 or not finite
   */
  public ParameterPoint with(String name, double value) {
    return with(name, value, Math.abs(value));
  }

  /**
   * The same with one more parameter.
   *
   * @param value finite
   * @param scale see {@link Coordinate}
   * @throws IllegalArgumentException if the name is taken or an argument outside its range
   */
  public ParameterPoint with(String name, double value, double scale) {
    if (coordinates.stream().anyMatch(c -> c.name().equals(name))) {
      throw new IllegalArgumentException("name must be unique, was \"" + name + "\"");
    }
    List<Coordinate> more = new ArrayList<>(coordinates);
    more.add(new Coordinate(name, value, scale));
    return new ParameterPoint(more);
  }

  /** How many parameters. */
  public int size() {
    return coordinates.size();
  }

  /** A parameter by its index from 0. */
  public Coordinate coordinate(int index) {
    return coordinates.get(Check.inRange("index", index, 0, size() - 1));
  }

  /**
   * Index of a parameter.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public int index(String name) {
    for (int i = 0; i < coordinates.size(); i++) {
      if (coordinates.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("name must be one of " + names() + ", was \"" + name + "\"");
  }

  /** Value by name. */
  public double value(String name) {
    return coordinates.get(index(name)).value();
  }

  /** The same point with another value of one parameter. */
  public ParameterPoint moved(int index, double value) {
    Coordinate old = coordinate(index);
    List<Coordinate> others = new ArrayList<>(coordinates);
    others.set(index, new Coordinate(old.name(), value, old.scale()));
    return new ParameterPoint(others);
  }

  private List<String> names() {
    return coordinates.stream().map(Coordinate::name).toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterPoint point && coordinates.equals(point.coordinates);
  }

  @Override
  public int hashCode() {
    return coordinates.hashCode();
  }

  @Override
  public String toString() {
    return coordinates.toString();
  }
}
