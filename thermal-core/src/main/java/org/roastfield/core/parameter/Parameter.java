package org.roastfield.core.parameter;

import org.roastfield.core.internal.Check;

/**
 * One unknown number and its prior: normal on a scale, and cut off at bounds. Immutable.
 *
 * @param id unique in its set, such as {@code convection}
 * @param unit UCUM code of the value, {@code 1} for a multiplier
 * @param owner what it belongs to
 * @param scale on which the prior is normal
 * @param median of the prior before the bounds cut it [unit]
 * @param spread standard deviation of the prior on the scale, greater than 0: on a logarithm about
 *     the relative one
 * @param low lower bound [unit], below the median
 * @param high upper bound [unit], above the median
 * @param source where the prior comes from
 */
public record Parameter(
    String id,
    String unit,
    Owner owner,
    Scale scale,
    double median,
    double spread,
    double low,
    double high,
    String source) {

  /**
   * @throws IllegalArgumentException if a name is blank, the spread not positive, the bounds not
   *     around the median, or a number on a logarithm not positive
   */
  public Parameter {
    Check.notBlank("id", id);
    Check.notBlank("unit", unit);
    Check.notBlank("source", source);
    Check.finite("median", median);
    Check.positive("spread", spread);
    if (scale == Scale.LOGARITHM) {
      Check.positive("low", low);
    }
    if (!(low < median && median < high)) {
      throw new IllegalArgumentException(
          "low and high of "
              + id
              + " must lie around the median "
              + median
              + ", were "
              + low
              + " and "
              + high);
    }
  }

  /** A multiplier with median 1. */
  public static Parameter multiplier(
      String id, Owner owner, double spread, double low, double high, String source) {
    return new Parameter(id, "1", owner, Scale.LOGARITHM, 1, spread, low, high, source);
  }

  /** An offset with median 0. */
  public static Parameter offset(
      String id, String unit, Owner owner, double spread, double low, double high, String source) {
    return new Parameter(id, unit, owner, Scale.PLAIN, 0, spread, low, high, source);
  }

  /** The same under another id. */
  public Parameter called(String other) {
    return new Parameter(other, unit, owner, scale, median, spread, low, high, source);
  }

  /** Median of the prior as a coordinate on the scale. */
  public double centre() {
    return scale.coordinate(median);
  }

  /** Lower bound as a coordinate on the scale. */
  public double lowest() {
    return scale.coordinate(low);
  }

  /** Upper bound as a coordinate on the scale. */
  public double highest() {
    return scale.coordinate(high);
  }
}
