package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * How well the evidence alone can be explained with one coordinate held at each of several values
 * and all others fitted anew, without any prior: the profile likelihood of [Raue2009]. Bounds still
 * hold, and beliefs about errors. Immutable.
 */
public final class LikelihoodProfile {

  /** Rise of twice the negative logarithm that 95 % intervals of one coordinate allow. */
  public static final double THRESHOLD = 3.84;

  /** How far from the prior's mean it looks [prior spreads]. */
  private static final double REACH = 3;

  /** First step from the estimate [posterior spreads], and what each step is of the last. */
  private static final double FIRST = 0.5;

  private static final double GROWTH = 1.5;

  /** It looks no farther than this share of the way from the prior's median to a bound. */
  private static final double INSIDE = 0.9;

  /** Spread of a coordinate that is held, over its prior's. */
  private static final double HELD = 1e-6;

  /** Spread of the prior that stands for none, over the parameter's own. */
  private static final double FAR = 100;

  private final Parameter parameter;
  private final List<Point> points;
  private final double low;
  private final double high;

  private LikelihoodProfile(Parameter parameter, List<Point> points, double low, double high) {
    this.parameter = parameter;
    this.points = List.copyOf(points);
    this.low = low;
    this.high = high;
  }

  /**
   * One value that was tried.
   *
   * @param coordinate held
   * @param deviance twice the negative log likelihood over the least that was found, at least 0;
   *     NaN where nothing could be computed
   */
  public record Point(double coordinate, double deviance) {}

  /** What evidence tells of a parameter without its prior. */
  public enum Kind {
    /** An interval with two ends. */
    IDENTIFIABLE,
    /** A bound to one side only. */
    ONE_SIDED,
    /** Every value within reach explains it. */
    FLAT
  }

  /**
   * Computes a profile: a fit for each of some ten values.
   *
   * @param estimate one that was found, from which values are tried to either side
   */
  public static LikelihoodProfile of(Calibration calibration, MapEstimate estimate, int which) {
    return new Search(calibration, estimate, which).run(FIRST * estimate.spread(which));
  }

  /** Which parameter. */
  public Parameter parameter() {
    return parameter;
  }

  /** Values tried, in order. */
  public List<Point> points() {
    return points;
  }

  /** What the evidence tells of it. */
  public Kind kind() {
    boolean below = low > Double.NEGATIVE_INFINITY;
    boolean above = high < Double.POSITIVE_INFINITY;
    if (below && above) {
      return Kind.IDENTIFIABLE;
    }
    return below || above ? Kind.ONE_SIDED : Kind.FLAT;
  }

  /** Lower end of the 95 % interval of the coordinate, −∞ if there is none within reach. */
  public double low() {
    return low;
  }

  /** Upper end of the interval, ∞ if there is none within reach. */
  public double high() {
    return high;
  }

  /** The fits of one profile. */
  private static final class Search {

    private final Calibration calibration;
    private final int which;
    private final Parameter parameter;
    private final double[] best;
    private final double lowest;
    private final double highest;
    private final List<Fit> fits = new ArrayList<>();
    private double least = Double.POSITIVE_INFINITY;

    Search(Calibration calibration, MapEstimate estimate, int which) {
      this.calibration = calibration;
      this.which = which;
      parameter = calibration.prior().parameters().get(which);
      best = estimate.coordinates();
      double reach = REACH * parameter.spread();
      double centre = parameter.centre();
      lowest = Math.max(centre - reach, centre + INSIDE * (parameter.lowest() - centre));
      highest = Math.min(centre + reach, centre + INSIDE * (parameter.highest() - centre));
    }

    LikelihoodProfile run(double step) {
      least = fit(best, FAR * parameter.spread()).misfit();
      Fit middle = fit(best, HELD * parameter.spread());
      fits.add(middle);
      double low = end(middle, -step, lowest);
      double high = end(middle, step, highest);
      fits.sort(Comparator.comparingDouble(Fit::value));
      List<Point> points = fits.stream().map(fit -> new Point(fit.value(), deviance(fit))).toList();
      return new LikelihoodProfile(parameter, points, low, high);
    }

    /** Walks to one side until the threshold is passed; where it is, infinite if nowhere. */
    private double end(Fit middle, double firstStep, double farthest) {
      double open = firstStep < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
      Fit inside = middle;
      double step = firstStep;
      while (inside.value() != farthest && Double.isFinite(inside.misfit())) {
        double next = inside.value() + step;
        next = firstStep < 0 ? Math.max(farthest, next) : Math.min(farthest, next);
        Fit fit = fitAt(next, inside);
        fits.add(fit);
        if (deviance(fit) > THRESHOLD) {
          return crossing(inside, fit);
        }
        inside = fit;
        step *= GROWTH;
      }
      return open;
    }

    /** Where a parabola's root through two fits, mended by a third, passes the threshold. */
    private double crossing(Fit inside, Fit outside) {
      double guess = between(inside, outside);
      Fit fit = fitAt(guess, inside);
      if (!Double.isFinite(fit.misfit()) || guess == inside.value()) {
        return guess;
      }
      fits.add(fit);
      return deviance(fit) > THRESHOLD ? between(inside, fit) : between(fit, outside);
    }

    private double between(Fit inside, Fit outside) {
      double a = Math.sqrt(deviance(inside));
      double b = Math.sqrt(deviance(outside));
      double share = (Math.sqrt(THRESHOLD) - a) / (b - a);
      return inside.value() + share * (outside.value() - inside.value());
    }

    private double deviance(Fit fit) {
      return Math.max(0, 2 * (fit.misfit() - least));
    }

    private Fit fitAt(double value, Fit near) {
      double[] start = near.coordinates().clone();
      start[which] = value;
      return fit(start, HELD * parameter.spread());
    }

    /** Fits with a prior so wide that it is none, but for the coordinate in question. */
    private Fit fit(double[] start, double spread) {
      ParameterSet parameters = calibration.prior().parameters();
      double[][] covariance = new double[start.length][start.length];
      for (int p = 0; p < start.length; p++) {
        double wide = p == which ? spread : FAR * parameters.get(p).spread();
        covariance[p][p] = wide * wide;
      }
      Prior none = Prior.of(parameters, start, covariance);
      MapEstimate found =
          Calibration.of(none, calibration.evidence(), calibration.model()).mapFrom(start);
      double misfit =
          found.isFound()
              ? found.objective() - none.negativeLogDensity(found.coordinates())
              : Double.NaN;
      if (misfit < least) {
        least = misfit;
      }
      return new Fit(start[which], found.coordinates(), misfit);
    }
  }

  /** One fit. */
  private static final class Fit {

    private final double value;
    private final double[] coordinates;
    private final double misfit;

    /**
     * @param value of the coordinate in question
     * @param coordinates found
     * @param misfit minus the log likelihood, NaN if nothing was found
     */
    Fit(double value, double[] coordinates, double misfit) {
      this.value = value;
      this.coordinates = coordinates;
      this.misfit = misfit;
    }

    double value() {
      return value;
    }

    double[] coordinates() {
      return coordinates;
    }

    double misfit() {
      return misfit;
    }
  }
}
