package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;

/**
 * What checks say of a probe's bias, as a normal prior.
 *
 * @param mean of the bias [K], positive if it shows too much
 * @param deviation standard deviation [K]
 * @param checks how many it comes from
 */
public record BiasPrior(double mean, double deviation, int checks) {

  /**
   * How far the bias at the temperature of a cook may lie from that in a check [K], standard
   * deviation; assumed: two checks 100 K apart often differ by some tenths of a kelvin.
   */
  public static final double BETWEEN_TEMPERATURES = 0.3;

  /**
   * Prior of a probe's bias from its checks, weighted by how well each reference is known; empty if
   * there is none.
   *
   * <p>Several checks do not lower {@link #BETWEEN_TEMPERATURES}, which is common to them.
   */
  public static Optional<BiasPrior> of(String probe, List<ProbeCheck> checks) {
    List<ProbeCheck> own = checks.stream().filter(check -> check.probe().equals(probe)).toList();
    if (own.isEmpty()) {
      return Optional.empty();
    }
    double weights = 0;
    double sum = 0;
    for (ProbeCheck check : own) {
      double weight = 1 / (check.kind().deviation() * check.kind().deviation());
      weights += weight;
      sum += weight * check.bias();
    }
    double variance = 1 / weights + BETWEEN_TEMPERATURES * BETWEEN_TEMPERATURES;
    return Optional.of(new BiasPrior(sum / weights, Math.sqrt(variance), own.size()));
  }
}
