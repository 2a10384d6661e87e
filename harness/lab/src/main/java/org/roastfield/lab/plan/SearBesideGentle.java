package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The heat for a sear of one cut on a fire that another cut needs gentle.
 *
 * @param sear plan of the cut that is seared
 * @param heat when that has its heat
 * @param gentle plan of the other
 * @param low when that is on the gentle heat, after the zero of the same clock
 * @param surely whether the two meet at their medians
 */
record SearBesideGentle(
    PlanSheet sear, Stretch heat, PlanSheet gentle, Stretch low, boolean surely) {

  /**
   * From one step to another of a plan.
   *
   * @param from first step
   * @param to last step
   * @param shift of the plan's zero after that of a clock that all have [s]
   */
  record Stretch(PlanStep from, PlanStep to, double shift) {

    private static Optional<Stretch> of(PlanSheet sheet, String from, String to, double shift) {
      return sheet
          .step(from)
          .filter(step -> Double.isFinite(step.time().median()))
          .flatMap(first -> sheet.step(to).map(last -> new Stretch(first, last, shift)))
          .filter(stretch -> Double.isFinite(stretch.to.time().median()));
    }

    private double begins() {
      return shift + from.time().median();
    }

    private double ends() {
      return shift + to.time().median();
    }

    private boolean meets(Stretch other) {
      return begins() < other.ends() && other.begins() < ends();
    }

    private boolean mayMeet(Stretch other) {
      return shift + from.time().low() < other.shift + other.to.time().high()
          && other.shift + other.from.time().low() < shift + to.time().high();
    }
  }

  /** The sears of one plan that meet, or may, another's gentle heat. */
  static List<SearBesideGentle> of(PlanSheet sear, PlanSheet gentle) {
    PlanClock clock = sear.clock();
    Optional<Stretch> low = Stretch.of(gentle, "on", "pull", clock.timeOf(gentle.clock()));
    List<SearBesideGentle> all = new ArrayList<>();
    for (Stretch heat : heats(sear)) {
      low.filter(heat::mayMeet)
          .ifPresent(
              one -> all.add(new SearBesideGentle(sear, heat, gentle, one, heat.meets(one))));
    }
    return all;
  }

  /** Of a sear before the gentle heat, and of one after it from when its heat is got ready. */
  private static List<Stretch> heats(PlanSheet sear) {
    List<Stretch> heats = new ArrayList<>();
    Stretch.of(sear, "first-sear", "on", 0).ifPresent(heats::add);
    String raised = sear.step("raise").isPresent() ? "raise" : PlanSteps.SEAR_HEAT_ID;
    Stretch.of(sear, raised, "rest", 0).ifPresent(heats::add);
    return heats;
  }

  PlanLine line() {
    String one = sear.file().name();
    String other = gentle.file().name();
    String text =
        one
            + " has its sear's heat from "
            + clock(sear, heat.from, heat.from.time().median())
            + " to "
            + clock(sear, heat.to, heat.to.time().median())
            + (surely ? ", while " + other + " is" : "; " + other + " is")
            + " on gentle heat, from "
            + clock(gentle, low.from, low.from.time().median())
            + " to "
            + clock(gentle, low.to, low.to.time().median())
            + (surely ? "" : "; they meet if " + mayMove())
            + ": raise it on one side alone, with "
            + other
            + " on the other"
            + (surely ? ", or " + moved() : "");
    return new PlanLine("sear beside gentle heat", text, "");
  }

  private static String clock(PlanSheet sheet, PlanStep step, double time) {
    return Double.isFinite(time) ? sheet.clock().text(time) : "no end of " + step.what();
  }

  /** How the two may come to meet: the one that is first by its medians lasts, in one of ten. */
  private String mayMove() {
    boolean gentleFirst = low.begins() < heat.begins();
    PlanSheet first = gentleFirst ? gentle : sear;
    PlanStep last = gentleFirst ? low.to : heat.to;
    return "that of "
        + first.file().name()
        + " lasts, in one of ten to "
        + clock(first, last, last.time().high());
  }

  /** Which of them moves by less until they do not meet. */
  private String moved() {
    double later = low.ends() - heat.begins();
    double after = heat.ends() - low.begins();
    return later <= after
        ? "serve " + sear.file().name() + " " + Words.duration(later) + " later"
        : "serve " + gentle.file().name() + " " + Words.duration(after) + " later";
  }
}
