package org.roastfield.core.inference;

/**
 * How far the residuals of a series drive its errors from what was believed of them: a model that
 * misses what it should explain shows as a drift that is larger, or lasts longer, than usual.
 *
 * @param drift drift spread that the residuals speak for, over its median
 * @param time drift time over its median
 * @param noise white noise over its median
 * @param conflict between these and what was believed of them
 */
public record ErrorStrain(double drift, double time, double noise, Conflict conflict) {

  static ErrorStrain of(ErrorGrid grid) {
    return new ErrorStrain(
        StrictMath.exp(grid.logarithm(0)),
        StrictMath.exp(grid.logarithm(1)),
        StrictMath.exp(grid.logarithm(2)),
        grid.conflict());
  }

  /** Whether errors are larger than believed, beyond what happens to one good log in a hundred. */
  public boolean isLarge() {
    return conflict.chance() < Diagnosis.LEAST_CHANCE && (drift > 1 || noise > 1);
  }
}
