package org.roastfield.core.inference;

import java.util.Arrays;
import java.util.Optional;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.internal.Check;

/**
 * What a probe in the air of a tended chamber showed, as evidence of what that air does by itself
 * and under an open lid: the numbers of {@link FireParameters#ofHabit}, eq. (95). Immutable.
 *
 * <p>The air strays from a level as an Ornstein-Uhlenbeck process; levels, one between any two
 * changes of the setting, are not known at all and integrated out. A density takes one pass over
 * the readings.
 */
public final class ChamberTrace {

  /** White part of the readings [K]: a display of half a kelvin and eddies; assumed. */
  public static final double NOISE = 0.5;

  /** Readings below which a trace says nothing of two moments of a drift. */
  public static final int LEAST_READINGS = 8;

  private final double[] times;
  private final double[] values;
  private final double[][] levels;
  private final double fall;
  private final Optional<Lid> lid;

  private ChamberTrace(
      double[] times, double[] values, double[][] levels, double fall, Optional<Lid> lid) {
    this.times = times;
    this.values = values;
    this.levels = levels;
    this.fall = fall;
    this.lid = lid;
  }

  /**
   * A trace.
   *
   * @param times strictly increasing [s], at least {@value #LEAST_READINGS}; not modified
   * @param values as many, in gas that is not on its way to another setting [K]; not modified
   * @param setting that the air was meant to be near [K]: under an open lid it falls by {@link
   *     FireParameters#LID_DEPTH} of what this is above {@link Lid#OPEN_AIR}
   * @param changes times at which the setting was changed, increasing [s]; not modified
   * @param lid openings, if any were noted
   * @throws IllegalArgumentException if there are too few readings, or not as many times as values
   */
  public static ChamberTrace of(
      double[] times, double[] values, double setting, double[] changes, Optional<Lid> lid) {
    Check.inRange("number of readings", times.length, LEAST_READINGS, Integer.MAX_VALUE);
    Series.of("chamber", times, values, errors(8, 2100));
    int n = times.length;
    double[][] levels = new double[changes.length + 1][n];
    for (int k = 0; k < n; k++) {
      levels[segment(changes, times[k])][k] = 1;
    }
    double[][] seen =
        Arrays.stream(levels).filter(row -> Arrays.stream(row).sum() > 0).toArray(double[][]::new);
    double fall = Math.max(0, Check.positive("setting", setting) - Lid.OPEN_AIR);
    return new ChamberTrace(times.clone(), values.clone(), seen, fall, lid);
  }

  private static int segment(double[] changes, double time) {
    int segment = 0;
    while (segment < changes.length && changes[segment] <= time) {
      segment++;
    }
    return segment;
  }

  private static ErrorModel errors(double deviation, double correlationTime) {
    return new ErrorModel(deviation, correlationTime, NOISE, 0);
  }

  /** Number of readings. */
  public int size() {
    return times.length;
  }

  /**
   * Minus the logarithm of the likelihood, levels integrated out, but for a constant, eq. (95).
   *
   * @param coordinates of {@link FireParameters#ofHabit}, in its order
   */
  double negativeLogLikelihood(double[] coordinates) {
    double[] habit = FireParameters.ofHabit().values(coordinates);
    int n = times.length;
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    Whitening whitening = new Whitening(times, errors(habit[0], habit[1]), ones);
    double[] white = new double[n];
    whitening.apply(closed(habit[2], habit[3]), 0, white, 0);
    double[][] columns = new double[levels.length][n];
    for (int s = 0; s < levels.length; s++) {
      whitening.apply(levels[s], 0, columns[s], 0);
    }
    double[][] normal = new double[levels.length][levels.length];
    double[] right = new double[levels.length];
    for (int a = 0; a < levels.length; a++) {
      right[a] = GaussNewton.product(columns[a], white);
      for (int b = 0; b < levels.length; b++) {
        normal[a][b] = GaussNewton.product(columns[a], columns[b]);
      }
    }
    Cholesky factor = Cholesky.of(normal);
    double[] taken = factor.whitened(right);
    return whitening.halfLogDeterminant()
        + factor.halfLogDeterminant()
        + 0.5 * (GaussNewton.product(white, white) - GaussNewton.product(taken, taken));
  }

  /** Readings as with the lid closed, less what is near their levels. */
  private double[] closed(double depth, double recovery) {
    double[] closed = new double[values.length];
    for (int k = 0; k < closed.length; k++) {
      double time = times[k];
      double fallen = lid.map(one -> one.fallen(time, recovery * Lid.RECOVERY)).orElse(0.0);
      closed[k] = values[k] + depth * fall * fallen - values[0];
    }
    return closed;
  }
}
