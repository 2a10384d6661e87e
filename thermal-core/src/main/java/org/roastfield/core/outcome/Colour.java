package org.roastfield.core.outcome;

/**
 * Colour of red meat by time at temperature, eq. (66): the share of its pigment that has changed.
 * Hours of low heat look more done than the same highest temperature reached fast.
 *
 * @param pigment whose kinetics
 * @param changed share changed over the cross-section, in [0, 1]
 */
public record Colour(FirstOrder pigment, CrossSection changed) {

  /** Share changed up to which meat looks rare; literature, read in a thesis on [Geileskey1998]. */
  public static final double LOOKS_RARE = 0.065;

  /** Share changed from which meat looks well done; literature, as {@link #LOOKS_RARE}. */
  public static final double LOOKS_WELL_DONE = 0.93;

  /** Of a computed cook. */
  public static Colour of(CookedCut cut, FirstOrder pigment) {
    return new Colour(pigment, cut.over(pigment::changed));
  }

  /** Share of the volume that looks rare, in [0, 1]. */
  public double rare() {
    return changed.shareBelow(LOOKS_RARE);
  }

  /** Share of the volume between the two looks, in [0, 1]. */
  public double between() {
    return changed.share(LOOKS_RARE, LOOKS_WELL_DONE);
  }

  /** Share of the volume that looks well done, in [0, 1]. */
  public double wellDone() {
    return 1 - changed.shareBelow(LOOKS_WELL_DONE);
  }
}
