package org.roastfield.core.outcome;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * A cross-section by the names of one scale.
 *
 * @param scale whose names
 * @param shares of the volume in each band of the scale, in its order; they add up to one
 * @param target index of the band beyond which a ring counts, usually that of the coldest place
 * @param upperRing depth below the surface, or upper face, that is hotter than that band [m]
 * @param lowerRing the same below a slab's lower face [m]; 0 where the cut is treated alike all
 *     round
 * @param spread standard deviation by volume of the highest temperatures [K]
 */
public record Doneness(
    DonenessScale scale,
    List<Double> shares,
    int target,
    double upperRing,
    double lowerRing,
    double spread) {

  /** Copies the list. */
  public Doneness {
    shares = List.copyOf(shares);
  }

  /**
   * By the highest temperatures [K] over a cross-section, the ring beyond the band of the coldest
   * place.
   */
  public static Doneness of(DonenessScale scale, CrossSection highest) {
    return of(scale, highest, scale.indexAt(highest.least()));
  }

  /**
   * The same with the ring beyond a given band.
   *
   * @param target index of a band of the scale
   */
  public static Doneness of(DonenessScale scale, CrossSection highest, int target) {
    Check.inRange("target", target, 0, scale.bands().size() - 1);
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < scale.bands().size(); i++) {
      shares.add(highest.share(scale.bands().get(i).from(), scale.end(i)));
    }
    double end = scale.end(target);
    return new Doneness(
        scale,
        shares,
        target,
        highest.upperDepthAbove(end),
        highest.lowerDepthAbove(end),
        highest.spread());
  }

  /** Evenness: share of the volume in the target band, in [0, 1]. */
  public double evenness() {
    return shares.get(target);
  }
}
