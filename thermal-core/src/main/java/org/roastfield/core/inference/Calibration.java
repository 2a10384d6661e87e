package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.roastfield.core.internal.Check;

/**
 * What evidence says of parameters: the most probable ones, a normal approximation around them, and
 * the posterior density itself. Immutable but for the caller's model.
 *
 * <p>Errors of a series are a drift with memory and white noise, see {@link ErrorModel}; what is
 * not known of them is averaged over. The white part is robust: a reading farther than three
 * spreads from what the others say counts as one at three.
 */
public final class Calibration {

  /**
   * Spreads from what the other readings say beyond which a reading counts less: assumed. Of normal
   * readings one in 370 lies there, so that clean logs lose nothing.
   */
  private static final double FAR = 3;

  private static final int MOST_SWEEPS = 8;
  private static final int WEIGHING_ROUNDS = 3;
  private static final double SETTLED = 0.01;
  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  /** Starts are drawn no farther from the prior's mean than this share of the way to a bound. */
  private static final double INSIDE = 0.9;

  private final Prior prior;
  private final Evidence evidence;
  private final ForwardModel model;
  private final BoundedCoordinates bounds;
  private final LevenbergMarquardt search;

  private Calibration(Prior prior, Evidence evidence, ForwardModel model) {
    this.prior = prior;
    this.evidence = evidence;
    this.model = model;
    bounds = new BoundedCoordinates(prior.parameters());
    double[] longest = new double[prior.size()];
    for (int p = 0; p < longest.length; p++) {
      longest[p] = 2 * Math.min(prior.spread(p), prior.parameters().get(p).spread());
    }
    search = LevenbergMarquardt.standard().withLongestStep(longest);
  }

  /** Prepares a calibration. */
  public static Calibration of(Prior prior, Evidence evidence, ForwardModel model) {
    return new Calibration(prior, evidence, model);
  }

  /** What is believed before. */
  public Prior prior() {
    return prior;
  }

  /** What was measured. */
  public Evidence evidence() {
    return evidence;
  }

  /** The most probable coordinates, searched from the prior's mean on. */
  public MapEstimate map() {
    return mapFrom(prior.mean());
  }

  /**
   * The best of several searches: from the prior's mean and from a Sobol sequence over the prior.
   *
   * @param starts at least 1
   */
  public MapEstimate map(int starts) {
    Check.inRange("starts", starts, 1, 1000);
    List<MapEstimate> found = new ArrayList<>();
    found.add(map());
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(prior.size());
    sequence.skipTo(1);
    for (int s = 1; s < starts; s++) {
      found.add(mapFrom(start(sequence.nextVector())));
    }
    MapEstimate best = found.get(0);
    for (MapEstimate each : found) {
      best = each.objective() < best.objective() ? each : best;
    }
    double least = best.objective();
    long near = found.stream().filter(each -> each.objective() < least + 0.1).count();
    return best.withAgreement((double) near / starts);
  }

  private double[] start(double[] uniform) {
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double[] x = new double[uniform.length];
    for (int p = 0; p < x.length; p++) {
      double probability = Math.max(1e-3, Math.min(1 - 1e-3, uniform[p]));
      x[p] = normal.inverseCumulativeProbability(probability);
    }
    double[] z = prior.factor().coloured(x);
    double[] mean = prior.mean();
    for (int p = 0; p < z.length; p++) {
      z[p] += mean[p];
    }
    return z;
  }

  /** Moves a start that lies at or beyond a bound back within. */
  private double[] inside(double[] z) {
    double[] inside = z.clone();
    for (int p = 0; p < z.length; p++) {
      double centre = prior.parameters().get(p).centre();
      double low = centre + INSIDE * (prior.parameters().get(p).lowest() - centre);
      double high = centre + INSIDE * (prior.parameters().get(p).highest() - centre);
      inside[p] = Math.max(low, Math.min(high, z[p]));
    }
    return inside;
  }

  /** The most probable coordinates, searched from given ones on. */
  MapEstimate mapFrom(double[] start) {
    List<ErrorModel> errors = new ArrayList<>();
    List<double[]> precision = new ArrayList<>();
    for (Series series : evidence.series()) {
      errors.add(series.errors());
      double[] ones = new double[series.size()];
      Arrays.fill(ones, 1);
      precision.add(ones);
    }
    ForwardModel remembering = new LastComputed(model);
    double[] free = bounds.free(inside(start));
    double last = Double.POSITIVE_INFINITY;
    for (int sweep = 1; ; sweep++) {
      MapProblem problem =
          new MapProblem(prior, evidence, remembering, bounds, whitenings(errors, precision));
      LeastSquaresResult found = search.search(problem, free);
      free = found.x();
      double[] z = bounds.coordinates(free);
      double[] predicted = new double[evidence.size()];
      double[][] derivatives = new double[prior.size()][evidence.size()];
      if (!found.isMinimum() || !remembering.at(z, predicted, derivatives)) {
        return MapEstimate.none(prior, found, z);
      }
      double[] residuals = evidence.residuals(predicted);
      weigh(errors, precision, residuals);
      List<ErrorGrid> grids = grids(precision, residuals);
      double objective = -logPosterior(z, predicted, grids);
      if (sweep == MOST_SWEEPS || Math.abs(objective - last) < SETTLED) {
        ErrorMixture mixture = new ErrorMixture(prior, evidence, grids, z, residuals, derivatives);
        return MapEstimate.of(prior, found, z, mixture, objective, errors, precision, predicted);
      }
      last = objective;
      for (int s = 0; s < errors.size(); s++) {
        errors.set(s, grids.get(s).mode());
      }
    }
  }

  private List<Whitening> whitenings(List<ErrorModel> errors, List<double[]> precision) {
    List<Whitening> whitenings = new ArrayList<>();
    for (int s = 0; s < errors.size(); s++) {
      whitenings.add(
          new Whitening(evidence.series().get(s).times(), errors.get(s), precision.get(s)));
    }
    return whitenings;
  }

  private List<ErrorGrid> grids(List<double[]> precision, double[] residuals) {
    List<ErrorGrid> grids = new ArrayList<>();
    int from = 0;
    for (int s = 0; s < precision.size(); s++) {
      Series series = evidence.series().get(s);
      grids.add(new ErrorGrid(series, precision.get(s), residuals, from));
      from += series.size();
    }
    return grids;
  }

  /** Weights of readings under the error models so far: those that stand out are found before. */
  private void weigh(List<ErrorModel> errors, List<double[]> precision, double[] residuals) {
    int from = 0;
    for (int s = 0; s < errors.size(); s++) {
      Series series = evidence.series().get(s);
      for (int round = 0; round < WEIGHING_ROUNDS; round++) {
        precision.set(s, weighed(series, errors.get(s), precision.get(s), residuals, from));
      }
      from += series.size();
    }
  }

  private static double[] weighed(
      Series series, ErrorModel errors, double[] precision, double[] residuals, int from) {
    Whitening whitening = new Whitening(series.times(), errors, precision);
    double[] white = whitening.withoutDrift(residuals, from);
    double[] unseen = whitening.driftVariance();
    double least = errors.whiteVariance();
    double[] weighed = new double[white.length];
    for (int k = 0; k < weighed.length; k++) {
      double others = 1 / (1 - unseen[k] * precision[k] / least);
      double apart = others * white[k] / FAR;
      weighed[k] = least / Math.max(least, apart * apart - others * unseen[k]);
    }
    return weighed;
  }

  /** What the evidence says around an estimate to first order, under its errors and weights. */
  Linearisation linearised(MapEstimate estimate) {
    return problem(estimate).linearised(estimate.coordinates());
  }

  /** A column of the evidence, whitened by the errors and weights of an estimate. */
  double[] whitened(MapEstimate estimate, double[] column) {
    double[] white = new double[evidence.size()];
    problem(estimate).whiten(column, white);
    return white;
  }

  private MapProblem problem(MapEstimate estimate) {
    List<ErrorModel> errors = new ArrayList<>();
    for (int s = 0; s < evidence.series().size(); s++) {
      errors.add(estimate.errors(s));
    }
    List<Whitening> whitenings = whitenings(errors, estimate.precision());
    return new MapProblem(prior, evidence, model, bounds, whitenings);
  }

  /** Error models of each series around an estimate. */
  List<ErrorGrid> grids(MapEstimate estimate) {
    return grids(estimate.precision(), evidence.residuals(estimate.predicted()));
  }

  /** What computes the evidence. */
  public ForwardModel model() {
    return model;
  }

  /** The posterior density around an estimate, with that estimate's weights of readings. */
  public LogDensity density(MapEstimate estimate) {
    List<ErrorGrid> grids = grids(estimate);
    double[] predicted = new double[evidence.size()];
    return z ->
        prior.allows(z) && model.at(z, predicted, null)
            ? logPosterior(z, predicted, grids)
            : Double.NEGATIVE_INFINITY;
  }

  /** Logarithm of likelihood and prior; the share that bounds cut off the prior is left out. */
  private double logPosterior(double[] z, double[] predicted, List<ErrorGrid> grids) {
    return -prior.negativeLogDensity(z) - misfit(evidence.residuals(predicted), grids);
  }

  /** Minus the logarithm of the likelihood. */
  private double misfit(double[] residuals, List<ErrorGrid> grids) {
    int row = 0;
    double sum = 0;
    for (int s = 0; s < grids.size(); s++) {
      sum += grids.get(s).negativeLogDensity(residuals, row);
      row += evidence.series().get(s).size();
    }
    for (SingleReading single : evidence.singles()) {
      double w = residuals[row++] / single.totalSpread();
      sum += 0.5 * w * w + HALF_LOG_TWO_PI + StrictMath.log(single.totalSpread());
    }
    return sum;
  }
}
