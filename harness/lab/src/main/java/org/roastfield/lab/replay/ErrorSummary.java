package org.roastfield.lab.replay;

import java.util.List;

/**
 * How far the computed core is from the measured one.
 *
 * @param readings that were compared
 * @param missing rows without a core reading
 * @param rms root mean square error [K]
 * @param bias mean of computed less measured [K]
 * @param worst error of largest size, with its sign [K]
 * @param worstTime when that was [s]
 */
public record ErrorSummary(
    int readings, int missing, double rms, double bias, double worst, double worstTime) {

  /**
   * Summary of pairs.
   *
   * @param pairs at least one
   * @param missing rows without a core reading
   */
  static ErrorSummary of(List<Comparison> pairs, int missing) {
    double squares = 0;
    double sum = 0;
    Comparison worst = pairs.get(0);
    for (Comparison pair : pairs) {
      squares += pair.error() * pair.error();
      sum += pair.error();
      if (Math.abs(pair.error()) > Math.abs(worst.error())) {
        worst = pair;
      }
    }
    int n = pairs.size();
    return new ErrorSummary(
        n, missing, Math.sqrt(squares / n), sum / n, worst.error(), worst.time());
  }
}
