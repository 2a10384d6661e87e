package org.roastfield.lab.files;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was done to the surface of a cut before it goes on.
 *
 * <p>A rub or a cap of fat makes the surface give less water than bare meat does: {@link #drive}.
 * Patting dry takes off a film of water of unknown thickness, which no face here has; it is
 * recorded.
 *
 * @param pattedDry whether it was patted dry; empty if not stated
 * @param rub what it was rubbed with, in the cook's words; untrusted text of the file
 * @param fatCap mean thickness of the fat on it [m]; empty if not stated
 */
public record SurfaceState(
    Optional<Boolean> pattedDry, Optional<String> rub, Optional<Double> fatCap) {

  /**
   * Surface drive of a rubbed face over that of bare meat. Assumed, from assumed shares of a wet
   * face's evaporation at the start of a cook, 0.35 of 0.6; either is known to about 40 %.
   */
  public static final double RUBBED = 0.58;

  /** The same under a cap of fat: 0.15 of 0.6. Assumed. */
  public static final double UNDER_FAT = 0.25;

  /** Standard deviation of the logarithm of any such factor; assumed. */
  public static final double SPREAD = 0.4;

  private static final SurfaceState UNSTATED =
      new SurfaceState(Optional.empty(), Optional.empty(), Optional.empty());

  /** Nothing is stated. */
  public static SurfaceState unstated() {
    return UNSTATED;
  }

  /** Whether anything is stated, and with it that a face may be taken to dry. */
  public boolean isStated() {
    return pattedDry.isPresent() || rub.isPresent() || fatCap.isPresent();
  }

  /**
   * Factor of the water that a face of this surface holds and gets, where it dries: the median of
   * what one knows before a log says more. Of fat and a rub the fat counts; either is taken to lie
   * on all of the surface.
   */
  public double drive() {
    if (fatCap.isPresent() && fatCap.get() > 0) {
      return UNDER_FAT;
    }
    return rub.isPresent() ? RUBBED : 1;
  }

  static SurfaceState read(Optional<Entry> entry, List<Fact> facts) {
    if (entry.isEmpty()) {
      return UNSTATED;
    }
    Section section = entry.get().section("patted-dry", "rub", "fat-cap");
    SurfaceState state =
        new SurfaceState(
            section.optional("patted-dry").map(Entry::flag),
            section.optional("rub").map(Entry::name),
            section.optional("fat-cap").map(e -> e.quantity(Dimension.LENGTH, 0, 0.05)));
    fact(section, "patted-dry", " (recorded; nothing is computed from it)", facts);
    fact(section, "rub", "", facts);
    fact(section, "fat-cap", "", facts);
    if (state.isStated()) {
      facts.add(
          new Fact(
              "surface drive",
              String.format(
                  Locale.ROOT, "%.2f of bare meat's, where it dries (assumed)", state.drive())));
    }
    return state;
  }

  private static void fact(Section section, String key, String remark, List<Fact> facts) {
    section
        .optional(key)
        .ifPresent(
            stated ->
                facts.add(new Fact("surface, " + key.replace('-', ' '), stated.text() + remark)));
  }
}
