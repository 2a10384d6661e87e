package org.roastfield.lab.files;

import java.util.Arrays;
import java.util.List;

/**
 * Scale that a wish for doneness is stated on. The same word means temperatures 5 to 11 K apart on
 * the two, so that a wish always names its scale.
 */
public enum ScaleName {
  /** Words of the trade. */
  TRADE("trade", List.of("blue", "rare", "medium-rare", "medium", "medium-well", "well done")),
  /** Words of research on steaks. */
  RESEARCH("research", List.of("very rare", "rare", "medium-rare", "medium", "well done"));

  private final String word;

  // List.of cannot be changed.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<String> degrees;

  ScaleName(String word, List<String> degrees) {
    this.word = word;
    this.degrees = degrees;
  }

  /** Word used in files. */
  public String word() {
    return word;
  }

  /** Degrees of doneness in files, from least to most done. */
  public List<String> degrees() {
    return degrees;
  }

  static ScaleName read(Entry entry) {
    String text = entry.text();
    List<String> words = Arrays.stream(values()).map(ScaleName::word).toList();
    return Arrays.stream(values())
        .filter(scale -> scale.word.equals(text))
        .findFirst()
        .orElseThrow(() -> entry.error(Spelling.oneOf(words, text)));
  }

  String degree(Entry entry) {
    if (!degrees.contains(entry.text())) {
      throw entry.error(Spelling.oneOf(degrees, entry.text()) + " (the " + word + " scale)");
    }
    return entry.text();
  }
}
