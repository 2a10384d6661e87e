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
    if (!ofCore && plan.chanceUnder() + plan.chanceOver() >= OFTEN) {
      unmet.add(core());
    }
    for (Station.Result one : plan.stations()) {
      if (one.chanceUnder() + one.chanceOver() >= OFTEN) {
        unmet.add(station(one));
      }
    }
    return unmet;
  }

  /** A final core that misses its wish more often than not, if nothing else says so. */
  private Unmet core() {
    Miss miss = new Miss(plan.chanceUnder(), plan.chanceOver());
    double wished = miss.wished(wish);
    double reached = plan.finalCore().median();
    String advice =
        switch (miss.side()) {
          case UNDER ->
              "More time: a later at-latest, a later latest service, a longer rest-at-most, or a"
                  + " hotter fire.";
          case OVER -> "Less demanded of the coldest, a shorter rest-at-most, or a cooler fire.";
          case BOTH ->
              "A wider wish, a thicker cut, a cooler fire, a shorter sear, or logs of this cooker.";
        };
    PlanLine line =
        line(
            "A core " + miss.how(),
            "it " + miss.words() + ", weighed against being in time",
            cores(wished, reached),
            advice);
    return new Unmet("CORE_NOT_AS_WISHED", wished, reached, line);
  }

  /** A station that misses its wish more often than not. */
  private Unmet station(Station.Result one) {
    Miss miss = new Miss(one.chanceUnder(), one.chanceOver());
    double wished = miss.wished(one.wish());
    double reached = one.finalCore().median();
    PlanLine line =
        line(
            "A station " + miss.how(),
            "the " + one.name() + " " + miss.words(),
            cores(wished, reached),
            "Wishes nearer to each other or further apart.");
    return new Unmet("STATION_NOT_AS_WISHED", wished, reached, line);
  }

  /** On which sides a wish is missed. */
  private final class Miss {

    /** A side of a miss. */
    private enum Side {
      UNDER,
      OVER,
      /** More often than not only both together. */
      BOTH
    }

    private final double under;
    private final double over;

    Miss(double under, double over) {
      this.under = under;
      this.over = over;
    }

    Side side() {
      return under >= OFTEN ? Side.UNDER : over >= OFTEN ? Side.OVER : Side.BOTH;
    }

    String how() {
      return switch (side()) {
        case UNDER -> "too cool";
        case OVER -> "too hot";
        case BOTH -> "too uncertain";
      };
    }

    /** The end of the wish that is missed, or its middle [K]. */
    double wished(CoreWish wish) {
      return switch (side()) {
        case UNDER -> wish.low();
        case OVER -> wish.high();
        case BOTH -> wish.middle();
      };
    }

    String words() {
      return switch (side()) {
        case UNDER -> "falls short in " + chance(under);
        case OVER -> "goes beyond in " + chance(over);
        case BOTH -> "falls short in " + chance(under) + " and goes beyond in " + chance(over);
      };
    }
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
