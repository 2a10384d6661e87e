package org.roastfield.lab.report;

/** Contrast of colours as WCAG 2.1 defines it. */
final class Contrast {

  private Contrast() {}

  /** Contrast ratio of two colours {@code #rrggbb}, from 1 to 21. */
  static double between(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance of {@code #rrggbb}. */
  static double luminance(String colour) {
    return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
  }

  private static double channel(String colour, int at) {
    double c = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
