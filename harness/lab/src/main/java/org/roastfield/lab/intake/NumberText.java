package org.roastfield.lab.intake;

/**
 * Reads decimal numbers without making objects: sign, digits, a decimal mark. One is made for a log
 * and used for each of its cells.
 */
final class NumberText {

  private static final int MOST_DIGITS = 15;
  private static final double[] POWERS = powers();

  private final char mark;
  private double value;
  private int decimals;

  NumberText(boolean decimalComma) {
    this.mark = decimalComma ? ',' : '.';
  }

  /** Reads {@code text} from {@code from} to {@code to}; whether it is a number and no more. */
  boolean read(String text, int from, int to) {
    int i = from;
    boolean negative = false;
    if (i < to && isSign(text.charAt(i))) {
      negative = text.charAt(i) != '+';
      i++;
    }
    long digits = 0;
    int count = 0;
    int point = -1;
    for (; i < to; i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        digits = 10 * digits + (c - '0');
        if (++count > MOST_DIGITS) {
          return false;
        }
      } else if (c == mark && point < 0) {
        point = count;
      } else {
        return false;
      }
    }
    decimals = point < 0 ? 0 : count - point;
    // Both exact, so the quotient is the nearest number.
    value = (negative ? -1 : 1) * (digits / POWERS[decimals]);
    return count > 0;
  }

  private static boolean isSign(char c) {
    return c == '-' || c == '+' || c == '\u2212';
  }

  /** The number read last. */
  double value() {
    return value;
  }

  /** Its digits after the mark. */
  int decimals() {
    return decimals;
  }

  private static double[] powers() {
    double[] powers = new double[MOST_DIGITS + 1];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = 10 * powers[i - 1];
    }
    return powers;
  }
}
