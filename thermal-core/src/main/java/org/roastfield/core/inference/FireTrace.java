package org.roastfield.core.inference;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.chamber.FireCourse;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.FireState;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.chamber.Tending;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What a probe in the gas of a pit shows over a cook: a model of a chamber's log alone, for {@link
 * Calibration}. Where the pit is held the log says next to nothing of it; warming up, openings of
 * the lid, a change of setting, wide open vents and dying coals do.
 *
 * <p>Derivatives are central differences over 1/200 of a prior's spread. Immutable.
 */
public final class FireTrace implements ForwardModel {

  /**
   * How a tended pit strays from what is computed: as its setting is held by hand, which is all
   * that a fire's drift is; readings to half a kelvin. Assumed, and learned from the log.
   */
  public static final ErrorModel ERRORS = new ErrorModel(8, 2100, 0.5, 0);

  private static final double DIFFERENCE = 0.005;

  /** The probe follows the gas in steps of at most so much [s], as gas falls under an open lid. */
  private static final double LAG_STEP = 5;

  private final FirePit base;
  private final ParameterSet parameters;
  private final Outside outside;
  private final Start start;
  private final List<Tending> tending;
  private final double[] times;

  private FireTrace(
      FirePit base,
      ParameterSet parameters,
      Outside outside,
      Start start,
      List<Tending> tending,
      double[] times) {
    this.base = base;
    this.parameters = parameters;
    this.outside = outside;
    this.start = start;
    this.tending = tending;
    this.times = times;
  }

  /**
   * How a log begins.
   *
   * @param gas first reading [K]
   * @param glowing coals that glow then [kg]; not looked at if warm
   * @param warm whether the pit has long been held at the first setting; else its walls are as the
   *     gas
   */
  public record Start(double gas, double glowing, boolean warm) {

    /**
     * @throws IllegalArgumentException if the gas is not positive, or the coals are not while the
     *     pit is cold
     */
    public Start {
      Check.positive("gas", gas);
      if (!warm) {
        Check.positive("glowing", glowing);
      }
    }
  }

  /**
   * Prepares a model of a log.
   *
   * @param base pit that it is like
   * @param parameters free ones, of {@link FireParameters}
   * @param outside weather
   * @param start how the log begins
   * @param tending what was done, the first step at or before the first reading; settings finite
   *     where the pit was held
   * @param times of the readings [s], increasing; not modified
   * @throws IllegalArgumentException if there is no reading, or the first is before the first step,
   *     or a warm pit begins without a setting
   */
  public static FireTrace of(
      FirePit base,
      ParameterSet parameters,
      Outside outside,
      Start start,
      List<Tending> tending,
      double[] times) {
    Check.inRange("number of tending steps", tending.size(), 1, 10_000);
    Check.inRange("number of readings", times.length, 1, Integer.MAX_VALUE);
    Check.notNegative("time of the first reading after the first step", times[0] - first(tending));
    if (start.warm()) {
      Check.positive("setting that a warm pit begins with", tending.get(0).setting());
    }
    return new FireTrace(base, parameters, outside, start, List.copyOf(tending), times.clone());
  }

  private static double first(List<Tending> tending) {
    return tending.get(0).start();
  }

  /** Pit at coordinates. */
  public FirePit pit(double[] coordinates) {
    return FireParameters.pit(base, parameters, parameters.values(coordinates));
  }

  @Override
  public boolean at(double[] coordinates, double[] predicted, double @Nullable [][] derivatives) {
    if (!shown(coordinates, predicted)) {
      return false;
    }
    for (int p = 0; derivatives != null && p < parameters.size(); p++) {
      double step = DIFFERENCE * parameters.get(p).spread();
      double[] above = new double[times.length];
      double[] below = new double[times.length];
      if (!shown(moved(coordinates, p, step), above)
          || !shown(moved(coordinates, p, -step), below)) {
        return false;
      }
      for (int k = 0; k < times.length; k++) {
        derivatives[p][k] = (above[k] - below[k]) / (2 * step);
      }
    }
    return true;
  }

  private static double[] moved(double[] coordinates, int parameter, double step) {
    double[] moved = coordinates.clone();
    moved[parameter] += step;
    return moved;
  }

  private boolean shown(double[] coordinates, double[] predicted) {
    double[] values = parameters.values(coordinates);
    FireCourse course;
    try {
      course = course(values);
    } catch (IllegalArgumentException outOfRange) {
      return false;
    }
    double lag = value(values, "fire-probe-lag", 0);
    double time = course.start();
    double gas = course.airTemperature(time);
    double shown = start.gas();
    for (int k = 0; k < times.length; k++) {
      double gap = times[k] - time;
      int steps = lag > 0 ? (int) Math.ceil(gap / LAG_STEP) : 1;
      for (int s = 1; s <= steps; s++) {
        double next = course.airTemperature(s == steps ? times[k] : time + gap * s / steps);
        shown = lag > 0 ? followed(shown, gas, next, gap / steps / lag) : next;
        gas = next;
      }
      time = times[k];
      predicted[k] = shown;
    }
    return true;
  }

  /** What follows a gas that goes straight from one value to the next in x lags. */
  private static double followed(double shown, double gas, double next, double x) {
    double kept = StrictMath.exp(-x);
    double mean = -StrictMath.expm1(-x) / x;
    return shown * kept + next * (1 - mean) + gas * (mean - kept);
  }

  private FireCourse course(double[] values) {
    FirePit pit = FireParameters.pit(base, parameters, values);
    double offset = value(values, "fire-setting-offset", 0);
    List<Tending> meant = new ArrayList<>();
    for (Tending step : tending) {
      meant.add(step.shifted(offset));
    }
    double end = Math.max(times[times.length - 1], meant.get(meant.size() - 1).start() + 1);
    return pit.run(outside, state(pit, values, meant.get(0)), meant, end);
  }

  private FireState state(FirePit pit, double[] values, Tending first) {
    if (start.warm()) {
      FirePit.Held held = pit.held(outside, first.setting(), first.load());
      return FireState.held(start.gas(), held);
    }
    double strength = pit.bed().strength(start.glowing() * value(values, "fire-glowing", 1));
    return new FireState(
        start.gas(), start.gas(), Math.min(strength, pit.bed().power()), Double.POSITIVE_INFINITY);
  }

  private double value(double[] values, String id, double otherwise) {
    return parameters.has(id) ? values[parameters.index(id)] : otherwise;
  }
}
