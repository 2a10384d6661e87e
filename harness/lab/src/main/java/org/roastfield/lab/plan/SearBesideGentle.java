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
            + sear.clock().text(heat.from.time().median())
            + " to "
            + sear.clock().text(heat.to.time().median())
            + ", while "
            + other
            + (surely ? " is" : " may still be")
            + " on gentle heat, from "
            + gentle.clock().text(low.from.time().median())
            + " to "
            + gentle.clock().text(low.to.time().median())
            + (surely ? "" : " at its medians, but to " + latest() + " in one of ten")
            + ": raise it on one side alone, with "
            + other
            + " on the other"
            + (surely ? ", or " + moved() : "");
    return new PlanLine("sear beside gentle heat", text, "");
  }

  private String latest() {
    double high = low.to.time().high();
    return Double.isFinite(high) ? gentle.clock().text(high) : "no end";
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
