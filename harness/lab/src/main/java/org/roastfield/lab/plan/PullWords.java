package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Pull;
import org.roastfield.lab.timeline.TemperatureScale;

/** The rule of a pull in words: readings by the clock, and by how fast the display rises. */
final class PullWords {

  private static final double TEN_MINUTES = 600;

  /** Readings that differ by less are told as one [K]. */
  static final double ALIKE = 0.25;

  private final Pull pull;
  private final double lead;
  private final double drawn;
  private final PlanClock clock;
  private final TemperatureScale scale;

  /**
   * Of a rule.
   *
   * @param lead from the start of the cook to the clock's zero [s]
   * @param drawn how far the display is drawn on in the middle [K]
   */
  PullWords(Pull pull, double lead, double drawn, PlanClock clock, TemperatureScale scale) {
    this.pull = pull;
    this.lead = lead;
    this.drawn = drawn;
    this.clock = clock;
    this.scale = scale;
  }

  /** Of a plan. */
  static PullWords of(Plan plan, PlanClock clock, TemperatureScale scale) {
    Pull pull = plan.pull();
    double middle = plan.lead() + plan.milestone(Milestone.Kind.PULL).time().median();
    double drawn = pull.ahead() == 0 ? 0 : Math.max(0, pull.target(middle) - plan.reading());
    return new PullWords(pull, plan.lead(), drawn, clock, scale);
  }

  String text() {
    return readings() + paces();
  }

  /**
   * A minute of the clock at which readings are told.
   *
   * @param before target up to it [K]
   * @param after target from it on [K]
   */
  private record Knot(String when, double before, double after) {

    /** Steps too small to be told are none. */
    static Knot of(String when, double before, double after) {
      return new Knot(when, Math.abs(before - after) < ALIKE ? after : before, after);
    }

    boolean steps() {
      return before != after;
    }
  }

  private String readings() {
    double most = pull.targets().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double least = pull.targets().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    List<Knot> knots = knots();
    int last = knots.size() - 1;
    if (most - least < ALIKE || (last == 0 && !knots.get(0).steps())) {
      return "at " + reading(knots.get(last).after) + " whenever that is";
    }
    List<String> words = new ArrayList<>();
    for (int k = 0; k <= last; k++) {
      Knot knot = knots.get(k);
      boolean until = k == 0 && !knot.steps();
      words.add(
          reading(knot.after)
              + (k == last ? " from " : until ? " until " : " at ")
              + knot.when
              + (k == last ? " on" : "")
              + (knot.steps()
                  ? " (" + reading(knot.before) + (k == 0 ? " before)" : " just before)")
                  : ""));
    }
    return "at " + String.join(", ", words) + (last > 0 ? ", evenly between" : "");
  }

  /** Without ends that tell nothing, since what is beyond them is the same. */
  private List<Knot> knots() {
    List<Knot> knots = minutes();
    while (knots.size() > 1 && !knots.get(0).steps() && alike(knots.get(0), knots.get(1))) {
      knots.remove(0);
    }
    int last = knots.size() - 1;
    while (last > 0 && !knots.get(last).steps() && alike(knots.get(last - 1), knots.get(last))) {
      knots.remove(last);
      last--;
    }
    return knots;
  }

  /** Whether the line between two is level, as told. */
  private boolean alike(Knot one, Knot next) {
    return reading(one.after).equals(reading(next.before));
  }

  /** Targets at each minute of the clock that has one; several in one are a step. */
  private List<Knot> minutes() {
    List<Knot> knots = new ArrayList<>();
    int first = 0;
    for (int k = 0; k < pull.times().size(); k++) {
      boolean ends =
          k == pull.times().size() - 1
              || !clock.isoMinute(time(k)).equals(clock.isoMinute(time(k + 1)));
      if (ends) {
        knots.add(Knot.of(clock.text(time(k)), pull.targets().get(first), pull.targets().get(k)));
        first = k + 1;
      }
    }
    return knots;
  }

  private double time(int k) {
    return pull.times().get(k) - lead;
  }

  private String reading(double target) {
    return scale.text(target - drawn);
  }

  private String paces() {
    if (drawn < ALIKE) {
      return "";
    }
    double rise = drawn / pull.ahead() * TEN_MINUTES;
    return String.format(
        Locale.ROOT,
        "; that is where it rose %s in ten minutes: %.1f %s less for every %.1f %s more",
        scale.differenceText(rise),
        pull.ahead() / TEN_MINUTES,
        scale.differenceUnit(),
        1.0,
        scale.differenceUnit());
  }
}
