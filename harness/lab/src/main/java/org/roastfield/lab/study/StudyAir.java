package org.roastfield.lab.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.synthetic.Noise;

/**
 * Air of a {@link StudyCook} to its horizon, as its chamber's probe showed it every {@link
 * StudyCook#INTERVAL}.
 *
 * @param shown readings [K]
 * @param openings of the lid, which were noted
 */
record StudyAir(List<Double> shown, List<Lid.Opening> openings) {

  private static final double DRIFT = 4;
  private static final double DRIFT_TIME = 1800;

  /** Openings as plans draw them: up to two of a minute and a half, each in half of a span [s]. */
  private static final double OPEN = 90;

  private static final double FROM = 600;
  private static final double SPAN = 8000;

  /** Copies the lists. */
  StudyAir {
    shown = List.copyOf(shown);
    openings = List.copyOf(openings);
  }

  /** Air that drifts by 4 K over half an hour under a lid that stays shut. */
  static StudyAir usual(Noise noise) {
    return new StudyAir(drifting(DRIFT, DRIFT_TIME, noise), List.of());
  }

  /**
   * Air of a cooker with numbers of its own.
   *
   * @param coordinates of {@link FireParameters#ofHabit} in this cook
   */
  static StudyAir of(double[] coordinates, Noise noise) {
    double[] habit = FireParameters.ofHabit().values(coordinates);
    List<Double> closed = drifting(habit[0], habit[1], noise);
    List<Lid.Opening> openings = new ArrayList<>();
    int count = (int) (3 * noise.uniform());
    for (int half = 0; half < count; half++) {
      double opens = FROM + SPAN * (half + 0.9 * noise.uniform()) / 2;
      openings.add(new Lid.Opening(opens, OPEN));
    }
    Optional<Lid> lid = openings.isEmpty() ? Optional.empty() : Optional.of(new Lid(openings));
    double fall = habit[2] * (StudyCook.SETTING - Lid.OPEN_AIR);
    List<Double> shown = new ArrayList<>();
    for (int k = 0; k < closed.size(); k++) {
      double time = k * StudyCook.INTERVAL;
      double fallen = lid.map(one -> one.fallen(time, habit[3] * Lid.RECOVERY)).orElse(0.0);
      shown.add(closed.get(k) - fall * fallen + ChamberTrace.NOISE * noise.normal());
    }
    return new StudyAir(shown, openings);
  }

  private static List<Double> drifting(double deviation, double correlationTime, Noise noise) {
    int count = (int) (StudyCook.HORIZON / StudyCook.INTERVAL) + 1;
    double[] drift = noise.correlated(count, StudyCook.INTERVAL, deviation, correlationTime);
    return Arrays.stream(drift).mapToObj(each -> StudyCook.SETTING + each).toList();
  }

  /** The first so many readings; a copy. */
  double[] shown(int count) {
    return shown.stream().limit(count).mapToDouble(each -> each).toArray();
  }

  /** What the cook wrote down of openings that began before a time [s]. */
  List<LogEvent> events(double until) {
    return openings.stream()
        .filter(one -> one.opens() < until)
        .map(
            one ->
                new LogEvent(
                    one.opens(),
                    one.opens() + one.duration(),
                    LogEvent.Kind.LID_OPENED,
                    LogEvent.Origin.COOK,
                    ""))
        .toList();
  }
}
