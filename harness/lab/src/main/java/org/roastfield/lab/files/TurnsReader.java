package org.roastfield.lab.files;

import java.util.List;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.Turns;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Reads the turns of a stage over a hot grate: of a slab, which is flipped with the lower face down
 * first, or of a round cut, which is rolled from side to side.
 *
 * @param turns how long the cut lies still
 * @param sides of the cut: 2 for a slab
 * @param slab whether faces are apart
 * @param words what the file says
 */
record TurnsReader(Turns turns, int sides, boolean slab, String words) {

  static TurnsReader read(Entry entry, boolean slab) {
    Section section =
        slab
            ? entry.section("count", "every", "at", "until")
            : entry.section("count", "every", "sides");
    return section.has("at") ? atTimes(section) : even(section, slab);
  }

  private static TurnsReader even(Section section, boolean slab) {
    section
        .optional("until")
        .ifPresent(
            entry -> {
              throw entry.error("until only beside at");
            });
    int sides = slab ? 2 : section.required("sides").wholeNumber(1, 12);
    Entry countEntry = section.required("count");
    int count = countEntry.wholeNumber(1, 240);
    if (!slab && count % sides != 0) {
      throw countEntry.error("a multiple of the " + sides + " sides");
    }
    Entry every = section.required("every");
    String words = count + " turns of " + every.text() + (slab ? "" : " over " + sides + " sides");
    Turns turns = Turns.every(every.quantity(Dimension.TIME, 1, 3600), count);
    return new TurnsReader(turns, sides, slab, words);
  }

  /** Flips at times since the start of the stage. */
  private static TurnsReader atTimes(Section section) {
    for (String key : List.of("count", "every")) {
      section
          .optional(key)
          .ifPresent(
              entry -> {
                throw entry.error("no " + key + " beside at");
              });
    }
    Entry at = section.required("at");
    List<Entry> items = at.items();
    double[] times =
        items.stream().mapToDouble(item -> item.quantity(Dimension.TIME, 1, 36_000)).toArray();
    double until = section.quantity("until", Dimension.TIME, 1, 36_000);
    Turns turns = at.guard(() -> Turns.at(until, times));
    String words =
        "turned after "
            + String.join(", ", items.stream().map(Entry::text).toList())
            + ", until "
            + section.required("until").text();
    return new TurnsReader(turns, 2, true, words);
  }

  /** Stages of the core, one for each time that a face is put on or taken off. */
  List<Stage> stages(String name, SurfaceLaw touched, SurfaceLaw free) {
    return slab ? turns.flips(name, free, touched) : turns.rolls(name, touched, free, sides);
  }
}
