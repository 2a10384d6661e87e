package org.roastfield.core.plan;

/** What a final core costs, in the user's own measure; least expected loss decides. */
@FunctionalInterface
public interface CoreLoss {

  /**
   * Loss of a final core.
   *
   * @param finalCore highest core up to carving [K]
   * @param wish what was wished
   * @return finite; falls towards the wish from both sides
   */
  double of(double finalCore, CoreWish wish);

  /**
   * Squares of the distance from the middle of the wish, weighted by side, eq. (73).
   *
   * @param under weight of a core below the middle, greater than 0
   * @param over weight of one above, greater than 0
   */
  static CoreLoss squares(double under, double over) {
    return new SquaredMiss(under, over);
  }

  /**
   * Overshooting counts twice as much as undershooting, since a cut that lacks heat can be given
   * more: a judgement.
   */
  static CoreLoss usual() {
    return squares(1, 2);
  }
}
