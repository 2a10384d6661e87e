package org.roastfield.lab.plan;

import java.util.Optional;

/**
 * Two sears on one fire without room for both, one after the other.
 *
 * @param first which of them begins when it was planned to
 * @param second which waits for that
 * @param delay until the first is over [s]; at most so long where they need not meet
 * @param surely whether they meet at their medians
 */
record TwoSears(Sear first, Sear second, double delay, boolean surely) {

  /**
   * A sear.
   *
   * @param sheet its plan
   * @param step its beginning
   * @param from its median after the zero of a clock that both have [s]
   * @param takes how long it lasts [s]
   */
  record Sear(PlanSheet sheet, PlanStep step, double from, double takes) {

    private static Optional<Sear> of(PlanSheet sheet, PlanClock clock) {
      return sheet.step("sear").map(step -> of(sheet, step, clock.timeOf(sheet.clock())));
    }

    private static Sear of(PlanSheet sheet, PlanStep step, double shift) {
      double over = sheet.step("rest").orElseThrow().time().median();
      double begins = step.time().median();
      return new Sear(sheet, step, shift + begins, over - begins);
    }

    private String name() {
      return sheet.file().name();
    }

    private double shift() {
      return from - step.time().median();
    }

    /** How long it waits if another goes first [s]. */
    private double waitsFor(Sear other) {
      return Math.max(0, other.from + other.takes - from);
    }

    /** Whether the 10 to 90 % of when they begin have a time in common. */
    private boolean mayMeet(Sear other) {
      return shift() + step.time().low() < other.shift() + other.step.time().high()
          && other.shift() + other.step.time().low() < shift() + step.time().high();
    }
  }

  /**
   * Two that meet, or may: first is the one whose beginning leaves the other more of its slack, or
   * that comes first where they need not meet. Empty if they do not, or one cut has none.
   */
  static Optional<TwoSears> of(PlanSheet a, PlanSheet b) {
    Optional<Sear> one = Sear.of(a, a.clock());
    Optional<Sear> other = Sear.of(b, a.clock());
    return one.isEmpty() || other.isEmpty() ? Optional.empty() : of(one.get(), other.get());
  }

  private static Optional<TwoSears> of(Sear a, Sear b) {
    Sear early = a.from <= b.from ? a : b;
    Sear later = a.from <= b.from ? b : a;
    if (later.waitsFor(early) == 0) {
      return early.mayMeet(later)
          ? Optional.of(new TwoSears(early, later, early.takes, false))
          : Optional.empty();
    }
    double keeping = later.step.slack() - later.waitsFor(early);
    double turning = early.step.slack() - early.waitsFor(later);
    return Optional.of(
        turning > keeping
            ? new TwoSears(later, early, early.waitsFor(later), true)
            : new TwoSears(early, later, later.waitsFor(early), true));
  }

  PlanLine line() {
    String meeting =
        first.name()
            + " and "
            + second.name()
            + " come to the sear "
            + apart()
            + (surely ? "" : " at their medians, but may well meet");
    String order =
        ". Without room for both, "
            + first.name()
            + " first, for "
            + Words.duration(first.takes)
            + "; "
            + second.name()
            + " then waits for "
            + (surely ? "" : "at most ")
            + Words.duration(delay);
    return new PlanLine("two sears", meeting + order + cost(), "");
  }

  private String apart() {
    double apart = Math.abs(first.from - second.from);
    return apart < 30 ? "at one time" : Words.duration(apart) + " apart";
  }

  private String cost() {
    double slack = second.step.slack();
    if (delay <= slack) {
      return ", within its slack of "
          + Words.duration(slack)
          + ": all after it moves along, and its chance of being in time holds. What that wait does"
          + " to its core is not computed";
    }
    String chance =
        Double.isFinite(slack) && slack > 0
            ? ", beyond its slack of " + Words.duration(slack)
            : ", which has no slack";
    return chance + ": it is in time less often than is asked for. Serve it later, or plan it so";
  }
}
