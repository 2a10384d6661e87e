package org.roastfield.lab.score;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a forecast says of one number before it is known: its distribution, of steps at draws or of
 * straight lines between quantiles. Immutable.
 */
public final class Predictive {

  /** Share by which sums of weights and differences of levels may miss a probability. */
  private static final double ROUNDING = 1e-12;

  private final double[] values;
  private final double[] before;
  private final double[] upTo;
  private final double least;
  private final double most;

  /**
   * @param values where the distribution bends or steps, increasing
   * @param before probability of less than each value
   * @param upTo probability of at most each value; from there straight to {@code before} of the
   *     next
   * @param least least probability whose quantile is known; where below it lies is not
   * @param most greatest such probability
   */
  private Predictive(double[] values, double[] before, double[] upTo, double least, double most) {
    this.values = values;
    this.before = before;
    this.upTo = upTo;
    this.least = least;
    this.most = most;
  }

  /**
   * Distribution of draws of equal weight, see {@link #ofDraws(double[], double[])}.
   *
   * @param draws at least one; not modified
   */
  public static Predictive ofDraws(double[] draws) {
    double[] weights = new double[draws.length];
    Arrays.fill(weights, 1);
    return ofDraws(draws, weights);
  }

  /**
   * Distribution of weighted draws. It is a sample: with n draws of equal weight its CRPS is larger
   * than that of what they were drawn from, by half the mean distance of two draws over n.
   *
   * @param draws finite, or +∞ for one that never gets there; at least one; not modified
   * @param weights as many, at least 0, finite, not all 0; any sum; not modified
   * @throws IllegalArgumentException if they are not
   */
  public static Predictive ofDraws(double[] draws, double[] weights) {
    Check.atLeast("draws", draws.length, 1);
    Check.sameLength("weights", weights.length, "draws", draws.length);
    double sum = 0;
    for (int i = 0; i < draws.length; i++) {
      Check.inRange("draws", draws[i], -Double.MAX_VALUE, Double.POSITIVE_INFINITY);
      sum += Check.notNegative("weights", weights[i]);
    }
    Check.inside("sum of weights", sum, 0, Double.POSITIVE_INFINITY);
    int[] order =
        IntStream.range(0, draws.length)
            .filter(i -> weights[i] > 0)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> draws[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    Knots knots = new Knots(order.length);
    double reached = 0;
    for (int i : order) {
      double next = reached + weights[i];
      knots.add(draws[i], reached / sum, next / sum);
      reached = next;
    }
    knots.upTo[knots.count - 1] = 1;
    return knots.between(0, 1);
  }

  /**
   * Distribution of which quantiles are known: straight between them. What lies beyond the
   * outermost two counts as lying at them in the CRPS, which takes it for no more than was said;
   * there is no quantile to be had from there.
   *
   * @param probabilities in (0, 1), increasing, at least one; not modified
   * @param quantiles as many, finite, nowhere falling; not modified
   * @throws IllegalArgumentException if they are not
   */
  public static Predictive ofQuantiles(double[] probabilities, double[] quantiles) {
    int n = Check.atLeast("probabilities", probabilities.length, 1);
    Check.sameLength("quantiles", quantiles.length, "probabilities", n);
    Knots knots = new Knots(n);
    for (int i = 0; i < n; i++) {
      Check.inside("probabilities", probabilities[i], i == 0 ? 0 : probabilities[i - 1], 1);
      Check.finite("quantiles", quantiles[i]);
      Check.inRange(
          "quantiles", quantiles[i], i == 0 ? quantiles[0] : quantiles[i - 1], Double.MAX_VALUE);
      knots.add(quantiles[i], probabilities[i], probabilities[i]);
    }
    knots.before[0] = 0;
    knots.upTo[knots.count - 1] = 1;
    return knots.between(probabilities[0], probabilities[n - 1]);
  }

  /** A forecast that names one number and no doubt; its CRPS is its absolute error. */
  public static Predictive ofPoint(double value) {
    Check.finite("value", value);
    return ofDraws(new double[] {value});
  }

  /**
   * Least value that is not passed with a probability.
   *
   * @param probability in [0, 1]; of known quantiles between the least and the greatest of these
   * @return that value; +∞ if it is among the draws that never get there
   */
  public double quantile(double probability) {
    Check.inRange("probability", probability, least - ROUNDING, most + ROUNDING);
    int k = 0;
    while (upTo[k] < probability - ROUNDING) {
      k++;
    }
    if (k == 0 || before[k] <= probability + ROUNDING) {
      return values[k];
    }
    double share = (probability - upTo[k - 1]) / (before[k] - upTo[k - 1]);
    return values[k - 1] + share * (values[k] - values[k - 1]);
  }

  /** Quantile of one half. */
  public double median() {
    return quantile(0.5);
  }

  /**
   * Central interval: from the quantile of (1 − level)/2 to that of (1 + level)/2.
   *
   * @param level in (0, 1)
   * @throws IllegalArgumentException if one of them is not known or +∞
   */
  public Interval interval(double level) {
    Check.inside("level", level, 0, 1);
    return new Interval(level, quantile((1 - level) / 2), quantile((1 + level) / 2));
  }

  /**
   * Continuous ranked probability score E|X − y| − E|X − X′|/2, computed as the integral of (F −
   * 1{x ≥ y})², which has no difference of large numbers [GneitingRaftery2007].
   *
   * @param outcome y, finite
   * @return in the unit of the outcome
   * @throws IllegalStateException if draws never get there; censor the forecast first
   */
  public double crps(double outcome) {
    Check.finite("outcome", outcome);
    int last = values.length - 1;
    if (values[last] == Double.POSITIVE_INFINITY) {
      throw new IllegalStateException("draws never get there: censor the forecast at a horizon");
    }
    double sum = Math.max(0, values[0] - outcome) + Math.max(0, outcome - values[last]);
    for (int k = 0; k < last; k++) {
      double split = Math.max(values[k], Math.min(values[k + 1], outcome));
      double here = between(k, split);
      sum += (split - values[k]) * meanSquare(upTo[k], here);
      sum += (values[k + 1] - split) * meanSquare(1 - here, 1 - before[k + 1]);
    }
    return sum;
  }

  /**
   * Weighted interval score: mean of the median's absolute error, with weight 1/2, and the interval
   * scores, with weight (1 − level)/2 each, over the number of levels and a half [Bracher2021].
   * With ever more levels, evenly spread, it goes to the CRPS.
   *
   * @param levels of the central intervals, in (0, 1), at least one
   * @param outcome finite
   */
  public double weightedIntervalScore(List<Double> levels, double outcome) {
    Check.atLeast("levels", levels.size(), 1);
    Check.finite("outcome", outcome);
    double sum = Math.abs(median() - outcome) / 2;
    for (double level : levels) {
      sum += (1 - level) / 2 * interval(level).score(outcome);
    }
    return sum / (levels.size() + 0.5);
  }

  /**
   * Probability integral transform: where in its distribution the outcome fell, uniform in [0, 1]
   * if forecasts are right. Where a range of probability belongs to the outcome, {@code tie} says
   * where in it [Czado2009]: at a draw, at a horizon, beyond the outermost quantiles.
   *
   * @param outcome finite
   * @param tie drawn evenly from [0, 1], independent of all else
   */
  public double pit(double outcome, double tie) {
    Check.finite("outcome", outcome);
    Check.inRange("tie", tie, 0, 1);
    int k = 0;
    while (k < values.length && values[k] < outcome) {
      k++;
    }
    double low;
    double high;
    if (k == values.length) {
      low = most;
      high = 1;
    } else if (values[k] == outcome) {
      low = Math.max(before[k], least);
      high = Math.min(upTo[k], most);
    } else {
      low = k == 0 ? 0 : between(k - 1, outcome);
      high = k == 0 ? least : low;
    }
    return low + tie * (high - low);
  }

  /**
   * The same forecast of the lesser of the number and a horizon. Scores compare it with the lesser
   * of outcome and horizon, as {@link ForecastCase#censoredAt} does.
   *
   * @param horizon finite
   */
  public Predictive censoredAt(double horizon) {
    Check.finite("horizon", horizon);
    int last = values.length - 1;
    if (values[last] < horizon) {
      return this;
    }
    Knots knots = new Knots(values.length);
    int k = 0;
    while (values[k] < horizon) {
      knots.add(values[k], before[k], upTo[k]);
      k++;
    }
    boolean bends = k > 0 && values[k] > horizon;
    knots.add(horizon, bends ? between(k - 1, horizon) : before[k], 1);
    return knots.between(least, 1);
  }

  /** Probability of at most a value in [values[k], values[k + 1]], but for a step at the latter. */
  private double between(int k, double value) {
    double rise = before[k + 1] - upTo[k];
    return rise == 0 ? upTo[k] : upTo[k] + rise * (value - values[k]) / (values[k + 1] - values[k]);
  }

  /** Mean of the square of what runs straight from one number to another. */
  private static double meanSquare(double from, double to) {
    return (from * from + from * to + to * to) / 3;
  }

  /** Bends and steps as they come, increasing; those at one value are one step. */
  private static final class Knots {

    private final double[] values;
    private final double[] before;
    private final double[] upTo;
    private int count;

    Knots(int most) {
      values = new double[most];
      before = new double[most];
      upTo = new double[most];
    }

    void add(double value, double below, double reached) {
      if (count > 0 && values[count - 1] == value) {
        upTo[count - 1] = reached;
        return;
      }
      values[count] = value;
      before[count] = below;
      upTo[count++] = reached;
    }

    Predictive between(double least, double most) {
      return new Predictive(
          Arrays.copyOf(values, count),
          Arrays.copyOf(before, count),
          Arrays.copyOf(upTo, count),
          least,
          most);
    }
  }
}
