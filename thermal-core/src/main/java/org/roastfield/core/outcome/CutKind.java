package org.roastfield.core.outcome;

/** What was done to meat before the cook, as far as published minima tell it apart. */
public enum CutKind {
  /** Whole muscle of beef, pork or lamb that nothing went into. */
  INTACT(
      "intact", "Bacteria of an intact cut are on its faces; a probe or a fork carries them in."),
  /** Mechanically tenderised, punctured or injected. */
  TENDERISED("tenderised", "Blades and needles carry bacteria of the faces into the middle."),
  /** Boned, rolled or tied, so that a face lies inside. */
  ROLLED(
      "rolled",
      "A face of the meat lies inside, where the heat comes last: what is asked of opened meat bears"
          + " on it, on the side of caution."),
  /** Ground or minced. */
  GROUND("ground", "What was on the faces is all through ground meat."),
  /** Birds. */
  POULTRY("poultry", "Time-temperature tables for meat do not hold for poultry."),
  /** Fish. */
  FISH("fish", "Heat short of the published minimum leaves parasites alive.");

  private final String word;
  private final String caution;

  CutKind(String word, String caution) {
    this.word = word;
    this.caution = caution;
  }

  /** Word for display. */
  public String word() {
    return word;
  }

  /** What is special about it. */
  public String caution() {
    return caution;
  }

  /** Whether the published tables of hold times for meat bear on it. */
  public boolean hasHoldTables() {
    return this == INTACT || this == TENDERISED || this == ROLLED;
  }
}
