package org.roastfield.core.integration;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.parameter.ParameterPoint;

/** The cooks around a point, from the caller's own way of building one. */
public final class CookVariations {

  /**
   * Half the difference of a parameter, as a share of its scale: the errors of truncation, 1e-10,
   * and of round-off, 1e-11, are both small.
   */
  private static final double STEP = 1e-5;

  /** The whole difference where a parameter can move to one side only. */
  private static final double ONE_SIDED_STEP = 1e-7;

  private CookVariations() {}

  /** One variation a parameter. */
  public static List<CookVariation> around(
      ParameterPoint point, Cook cook, Function<ParameterPoint, Cook> cooks) {
    List<CookVariation> variations = new ArrayList<>();
    for (int p = 0; p < point.size(); p++) {
      variations.add(variation(point, p, cook, cooks));
    }
    return variations;
  }

  private static CookVariation variation(
      ParameterPoint point, int p, Cook cook, Function<ParameterPoint, Cook> cooks) {
    ParameterPoint.Coordinate at = point.coordinate(p);
    double above = at.value() + STEP * at.scale();
    double below = at.value() - STEP * at.scale();
    try {
      return CookVariation.of(
          cook,
          cooks.apply(point.moved(p, above)),
          cooks.apply(point.moved(p, below)),
          above - below);
    } catch (IllegalArgumentException atABound) {
      return oneSided(point, p, cook, cooks, atABound);
    }
  }

  private static CookVariation oneSided(
      ParameterPoint point,
      int p,
      Cook cook,
      Function<ParameterPoint, Cook> cooks,
      IllegalArgumentException atABound) {
    ParameterPoint.Coordinate at = point.coordinate(p);
    for (int sign = -1; sign <= 1; sign += 2) {
      double moved = at.value() + sign * ONE_SIDED_STEP * at.scale();
      double width = Math.abs(moved - at.value());
      try {
        Cook other = cooks.apply(point.moved(p, moved));
        return sign < 0
            ? CookVariation.of(cook, cook, other, width)
            : CookVariation.of(cook, other, cook, width);
      } catch (IllegalArgumentException onThisSide) {
        atABound.addSuppressed(onThisSide);
      }
    }
    throw new IllegalArgumentException(
        "the cook must vary smoothly with \""
            + at.name()
            + "\" on one side at least of "
            + at.value()
            + ": "
            + atABound.getMessage(),
        atABound);
  }
}
