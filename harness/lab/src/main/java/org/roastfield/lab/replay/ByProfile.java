package org.roastfield.lab.replay;

import java.util.List;

/**
 * What a replay by the profile of a cooker says beside its computation.
 *
 * @param id of the profile
 * @param words whose belief it is, in a sentence
 * @param madeFromThisLog whether the log is one of those that the profile was made from
 * @param band of each reading used, in the order of the comparison
 * @param drawn cooks behind the band
 * @param asFarOff share of these cooks whose errors are as far from the median cook as the log is,
 *     by root mean square: an ordinary log has any share, one that something is wrong with nearly 0
 * @param leftOut draws that could not be computed
 * @param without errors of the same computation without the profile
 */
public record ByProfile(
    String id,
    String words,
    boolean madeFromThisLog,
    List<Band> band,
    int drawn,
    double asFarOff,
    int leftOut,
    ErrorSummary without) {

  /**
   * Quantiles of what a probe shows at one time.
   *
   * @param low that one draw in ten is below [K]
   * @param high that nine in ten are below [K]
   */
  public record Band(double low, double high) {

    boolean holds(double temperature) {
      return temperature >= low && temperature <= high;
    }
  }

  /** Copies the list. */
  public ByProfile {
    band = List.copyOf(band);
  }

  /** Share of the readings that lie in the band, which is meant to be 0.8. */
  public double inside(List<Comparison> core) {
    int inside = 0;
    for (int i = 0; i < core.size(); i++) {
      inside += band.get(i).holds(core.get(i).measured()) ? 1 : 0;
    }
    return (double) inside / core.size();
  }
}
