package org.roastfield.core.simulation;

/**
 * When a stage ran and what it left.
 *
 * @param name of the stage
 * @param start since the start of the cook [s]
 * @param end since the start of the cook [s]
 * @param endRule rule that ended it, in words
 * @param coreAtEnd [K]
 * @param upperSurfaceAtEnd [K]
 * @param lowerSurfaceAtEnd [K]; that of the upper where the cut is treated alike all round
 */
public record StageResult(
    String name,
    double start,
    double end,
    String endRule,
    double coreAtEnd,
    double upperSurfaceAtEnd,
    double lowerSurfaceAtEnd) {

  /** Duration [s]. */
  public double duration() {
    return end - start;
  }
}
