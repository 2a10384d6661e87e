package org.roastfield.lab.diagnosis;

import java.util.Locale;
import java.util.Optional;

/**
 * Something that a calibration has to say of itself.
 *
 * @param kind what about
 * @param weight how much it matters
 * @param log of which log, if of one
 * @param words a sentence
 */
public record Finding(Kind kind, Weight weight, Optional<String> log, String words) {

  /** What a finding is about. */
  public enum Kind {
    /** Readings that are missing, or look like no cook. */
    DATA,
    /** A likely cause of a misfit. */
    CAUSE,
    /** Logs and what was believed before do not go together. */
    CONFLICT,
    /** What the model misses of a log. */
    RESIDUALS,
    /** What the logs tell. */
    LEARNED,
    /** What they cannot tell. */
    NOT_TOLD,
    /** How much one log decides. */
    INFLUENCE,
    /** How the search went. */
    SEARCH,
    /** How what was not used lies to what was foretold of it. */
    FORETOLD,
    /** What one more measurement would teach. */
    NEXT;

    /** As files write it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** How much a finding matters. */
  public enum Weight {
    /** Good to know. */
    NOTE,
    /** Worth a look before the profile is used. */
    DOUBT,
    /** The profile is not to be relied on. */
    MISFIT
  }

  static Finding of(Kind kind, Weight weight, String words) {
    return new Finding(kind, weight, Optional.empty(), words);
  }

  static Finding of(Kind kind, Weight weight, String log, String words) {
    return new Finding(kind, weight, Optional.of(log), words);
  }
}
