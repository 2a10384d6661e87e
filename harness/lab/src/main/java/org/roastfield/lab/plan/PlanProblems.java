package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.roastfield.core.plan.CoreWish;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Shortfall;
import org.roastfield.core.plan.Station;
import org.roastfield.lab.timeline.TemperatureScale;

/** Which wishes a plan does not meet, in words. */
final class PlanProblems {

  /** A station that misses its wish at least so often is told of. */
  private static final double OFTEN = 0.5;

  /** What says already that the core is not as wished. */
  private static final Set<Shortfall.Reason> OF_CORE =
      Set.of(
          Shortfall.Reason.HEAT_TOO_LOW,
          Shortfall.Reason.HEAT_TOO_SELDOM,
          Shortfall.Reason.SEAR_TOO_MUCH,
          Shortfall.Reason.MINIMUM_ABOVE_WISH);

  private final Plan plan;
  private final CoreWish wish;
  private final TemperatureScale scale;

  PlanProblems(Plan plan, CoreWish wish, TemperatureScale scale) {
    this.plan = plan;
    this.wish = wish;
    this.scale = scale;
  }

  List<Unmet> list() {
    List<Unmet> unmet = new ArrayList<>();
    for (Shortfall one : plan.shortfalls()) {
      unmet.add(new Unmet(one.reason().name(), one.wished(), one.reached(), problem(one)));
    }
    boolean ofCore = plan.shortfalls().stream().anyMatch(one -> OF_CORE.contains(one.reason()));
    if (!ofCore && Math.max(plan.chanceUnder(), plan.chanceOver()) >= OFTEN) {
      unmet.add(core());
    }
    for (Station.Result one : plan.stations()) {
      if (Math.max(one.chanceUnder(), one.chanceOver()) >= OFTEN) {
        unmet.add(station(one));
      }
    }
    return unmet;
  }

  /** A final core that misses its wish more often than not, if nothing else says so. */
  private Unmet core() {
    boolean under = plan.chanceUnder() > plan.chanceOver();
    double wished = under ? wish.low() : wish.high();
    double reached = plan.finalCore().median();
    PlanLine line =
        line(
            under ? "A core too cool" : "A core too hot",
            "it "
                + (under ? "falls short in " : "goes beyond in ")
                + chance(under ? plan.chanceUnder() : plan.chanceOver())
                + ", weighed against being in time",
            cores(wished, reached),
            under
                ? "More time: a later at-latest, a later latest service, a longer rest-at-most, or a"
                    + " hotter fire."
                : "Less demanded of the coldest, a shorter rest-at-most, or a cooler fire.");
    return new Unmet("CORE_NOT_AS_WISHED", wished, reached, line);
  }

  /** A station that misses its wish more often than not. */
  private Unmet station(Station.Result one) {
    boolean under = one.chanceUnder() > one.chanceOver();
    double wished = under ? one.wish().low() : one.wish().high();
    double reached = one.finalCore().median();
    PlanLine line =
        line(
            under ? "A station too cool" : "A station too hot",
            "the " + one.name() + (under ? " falls short" : " goes beyond"),
            cores(wished, reached),
            "Wishes nearer to each other or further apart, or the other end towards the heat.");
    return new Unmet("STATION_NOT_AS_WISHED", wished, reached, line);
  }

  private PlanLine problem(Shortfall shortfall) {
    double wished = shortfall.wished();
    double reached = shortfall.reached();
    return switch (shortfall.reason()) {
      case HEAT_TOO_LOW ->
          line(
              "Too little heat",
              "the gentle heat does not bring the display far enough in the time allowed",
              cores(wished, reached),
              "A hotter fire, a thinner cut, or a later at-latest.");
      case HEAT_TOO_SELDOM ->
          line(
              "Too little heat",
              "where it is slow the gentle heat does not bring the display far enough",
              "it gets there in " + chance(reached) + " instead of " + chance(wished),
              "A hotter fire, a thinner cut, a later at-latest, or logs of this cooker.");
      case SEAR_TOO_MUCH ->
          line(
              "Too much sear",
              "sear and carryover alone go beyond the wish",
              cores(wished, reached),
              "A shorter sear, or a thicker cut.");
      case MINIMUM_ABOVE_WISH ->
          line(
              "Minimum above the wish",
              "what is demanded lies above what is wished",
              cores(wished, reached),
              "A higher wish, or less chance demanded.");
      case MINIMUM_NOT_MET ->
          line(
              "Minimum not met",
              "no reading meets it with the chance demanded",
              chance(reached) + " instead of " + chance(wished),
              "A hotter fire, more time, or less chance demanded.");
      case TOO_LATE ->
          line(
              "Too late",
              "it should have gone on already",
              Words.duration(reached) + " left of " + Words.duration(wished),
              "A later service.");
      case LATE_TOO_OFTEN ->
          line(
              "Late too often",
              "times differ more than it may be kept",
              "ready by the latest service in " + chance(reached) + " instead of " + chance(wished),
              "A later latest service, a longer rest-at-most with a hold box, or logs of this"
                  + " cooker.");
      case HELD_TOO_LONG ->
          line(
              "Kept too long",
              "times differ so much that being on time means waiting",
              chance(reached) + " within the time to be kept, instead of " + chance(wished),
              "A later latest service, a longer rest-at-most with a hold box, or logs of this"
                  + " cooker.");
    };
  }

  private String cores(double wished, double reached) {
    return "final core " + scale.text(reached) + " instead of " + scale.text(wished);
  }

  private static PlanLine line(String subject, String reason, String numbers, String advice) {
    return new PlanLine(
        subject, reason + ": " + numbers + ". This plan is the nearest possible. " + advice, "");
  }

  private String chance(double chance) {
    return Words.chance(chance, plan.members());
  }
}
