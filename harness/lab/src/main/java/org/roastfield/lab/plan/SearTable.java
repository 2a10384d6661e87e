package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.SearOutcome;
import org.roastfield.core.plan.SearPlanner;
import org.roastfield.core.plan.SearSchedule;
import org.roastfield.core.plan.SearTrade;
import org.roastfield.lab.files.Wishes;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * Sears weighed against each other, each with the pull that gives the same final core.
 *
 * @param own the cook file's own sear
 * @param lengths sears like it that are shorter and longer, itself, and the shortest that gets to
 *     the wished crust, in order of length
 * @param others in other rounds or in another order, as long as it
 * @param heats sears half as long to four times as long, of other heat, and with each heat the
 *     shortest that gets to the wished crust
 * @param wished crust, if one is
 * @param held how long the cut waits for each, or is kept after its rest, as the expected cook [s]
 * @param touch what crusts are told of
 */
public record SearTable(
    SearOutcome own,
    List<SearOutcome> lengths,
    List<SearOutcome> others,
    List<Heated> heats,
    Optional<Wishes.Crust> wished,
    double held,
    Touch touch) {

  /** How a cut lies on the metal of its sears, if it does: what its crusts are told of. */
  public enum Touch {
    /** With all of a face, or not at all: a face is one. */
    WHOLE("crust %.0f (%.0f to %.0f) of 52", ""),
    /** With a part of a face: that part. */
    PART(
        "crust at most %.0f (%.0f to %.0f) of 52 where it touches, %.0f on average",
        " Crusts are those where the cut touches the metal, if no heat goes from there along its"
            + " face: as brown as they can get. Between such places it is paler, and the average is"
            + " that of a face that is one."),
    /** All round in turn, nobody says how: the mean all round. */
    MEAN(
        "crust %.0f (%.0f to %.0f) of 52, a mean all round",
        " Crusts are means all round, and are browner where the cut touches the metal: turns in the"
            + " cook file would tell of that.");

    private final String words;
    private final String sentence;

    Touch(String words, String sentence) {
      this.words = words;
      this.sentence = sentence;
    }

    /** What is to be known of crusts, as a sentence after another; empty for nothing. */
    public String sentence() {
      return sentence;
    }
  }

  /**
   * A sear with its heat.
   *
   * @param hotter than the file's, metal or else air [K]; 0 for as hot
   * @param outcome of it
   */
  public record Heated(double hotter, SearOutcome outcome) {}

  /** How much hotter sears are tried [K]. */
  private static final double[] HOTTER = {-40, 40, 80};

  private static final double[] HEATED_LENGTHS = {0.5, 1, 2, 3, 4};

  /** A ring narrower by less is not worth another sear [m]; assumed. */
  private static final double WORTH_IT = 0.001;

  private static final double[] LENGTHS = {0.5, 0.75, 1, 1.5, 2, 3};

  /** Index of the file's own among them. */
  private static final int OWN = 2;

  /** Where this program lets crusts begin, by the index of browning up to 52: assumed. */
  private static final double GOLDEN = 10;

  private static final double BROWN = 20;
  private static final double DARK = 32;

  /** Copies the lists. */
  public SearTable {
    lengths = List.copyOf(lengths);
    others = List.copyOf(others);
    heats = List.copyOf(heats);
  }

  /**
   * Sears of a request; empty if its cook has none, or one that does not end by the clock.
   *
   * @param held how long it is kept after its rest [s]
   * @param cooks of other sears
   */
  static Optional<SearTable> of(
      PlanRequest request, double held, Optional<Wishes.Crust> wished, SearCooks cooks) {
    Optional<SearSchedule> found = request.cook().sear(SearPlanner.middle(request.prior()));
    if (found.isEmpty()) {
      return Optional.empty();
    }
    SearSchedule own = found.get();
    List<SearSchedule> schedules = new ArrayList<>();
    for (double length : LENGTHS) {
      schedules.add(new SearSchedule(own.duration() * length, own.rounds(), own.order()));
    }
    if (own.rounds() > 1) {
      schedules.add(new SearSchedule(own.duration(), own.rounds() / 2, own.order()));
    }
    schedules.add(new SearSchedule(own.duration(), 2 * own.rounds(), own.order()));
    for (SearSchedule.Order order : SearSchedule.Order.values()) {
      if (order != own.order()) {
        schedules.add(new SearSchedule(own.duration(), own.rounds(), order));
      }
    }
    SearPlanner planner = cooks.planner(0);
    List<SearOutcome> all = planner.trade(request, schedules, held).outcomes();
    List<SearOutcome> lengths = new ArrayList<>(all.subList(0, LENGTHS.length));
    wished
        .flatMap(crust -> planner.reaching(request, from(crust), lengths, held))
        .ifPresent(lengths::add);
    lengths.sort(Comparator.comparingDouble(one -> one.schedule().duration()));
    return Optional.of(
        new SearTable(
            all.get(OWN),
            lengths,
            all.subList(LENGTHS.length, all.size()),
            heats(request, own, held, wished, cooks),
            wished,
            held,
            cooks.touch()));
  }

  /** The one that was computed aside; what went wrong there is thrown as if it had been here. */
  static Optional<SearTable> awaited(CompletableFuture<Optional<SearTable>> aside) {
    try {
      return aside.join();
    } catch (CompletionException wrapped) {
      if (wrapped.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw wrapped;
    }
  }

  private static List<Heated> heats(
      PlanRequest request,
      SearSchedule own,
      double held,
      Optional<Wishes.Crust> wished,
      SearCooks cooks) {
    List<SearSchedule> schedules =
        Arrays.stream(HEATED_LENGTHS)
            .mapToObj(
                length -> new SearSchedule(length * own.duration(), own.rounds(), own.order()))
            .toList();
    List<Heated> heats = new ArrayList<>();
    for (double kelvin : HOTTER) {
      Optional<PlannedCook> cook = cooks.hotter(kelvin);
      if (cook.isPresent()) {
        SearPlanner planner = cooks.planner(kelvin);
        PlanRequest heated = request.with(cook.get());
        List<SearOutcome> found =
            new ArrayList<>(planner.trade(heated, schedules, held).outcomes());
        wished
            .flatMap(crust -> planner.reaching(heated, from(crust), List.copyOf(found), held))
            .ifPresent(found::add);
        found.sort(Comparator.comparingDouble(one -> one.schedule().duration()));
        found.forEach(outcome -> heats.add(new Heated(kelvin, outcome)));
      }
    }
    return heats;
  }

  /** All of them, those that differ in length first. */
  public List<SearOutcome> all() {
    List<SearOutcome> all = new ArrayList<>(lengths);
    all.addAll(others);
    return all;
  }

  /** Where a crust begins on the index of browning; assumed. */
  static double from(Wishes.Crust crust) {
    return switch (crust) {
      case PALE -> 0;
      case GOLDEN -> GOLDEN;
      case BROWN -> BROWN;
      case DARK -> DARK;
    };
  }

  /** A sear in words, such as "last, 200 s in 2 rounds". */
  public static String words(SearSchedule schedule) {
    String rounds =
        schedule.rounds() == 1
            ? ""
            : String.format(Locale.ROOT, " in %d rounds", schedule.rounds());
    return String.format(
        Locale.ROOT,
        "%s, %.0f s%s",
        schedule.order().name().toLowerCase(Locale.ROOT),
        schedule.duration(),
        rounds);
  }

  /** What the sear does, what is wished, and what would come nearer to it. */
  PlanLine line(TemperatureScale scale) {
    return new PlanLine("sear", text(scale), "assumed");
  }

  /**
   * That the crust is paler than wished, where it touches metal if a part of it does; empty if it
   * is not.
   */
  Optional<Unmet> problem(TemperatureScale scale) {
    if (!isPale()) {
      return Optional.empty();
    }
    return Optional.of(
        new Unmet(
            "CRUST_TOO_PALE",
            from(wished.orElseThrow()),
            own.crust().middle(),
            new PlanLine("Crust too pale", text(scale) + ".", "assumed")));
  }

  /** The same in a few words, and that the wish is met only where it touches. */
  Optional<String> pale() {
    if (isPale()) {
      return Optional.of("crust too pale");
    }
    return wished
        .filter(crust -> own.early() && own.average().middle() < from(crust))
        .map(crust -> crust.word() + " in part");
  }

  /** Nothing is said of a sear before which no pull is early enough, or none comes. */
  private boolean isPale() {
    return wished.isPresent() && own.early() && own.crust().middle() < from(wished.get());
  }

  private String text(TemperatureScale scale) {
    StringBuilder text = new StringBuilder(result(own));
    if (touch == Touch.MEAN) {
      text.append("; turns: in the file would tell it where it touches");
    }
    if (isPale()) {
      text.append(
          String.format(
              Locale.ROOT,
              "; %s is from %.0f on: %s",
              wished.orElseThrow().word(),
              from(wished.orElseThrow()),
              leastGrey()
                  .map(best -> words(best, scale) + " gets there: " + result(best.outcome()))
                  .orElse(
                      "no sear up to three times as long gets there, nor one "
                          + scale.wholeDifferenceText(HOTTER[HOTTER.length - 1])
                          + " hotter and four times as long")));
    } else if (wished.isPresent() && own.early()) {
      leastGrey()
          .filter(best -> best.outcome().grey() < own.grey() - WORTH_IT)
          .ifPresent(
              best ->
                  text.append(
                      "; with less of a ring "
                          + words(best, scale)
                          + ": "
                          + result(best.outcome())));
    }
    return text.toString();
  }

  /**
   * The sear of whatever length, order and heat that leaves the wished crust, or any if none is
   * wished, and the least grey ring; empty if none does.
   */
  Optional<Heated> leastGrey() {
    List<Heated> weighed =
        Stream.concat(all().stream().map(one -> new Heated(0, one)), heats.stream()).toList();
    return new SearTrade(weighed.stream().map(Heated::outcome).toList())
        .leastGrey(wished.map(SearTable::from).orElse(0.0))
        .flatMap(best -> weighed.stream().filter(one -> one.outcome().equals(best)).findFirst());
  }

  /** A sear with its heat in words. */
  public static String words(Heated one, TemperatureScale scale) {
    String schedule = words(one.outcome().schedule());
    if (one.hotter() == 0) {
      return schedule;
    }
    return schedule
        + ", "
        + scale.wholeDifferenceText(Math.abs(one.hotter()))
        + (one.hotter() > 0 ? " hotter" : " cooler");
  }

  private String result(SearOutcome outcome) {
    String crust =
        String.format(
            Locale.ROOT,
            touch.words,
            outcome.crust().middle(),
            outcome.crust().low(),
            outcome.crust().high(),
            outcome.average().middle());
    return crust + String.format(Locale.ROOT, "; %.0f mm beyond the wish", 1000 * outcome.grey());
  }
}
