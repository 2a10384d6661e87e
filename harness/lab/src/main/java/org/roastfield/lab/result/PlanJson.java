package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.roastfield.core.plan.Candidate;
import org.roastfield.core.plan.FireCheck;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.Pull;
import org.roastfield.core.plan.SearCheck;
import org.roastfield.core.plan.SearOutcome;
import org.roastfield.core.plan.SearSchedule;
import org.roastfield.core.plan.Spread;
import org.roastfield.core.plan.Station;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.plan.FireForecast;
import org.roastfield.lab.plan.Keeping;
import org.roastfield.lab.plan.Lateness;
import org.roastfield.lab.plan.PlanChange;
import org.roastfield.lab.plan.PlanClock;
import org.roastfield.lab.plan.PlanLine;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.PlanStep;
import org.roastfield.lab.plan.Purchase;
import org.roastfield.lab.plan.RingWish;
import org.roastfield.lab.plan.SearTable;
import org.roastfield.lab.plan.SharedFire;
import org.roastfield.lab.plan.Unmet;

/** A plan as JSON: datasets/schema/plan.schema.json. What never comes is null. */
public final class PlanJson {

  /** Name of the schema. */
  public static final String SCHEMA = "roastfield-plan";

  /** Its version. */
  public static final int VERSION = 1;

  private PlanJson() {}

  /** Text of plan.json. */
  public static String text(PlanSheet sheet) {
    return Json.text(root(sheet));
  }

  /** The same of the first of several cuts on one fire, with how they go together. */
  public static String text(SharedFire shared) {
    ObjectNode root = root(shared.sheets().get(0));
    ObjectNode beside = root.putObject("beside");
    ArrayNode cooks = beside.putArray("cooks");
    for (int i = 1; i < shared.sheets().size(); i++) {
      PlanSheet sheet = shared.sheets().get(i);
      cooks
          .addObject()
          .put("cook", sheet.file().name())
          .put("file", sheet.file().fileName())
          .put("plan", file(i) + ".json");
    }
    lines(beside.putArray("statements"), shared.lines());
    return Json.text(root);
  }

  /** Name, without its ending, of the files of one of several plans on one fire, from 0. */
  public static String file(int index) {
    return index == 0 ? "plan" : "plan-" + (index + 1);
  }

  private static ObjectNode root(PlanSheet sheet) {
    Plan plan = sheet.plan();
    ObjectNode root = Json.document(SCHEMA, VERSION);
    root.put("cook", sheet.file().name())
        .put("file", sheet.file().fileName())
        .put("made_up", sheet.file().madeUp())
        .put("basis", sheet.basis())
        .put("members", plan.members())
        .put("members_left_out", plan.notBuilt());
    root.set("service", service(sheet));
    root.set("pull", pull(sheet));
    plan.check().ifPresent(check -> root.set("fire_check", check(check, sheet)));
    root.set("final_core_degC", celsius(plan.finalCore()));
    ArrayNode stations = root.putArray("stations");
    plan.stations().forEach(one -> stations.add(station(one)));
    root.set("chances", chances(sheet));
    root.set("kept_warm_s", seconds(plan.held()));
    root.set("core_after_sear", searCheck(plan.searCheck()));
    steps(root.putArray("steps"), sheet);
    lines(root.putArray("statements"), sheet.lines());
    lines(root.putArray("assumed"), sheet.assumed());
    problems(root.putArray("not_met"), sheet);
    sheet.late().ifPresent(late -> root.set("too_late", late(late)));
    sheet.fire().ifPresent(fire -> root.set("fire", fire(fire)));
    sheet.purchase().ifPresent(purchase -> root.set("purchase", purchase(purchase)));
    sheet.sears().ifPresent(sears -> sears(root.putArray("sears"), sears));
    sheet.ring().ifPresent(ring -> root.set("ring", ring(ring)));
    ArrayNode keepings = root.putArray("keeping");
    sheet.keepings().forEach(one -> keepings.add(keeping(one)));
    changes(root.putArray("what_if"), sheet.changes());
    root.set("core", core(plan));
    ResultJson.addCautions(root, sheet.cautions());
    return root;
  }

  private static ObjectNode service(PlanSheet sheet) {
    PlanClock clock = sheet.clock();
    ObjectNode node =
        Json.object().put("table", clock.iso(sheet.carving())).put("carving", clock.iso(0));
    clock.zone().ifPresent(zone -> node.put("zone", zone.toString()));
    clock.instant(0).ifPresent(instant -> node.put("carving_utc", instant.toString()));
    return node;
  }

  private static ObjectNode pull(PlanSheet sheet) {
    ObjectNode node = Json.object().put("reading_degC", Json.celsius(sheet.plan().reading()));
    node.put("wish_low_degC", Json.celsius(sheet.wish().low()));
    node.put("wish_high_degC", Json.celsius(sheet.wish().high()));
    Pull pull = sheet.plan().pull();
    ArrayNode targets = node.putArray("targets");
    for (int k = 0; k < pull.times().size(); k++) {
      double at = pull.times().get(k) - sheet.plan().lead();
      targets
          .addObject()
          .put("time_s", Math.rint(at))
          .put("clock", sheet.clock().isoMinute(at))
          .put("target_degC", Json.celsius(pull.targets().get(k)));
    }
    node.put("drawn_on_s", pull.ahead());
    if (pull.isBound()) {
      double lead = sheet.plan().lead();
      node.put("not_before", sheet.clock().isoMinute(pull.from() - lead));
      node.put("at_the_latest", sheet.clock().isoMinute(pull.until() - lead));
    }
    if (sheet.plan().waits()) {
      double sears = sheet.plan().timing().sears() - sheet.plan().lead();
      node.put("waits_until", sheet.clock().isoMinute(sears));
    }
    ArrayNode weighed = node.putArray("weighed");
    for (Candidate one : sheet.plan().candidates()) {
      ObjectNode candidate = weighed.addObject();
      candidate
          .put("reading_degC", Json.celsius(one.reading()))
          .put("expected_loss", Json.millionths(one.expectedLoss()))
          .put("chance_under", one.chanceUnder())
          .put("chance_over", one.chanceOver())
          .put("reached", one.reached())
          .put("allowed", one.allowed());
      candidate.set("final_core_degC", celsius(one.finalCore()));
    }
    return node;
  }

  private static ObjectNode check(FireCheck check, PlanSheet sheet) {
    ObjectNode node = Json.object().put("reading_degC", Json.celsius(check.reading()));
    node.put("drawn_on_K", check.ahead());
    ArrayNode bands = node.putArray("bands");
    for (int band = 0; band < check.hotter().size(); band++) {
      ObjectNode one = bands.addObject();
      if (band < check.until().size()) {
        double until = check.until().get(band) - sheet.plan().lead();
        one.put("until", sheet.clock().isoMinute(until));
      }
      one.put("hotter_K", check.hotter().get(band));
    }
    if (check.lean() != 0) {
      ObjectNode raised = node.putObject("raised");
      raised.put("from", sheet.clock().isoMinute(check.middle() - sheet.plan().lead()));
      raised.put("K_per_minute", Json.millionths(60 * check.lean()));
      raised.put("most_K", FireCheck.MOST_RAISED);
    }
    return node;
  }

  private static ObjectNode chances(PlanSheet sheet) {
    Plan plan = sheet.plan();
    ObjectNode node =
        Json.object()
            .put("final_core_under", plan.chanceUnder())
            .put("final_core_over", plan.chanceOver())
            .put("ready_by_latest", plan.chanceReady())
            .put("ready_as_wished", plan.chanceReadyAsWished())
            .put("kept_too_long", plan.chanceHeldTooLong());
    sheet
        .file()
        .notes()
        .plan()
        .minimum()
        .ifPresent(one -> node.put("minimum_reached", plan.chanceOf(one.core())));
    return node;
  }

  private static ObjectNode searCheck(SearCheck check) {
    return Json.object()
        .put("spread_K", Json.difference(check.withoutLooking()))
        .put("spread_left_by_time_K", Json.difference(check.byTime()))
        .put("spread_left_by_reading_K", Json.difference(check.byReading()))
        .put("reading_tells_more", check.readingTellsMore());
  }

  private static void steps(ArrayNode array, PlanSheet sheet) {
    for (PlanStep step : sheet.steps()) {
      ObjectNode node = array.addObject().put("id", step.id()).put("what", step.what());
      node.set("time_s", seconds(step.time()));
      node.put("by_clock", step.isByClock());
      ObjectNode clock = node.putObject("clock");
      putClock(clock, "q10", sheet.clock(), step.time().low());
      putClock(clock, "q50", sheet.clock(), step.time().median());
      putClock(clock, "q90", sheet.clock(), step.time().high());
      put(node, "slack_s", step.slack(), 1e3);
      node.put("when_it_slips", step.advice());
    }
  }

  private static void putClock(ObjectNode node, String key, PlanClock clock, double time) {
    if (Double.isFinite(time)) {
      node.put(key, clock.iso(time));
    } else {
      node.putNull(key);
    }
  }

  private static void lines(ArrayNode array, List<PlanLine> lines) {
    for (PlanLine line : lines) {
      array
          .addObject()
          .put("subject", line.subject())
          .put("text", line.text())
          .put("status", line.status());
    }
  }

  private static void problems(ArrayNode array, PlanSheet sheet) {
    for (Unmet one : sheet.problems()) {
      array
          .addObject()
          .put("reason", one.reason())
          .put("wished", one.wished())
          .put("reached", one.reached())
          .put("text", one.line().text());
    }
  }

  private static ObjectNode ring(RingWish ring) {
    ObjectNode node =
        Json.object()
            .put("wished_m", ring.wished())
            .put("beyond_wish_m", Json.millionths(ring.own().grey()))
            .put("even_share", Json.millionths(ring.own().within()));
    ArrayNode ways = node.putArray("ways");
    for (RingWish.Way way : ring.ways()) {
      ways.addObject()
          .put("how", way.how())
          .put("beyond_wish_m", Json.millionths(way.grey()))
          .put("pull_later_s", Json.millionths(way.later()));
    }
    return node;
  }

  private static ObjectNode late(Lateness late) {
    ObjectNode node =
        Json.object()
            .put("asked", late.clock().iso(late.asked()))
            .put("should_have_begun", late.clock().isoMinute(late.shouldHaveBegun()))
            .put("later_s", Json.seconds(late.later()));
    late.chance().ifPresent(chance -> node.put("chance_all_the_same", chance));
    return node;
  }

  private static ObjectNode station(Station.Result one) {
    ObjectNode node =
        Json.object()
            .put("name", one.name())
            .put("wish_low_degC", Json.celsius(one.wish().low()))
            .put("wish_high_degC", Json.celsius(one.wish().high()));
    node.set("final_core_degC", celsius(one.finalCore()));
    return node.put("final_core_under", one.chanceUnder()).put("final_core_over", one.chanceOver());
  }

  private static ObjectNode keeping(Keeping one) {
    return Json.object()
        .put("how", one.how())
        .put("core_carved_degC", Json.celsius(one.carved()))
        .put("core_highest_degC", Json.celsius(one.highest()))
        .put("surface_carved_degC", Json.celsius(one.surface()));
  }

  private static ObjectNode fire(FireForecast fire) {
    ObjectNode node =
        Json.object()
            .put("pit", fire.kind().word())
            .put("pits", fire.pits())
            .put("pits_never_warm", fire.pits() - fire.warm());
    node.set("before_on_s", seconds(fire.beforeOn()));
    fire.ramp().ifPresent(ramp -> node.set("ramp_s", seconds(ramp)));
    ObjectNode fuel = node.putObject("charcoal_kg");
    put(fuel, "q10", fire.fuel().low(), 1e3);
    put(fuel, "q50", fire.fuel().median(), 1e3);
    put(fuel, "q90", fire.fuel().high(), 1e3);
    return node;
  }

  private static ObjectNode purchase(Purchase one) {
    return Json.object()
        .put("people", one.people())
        .put("portion_kg", one.portion())
        .put("trim", one.trim())
        .put("bone", one.bone())
        .put("yield", Json.millionths(one.yield()))
        .put("bought_kg", Json.millionths(one.bought()))
        .put("cooked_kg", Json.millionths(one.cooked()));
  }

  private static void sears(ArrayNode array, SearTable sears) {
    sears.all().forEach(one -> array.add(sear(one, 0, one.equals(sears.own()))));
    sears.heats().forEach(one -> array.add(sear(one.outcome(), one.hotter(), false)));
  }

  private static ObjectNode sear(SearOutcome one, double hotter, boolean own) {
    SearSchedule schedule = one.schedule();
    return Json.object()
        .put("order", schedule.order().name())
        .put("length_s", Json.seconds(schedule.duration()))
        .put("rounds", schedule.rounds())
        .put("hotter_K", hotter)
        .put("of_the_file", own)
        .put("core_at_pull_degC", Json.celsius(one.reading()))
        .put("final_core_degC", Json.celsius(one.finalCore()))
        .put("core_as_wished", one.early())
        .put("browning_low", Json.millionths(one.crust().low()))
        .put("browning", Json.millionths(one.crust().middle()))
        .put("browning_high", Json.millionths(one.crust().high()))
        .put("browning_average", Json.millionths(one.average().middle()))
        .put("beyond_wish_m", Json.millionths(one.grey()))
        .put("even_share", Json.millionths(one.within()));
  }

  private static void changes(ArrayNode array, List<PlanChange> changes) {
    for (PlanChange change : changes) {
      ObjectNode node = array.addObject().put("what", change.what());
      ObjectNode later = node.putObject("later_s");
      change.effect().later().forEach((kind, by) -> put(later, PlanStep.id(kind), by, 1e3));
      put(node, "without_waiting_later_s", change.effect().ready(), 1e3);
      put(node, "final_core_hotter_K", change.effect().finalCore(), 1e4);
      put(node, "chance_ready", change.effect().chanceReady(), 1e6);
      node.put("method", change.effect().method().name());
    }
  }

  private static ObjectNode core(Plan plan) {
    ObjectNode node = Json.object();
    ArrayNode times = node.putArray("time_s");
    ArrayNode low = node.putArray("q10_degC");
    ArrayNode median = node.putArray("q50_degC");
    ArrayNode high = node.putArray("q90_degC");
    for (int i = 0; i < plan.core().times().size(); i++) {
      Spread spread = plan.core().spreads().get(i);
      times.add(Json.seconds(plan.core().times().get(i)));
      low.add(Json.celsius(spread.low()));
      median.add(Json.celsius(spread.median()));
      high.add(Json.celsius(spread.high()));
    }
    return node;
  }

  private static ObjectNode celsius(Spread spread) {
    ObjectNode node = Json.object();
    put(node, "q10", Temperatures.toCelsius(spread.low()), 1e4);
    put(node, "q50", Temperatures.toCelsius(spread.median()), 1e4);
    put(node, "q90", Temperatures.toCelsius(spread.high()), 1e4);
    return node;
  }

  private static ObjectNode seconds(Spread spread) {
    ObjectNode node = Json.object();
    put(node, "q10", spread.low(), 1e3);
    put(node, "q50", spread.median(), 1e3);
    put(node, "q90", spread.high(), 1e3);
    return node;
  }

  private static void put(ObjectNode node, String key, double value, double scale) {
    if (Double.isFinite(value)) {
      node.put(key, Json.rounded(value, scale));
    } else {
      node.putNull(key);
    }
  }
}
