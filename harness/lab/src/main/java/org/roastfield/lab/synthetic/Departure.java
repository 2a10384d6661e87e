package org.roastfield.lab.synthetic;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * In what the truth of a made-up cook is another model than the one that is fitted: a cylinder,
 * slab or sphere of one coordinate, all faces alike, that dries and is fed, under a steady heat
 * transfer coefficient, with a probe that stays where it is.
 */
public enum Departure {
  /** Heat enters a cylinder's ends and a slab's edges too, as eq. (42) has it. */
  FINITE_LENGTH("heat enters at the ends or edges too"),
  /** The probe sits somewhere along a taper, not at the station that the cook file computes. */
  TAPER("the probe sits at another station of the taper"),
  /** The face has a constant wetness and neither dries nor is fed. */
  WETNESS_LAW("the wetness is constant"),
  /** One half of the surface, or one face of a slab, sees a cooler chamber than its probe. */
  CHAMBER_GRADIENT("one half or face sees a cooler chamber"),
  /** The heat transfer coefficient, and with it that of vapour, wanders: 12 % over 45 min. */
  WANDERING_HEAT_TRANSFER("the heat transfer coefficient wanders"),
  /** The probe slips to another place on the way, and nobody writes it down. */
  MOVED_PROBE("the probe slips, unlogged"),
  /** Four times as many cells, a quarter of the cell at the face, a hundredth of the error. */
  FINER_GRID("a finer grid and shorter steps");

  private final String words;

  Departure(String words) {
    this.words = words;
  }

  /** As files write it, such as "finite-length". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What departs, in words. */
  public String words() {
    return words;
  }

  /** Departure of a word, if it is one. */
  public static Optional<Departure> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
  }
}
