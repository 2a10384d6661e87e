package org.roastfield.core.grid;

/**
 * Cell widths that are fine at the heated face, grow by a constant ratio and stop growing at a cap,
 * so that the core is uniform.
 */
final class Widths {

  /**
   * Growth from cell to cell away from the face: serves from 16 cells up; less is better from 20 up
   * (docs/numerics.md).
   */
  static final double GROWTH = 1.2;

  private static final int BISECTIONS = 200;

  private Widths() {}

  /**
   * Widths from the heated face inwards, adding up to {@code total}.
   *
   * @param cells at least 1
   * @param total greater than 0
   * @param first wished width at the face; used if it is below total / cells, otherwise the grid is
   *     uniform
   * @return [cells]
   */
  static double[] capped(int cells, double total, double first) {
    double[] widths = new double[cells];
    double uniform = total / cells;
    if (first >= uniform) {
      java.util.Arrays.fill(widths, uniform);
      return widths;
    }
    double ratio = GROWTH;
    double cap = total;
    if (fill(widths, first, ratio, cap) >= total) {
      cap = bisect(widths, first, total, false, uniform, total);
    } else {
      ratio = bisect(widths, first, total, true, GROWTH, total / first + 1);
    }
    double sum = fill(widths, first, ratio, cap);
    for (int i = 0; i < cells; i++) {
      widths[i] *= total / sum;
    }
    return widths;
  }

  private static double fill(double[] widths, double first, double ratio, double cap) {
    double width = first;
    double sum = 0;
    for (int i = 0; i < widths.length; i++) {
      widths[i] = Math.min(width, cap);
      sum += widths[i];
      width = Math.min(width * ratio, cap);
    }
    return sum;
  }

  /** The growth, or else the cap, with which widths add up to {@code total}. */
  private static double bisect(
      double[] widths, double first, double total, boolean growth, double low, double high) {
    double a = low;
    double b = high;
    for (int i = 0; i < BISECTIONS && b > Math.nextUp(a); i++) {
      double middle = 0.5 * (a + b);
      double sum =
          growth ? fill(widths, first, middle, total) : fill(widths, first, GROWTH, middle);
      if (sum < total) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return b;
  }
}
