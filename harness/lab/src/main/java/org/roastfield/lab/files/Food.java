package org.roastfield.lab.files;

/** Kind of food, which decides the published minimum that a result is held against. */
public enum Food {
  PORK("pork"),
  BEEF("beef"),
  LAMB("lamb"),
  POULTRY("poultry"),
  FISH("fish"),
  GROUND("ground"),
  VEGETABLE("vegetable"),
  /** The cook file does not say. */
  UNSTATED("unstated");

  private final String word;

  Food(String word) {
    this.word = word;
  }

  /** Word used in files and texts. */
  public String word() {
    return word;
  }
}
