package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.roastfield.core.plan.Evenness;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * How deep the middle cook is done beyond the wish, and what would make that less.
 *
 * @param own of the cook as stated
 * @param wished how deep it may be at most [m]
 * @param ways that were tried, none if it is met
 */
public record RingWish(Evenness own, double wished, List<Way> ways) {

  /** How much cooler gentle heat is tried [K]. */
  private static final double[] COOLER = {5, 10, 20, 40};

  private static final double WORTH_A_WORD = 60;

  /** Copies the list. */
  public RingWish {
    ways = List.copyOf(ways);
  }

  /**
   * Something that would change it.
   *
   * @param how in words
   * @param grey depth that is left [m]
   * @param later it is off the gentle heat [s]
   */
  public record Way(String how, double grey, double later) {}

  /**
   * The wish of a file against the middle of the beliefs; empty if there is none, or if that cook
   * does not get to its end.
   *
   * @param held how long it waits for its sear, or is kept after its rest [s]
   * @param hotter the cook on another gentle heat, if there can be one [K]
   * @param sears weighed, if the cook has one
   * @param scale of temperatures in words
   */
  static Optional<RingWish> of(
      PlanRequest request,
      double held,
      OptionalDouble wished,
      Optional<DoubleFunction<PlannedCook>> hotter,
      Optional<SearTable> sears,
      TemperatureScale scale) {
    if (wished.isEmpty()) {
      return Optional.empty();
    }
    SearPlanner planner = SearPlanner.withDefaults();
    Evenness own = planner.evenness(request, held);
    if (own.pull() == Double.POSITIVE_INFINITY) {
      return Optional.empty();
    }
    List<Way> ways = new ArrayList<>();
    if (own.grey() > wished.getAsDouble()) {
      sears.flatMap(table -> leastGrey(table, scale)).ifPresent(ways::add);
      for (double kelvin : COOLER) {
        hotter
            .map(cooks -> cooks.apply(-kelvin))
            .map(cook -> planner.evenness(request.with(cook), held))
            .filter(Evenness::early)
            .ifPresent(even -> ways.add(cooler(kelvin, even, own, scale)));
      }
    }
    return Optional.of(new RingWish(own, wished.getAsDouble(), ways));
  }

  private static Way cooler(double kelvin, Evenness even, Evenness own, TemperatureScale scale) {
    return new Way(
        "a fire " + scale.wholeDifferenceText(kelvin) + " cooler",
        even.grey(),
        even.pull() - own.pull());
  }

  /** The sear of the least ring that leaves the crust as wished. */
  private static Optional<Way> leastGrey(SearTable table, TemperatureScale scale) {
    return table
        .leastGrey()
        .filter(one -> one.outcome().grey() < table.own().grey())
        .map(one -> new Way("a sear " + SearTable.words(one, scale), one.outcome().grey(), 0));
  }

  /** Whether the cook as stated is as even as wished. */
  public boolean isMet() {
    return own.grey() <= wished;
  }

  private String found(PlanRequest request, TemperatureScale scale) {
    return depth(own.grey()) + " done beyond " + scale.text(request.wish().high());
  }

  /** What comes of it, beside what is wished. */
  PlanLine line(PlanRequest request, TemperatureScale scale) {
    return new PlanLine(
        "ring", found(request, scale) + ", wished " + depth(wished) + " at most", "assumed");
  }

  /** Why it is not met, and what comes nearest. */
  Unmet problem(PlanRequest request, TemperatureScale scale) {
    Optional<Way> enough = ways.stream().filter(way -> way.grey <= wished).findFirst();
    Optional<Way> best = ways.stream().min(Comparator.comparingDouble(Way::grey));
    String advice =
        enough
            .map(way -> "It would be met by " + words(way) + ".")
            .orElseGet(
                () ->
                    best.filter(way -> way.grey < own.grey())
                        .map(way -> "Of what was tried the nearest is " + words(way) + ".")
                        .orElseGet(() -> none(scale)));
    String text = found(request, scale) + " instead of " + depth(wished) + " at most. " + advice;
    return new Unmet("RING_TOO_DEEP", wished, own.grey(), new PlanLine("Ring too deep", text, ""));
  }

  private static String none(TemperatureScale scale) {
    return String.format(
        Locale.ROOT,
        "Neither another sear nor a fire %.0f to %s cooler makes it less and still gets to the wish.",
        scale.difference(COOLER[0]),
        scale.wholeDifferenceText(COOLER[COOLER.length - 1]));
  }

  private static String words(Way way) {
    String later = Math.abs(way.later) < WORTH_A_WORD ? "" : ", off " + apart(way.later);
    return way.how + " (" + depth(way.grey) + later + ")";
  }

  private static String apart(double time) {
    return Words.duration(Math.abs(time)) + (time > 0 ? " later" : " earlier");
  }

  private static String depth(double metres) {
    return String.format(Locale.ROOT, "%.0f mm", 1000 * metres);
  }
}
