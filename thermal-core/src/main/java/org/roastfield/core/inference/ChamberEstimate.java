package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What a chamber's trace says of what its air does by itself: the most probable numbers and a
 * normal distribution around them. Newton's method on differences: the density is smooth and has
 * four coordinates. Immutable.
 */
public final class ChamberEstimate {

  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  private static final int MOST_STEPS = 60;

  /** Of a spread: differences over it see curvature far above round-off. */
  private static final double DIFFERENCE = 0.01;

  private static final double SETTLED = 1e-4;
  private static final double LONGEST = 1;

  private final ChamberTrace trace;
  private final Prior prior;
  private final double[] mode;
  private final double[][] covariance;

  private ChamberEstimate(ChamberTrace trace, Prior prior) {
    this.trace = trace;
    this.prior = prior;
    this.mode = search(prior.mean());
    this.covariance = positive(curvature(mode)).inverse();
  }

  /**
   * Searches.
   *
   * @param prior of the numbers in that cook, see {@link CookerPopulation#nextCook()}
   * @throws IllegalArgumentException if the prior is not of {@link FireParameters#ofHabit}
   */
  public static ChamberEstimate of(ChamberTrace trace, Prior prior) {
    ParameterSet habit = FireParameters.ofHabit();
    Check.inRange("size of prior", prior.size(), habit.size(), habit.size());
    for (int p = 0; p < habit.size(); p++) {
      if (!prior.parameters().get(p).id().equals(habit.get(p).id())) {
        throw new IllegalArgumentException(
            "prior must be of " + habit + ", was of " + prior.parameters());
      }
    }
    return new ChamberEstimate(trace, prior);
  }

  /** What cooks on a cooker add to its numbers, and cookers of all kinds. */
  public static CookerPopulation population() {
    return population(Prior.of(FireParameters.ofHabit()));
  }

  /** The same around a cooker of which something is known. */
  public static CookerPopulation population(Prior known) {
    int n = known.size();
    double[][] cooks = new double[n][n];
    for (int p = 0; p < n; p++) {
      double spread = FireParameters.betweenCooks(known.parameters().get(p).id());
      cooks[p][p] = spread * spread;
    }
    return CookerPopulation.assumed(known, cooks);
  }

  /**
   * What is known of a cooker by chambers' traces.
   *
   * @param known before them
   */
  public static Prior cooker(Prior known, List<ChamberTrace> traces) {
    CookerPopulation population = population(known);
    List<LogSite> sites = new ArrayList<>();
    for (ChamberTrace trace : traces) {
      sites.add(of(trace, population.nextCook()).site());
    }
    return population.cooker(sites);
  }

  /**
   * How far chambers' traces of one cooker and what was known of it stand apart: each trace against
   * what is known from those before it, so that conflicts add up.
   *
   * @param known before them
   */
  public static Conflict conflict(Prior known, List<ChamberTrace> traces) {
    Conflict all = Conflict.NONE;
    Prior now = known;
    for (ChamberTrace trace : traces) {
      all = all.with(of(trace, population(now).nextCook()).conflict());
      now = cooker(now, List.of(trace));
    }
    return all;
  }

  /**
   * How much more probable chambers' traces of one cooker are with what is known of it than with
   * what is believed of cookers in general, as a logarithm [nat]; each trace after those before it.
   *
   * @param known before them
   */
  public static double logRatio(Prior known, List<ChamberTrace> traces) {
    return logEvidence(known, traces) - logEvidence(Prior.of(FireParameters.ofHabit()), traces);
  }

  private static double logEvidence(Prior known, List<ChamberTrace> traces) {
    double sum = 0;
    Prior now = known;
    for (ChamberTrace trace : traces) {
      sum += of(trace, population(now).nextCook()).logEvidence();
      now = cooker(now, List.of(trace));
    }
    return sum;
  }

  /**
   * Logarithm of the evidence by Laplace's approximation, but for the constant that the trace's
   * likelihood leaves out [nat].
   */
  private double logEvidence() {
    return -objective(mode)
        + mode.length * HALF_LOG_TWO_PI
        + Cholesky.of(covariance).halfLogDeterminant()
        + asPrior().logLeft();
  }

  /** The most probable coordinates; a copy. */
  public double[] coordinates() {
    return mode.clone();
  }

  /** Mean and covariance. */
  public Prior asPrior() {
    return Prior.of(prior.parameters(), mode, covariance);
  }

  /** What the trace says, without what was believed before. */
  public LogSite site() {
    return LogSite.between(prior, asPrior());
  }

  /** How far the trace and the prior stand apart. */
  public Conflict conflict() {
    return Conflict.of(MapEstimate.Direction.all(prior.factor(), covariance), prior.whitened(mode));
  }

  private double objective(double[] coordinates) {
    return trace.negativeLogLikelihood(coordinates) + prior.negativeLogDensity(coordinates);
  }

  private double[] search(double[] start) {
    double[] now = start;
    double value = objective(now);
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] move = GaussNewton.product(positive(curvature(now)).inverse(), gradient(now));
      double share = Math.min(1, LONGEST / longest(now, moved(now, move, 1)));
      double[] next = moved(now, move, share);
      double better = objective(next);
      while (!(better <= value) && longest(now, next) > SETTLED) {
        share /= 2;
        next = moved(now, move, share);
        better = objective(next);
      }
      boolean settled = longest(now, next) < SETTLED || !(better <= value);
      now = better <= value ? next : now;
      value = Math.min(value, better);
      if (settled) {
        return now;
      }
    }
    throw new IllegalStateException("the numbers of a chamber's air did not settle");
  }

  /** Length of a move in prior spreads, by its largest part; never 0. */
  private double longest(double[] from, double[] to) {
    double longest = Double.MIN_NORMAL;
    for (int p = 0; p < from.length; p++) {
      longest = Math.max(longest, Math.abs(to[p] - from[p]) / prior.spread(p));
    }
    return longest;
  }

  private double[] moved(double[] from, double[] move, double share) {
    double[] moved = from.clone();
    for (int p = 0; p < moved.length; p++) {
      Parameter parameter = prior.parameters().get(p);
      double to = from[p] - share * move[p];
      moved[p] = Math.max(parameter.lowest(), Math.min(parameter.highest(), to));
    }
    return moved;
  }

  private double[] gradient(double[] at) {
    double[] gradient = new double[at.length];
    for (int p = 0; p < at.length; p++) {
      double step = step(p);
      gradient[p] = (at(at, p, step, p, 0) - at(at, p, -step, p, 0)) / (2 * step);
    }
    return gradient;
  }

  private double[][] curvature(double[] at) {
    int n = at.length;
    double[][] curvature = new double[n][n];
    double middle = objective(at);
    for (int p = 0; p < n; p++) {
      double own = step(p);
      double sides = at(at, p, own, p, 0) + at(at, p, -own, p, 0);
      curvature[p][p] = (sides - 2 * middle) / (own * own);
      for (int q = 0; q < p; q++) {
        double other = step(q);
        double same = at(at, p, own, q, other) + at(at, p, -own, q, -other);
        double opposite = at(at, p, own, q, -other) + at(at, p, -own, q, other);
        curvature[p][q] = (same - opposite) / (4 * own * other);
        curvature[q][p] = curvature[p][q];
      }
    }
    return curvature;
  }

  private double step(int parameter) {
    return DIFFERENCE * prior.spread(parameter);
  }

  private double at(double[] around, int p, double own, int q, double other) {
    double[] moved = around.clone();
    moved[p] += own;
    moved[q] += other;
    return objective(moved);
  }

  /** Factor of a curvature; where that is not one of a minimum, with more and more of the prior. */
  private Cholesky positive(double[][] curvature) {
    double[][] precision = prior.factor().inverse();
    double[][] more = curvature;
    while (!Cholesky.isPositive(more)) {
      more = GaussNewton.sum(more, precision);
    }
    return Cholesky.of(more);
  }
}
