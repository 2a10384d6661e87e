package org.roastfield.lab.salting;

import java.util.OptionalDouble;

/**
 * What a cook wishes of the salt.
 *
 * @param share salt for each kilogram of raw meat [kg/kg], in (0, 0.1]
 * @param depth below the face at which to judge it [m]; empty for {@link #USUAL_DEPTH}, or the
 *     middle of a thinner cut
 * @param evenness content at that depth over that of the face, in (0, 1)
 * @param thawed whether the meat was frozen before, which lets salt in faster
 */
public record SaltWish(double share, OptionalDouble depth, double evenness, boolean thawed) {

  /** Depth at which salt is judged [m]: a centimetre, what a slice has of rind; assumed. */
  public static final double USUAL_DEPTH = 0.01;

  /** Salt of raw meat [kg/kg]: what roasts are usually given; assumed. */
  public static final double USUAL_SHARE = 0.012;

  /** Content at the depth over that of the face: half; assumed. */
  public static final double USUAL_EVENNESS = 0.5;

  /** Largest share of salt that is computed with; more is curing. */
  public static final double MOST = 0.1;

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public SaltWish {
    if (!(share > 0 && share <= MOST)) {
      throw new IllegalArgumentException("share must be in (0, 10 %], was " + 100 * share + " %");
    }
    if (!(evenness > 0 && evenness < 1)) {
      throw new IllegalArgumentException(
          "evenness must be above 0 and below 100 %, was " + 100 * evenness + " %");
    }
  }
}
