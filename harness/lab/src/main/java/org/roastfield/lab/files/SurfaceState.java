package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;

/**
 * What was done to the surface of a cut before it goes on.
 *
 * <p>All of it is recorded, and nothing is computed from it: what a film of water, salt or a layer
 * of fat does to a face is in the numbers that a stage states for it (wetness, emissivity) and a
 * cut (water activity). Among the facts it says so.
 *
 * @param pattedDry whether it was patted dry; empty if not stated
 * @param rub what it was rubbed with, in the cook's words; untrusted text of the file
 * @param fatCap mean thickness of the fat on it [m]; empty if not stated
 */
public record SurfaceState(
    Optional<Boolean> pattedDry, Optional<String> rub, Optional<Double> fatCap) {

  private static final SurfaceState UNSTATED =
      new SurfaceState(Optional.empty(), Optional.empty(), Optional.empty());

  private static final String RECORDED = " (recorded; nothing is computed from it)";

  /** Nothing is stated. */
  public static SurfaceState unstated() {
    return UNSTATED;
  }

  static SurfaceState read(Optional<Entry> entry, List<Fact> facts) {
    if (entry.isEmpty()) {
      return UNSTATED;
    }
    Section section = entry.get().section("patted-dry", "rub", "fat-cap");
    for (String key : List.of("patted-dry", "rub", "fat-cap")) {
      section
          .optional(key)
          .ifPresent(
              stated ->
                  facts.add(
                      new Fact("surface, " + key.replace('-', ' '), stated.text() + RECORDED)));
    }
    return new SurfaceState(
        section.optional("patted-dry").map(Entry::flag),
        section.optional("rub").map(Entry::name),
        section.optional("fat-cap").map(e -> e.quantity(Dimension.LENGTH, 0, 0.05)));
  }
}
