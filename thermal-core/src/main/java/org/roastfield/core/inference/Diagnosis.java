package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.roastfield.core.parameter.Parameter;

/**
 * Whether an estimate can be believed: residuals of each series, how far it stands from its prior,
 * what lies at a bound, what cannot be told apart. Immutable.
 */
public final class Diagnosis {

  /** Chance below which something is taken to be wrong: one good log in a hundred. */
  public static final double LEAST_CHANCE = 0.01;

  /** Distance from a bound in posterior spreads within which a coordinate is at it: assumed. */
  private static final double NEAR = 0.5;

  private final MapEstimate estimate;
  private final Conflict conflict;
  private final Conflict ofCooker;
  private final List<SeriesCheck> series;

  private Diagnosis(
      MapEstimate estimate, Conflict conflict, Conflict ofCooker, List<SeriesCheck> series) {
    this.estimate = estimate;
    this.conflict = conflict;
    this.ofCooker = ofCooker;
    this.series = List.copyOf(series);
  }

  /**
   * Residuals of a series.
   *
   * @param name of the series
   * @param whiteness of its whitened residuals
   * @param strain of its errors
   * @param outlying share of readings that count less because they stand out
   */
  public record SeriesCheck(String name, Whiteness whiteness, ErrorStrain strain, double outlying) {

    /** Whether the model misses more than errors of the usual size can answer for. */
    public boolean isStrained() {
      return strain.isLarge();
    }
  }

  /**
   * Two coordinates that go together.
   *
   * @param a index of one
   * @param b index of the other
   * @param correlation of them, in [−1, 1]
   */
  public record Pair(int a, int b, double correlation) {}

  /** Diagnoses an estimate. */
  public static Diagnosis of(FirstOrder around) {
    Calibration calibration = around.calibration();
    MapEstimate estimate = around.estimate();
    double[] whitened = around.linear().residuals();
    List<ErrorGrid> grids = calibration.grids(estimate);
    List<SeriesCheck> checks = new ArrayList<>();
    int row = 0;
    for (int s = 0; s < grids.size(); s++) {
      Series each = calibration.evidence().series().get(s);
      int aside = 0;
      for (int k = 0; k < each.size(); k++) {
        aside += estimate.weight(s, k) < 1 ? 1 : 0;
      }
      double[] own = Arrays.copyOfRange(whitened, row, row + each.size());
      row += each.size();
      checks.add(
          new SeriesCheck(
              each.name(),
              Whiteness.of(own),
              ErrorStrain.of(grids.get(s)),
              (double) aside / each.size()));
    }
    return new Diagnosis(estimate, Conflict.of(estimate), Conflict.ofCooker(estimate), checks);
  }

  /**
   * The same where other, independent evidence of the cooker stands apart from what was believed
   * too.
   */
  public Diagnosis with(Conflict other) {
    return new Diagnosis(estimate, conflict.with(other), ofCooker.with(other), series);
  }

  /** How far the evidence stands from what was believed. */
  public Conflict conflict() {
    return conflict;
  }

  /**
   * How far it stands from what was believed of the cooker alone: of a profile, if there is one.
   */
  public Conflict ofCooker() {
    return ofCooker;
  }

  /** Residuals of each series. */
  public List<SeriesCheck> series() {
    return series;
  }

  /** Whether prior and evidence disagree, or errors had to grow beyond the usual. */
  public boolean isDoubtful() {
    return conflict.chance() < LEAST_CHANCE || series.stream().anyMatch(SeriesCheck::isStrained);
  }

  /** Coordinates within half a posterior spread of a bound. */
  public List<Integer> atBounds() {
    List<Integer> at = new ArrayList<>();
    double[] z = estimate.coordinates();
    for (int p = 0; p < z.length; p++) {
      Parameter parameter = estimate.prior().parameters().get(p);
      double room = Math.min(z[p] - parameter.lowest(), parameter.highest() - z[p]);
      if (room < NEAR * estimate.spread(p)) {
        at.add(p);
      }
    }
    return at;
  }

  /**
   * Coordinates whose correlation is at least so strong, the strongest first.
   *
   * @param least absolute correlation, in [0, 1]
   */
  public List<Pair> correlated(double least) {
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < estimate.prior().size(); a++) {
      for (int b = a + 1; b < estimate.prior().size(); b++) {
        if (Math.abs(estimate.correlation(a, b)) >= least) {
          pairs.add(new Pair(a, b, estimate.correlation(a, b)));
        }
      }
    }
    pairs.sort((x, y) -> Double.compare(Math.abs(y.correlation()), Math.abs(x.correlation())));
    return pairs;
  }

  /** Whether fewer than half of several searches ended at the best one. */
  public boolean startsDisagree() {
    return estimate.agreement() < 0.5;
  }
}
