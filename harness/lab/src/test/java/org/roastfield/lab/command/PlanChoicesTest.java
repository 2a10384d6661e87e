package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * What a plan weighs besides the timetable: fires, cuts beside, keeping, sears, how a taper lies.
 */
class PlanChoicesTest extends PlanRuns {

  /** Nine of ten such pits are warm when the cut goes on, whatever lead is usual. */
  @Test
  void statedPit_saysWhenToLight() throws IOException {
    String file = write("pit.yaml", withPit("{like: ceramic, outside: 5 °C}"));
    Run run = plan(file);
    assertEquals(0, run.code(), run.err());
    double lead =
        step("on").at("/time_s/q50").asDouble() - step("light").at("/time_s/q50").asDouble();
    JsonNode fire = json().get("fire");
    double high = fire.at("/before_on_s/q90").asDouble();
    assertTrue(lead >= high && lead < high + 60, lead + " for " + fire);
    assertTrue(fire.at("/before_on_s/q10").asDouble() < fire.at("/before_on_s/q50").asDouble());
    assertTrue(fire.at("/charcoal_kg/q10").asDouble() > 0);
    assertEquals(List.of(), complaints());
    assertTrue(
        Files.readString(Path.of(out, "plan.html")).contains("a pit of ceramic takes"), "page");
  }

  /** On request all draws tell; else none of them claims to have been all. */
  @Test
  void whatIf_isByAllDrawsOnRequest() throws IOException {
    assertEquals(0, plan(cook).code());
    JsonNode usual = json().get("what_if");
    assertEquals(List.of(), complaints());
    for (JsonNode one : usual) {
      boolean drawn = one.get("method").asText().equals("FEW_DRAWS");
      assertTrue(drawn || one.get("method").asText().equals("SENSITIVITY"), one.toString());
      assertEquals(drawn, one.get("chance_ready").isNumber(), one.toString());
    }
    assertEquals(0, plan(cook, "--exact").code());
    JsonNode exact = json().get("what_if");
    assertEquals(List.of(), complaints());
    assertEquals(usual.size(), exact.size());
    assertTrue(exact.findValuesAsText("what").contains("every length 10 % more"));
    for (JsonNode one : exact) {
      assertEquals("ALL_DRAWS", one.get("method").asText());
      assertTrue(one.get("chance_ready").isNumber(), one.toString());
    }
    JsonNode later = exact.get(exact.size() - 1);
    assertEquals("the table an hour later once it is on", later.get("what").asText());
    double pulledLater = later.at("/later_s/pull").asDouble();
    assertTrue(pulledLater > 0 && pulledLater < 3600, later.toString());
  }

  /** A fire goes no further than its file lets it, nor to where its air sears. */
  @Test
  void fire_isKeptWithinItsBounds() throws IOException {
    String kept =
        published().replace("  people: ", "  fire-cooler: 0 K\n  fire-hotter: 0 K\n  people: ");
    assertEquals(0, plan(write("kept.yaml", kept)).code());
    assertTrue(json().path("fire_check").isMissingNode(), json().toString());
    assertEquals(List.of(), complaints());
    String hot = published().replace("air: 110 °C", "air: 185 °C");
    assertEquals(0, plan(write("hot.yaml", hot)).code());
    for (JsonNode band : json().at("/fire_check/bands")) {
      assertTrue(band.get("hotter_K").asDouble() <= 15 + 1e-9, band.toString());
    }
    assertEquals(0, plan(cook).code());
    assertTrue(json().at("/fire_check/bands").size() > 1, json().toString());
    assertEquals(List.of(), complaints());
  }

  @Test
  void statedLead_isKeptBesideAPit() throws IOException {
    String file = write("pit.yaml", withPit("{like: thin-steel}\n  fire-ready: 80 min"));
    assertEquals(0, plan(file).code());
    double lead =
        step("on").at("/time_s/q50").asDouble() - step("light").at("/time_s/q50").asDouble();
    assertEquals(4800, lead, 1e-6);
    assertEquals("thin-steel", json().at("/fire/pit").asText());
  }

  /** Two cuts for one table: one fire, one timetable, one calendar, a plan of each. */
  @Test
  void cutBeside_sharesTheFire() throws IOException {
    String other = write("other.yaml", hotter(published(), "Second loin"));
    Run run = plan(cook, "--beside", other);
    assertEquals(0, run.code(), run.err());
    assertEquals(1, run.lines().stream().filter(line -> line.contains("light the fire")).count());
    assertEquals(2, run.lines().stream().filter(line -> line.contains("rested enough")).count());
    assertTrue(run.said().contains("one cooker has one air"), run.out());
    assertTrue(run.out().contains("two sears: "), run.out());
    assertEquals(List.of(), complaints());
    assertEquals("plan-2.json", json().at("/beside/cooks/0/plan").asText());
    assertTrue(Files.exists(Path.of(out, "plan-2.html")));
    assertTrue(Files.readString(Path.of(out, "plan.html")).contains("the fire is lit once"));
    ICalendar calendar = Biweekly.parse(Files.readString(Path.of(out, "plan.ics"))).first();
    assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty());
    long ids =
        calendar.getEvents().stream().map(event -> event.getUid().getValue()).distinct().count();
    assertEquals(2 * json().get("steps").size() - 1, ids);
    assertEquals(ids, calendar.getEvents().size());
  }

  /** Its own plan is the same as alone. */
  @Test
  void cutBeside_changesNothingOfTheFirst_butThatItsFireIsKept() throws IOException {
    plan(cook);
    assertTrue(json().has("fire_check"));
    String kept =
        published().replace("  people: ", "  fire-cooler: 0 K\n  fire-hotter: 0 K\n  people: ");
    plan(write("kept.yaml", kept));
    JsonNode alone = json();
    plan(cook, "--beside", write("other.yaml", hotter(published(), "Second loin")));
    assertTrue(!json().has("fire_check"));
    assertEquals(alone.get("steps"), json().get("steps"));
    assertEquals(alone.get("chances"), json().get("chances"));
  }

  /** Of two sears at one minute one goes first, and the other's wait is held against its slack. */
  @Test
  void searsAtOneTime_areOneAfterTheOther() throws IOException {
    String other = published().replace("name: Boathouse pork loin", "name: Second loin");
    Run run = plan(cook, "--beside", write("other.yaml", other));
    String sears = json().at("/beside/statements/0/text").asText();
    assertTrue(sears.contains("come to the sear at one time"), sears);
    assertTrue(sears.contains("Boathouse pork loin first, for 3 min"), sears);
    assertTrue(sears.contains("Second loin then waits for 3 min, within its slack of "), sears);
    assertTrue(run.out().contains("two sears: "), run.out());
  }

  /** A cooker stands in one place: a file without a zone has that of the file beside. */
  @Test
  void cutsOnOneFire_haveOneZone() throws IOException {
    String other = published().replace("name: Boathouse pork loin", "name: Second loin");
    String plain = other.replace("  zone: Europe/Lisbon\n", "");
    assertEquals(0, plan(cook, "--beside", write("plain.yaml", plain)).code());
    List<String> starts =
        Files.readString(Path.of(out, "plan.ics"))
            .lines()
            .filter(line -> line.startsWith("DTSTART"))
            .toList();
    assertTrue(starts.stream().allMatch(line -> line.endsWith("Z")), starts.toString());
    String away = other.replace("Europe/Lisbon", "Europe/Stockholm");
    Run run = plan(cook, "--beside", write("away.yaml", away));
    assertEquals(2, run.code());
    assertTrue(
        run.err()
            .contains(
                "in one time zone, was Europe/Lisbon in cook.yaml, Europe/Stockholm in away.yaml:"
                    + " say which by --zone"),
        run.err());
  }

  @Test
  void twoCutsOfOneName_areRefused() {
    Run run = plan(cook, "--beside", cook);
    assertEquals(2, run.code());
    assertTrue(run.err().contains("cuts on one fire must have different names"), run.err());
  }

  private static String hotter(String file, String name) {
    return file.replace("name: Boathouse pork loin", "name: " + name)
        .replace("air: 110 °C, walls: 114 °C", "air: 120 °C, walls: 124 °C");
  }

  /** In a box the cut cools less than under foil, and carryover goes on. */
  @Test
  void keeping_isComparedInABoxAndInWarmAir() throws IOException {
    plan(cook);
    JsonNode keeping = json().get("keeping");
    assertEquals(4, keeping.size());
    double own = keeping.at("/0/core_carved_degC").asDouble();
    assertTrue(keeping.at("/1/core_carved_degC").asDouble() > own, keeping.toString());
    assertTrue(keeping.at("/2/core_carved_degC").asDouble() > own, keeping.toString());
    for (JsonNode one : keeping) {
      assertTrue(one.get("core_highest_degC").asDouble() >= one.get("core_carved_degC").asDouble());
    }
  }

  /** Of two sears as long, that over hotter metal browns more and is pulled sooner. */
  @Test
  void sears_areTriedInOtherHeat() throws IOException {
    plan(cook);
    List<JsonNode> heats = new ArrayList<>();
    double length = 0;
    for (JsonNode sear : json().get("sears")) {
      if (sear.get("of_the_file").asBoolean()) {
        length = sear.get("length_s").asDouble();
        heats.add(sear);
      } else if (sear.get("hotter_K").asDouble() != 0
          && sear.get("length_s").asDouble() == length) {
        heats.add(sear);
      }
    }
    assertEquals(4, heats.size());
    heats.sort(Comparator.comparingDouble(sear -> sear.get("hotter_K").asDouble()));
    for (int i = 1; i < heats.size(); i++) {
      JsonNode cooler = heats.get(i - 1);
      JsonNode hotter = heats.get(i);
      assertTrue(hotter.get("browning").asDouble() > cooler.get("browning").asDouble());
      // A cut that waits long enough is at its hottest before it is seared.
      double later = cooler.get("core_at_pull_degC").asDouble();
      assertTrue(hotter.get("core_at_pull_degC").asDouble() <= later + 0.02);
    }
  }

  /** Hotter and shorter leaves the same crust over less of a ring, and the plan says so. */
  @Test
  void sear_isToldOfALesserRing() throws IOException {
    plan(cook);
    double own = 0;
    double least = Double.POSITIVE_INFINITY;
    for (JsonNode sear : json().get("sears")) {
      double ring = 1000 * sear.get("beyond_wish_m").asDouble();
      own = sear.get("of_the_file").asBoolean() ? ring : own;
      if (sear.get("core_as_wished").asBoolean() && sear.get("browning").asDouble() >= 10) {
        least = Math.min(least, ring);
      }
    }
    assertTrue(least < own - 1, least + " " + own);
    String told = statement("sear");
    assertTrue(told.contains("; with less of a ring last, "), told);
    assertTrue(told.endsWith(String.format(Locale.ROOT, "%.0f mm beyond the wish", least)), told);
  }

  private static String lamb() throws IOException {
    return Files.readString(Path.of("../../datasets/cooks/boathouse-lamb-leg/cook.yaml"));
  }

  /** A taper is planned by its thick end; its thinner thirds get hotter, each with its own wish. */
  @Test
  void taper_isPlannedByItsThirds() throws IOException {
    Run run = plan(write("lamb.yaml", lamb()));
    assertEquals(0, run.code(), run.err());
    assertEquals(List.of(), complaints());
    JsonNode middle = json().at("/stations/0");
    JsonNode thin = json().at("/stations/1");
    assertEquals("middle", middle.get("name").asText());
    assertEquals("thin end", thin.get("name").asText());
    double thick = json().at("/final_core_degC/q50").asDouble();
    double halfway = middle.at("/final_core_degC/q50").asDouble();
    assertTrue(thick < halfway, json().toString());
    assertTrue(halfway < thin.at("/final_core_degC/q50").asDouble(), json().toString());
    assertTrue(middle.get("wish_high_degC").asDouble() <= thin.get("wish_low_degC").asDouble());
    assertTrue(run.said().contains("the display is read in the thick end"), run.out());
    assertTrue(
        json().get("what_if").findValuesAsText("what").contains("its thick end 10 % more"),
        json().get("what_if").toString());
  }

  /** Its thin end is to be well done: towards the heat with it. */
  @Test
  void taper_liesAsItsWishesNeed_andIsPlannedAsItLies() throws IOException {
    plan(write("lamb.yaml", lamb()));
    double still = json().at("/stations/1/final_core_degC/q50").asDouble();
    Run run = plan(write("lamb.yaml", lamb() + "\nplan: {across: 20 K}\n"));
    assertTrue(json().at("/stations/1/final_core_degC/q50").asDouble() > still + 1);
    assertTrue(run.out().lines().anyMatch(line -> line.startsWith("thin end: ")), run.out());
    assertFalse(run.out().contains("other end towards the heat"), run.out());
    assertTrue(statement("how it lies").startsWith("with its thin end towards the heat"));
    assertEquals("on the gentle heat, thin end to the heat", step("on").get("what").asText());
    String pale = lamb().replaceFirst("doneness: \\{.*", "doneness: medium-rare");
    plan(write("even.yaml", pale + "\nplan: {across: 20 K}\n"));
    assertTrue(statement("how it lies").startsWith("with its thick end towards the heat"));
    assertEquals("on the gentle heat, thick end to the heat", step("on").get("what").asText());
  }

  private String statement(String subject) throws IOException {
    for (JsonNode one : json().get("statements")) {
      if (one.get("subject").asText().equals(subject)) {
        return one.get("text").asText();
      }
    }
    throw new AssertionError("no statement of " + subject);
  }

  private static String withPit(String pit) {
    return published().replaceFirst("(?m)^plan: .*$", "plan:\n  pit: " + pit);
  }

  /** What falling short costs decides the reading: the dearer, the later it comes off. */
  @Test
  void statedLoss_movesThePull() throws IOException {
    double before = 0;
    for (String loss : List.of("{short: 0.05, beyond: 5}", "{short: 5, beyond: 0.05}")) {
      String file = published().replace("  people: ", "  loss: " + loss + "\n  people: ");
      assertEquals(0, plan(write("loss.yaml", file)).code());
      assertEquals(List.of(), complaints());
      double core = json().at("/final_core_degC/q50").asDouble();
      assertTrue(core > before + 1, core + " after " + before);
      before = core;
    }
    assertTrue(
        Files.readString(Path.of(out, "plan.html"))
            .contains("short of the wish times 5.00, beyond times 0.05"));
  }

  /**
   * The dearer a missed service, the more often it is kept: in time, and not by waiting too long.
   */
  @Test
  void statedCostOfAMissedService_movesTheChanceOfKeepingIt() throws IOException {
    double before = 0;
    for (String missed : List.of("0.5 K", "15 K")) {
      String loss = "  loss: {short: 1, beyond: 1, missed: " + missed + "}\n  people: ";
      assertEquals(0, plan(write("late.yaml", published().replace("  people: ", loss))).code());
      double chance =
          json().at("/chances/ready_by_latest").asDouble()
              - json().at("/chances/kept_too_long").asDouble();
      assertTrue(chance > before + 0.01, chance + " after " + before);
      before = chance;
    }
  }

  /** A ring that is wished thinner than it comes out is not met, and the nearest is told. */
  @Test
  void wishedRing_isHeldAgainstTheCook() throws IOException {
    Run deep = plan(write("deep.yaml", withRing("3 mm")));
    assertEquals(0, deep.code(), deep.err());
    assertEquals(List.of(), complaints());
    JsonNode ring = json().get("ring");
    double found = ring.get("beyond_wish_m").asDouble();
    assertTrue(found > 0.003, ring.toString());
    assertEquals("RING_TOO_DEEP", json().at("/not_met/0/reason").asText());
    assertTrue(deep.out().contains("NOT MET: Ring too deep: "), deep.out());
    for (JsonNode way : ring.get("ways")) {
      assertTrue(way.get("beyond_wish_m").asDouble() < 0.048, way.toString());
    }
    String wide = String.format(java.util.Locale.ROOT, "%.1f mm", 1000 * found + 1);
    Run met = plan(write("wide.yaml", withRing(wide)));
    assertEquals(List.of(), complaints());
    assertEquals(0, json().at("/ring/ways").size());
    assertTrue(!met.out().contains("Ring too deep"), met.out());
  }

  /** The sear that just gets to the wished crust is among those that are weighed. */
  @Test
  void wishedCrust_isReachedByTheShortestSear() throws IOException {
    String brown = published().replace("crust: golden", "crust: brown");
    assertEquals(0, plan(write("brown.yaml", brown)).code());
    assertEquals(List.of(), complaints());
    double longest = 0;
    double reaching = Double.POSITIVE_INFINITY;
    for (JsonNode one : json().get("sears")) {
      boolean like =
          one.get("order").asText().equals("LAST") && one.get("hotter_K").asDouble() == 0;
      double length = one.get("length_s").asDouble();
      boolean there = one.get("browning").asDouble() >= 20;
      longest = like && !there ? Math.max(longest, length) : longest;
      reaching = like && there ? Math.min(reaching, length) : reaching;
    }
    assertTrue(reaching > longest && reaching < 1.2 * longest, reaching + " after " + longest);
  }

  private String withRing(String ring) throws IOException {
    return published().replace("crust: golden}", "crust: golden, ring: " + ring + "}");
  }
}
