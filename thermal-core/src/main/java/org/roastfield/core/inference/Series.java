package org.roastfield.core.inference;

import org.roastfield.core.internal.Check;

/** A logged trace: readings at times, and what is believed of its errors. Immutable. */
public final class Series {

  private final String name;
  private final double[] times;
  private final double[] values;
  private final ErrorModel errors;

  private Series(String name, double[] times, double[] values, ErrorModel errors) {
    this.name = name;
    this.times = times;
    this.values = values;
    this.errors = errors;
  }

  /**
   * Makes a series. Readings that are missing are simply not in it.
   *
   * @param name for messages
   * @param times strictly increasing [s], at least one
   * @param values finite, as many
   * @param errors medians of what is believed of the errors
   * @throws IllegalArgumentException if the arrays differ in length, are empty, times do not
   *     increase or a value is not finite
   */
  public static Series of(String name, double[] times, double[] values, ErrorModel errors) {
    Check.notBlank("name", name);
    if (times.length == 0 || times.length != values.length) {
      throw new IllegalArgumentException(
          "times and values of "
              + name
              + " must be as many and at least one, were "
              + times.length
              + " and "
              + values.length);
    }
    for (int k = 0; k < times.length; k++) {
      Check.finite("time " + k + " of " + name, times[k]);
      Check.finite("value " + k + " of " + name, values[k]);
      if (k > 0 && times[k] <= times[k - 1]) {
        throw new IllegalArgumentException(
            "times of "
                + name
                + " must increase, number "
                + k
                + " was "
                + times[k]
                + " after "
                + times[k - 1]);
      }
    }
    return new Series(name, times.clone(), values.clone(), errors);
  }

  /** Name for messages. */
  public String name() {
    return name;
  }

  /** How many readings. */
  public int size() {
    return times.length;
  }

  /** Time of a reading [s]. */
  public double time(int index) {
    return times[index];
  }

  /** Value of a reading. */
  public double value(int index) {
    return values[index];
  }

  /** Medians of what is believed of the errors. */
  public ErrorModel errors() {
    return errors;
  }

  /** Times; not copied. */
  double[] times() {
    return times;
  }
}
