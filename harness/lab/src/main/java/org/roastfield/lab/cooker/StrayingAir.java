package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.chamber.Drift;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.synthetic.Noise;

/**
 * What the air of a gentle heat does by itself in a cook to come: a drift about its setting, known
 * at knots one correlation time apart and straight between them, and up to two openings of the lid.
 * All of it follows from coordinates of a point, so that plans draw it like everything else. After
 * the last knot, some six hours on, the air stays as it is.
 *
 * <p>Plans take it {@linkplain #smooth smooth}; a truth is {@linkplain #rough rough} between the
 * same knots, as eq. (83) is.
 *
 * <p>Where a point has the cooker's own numbers, {@link FireParameters#ofHabit}, drift and openings
 * are its; else those of a fire tended by hand.
 */
public final class StrayingAir {

  private static final Drift DRIFT = Drift.BY_HAND;

  private static final int KNOTS = 12;

  /**
   * Samples of rough air from one knot to the next. A minute apart: straight between samples, it
   * must not look smooth to a log of a reading every two minutes.
   */
  private static final int SAMPLES = 35;

  /** Time from one to the next [s]. */
  private static final double STEP = DRIFT.correlationTime() / SAMPLES;

  private static final int STREAM = 13;

  /** How long the lid is open [s]; assumed. */
  static final double OPEN = 90;

  /** Openings fall from here on [s], each in its half of a span [s]; assumed. */
  private static final double FROM = 600;

  private static final double SPAN = 8000;

  /** Openings where a standard normal number is above these: 0, 1 or 2, alike probable. */
  private static final double ONE = -0.4307;

  private static final double TWO = 0.4307;

  /** Logistic curve of this slope is nearest to the normal distribution. */
  private static final double NORMAL_SLOPE = 1.702;

  private static final String OPENINGS = "openings";

  private static final ParameterSet PARAMETERS = parametersOf();

  private StrayingAir() {}

  /** Standard normal numbers that it follows from. */
  public static ParameterSet parameters() {
    return PARAMETERS;
  }

  private static ParameterSet parametersOf() {
    List<Parameter> list = new ArrayList<>();
    for (int k = 0; k < KNOTS; k++) {
      list.add(normal("drift-" + k, "assumed: vents moved by hand, 6-10 K over 20-60 min"));
    }
    String source = "assumed: the lid is opened up to twice for a minute and a half";
    list.add(normal(OPENINGS, source));
    list.add(normal("opening-0", source));
    list.add(normal("opening-1", source));
    return ParameterSet.of(list.toArray(new Parameter[0]));
  }

  private static Parameter normal(String id, String source) {
    return new Parameter(id, "1", Owner.CUT, Scale.PLAIN, 0, 1, -4, 4, source);
  }

  /** Air of a setting [K], what an opening costs spread over the time between two knots. */
  static Signal smooth(double setting, ParameterPoint point) {
    double knot = DRIFT.correlationTime();
    double[] values = drift(smoothed(apart(point)), point);
    for (Lid.Opening one : openings(point)) {
      double recovery = Lid.RECOVERY * own(point, FireParameters.LID_RECOVERY);
      double lost = (setting - open(setting, point)) * (1 + recovery) * one.duration() / knot;
      int before = (int) (one.opens() / knot);
      double share = one.opens() / knot - before;
      values[before] -= (1 - share) * lost;
      values[before + 1] -= share * lost;
    }
    return signal(setting, values, knot);
  }

  /**
   * The same as it is: openings of the lid are sharp, and between its knots the drift is a path of
   * the process, eq. (83).
   *
   * @param seed of what it does between knots, the same for a greater drift
   */
  static Signal rough(double setting, ParameterPoint point, long seed) {
    double[] drift = between(drift(1, point), point, Noise.ofSeed(seed, STREAM));
    Signal air = signal(setting, drift, STEP);
    List<Lid.Opening> openings = openings(point);
    double recovery = Lid.RECOVERY * own(point, FireParameters.LID_RECOVERY);
    return openings.isEmpty() ? air : new Lid(openings).over(air, open(setting, point), recovery);
  }

  /**
   * A path of the process through its knots: each sample is drawn given the one before and the knot
   * ahead, from the variance of a bridge.
   */
  private static double[] between(double[] knots, ParameterPoint point, Noise noise) {
    double apart = STEP / own(point, FireParameters.DRIFT_TIME);
    double deviation = own(point, FireParameters.DRIFT);
    double[] values = new double[(KNOTS - 1) * SAMPLES + 1];
    for (int k = 0; k < values.length; k++) {
      int left = SAMPLES - k % SAMPLES;
      if (left == SAMPLES) {
        values[k] = knots[k / SAMPLES];
        continue;
      }
      double whole = StrictMath.sinh((left + 1) * apart);
      double before = StrictMath.sinh(left * apart) / whole;
      double ahead = StrictMath.sinh(apart) / whole;
      double spread = deviation * Math.sqrt(2 * before * StrictMath.sinh(apart));
      values[k] = before * values[k - 1] + ahead * knots[k / SAMPLES + 1] + spread * noise.normal();
    }
    return values;
  }

  private static Signal signal(double setting, double[] drift, double step) {
    double[] times = new double[drift.length];
    double[] values = new double[drift.length];
    for (int k = 0; k < times.length; k++) {
      times[k] = k * step;
      values[k] = setting + drift[k];
    }
    return SampledSignal.of(times, values, 4 * step);
  }

  private static double open(double setting, ParameterPoint point) {
    double fall = Math.max(0, setting - Lid.OPEN_AIR);
    return setting - own(point, FireParameters.LID_DEPTH) * fall;
  }

  /** A number of the cooker's, or its median over cookers. */
  private static double own(ParameterPoint point, Parameter parameter) {
    return point.has(parameter.id()) ? point.value(parameter.id()) : parameter.median();
  }

  /** Time between knots over the correlation time. */
  private static double apart(ParameterPoint point) {
    return DRIFT.correlationTime() / own(point, FireParameters.DRIFT_TIME);
  }

  /**
   * Drift at the knots [K].
   *
   * @param factor on its standard deviation
   */
  private static double[] drift(double factor, ParameterPoint point) {
    double[] values = new double[KNOTS];
    double kept = StrictMath.exp(-apart(point));
    double deviation = factor * own(point, FireParameters.DRIFT);
    double drift = 0;
    for (int k = 0; k < KNOTS; k++) {
      double fresh = point.value("drift-" + k);
      drift = k == 0 ? fresh : kept * drift + Math.sqrt(1 - kept * kept) * fresh;
      values[k] = deviation * drift;
    }
    return values;
  }

  /**
   * Factor on a drift that is shorter than the time between knots: the mean over hours, which a cut
   * follows, then varies as that of the drift does.
   *
   * @param apart time between knots over the correlation time
   */
  private static double smoothed(double apart) {
    return apart <= 1 ? 1 : Math.sqrt(StrictMath.tanh(apart / 2) / (apart * StrictMath.tanh(0.5)));
  }

  /** Openings of the lid, in order of time. */
  public static List<Lid.Opening> openings(ParameterPoint point) {
    double number = point.value(OPENINGS);
    List<Lid.Opening> openings = new ArrayList<>();
    if (number > ONE) {
      openings.add(new Lid.Opening(when(point, 0), OPEN));
    }
    if (number > TWO) {
      openings.add(new Lid.Opening(when(point, 1), OPEN));
    }
    return openings;
  }

  /** In the first or second half of the span. */
  private static double when(ParameterPoint point, int half) {
    double share = 1 / (1 + StrictMath.exp(-NORMAL_SLOPE * point.value("opening-" + half)));
    return FROM + SPAN * (half + 0.9 * share) / 2;
  }
}
