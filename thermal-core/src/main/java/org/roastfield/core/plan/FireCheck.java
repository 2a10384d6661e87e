package org.roastfield.core.plan;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * A look at the display on the way, which decides how the fire is kept from then on: a cut that
 * would get to a reading late is slow, and gets a hotter fire.
 *
 * @param reading of the display [K]
 * @param ahead by how much the display is then drawn on, as fast as it rose over its last {@link
 *     Plan#AHEAD} kelvin [K], at least 0
 * @param until ends of bands of the time at which the display, drawn on, gets there, since the
 *     start of the cook, in order [s]; the last band has no end
 * @param hotter by how much hotter than stated the gentle heat is kept after that, one a band [K];
 *     negative for cooler
 * @param middle time of a usual cut, since the start of the cook [s]
 * @param lean by how much more the display must show at the pull for each second that it would get
 *     there after that, and less before, but for no more than {@link #MOST_RAISED} [K/s]: a slow
 *     cut and a fast one that show the same at the same time are not alike inside
 */
public record FireCheck(
    double reading,
    double ahead,
    List<Double> until,
    List<Double> hotter,
    double middle,
    double lean) {

  /** Most by which the look moves what the display must show [K]; assumed. */
  public static final double MOST_RAISED = 3;

  /**
   * @throws IllegalArgumentException if there is not one more change than ends of bands, these are
   *     out of order, {@code ahead} is negative, or another number is not finite
   */
  public FireCheck {
    Check.positive("reading", reading);
    Check.notNegative("ahead", ahead);
    until = List.copyOf(until);
    hotter = List.copyOf(hotter);
    Check.inRange("number of changes", hotter.size(), until.size() + 1, until.size() + 1);
    for (int i = 1; i < until.size(); i++) {
      Check.inRange("until", until.get(i), until.get(i - 1), Double.MAX_VALUE);
    }
    Check.finite("middle", middle);
    Check.finite("lean", lean);
  }

  /** That decides about the fire alone. */
  public FireCheck(double reading, double ahead, List<Double> until, List<Double> hotter) {
    this(reading, ahead, until, hotter, 0, 0);
  }

  /** The same that moves what the display must show at the pull. */
  FireCheck leaning(double middle, double lean) {
    return new FireCheck(reading, ahead, until, hotter, middle, lean);
  }

  /** The same change whenever the display gets there. */
  static FireCheck always(double reading, double hotter) {
    return new FireCheck(reading, 0, List.of(), List.of(hotter));
  }

  /**
   * When the display would get to the reading that it is drawn on to, since the start of the cook
   * [s]; infinite for one that never gets to the first.
   *
   * @param time at which it got to the reading [s]
   * @param pace of its last {@link Plan#AHEAD} kelvin [K/s]
   */
  double drawnOn(double time, double pace) {
    return ahead == 0 || time == Double.POSITIVE_INFINITY ? time : time + ahead / pace;
  }

  /**
   * By how much hotter the fire is kept [K].
   *
   * @param time at which the display, drawn on, gets there, since the start of the cook [s]
   */
  public double hotterAt(double time) {
    int band = 0;
    while (band < until.size() && time > until.get(band)) {
      band++;
    }
    return hotter.get(band);
  }

  /**
   * By how much more the display must show at the pull [K]; 0 for one that never gets there.
   *
   * @param time at which the display, drawn on, gets there, since the start of the cook [s]
   */
  public double raisedAt(double time) {
    return time < Double.POSITIVE_INFINITY ? raised(lean, time - middle) : 0;
  }

  /** The same of a lean [K/s] and how much later than usual that is [s]. */
  static double raised(double lean, double later) {
    return Math.max(-MOST_RAISED, Math.min(MOST_RAISED, lean * later));
  }
}
