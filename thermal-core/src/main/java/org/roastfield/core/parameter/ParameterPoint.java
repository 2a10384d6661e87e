package org.roastfield.core.parameter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * Named numbers that a cook is made from: a point in the space of its parameters. Immutable, in the
 * order in which they were added.
 */
public final class ParameterPoint {

  private static final ParameterPoint EMPTY =
      new ParameterPoint(new Names("name", List.of()), new double[0], new double[0]);

  private final Names names;
  private final double[] values;
  private final double[] scales;

  /** Of checked numbers, which become its own. */
  ParameterPoint(Names names, double[] values, double[] scales) {
    this.names = names;
    this.values = values;
    this.scales = scales;
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
    Coordinate added = new Coordinate(name, value, scale);
    List<String> more = new ArrayList<>(names.list());
    more.add(added.name());
    double[] moreValues = Arrays.copyOf(values, size() + 1);
    double[] moreScales = Arrays.copyOf(scales, size() + 1);
    moreValues[size()] = value;
    moreScales[size()] = scale;
    return new ParameterPoint(new Names("name", more), moreValues, moreScales);
  }

  /** How many parameters. */
  public int size() {
    return values.length;
  }

  /** A parameter by its index from 0. */
  public Coordinate coordinate(int index) {
    int i = Check.inRange("index", index, 0, size() - 1);
    return new Coordinate(names.list().get(i), values[i], scales[i]);
  }

  /**
   * Index of a parameter.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public int index(String name) {
    return names.index("name", name);
  }

  /** Whether there is a parameter of that name. */
  public boolean has(String name) {
    return names.has(name);
  }

  /** Value by name. */
  public double value(String name) {
    return values[index(name)];
  }

  /** The same point with another value of one parameter. */
  public ParameterPoint moved(int index, double value) {
    double[] moved = values.clone();
    moved[Check.inRange("index", index, 0, size() - 1)] = Check.finite("value", value);
    return new ParameterPoint(names, moved, scales);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterPoint point
        && names.list().equals(point.names.list())
        && Arrays.equals(values, point.values)
        && Arrays.equals(scales, point.scales);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * names.list().hashCode() + Arrays.hashCode(values)) + Arrays.hashCode(scales);
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < size(); i++) {
      text.append(i == 0 ? "" : ", ").append(coordinate(i));
    }
    return text.insert(0, '[').append(']').toString();
  }
}
