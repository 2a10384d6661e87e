package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/** Room that text takes in a drawing. */
final class Letters {

  /** Usual size of letters in a drawing. */
  static final double SIZE = 12;

  /** Mean width over size for the sans-serif faces that screens have; some are narrower. */
  private static final double ASPECT = 0.58;

  private Letters() {}

  /** About how wide a text is. */
  static double width(String text) {
    return ASPECT * SIZE * text.codePointCount(0, text.length());
  }

  /** The text, or its beginning and an ellipsis if it has more than {@code most} letters. */
  static String shortened(String text, int most) {
    int length = text.codePointCount(0, text.length());
    if (length <= most) {
      return text;
    }
    int end = text.offsetByCodePoints(0, Math.max(0, most - 1));
    return text.substring(0, end).stripTrailing() + "…";
  }

  /**
   * Places near the wanted ones that keep a distance from each other.
   *
   * @param wanted increasing
   * @param gap least distance between neighbours
   * @param low least place
   * @param high greatest place; passed if there is not room enough
   */
  static List<Double> spread(List<Double> wanted, double gap, double low, double high) {
    List<Double> places = new ArrayList<>();
    double least = low;
    for (double place : wanted) {
      places.add(Math.max(place, least));
      least = places.get(places.size() - 1) + gap;
    }
    double most = Math.max(high, low + gap * (wanted.size() - 1));
    for (int i = places.size() - 1; i >= 0; i--) {
      places.set(i, Math.min(places.get(i), most));
      most = places.get(i) - gap;
    }
    return places;
  }
}
