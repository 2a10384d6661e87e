package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;

/**
 * What a chamber does by itself during a cook: an Ornstein-Uhlenbeck drift at knots one correlation
 * time apart, and up to two openings of the lid. All of it follows from coordinates of a point, so
 * that plans draw it like everything else.
 */
final class TrialWeather {

  /** Fire by hand: 8 K with 35 min, as {@code Drift.BY_HAND}. */
  private static final double DRIFT = 8;

  private static final double KNOT = 2100;
  private static final int KNOTS = 10;

  /** How long the lid is open [s], and between when [s]; assumed. */
  private static final double OPEN = 90;

  private static final double FROM = 600;
  private static final double SPAN = 8000;

  /** Openings where a standard normal number is above these: 0, 1 or 2, alike probable. */
  private static final double ONE = -0.4307;

  private static final double TWO = 0.4307;

  private static final double KEPT = StrictMath.exp(-1);
  private static final String SOURCE = "standard normal, of the trial";

  private TrialWeather() {}

  static ParameterSet parameters() {
    List<Parameter> list = new ArrayList<>();
    for (int k = 0; k < KNOTS; k++) {
      list.add(normal("drift-" + k));
    }
    list.add(normal("openings"));
    list.add(normal("opening-0"));
    list.add(normal("opening-1"));
    return ParameterSet.of(list.toArray(new Parameter[0]));
  }

  private static Parameter normal(String id) {
    return new Parameter(id, "1", Owner.CUT, Scale.PLAIN, 0, 1, -4, 4, SOURCE);
  }

  /** Air of a setting [K], openings spread over the time between two knots. */
  static Signal smooth(double setting, ParameterPoint point) {
    double[] times = new double[KNOTS];
    double[] values = knots(setting, point, times);
    for (Lid.Opening one : openings(point)) {
      double lost = (setting - open(setting)) * (1 + Lid.RECOVERY) * one.duration() / KNOT;
      int knot = (int) (one.opens() / KNOT);
      double share = one.opens() / KNOT - knot;
      values[knot] -= (1 - share) * lost;
      values[knot + 1] -= share * lost;
    }
    return SampledSignal.of(times, values, 4 * KNOT);
  }

  /** The same with the lid's openings as they are. */
  static Signal sharp(double setting, ParameterPoint point) {
    double[] times = new double[KNOTS];
    Signal air = SampledSignal.of(times, knots(setting, point, times), 4 * KNOT);
    List<Lid.Opening> openings = openings(point);
    return openings.isEmpty() ? air : new Lid(openings).over(air, open(setting));
  }

  /** Air at the cut while the lid is open [K]: 30 K above the outside of 290 K. */
  private static double open(double setting) {
    return Math.min(setting, 320);
  }

  private static double[] knots(double setting, ParameterPoint point, double[] times) {
    double[] values = new double[KNOTS];
    double drift = point.value("drift-0");
    for (int k = 0; k < KNOTS; k++) {
      if (k > 0) {
        drift = KEPT * drift + Math.sqrt(1 - KEPT * KEPT) * point.value("drift-" + k);
      }
      times[k] = k * KNOT;
      values[k] = setting + DRIFT * drift;
    }
    return values;
  }

  private static List<Lid.Opening> openings(ParameterPoint point) {
    double number = point.value("openings");
    List<Lid.Opening> openings = new ArrayList<>();
    if (number > ONE) {
      openings.add(new Lid.Opening(when(point, 0), OPEN));
    }
    if (number > TWO) {
      openings.add(new Lid.Opening(when(point, 1), OPEN));
    }
    return openings;
  }

  /** In the first or second half of the span, by a logistic curve near the normal distribution. */
  private static double when(ParameterPoint point, int half) {
    double share = 1 / (1 + StrictMath.exp(-1.702 * point.value("opening-" + half)));
    return FROM + SPAN * (half + 0.9 * share) / 2;
  }
}
