package org.roastfield.lab.files;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Words that are known, and the nearest of them to one that is not. */
final class Spelling {

  private static final int LONGEST = 60;

  private Spelling() {}

  /**
   * Known word with the fewest edits, if that is at most half of its length; among equals the first
   * in the given order.
   */
  static Optional<String> nearest(String word, Collection<String> known) {
    return known.stream()
        .filter(candidate -> word.length() <= LONGEST)
        .filter(candidate -> 2 * distance(word, candidate) <= candidate.length())
        .min(Comparator.comparingInt(candidate -> distance(word, candidate)));
  }

  /** What is expected where one of the known words is. */
  static String oneOf(List<String> known, String word) {
    String hint = nearest(word, known).map(near -> "; nearest known: " + near).orElse("");
    return "one of " + String.join(", ", known) + hint;
  }

  /**
   * Fewest insertions, deletions, replacements and swaps of neighbours that turn one word into the
   * other.
   */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        d[i][j] = i == 0 || j == 0 ? i + j : step(a, b, i, j, d);
      }
    }
    return d[a.length()][b.length()];
  }

  private static int step(String a, String b, int i, int j, int[][] d) {
    int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int best = Math.min(replace, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
  }
}
