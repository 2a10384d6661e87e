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
  private static final double ALIKE = 0.25;

  private final Plan plan;
  private final PlanClock clock;
  private final TemperatureScale scale;

  PullWords(Plan plan, PlanClock clock, TemperatureScale scale) {
    this.plan = plan;
    this.clock = clock;
    this.scale = scale;
  }

  String text() {
    return readings() + paces();
  }

  /** How far the display is drawn on in the middle [K]. */
  private double drawn() {
    Pull pull = plan.pull();
    double middle = plan.lead() + plan.milestone(Milestone.Kind.PULL).time().median();
    return pull.ahead() == 0 ? 0 : Math.max(0, pull.target(middle) - plan.reading());
  }

  private String readings() {
    Pull pull = plan.pull();
    List<String> words = new ArrayList<>();
    int last = pull.times().size() - 1;
    if (first() == last) {
      return "at " + reading(last) + " whenever that is";
    }
    for (int k = first(); k <= last; k++) {
      String when = clock.text(pull.times().get(k) - plan.lead());
      String one = reading(k) + (k == last ? " from " : " at ") + when + (k == last ? " on" : "");
      words.add(one + (k == first() ? before(k) : ""));
    }
    return "at " + String.join(", ", words) + ", evenly between";
  }

  /** What holds before a step, in brackets. */
  private String before(int k) {
    Pull pull = plan.pull();
    boolean steps = k > 0 && pull.targets().get(k - 1) - pull.targets().get(k) > ALIKE;
    return steps ? " (" + reading(k - 1) + " before)" : "";
  }

  /** Index of the first target of the window, after a step; the last if all are alike. */
  private int first() {
    Pull pull = plan.pull();
    int last = pull.times().size() - 1;
    double most = pull.targets().stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    double least = pull.targets().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    if (most - least < ALIKE) {
      return last;
    }
    return last > 0 && pull.times().get(0).equals(pull.times().get(1)) ? 1 : 0;
  }

  private String reading(int k) {
    return scale.text(plan.pull().targets().get(k) - drawn());
  }

  private String paces() {
    double drawn = drawn();
    if (drawn < ALIKE) {
      return "";
    }
    double rise = drawn / plan.pull().ahead() * TEN_MINUTES;
    return String.format(
        Locale.ROOT,
        "; that is where it rose %s in ten minutes: %s less for every %s more",
        scale.differenceText(rise),
        scale.differenceText(plan.pull().ahead() / TEN_MINUTES),
        scale.differenceText(1));
  }
}
