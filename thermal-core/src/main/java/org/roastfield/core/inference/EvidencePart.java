package org.roastfield.core.inference;

import java.util.List;

/**
 * Some of the evidence: that of one log, say.
 *
 * @param series indices of its series
 * @param singles indices of its single readings
 */
public record EvidencePart(List<Integer> series, List<Integer> singles) {

  /** Copies the lists. */
  public EvidencePart {
    series = List.copyOf(series);
    singles = List.copyOf(singles);
  }

  /** One series. */
  public static EvidencePart ofSeries(int index) {
    return new EvidencePart(List.of(index), List.of());
  }

  /** One single reading. */
  public static EvidencePart ofSingle(int index) {
    return new EvidencePart(List.of(), List.of(index));
  }

  /**
   * Which rows of the evidence belong to it.
   *
   * @throws IllegalArgumentException if the evidence has no such series or reading
   */
  boolean[] rows(Evidence evidence) {
    boolean[] rows = new boolean[evidence.size()];
    for (int s : series) {
      check("series", s, evidence.series().size());
      int from = 0;
      for (int before = 0; before < s; before++) {
        from += evidence.series().get(before).size();
      }
      mark(rows, from, evidence.series().get(s).size());
    }
    for (int s : singles) {
      check("singles", s, evidence.singles().size());
      mark(rows, evidence.size() - evidence.singles().size() + s, 1);
    }
    return rows;
  }

  private static void mark(boolean[] rows, int from, int count) {
    for (int row = from; row < from + count; row++) {
      rows[row] = true;
    }
  }

  private static void check(String name, int index, int size) {
    if (index < 0 || index >= size) {
      throw new IllegalArgumentException(
          "an index of " + name + " must be below " + size + ", was " + index);
    }
  }
}
