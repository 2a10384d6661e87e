package org.roastfield.lab.files;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Something that happened in a logged cook.
 *
 * @param time since the cut went on [s], at least 0
 * @param end of what lasts, such as an open lid [s], after {@code time}; NaN if it has none
 * @param kind what happened
 * @param origin who says so
 * @param note anything in words, perhaps empty; untrusted text
 */
public record LogEvent(double time, double end, Kind kind, Origin origin, String note) {

  /** Longest note [characters]. */
  static final int LONGEST_NOTE = 400;

  /** What happened. */
  public enum Kind {
    /** The lid is off. */
    LID_OPENED,
    /** The cut is turned over or rolled on. */
    TURNED,
    /** A wrap is put on. */
    WRAPPED,
    /** A wrap is taken off. */
    UNWRAPPED,
    /** Fuel is added. */
    FUEL_ADDED,
    /** The setting of the cooker is changed. */
    SETTING_CHANGED,
    /** Water or a marinade is put on the cut. */
    BASTED,
    /** A probe is put somewhere else. */
    PROBE_MOVED,
    /** A probe comes out of the cut. */
    PROBE_OUT,
    /** The cut comes off the heat. */
    TAKEN_OFF,
    /** Anything else, in the note. */
    REMARK;

    /** As files write it, such as "lid-opened". */
    public String word() {
      return LogEvent.word(name());
    }
  }

  /** Who says that something happened. */
  public enum Origin {
    /** The cook wrote it down. */
    COOK,
    /** A device logged it. */
    DEVICE,
    /** It is read off the readings, and may be wrong. */
    INFERRED;

    /** As files write it. */
    public String word() {
      return LogEvent.word(name());
    }
  }

  /** Checks times and note. */
  public LogEvent {
    if (!(time >= 0 && time <= LogRows.LONGEST)) {
      throw new IllegalArgumentException("time must be from 0 to thirty days [s], was " + time);
    }
    if (!(Double.isNaN(end) || (end > time && end <= LogRows.LONGEST))) {
      throw new IllegalArgumentException(
          "end must be after time and at most thirty days [s], or NaN, was " + end);
    }
    Notes.check("note", note, LONGEST_NOTE);
  }

  /** Kind of a word, if it is one. */
  static Optional<Kind> kind(String word) {
    return Arrays.stream(Kind.values()).filter(kind -> kind.word().equals(word)).findFirst();
  }

  /** Origin of a word, if it is one. */
  static Optional<Origin> origin(String word) {
    return Arrays.stream(Origin.values()).filter(one -> one.word().equals(word)).findFirst();
  }

  private static String word(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
