package org.roastfield.lab.plan;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.plan.Fires;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.Service;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Food;
import org.roastfield.lab.files.PlanWishes;
import org.roastfield.lab.salting.SaltWish;
import org.roastfield.lab.timeline.Cautions;

/** What a plan takes for granted since its cook file does not say it, with the key that would. */
final class PlanAssumptions {

  private static final String STATUS = "assumed";

  private final CookFile file;
  private final PlanWishes wishes;
  private final PlanAsk ask;
  private final Service service;
  private final List<PlanLine> lines = new ArrayList<>();

  private PlanAssumptions(CookFile file, PlanAsk ask, PlanRequest request) {
    this.file = file;
    this.wishes = file.notes().plan();
    this.ask = ask;
    this.service = request.service();
  }

  /**
   * All of them, each with a subject of a few words.
   *
   * @param fireReady from lighting until it goes on [s]
   * @param heating of the sear, if the plan has a step for that [s]
   * @param changes whether the fire may be changed on the way
   */
  static List<PlanLine> of(
      CookFile file,
      PlanAsk ask,
      PlanRequest request,
      double fireReady,
      Optional<Double> heating,
      boolean changes) {
    PlanAssumptions all = new PlanAssumptions(file, ask, request);
    all.clocks();
    all.service();
    if (request.cook().probe().equals("core")) {
      all.add("a display without error", "of a probe in the middle: probes, with place and errors");
    }
    if (Cautions.mayBeOpened(file)) {
      all.add(
          "meat that may be opened",
          "so held against its stricter minimum too: handling: intact if nobody boned, rolled,"
              + " injected, pierced or ground it");
    }
    all.preparations(fireReady);
    heating.ifPresent(all::searHeat);
    all.fire(changes);
    all.plates();
    all.salt();
    return List.copyOf(all.lines);
  }

  private void add(String subject, String text) {
    lines.add(new PlanLine(subject, text, STATUS));
  }

  private static String minutes(String what, double seconds) {
    return what + " " + Words.duration(seconds);
  }

  private void clocks() {
    Optional<ZoneId> zone = ask.zone().or(wishes::zone);
    if (zone.isEmpty()) {
      add("no change of clocks", "no time zone is stated: plan: zone, or --zone");
      return;
    }
    if (wishes.zone().isEmpty()) {
      add("zone " + zone.get(), "as asked for, or as the cut beside it has it: plan: zone");
    }
    List<LocalDateTime> times = new ArrayList<>();
    ask.service().or(() -> file.notes().serves()).ifPresent(times::add);
    wishes.earliest().ifPresent(times::add);
    wishes.latest().ifPresent(times::add);
    for (LocalDateTime time : times) {
      PlanClock.twice(time, zone.get())
          .ifPresent(
              twice -> add("the first " + Words.clock(time) + " of two", twice + ": the first"));
    }
  }

  private void service() {
    if (wishes.carving().isEmpty()) {
      add(
          minutes("carving", ServiceTimes.CARVING),
          "from the first cut to the table: plan: carving");
    }
    if (wishes.restAtLeast().isEmpty()) {
      boolean stated = ServiceTimes.statedRest(file).isPresent();
      add(
          minutes(stated ? "the file's rest of" : "rest", service.leastRest()),
          (stated ? "as long as its stage of rest, " : "")
              + "at least, from the last heat until it is carved: plan: rest-at-least");
    }
    if (wishes.restAtMost().isEmpty()) {
      add(
          minutes("waiting", service.longestHold()) + " at most",
          "for its sear or, rested, for the table: plan: rest-at-most");
    }
    if (wishes.latest().isEmpty()) {
      add("no later service", "on time is by the wanted service, no later: plan: latest");
    }
    if (wishes.onTime().isEmpty()) {
      add(
          String.format(Locale.ROOT, "on time in %.0f %%", 100 * service.chance()),
          "the chance that the plan leaves time enough for: plan: on-time");
    }
    if (wishes.loss().isEmpty()) {
      add(
          "beyond twice as bad as short",
          "weights of the squared misses by which the reading is chosen: plan: loss");
    }
    if (wishes.loss().map(PlanWishes.Loss::missed).orElse(OptionalDouble.empty()).isEmpty()) {
      add(
          "a service missed as bad as " + ask.scale().differenceText(service.missed()) + " short",
          "late or by waiting too long, by which the reading is chosen: plan: loss: missed");
    }
  }

  private void preparations(double fireReady) {
    if (wishes.fireReady().isEmpty()) {
      add(
          minutes("lit", fireReady) + " ahead",
          wishes.pit().isPresent()
              ? "nine of ten such pits are warm by then: plan: fire-ready"
              : "until the chamber is steady: plan: fire-ready, or plan: pit");
    }
    if (file.food() != Food.VEGETABLE) {
      add(
          minutes("out of the fridge", PlanMaker.OUT_OF_COLD),
          "before it goes on, for its face to dry; the middle is computed from the stated start-temperature");
      add(
          minutes("patted dry", PlanMaker.PAT_DRY),
          "before it goes on; what the face holds is the file's: cut: surface, or wetness");
    }
  }

  private void searHeat(double heating) {
    add(
        minutes("sear's heat", heating),
        "before the sear begins; a stage of pause in the file has the plan wait for it");
  }

  private void fire(boolean changes) {
    if (!changes) {
      add("the fire kept as stated", "it is not changed on the way");
    } else if (wishes.fireCooler().isEmpty() || wishes.fireHotter().isEmpty()) {
      add(
          String.format(
              Locale.ROOT,
              "fire −%.0f to +%s",
              ask.scale().difference(wishes.fireCooler().orElse(Fires.USUAL_COOLER)),
              ask.scale().wholeDifferenceText(wishes.fireHotter().orElse(Fires.USUAL_HOTTER))),
          "as far as it may be changed on the way: plan: fire-cooler, fire-hotter");
    }
    if (file.taper().isPresent() && wishes.across().isEmpty()) {
      add("no hotter side", "with plan: across it is planned with the better end towards the heat");
    }
    wishes
        .pit()
        .filter(pit -> pit.outside().isEmpty())
        .ifPresent(
            pit ->
                add(
                    ask.scale().text(FireForecast.OUTSIDE) + " outside",
                    "around the pit: plan: pit: outside"));
  }

  private void salt() {
    if (wishes.salt().isPresent() && wishes.salt().get().depth().isEmpty()) {
      add("salt to its usual depth", "where it is to have arrived: plan: salt: depth");
    }
    if (wishes.salt().isPresent()) {
      add(
          String.format(Locale.ROOT, "salt %.0f %% even", 100 * SaltWish.USUAL_EVENNESS),
          "content at that depth over that of the face");
    }
  }

  private void plates() {
    wishes
        .plates()
        .ifPresent(
            plates -> {
              if (plates.portion().isEmpty()) {
                add(
                    String.format(Locale.ROOT, "%.0f g a plate", 1000 * Purchase.PORTION),
                    "cooked and carved: plan: portion");
              }
              if (plates.trim().isEmpty()) {
                add(
                    String.format(Locale.ROOT, "%.0f %% trim", 100 * Purchase.TRIM),
                    "of the bought weight: plan: trim");
              }
              if (plates.bone().isEmpty()) {
                add("no bone", "in what is cooked: plan: bone");
              }
            });
  }
}
