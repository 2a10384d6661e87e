package org.roastfield.lab.files;

/** Checks of the text that people write beside numbers. */
final class Notes {

  private Notes() {}

  /** Refuses control characters, line ends among them, space at either end, and too long a text. */
  static void check(String name, String text, int longest) {
    if (text.length() > longest
        || !text.equals(text.strip())
        || text.chars().anyMatch(Character::isISOControl)) {
      throw new IllegalArgumentException(
          name
              + " must be one line of at most "
              + longest
              + " characters without space around it, was "
              + SourceText.quoted(text));
    }
  }

  /** Refuses temperatures that no reading has [K]. */
  static void checkTemperature(String name, double kelvin) {
    if (!(kelvin >= LogRows.COLDEST && kelvin <= LogRows.HOTTEST)) {
      throw new IllegalArgumentException(
          name + " must be from -100 °C to 1500 °C, was " + PeopleTable.celsius(kelvin));
    }
  }
}
