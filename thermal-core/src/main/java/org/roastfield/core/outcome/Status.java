package org.roastfield.core.outcome;

/** What a number rests on. */
public enum Status {
  /** Measured, and read in the publication. */
  MEASURED("measured"),
  /** Taken from literature, directly or through another text. */
  LITERATURE("literature"),
  /** A judgement without measurement. */
  ASSUMED("assumed");

  private final String word;

  Status(String word) {
    this.word = word;
  }

  /** Word for display. */
  public String word() {
    return word;
  }
}
