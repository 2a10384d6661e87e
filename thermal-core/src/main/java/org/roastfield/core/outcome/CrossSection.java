package org.roastfield.core.outcome;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.internal.Check;

/**
 * A quantity over the cross-section of a cut, straight between places, and its shares by volume.
 * Immutable.
 */
public final class CrossSection {

  private final double exponent;
  private final double[] positions;
  private final double[] values;

  /**
   * A quantity at places.
   *
   * @param exponent geometry exponent m: volume grows as distance to the power m + 1
   * @param positions distances from the middle [m], increasing, from 0 or, in a slab with two
   *     faces, from its lower face; copied
   * @param values as many, copied
   * @throws IllegalArgumentException if there are fewer than two, or places do not increase
   */
  public CrossSection(double exponent, double[] positions, double[] values) {
    this.exponent = Check.notNegative("exponent", exponent);
    Check.inRange("number of positions", positions.length, 2, Integer.MAX_VALUE);
    Check.inRange("number of values", values.length, positions.length, positions.length);
    if (exponent > 0) {
      Check.inRange("first position of a round cut", positions[0], 0, 0);
    }
    for (int i = 0; i < values.length; i++) {
      Check.finite("value", values[i]);
      if (i > 0) {
        Check.positive("distance between positions", positions[i] - positions[i - 1]);
      }
    }
    this.positions = positions.clone();
    this.values = values.clone();
  }

  /** Number of places. */
  public int size() {
    return positions.length;
  }

  /** Distance of a place from the middle [m]. */
  public double position(int i) {
    return positions[i];
  }

  /** Value at a place. */
  public double value(int i) {
    return values[i];
  }

  /**
   * Value at any place.
   *
   * @param position distance from the middle [m], between the first and the last
   */
  public double at(double position) {
    int last = positions.length - 1;
    double inside = Check.inRoundedRange("position", position, positions[0], positions[last]);
    int i = 1;
    while (i < last && positions[i] < inside) {
      i++;
    }
    double share = (inside - positions[i - 1]) / (positions[i] - positions[i - 1]);
    return values[i - 1] + share * (values[i] - values[i - 1]);
  }

  /** Another quantity, which follows from this one at each place. */
  public CrossSection map(DoubleUnaryOperator of) {
    return new CrossSection(exponent, positions, Arrays.stream(values).map(of).toArray());
  }

  /** Least value. */
  public double least() {
    double least = values[0];
    for (double value : values) {
      least = Math.min(least, value);
    }
    return least;
  }

  /** Share of the volume whose value is in [low, high), in [0, 1]. */
  public double share(double low, double high) {
    return shareBelow(high) - shareBelow(low);
  }

  /** Share of the volume whose value is below a limit, in [0, 1]. */
  public double shareBelow(double limit) {
    double sum = 0;
    for (int i = 1; i < positions.length; i++) {
      double a = values[i - 1];
      double b = values[i];
      double whole = volume(positions[i]) - volume(positions[i - 1]);
      if (a < limit && b < limit) {
        sum += whole;
      } else if (a < limit || b < limit) {
        double at = positions[i - 1] + (limit - a) / (b - a) * (positions[i] - positions[i - 1]);
        double inner = volume(at) - volume(positions[i - 1]);
        sum += a < limit ? inner : whole - inner;
      }
    }
    return sum / (volume(positions[positions.length - 1]) - volume(positions[0]));
  }

  /** Depth below the upper face, or the surface, within which all values exceed a limit [m]. */
  public double upperDepthAbove(double limit) {
    int last = positions.length - 1;
    for (int i = last; i >= 0; i--) {
      if (values[i] <= limit) {
        return positions[last] - (i == last ? positions[last] : crossing(i, i + 1, limit));
      }
    }
    return positions[last] - positions[0];
  }

  /** The same below the lower face of a slab with two faces; 0 in any other cut. */
  public double lowerDepthAbove(double limit) {
    if (positions[0] >= 0) {
      return 0;
    }
    for (int i = 0; i < positions.length; i++) {
      if (values[i] <= limit) {
        return (i == 0 ? positions[0] : crossing(i, i - 1, limit)) - positions[0];
      }
    }
    return positions[positions.length - 1] - positions[0];
  }

  private double crossing(int cold, int hot, double limit) {
    double share = (limit - values[cold]) / (values[hot] - values[cold]);
    return positions[cold] + share * (positions[hot] - positions[cold]);
  }

  /** Mean by volume, the values straight between places. */
  public double mean() {
    double sum = 0;
    double total = 0;
    for (int i = 1; i < positions.length; i++) {
      double from = volume(positions[i - 1]);
      double middle = volume(0.5 * (positions[i] + positions[i - 1]));
      double to = volume(positions[i]);
      sum += (middle - from) * (0.75 * values[i - 1] + 0.25 * values[i]);
      sum += (to - middle) * (0.25 * values[i - 1] + 0.75 * values[i]);
      total += to - from;
    }
    return sum / total;
  }

  /** Standard deviation by volume. */
  public double spread() {
    double mean = mean();
    double[] squares = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      squares[i] = (values[i] - mean) * (values[i] - mean);
    }
    return Math.sqrt(new CrossSection(exponent, positions, squares).mean());
  }

  private double volume(double position) {
    return exponent == 0 ? position : StrictMath.pow(position, exponent + 1);
  }
}
