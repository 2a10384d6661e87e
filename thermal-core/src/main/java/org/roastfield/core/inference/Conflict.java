package org.roastfield.core.inference;

import java.util.List;
import java.util.stream.IntStream;
import org.roastfield.core.parameter.Owner;

/**
 * How far evidence and prior stand apart, along what the evidence tells of. A prior that is right
 * leaves a χ² of as many degrees of freedom as there are such directions; one that is wrong, a
 * wrong cooker's profile or a wrong size, leaves more.
 *
 * <p>It is the part of the whitened residuals' χ² that parameters can answer for: hundreds of
 * readings, which no profile can explain, do not dilute it.
 *
 * @param square Σ u²(1 + i)/i over directions, u the estimate's place along one in prior spreads
 *     and i its information
 * @param directions degrees of freedom: directions of contraction 0.3 and more; 0 if nothing was
 *     learned
 */
public record Conflict(double square, int directions) {

  /**
   * Contraction from which a direction of a cooker's own numbers counts: one log adds little to
   * five, but a profile that is wrong is so by several of its spreads. Chosen on made-up cookers of
   * three seeds, where 0.02 and 0.1 do as well.
   */
  private static final double LEAST_OF_COOKER = 0.05;

  /** Of evidence that tells of nothing. */
  public static final Conflict NONE = new Conflict(0, 0);

  /** Between prior and posterior of an estimate. */
  static Conflict of(MapEstimate estimate) {
    Prior prior = estimate.prior();
    return of(
        MapEstimate.Direction.all(prior.factor(), estimate.covariance()),
        prior.whitened(estimate.coordinates()));
  }

  /**
   * Between prior and posterior of a cooker's own numbers, whatever those of cuts and probes are:
   * what a profile is judged by. Directions of the cuts, of which all profiles say the same, do not
   * dilute it.
   */
  static Conflict ofCooker(MapEstimate estimate) {
    Prior prior = estimate.prior();
    int[] own =
        IntStream.range(0, prior.size())
            .filter(p -> prior.parameters().get(p).owner() == Owner.COOKER)
            .toArray();
    if (own.length == 0) {
      return NONE;
    }
    double[][] before = new double[own.length][own.length];
    double[][] after = new double[own.length][own.length];
    double[] away = new double[own.length];
    for (int a = 0; a < own.length; a++) {
      away[a] = estimate.coordinates()[own[a]] - prior.mean()[own[a]];
      for (int b = 0; b < own.length; b++) {
        before[a][b] = prior.covariance(own[a], own[b]);
        after[a][b] = estimate.covariance(own[a], own[b]);
      }
    }
    Cholesky factor = Cholesky.of(before);
    return of(MapEstimate.Direction.all(factor, after), factor.whitened(away), LEAST_OF_COOKER);
  }

  /**
   * Between a prior and what came of it.
   *
   * @param away L⁻¹ of the distance from the prior's mean
   */
  static Conflict of(List<MapEstimate.Direction> all, double[] away) {
    return of(all, away, MapEstimate.LEAST_CONTRACTION);
  }

  private static Conflict of(List<MapEstimate.Direction> all, double[] away, double least) {
    double sum = 0;
    int count = 0;
    for (MapEstimate.Direction direction : all) {
      double share = direction.contraction();
      if (share >= least) {
        double along = direction.along(away);
        sum += along * along / share;
        count++;
      }
    }
    return new Conflict(sum, count);
  }

  /** Together with that of other evidence, which is independent of this. */
  public Conflict with(Conflict other) {
    return new Conflict(square + other.square, directions + other.directions);
  }

  /** Chance that a prior which is right stands as far apart; 1 if nothing was learned. */
  public double chance() {
    return directions == 0 ? 1 : Whiteness.chance(directions, square);
  }

  /**
   * Factor by which variances must grow for the distance to be an ordinary one, at least 1: χ² over
   * its degrees of freedom.
   */
  public double inflation() {
    return directions == 0 ? 1 : Math.max(1, square / directions);
  }
}
