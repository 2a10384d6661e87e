package org.roastfield.lab.files;

import org.roastfield.core.cook.StageEnd;

/**
 * Turning over a hot grate. A slab lies on one face and then on the other, the lower one first. A
 * round cut is rolled: every side is on the grate for one turn and off it for the others; one space
 * coordinate follows the side that is on first, as if it were all of the surface.
 *
 * @param count how often the cut is put down
 * @param every time it lies still [s]
 * @param sides of the cut: 2 for a slab
 * @param slab whether faces are apart
 * @param everyText {@code every} as written
 */
record Turns(int count, double every, int sides, boolean slab, String everyText) {

  static Turns read(Entry entry, boolean slab) {
    Section section =
        slab ? entry.section("count", "every") : entry.section("count", "every", "sides");
    int sides = slab ? 2 : section.required("sides").wholeNumber(1, 12);
    Entry countEntry = section.required("count");
    int count = countEntry.wholeNumber(1, 240);
    if (!slab && count % sides != 0) {
      throw countEntry.error("a multiple of the " + sides + " sides");
    }
    Entry every = section.required("every");
    return new Turns(count, every.quantity(Dimension.TIME, 1, 3600), sides, slab, every.text());
  }

  /** In words. */
  String words() {
    return count + " turns of " + everyText + (slab ? "" : " over " + sides + " sides");
  }

  /**
   * Adds one stage for each time that a face is put on or taken off.
   *
   * @param touched surroundings of what lies on the grate
   * @param free surroundings of what does not
   */
  void addTo(StageReader reader, String name, FaceSetup touched, FaceSetup free) {
    if (slab) {
      for (int i = 0; i < count; i++) {
        boolean lowerDown = i % 2 == 0;
        reader.add(
            name + ", turn " + (i + 1),
            lowerDown ? free : touched,
            lowerDown ? touched : free,
            StageEnd.after(every));
      }
      return;
    }
    for (int i = 0; i < count / sides; i++) {
      String round = name + ", round " + (i + 1);
      reader.add(round + " on", touched, touched, StageEnd.after(every));
      if (sides > 1) {
        reader.add(round + " off", free, free, StageEnd.after(every * (sides - 1)));
      }
    }
  }
}
