package org.roastfield.lab.intake;

/**
 * Something in a log that does not look like a cook, or that a cook should know of. It changes no
 * reading.
 *
 * @param kind what it is
 * @param channel where
 * @param from time [s]
 * @param until time [s], not before {@code from}
 * @param size how much, in what {@link Kind#unit()} says
 */
public record Finding(Kind kind, String channel, double from, double until, double size) {

  /** Kinds of finding. */
  public enum Kind {
    /** No reading for much longer than usual; size: how long. */
    GAP("gap", "s"),
    /** One reading far from those around it; size: how far. */
    SPIKE("spike", "K"),
    /** The same value for longer than its surroundings allow; size: how long. */
    FROZEN("frozen value", "s"),
    /** A reading earlier than the one before it; size: how much earlier. */
    OUT_OF_ORDER("out of order", "s"),
    /** Two readings of one time; size: how far apart. */
    DUPLICATE_TIME("duplicate time", "K"),
    /** A step as from degrees Celsius to degrees Fahrenheit, or back; size: the step. */
    UNIT_SWITCH("unit switch", "K"),
    /** Faster than meat changes, or hotter than wet meat gets; size: the change. */
    PROBE_IN_AIR("probe in air", "K"),
    /** A step that stays; size: the step. */
    PROBE_MOVED("probe moved", "K"),
    /** A dip of the chamber that comes back; size: its depth. */
    LID_OPENED("lid opened", "K"),
    /** The smallest step between readings; size: that step. */
    RESOLUTION("resolution", "K");

    private final String words;
    private final String unit;

    Kind(String words, String unit) {
      this.words = words;
      this.unit = unit;
    }

    /** In words. */
    public String words() {
      return words;
    }

    /** Unit of the size: "s" or "K". */
    public String unit() {
      return unit;
    }
  }

  /** Checks that the size is a number and the times are in order. */
  public Finding {
    if (!(until >= from)) {
      throw new IllegalArgumentException("until must not be before from, was " + until);
    }
    if (!Double.isFinite(size)) {
      throw new IllegalArgumentException("size must be finite, was " + size);
    }
  }
}
