package org.roastfield.core.plan;

/**
 * A pull reading that was weighed.
 *
 * @param reading on the display [K]
 * @param expectedLoss in the unit of the loss
 * @param finalCore over the draws that were weighed [K]
 * @param chanceUnder of a final core below the wish, in [0, 1]
 * @param chanceOver of one above it, in [0, 1]
 * @param reached share of the draws whose display gets there in the time allowed, in [0, 1]
 * @param allowed whether it meets all minima and is reached with the demanded chance
 */
public record Candidate(
    double reading,
    double expectedLoss,
    Spread finalCore,
    double chanceUnder,
    double chanceOver,
    double reached,
    boolean allowed) {

  /** The same of another reading [K]. */
  Candidate at(double other) {
    return new Candidate(other, expectedLoss, finalCore, chanceUnder, chanceOver, reached, allowed);
  }
}
