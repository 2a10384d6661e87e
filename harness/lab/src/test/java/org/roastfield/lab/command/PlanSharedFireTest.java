package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What two cuts on one fire do to each other: the sear's heat of one, the gentle heat of both. */
class PlanSharedFireTest extends PlanRuns {

  private static String second() {
    return published().replace("name: Boathouse pork loin", "name: Second loin");
  }

  private List<String> clashes() throws IOException {
    List<String> texts = new ArrayList<>();
    for (JsonNode one : json().at("/beside/statements")) {
      if (one.get("subject").asText().equals("sear beside gentle heat")) {
        texts.add(one.get("text").asText());
      }
    }
    return texts;
  }

  private static String minute(JsonNode clock) {
    return clock(clock).plusSeconds(30).toLocalTime().toString().substring(0, 5);
  }

  /** An hour later the second is on its gentle heat while the first is seared. */
  @Test
  void searOfOne_onTheGentleHeatOfTheOther_isAClash() throws IOException {
    String later = moved(second(), 60);
    Run run = plan(cook, "--beside", write("later.yaml", later));
    assertEquals(0, run.code(), run.err());
    List<String> clashes = clashes();
    assertEquals(1, clashes.size(), clashes.toString());
    String heat = minute(step("sear-heat").at("/clock/q50"));
    String over = minute(step("rest").at("/clock/q50"));
    String text = clashes.get(0);
    assertTrue(
        text.startsWith(
            "Boathouse pork loin has its sear's heat from "
                + heat
                + " to "
                + over
                + ", while Second loin is on gentle heat, from "),
        text);
    assertTrue(
        text.matches(
            ".*: raise it on one side alone, with Second loin on the other, or serve .* later"),
        text);
    assertTrue(run.out().contains("sear beside gentle heat: "), run.out());
    assertTrue(run.out().contains("\nassumed of all: carving 10 min, "), run.out());
    assertEquals(-1, run.out().indexOf("\n  assumed: carving"), run.out());
    assertTrue(Files.readString(Path.of(out, "plan.html")).contains("sear beside gentle heat"));
    assertEquals(List.of(), complaints());
  }

  /** Served as much later as is advised, they meet no more at their medians. */
  @Test
  void advice_endsTheClash() throws IOException {
    String later = moved(second(), 60);
    plan(cook, "--beside", write("later.yaml", later));
    Matcher advice =
        Pattern.compile("or serve (.*?) (?:(\\d+) h )?(\\d+) min later").matcher(clashes().get(0));
    assertTrue(advice.find(), clashes().toString());
    long minutes =
        (advice.group(2) == null ? 0 : 60 * Long.parseLong(advice.group(2)))
            + Long.parseLong(advice.group(3))
            + 1;
    boolean first = advice.group(1).equals("Boathouse pork loin");
    String moved = moved(first ? published() : later, minutes);
    plan(
        first ? write("first.yaml", moved) : cook,
        "--beside",
        first ? write("later.yaml", later) : write("second.yaml", moved));
    for (String one : clashes()) {
      assertFalse(one.contains("while Second loin is on gentle heat"), one);
    }
  }

  private static String moved(String file, long minutes) {
    String text = file;
    for (String key : List.of("serves", "latest")) {
      Matcher time = Pattern.compile("(?m)^ *" + key + ": (\\S+)").matcher(text);
      if (time.find()) {
        LocalDateTime at = LocalDateTime.parse(time.group(1)).plusMinutes(minutes);
        text = text.substring(0, time.start(1)) + at + text.substring(time.end(1));
      }
    }
    assertNotEquals(file, text);
    return text;
  }

  /** Seared when the other is long at rest, or not yet on. */
  @Test
  void cutsHoursApart_doNotClash() throws IOException {
    String far = moved(second(), 9 * 60);
    plan(cook, "--beside", write("far.yaml", far));
    assertEquals(List.of(), clashes());
  }

  /** Without a sear there is no heat that could be too much. */
  @Test
  void cutBesideWithoutASear_hasNoHeatOfItsOwn() throws IOException {
    String unseared =
        moved(second(), 60).replaceFirst("(?s) *- name: sear.*?(?= *- name: rest)", "");
    plan(cook, "--beside", write("unseared.yaml", unseared));
    assertEquals(1, clashes().size(), clashes().toString());
    assertTrue(
        clashes().get(0).startsWith("Boathouse pork loin has its sear's heat"),
        clashes().toString());
  }

  /** The second goes on five minutes after the first is off its sear, by the medians. */
  @Test
  void searThatMayLast_isAPossibleClash_andSaysWhichOfThemLasts() throws IOException {
    plan(cook, "--beside", write("next.yaml", moved(second(), 208)));
    assertEquals(1, clashes().size(), clashes().toString());
    String text = clashes().get(0);
    assertTrue(text.contains("; they meet if that of Boathouse pork loin lasts, in one"), text);
    assertFalse(text.contains("or serve"), text);
  }

  /** What is late is served later, and no longer with what is not. */
  @Test
  void lateCut_isNoLongerTogetherWithTheOther_andSaysSo() throws IOException {
    String thin =
        second()
            .replace("diameter: 96 mm", "diameter: 60 mm")
            .replaceFirst("(?m)^  weight: .*\\n", "");
    String beside = write("thin.yaml", thin);
    Run run = plan(cook, "--beside", beside, "--now", "2026-06-13T14:30");
    assertEquals(0, run.code(), run.err());
    String said = run.said();
    assertTrue(said.contains("TOO LATE: "), said);
    assertTrue(
        said.contains(
            "NOT together: what is late is served when it can be, Boathouse pork loin last"),
        said);
    assertFalse(plan(cook, "--beside", beside).out().contains("NOT together"));
    String later = write("later.yaml", moved(thin, 60));
    Run apart = plan(cook, "--beside", later, "--now", "2026-06-13T14:30");
    assertTrue(apart.out().contains("TOO LATE: "), apart.out());
    assertFalse(apart.out().contains("NOT together"), apart.out());
  }
}
