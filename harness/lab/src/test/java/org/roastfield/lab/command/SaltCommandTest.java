package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaltCommandTest {

  private static final String LOIN = "../../datasets/cooks/boathouse-pork-loin/cook.yaml";

  @TempDir Path folder = Path.of("");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    String[] all = new String[arguments.length + 1];
    all[0] = "salt";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return Main.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(all);
  }

  private JsonNode json(String... arguments) throws IOException {
    String[] all = new String[arguments.length + 2];
    all[0] = LOIN;
    all[1] = "--json";
    System.arraycopy(arguments, 0, all, 2, arguments.length);
    out.getBuffer().setLength(0);
    assertEquals(0, run(all), err.toString());
    return new ObjectMapper().readTree(out.toString());
  }

  /** 2.4 kg take 28.8 g; half of the face's salt at 10 mm by x²/(4 D ln 2), 45.5 h, and rounder. */
  @Test
  void saltOfTheLoin_isThatOfTheSource() throws IOException {
    JsonNode salt = json();
    assertEquals(0.0288, salt.get("salt_kg").asDouble(), 1e-4);
    double source = 0.01 * 0.01 / (4 * 2.2e-10 * Math.log(2)) / 3600;
    double hours = salt.get("hours_before").asDouble();
    assertTrue(hours > 0.85 * source && hours < 1.15 * source, hours + " against " + source);
    double fast = salt.get("hours_before_fastest").asDouble();
    double slow = salt.get("hours_before_slowest").asDouble();
    assertEquals(4, slow / fast, 0.2);
    assertTrue(fast < hours && hours < slow);
    assertFalse(salt.has("hours_before_for_the_middle"));
    assertTrue(Math.abs(salt.get("residual").asDouble()) < 1e-12);
  }

  /** A round cut: shares by volume add up to what was put on. */
  @Test
  void profiles_holdAllTheSalt() throws IOException {
    for (JsonNode profile : json().get("profiles")) {
      JsonNode depths = profile.get("depth_mm");
      double sum = 0;
      for (int i = 1; i < depths.size(); i++) {
        double outer = 48 - depths.get(i - 1).asDouble();
        double inner = 48 - depths.get(i).asDouble();
        double mean =
            0.5
                * (profile.get("salt_share").get(i).asDouble()
                    + profile.get("salt_share").get(i - 1).asDouble());
        sum += mean * (outer * outer - inner * inner) / (48.0 * 48);
      }
      assertEquals(0.012, sum, 0.0006, profile.get("hours").asText());
      double activity = profile.get("water_activity_of_face").asDouble();
      double face = profile.get("salt_share").get(0).asDouble();
      assertEquals(0.98 * (1 - 0.6 * face / 0.72), activity, 1e-5);
    }
  }

  @Test
  void wishes_changeTheHours() throws IOException {
    double usual = json().get("hours_before").asDouble();
    assertTrue(json("--depth", "5 mm").get("hours_before").asDouble() < 0.5 * usual);
    assertTrue(json("--evenness", "70 %").get("hours_before").asDouble() > 1.3 * usual);
    assertEquals(1.3, usual / json("--thawed").get("hours_before").asDouble(), 0.05);
    assertEquals(usual, json("--share", "2 %").get("hours_before").asDouble(), 0.1);
  }

  @Test
  void text_saysWhenWhereAndWhatItRestsOn() throws IOException {
    assertEquals(0, run(LOIN, "--out", folder.toString()), err.toString());
    String text = out.toString();
    for (String words :
        new String[] {
          "29 g on all faces, 1.2 % of the raw meat",
          " h before the cut goes on, 2026-06-11 ",
          "the middle  48 mm deep, has that not within ten days",
          "[assumed",
          "Local food codes and trained people decide.",
          "Wrote salt.json, manifest.json, salt.html in "
        }) {
      assertTrue(text.contains(words), words + " in " + text);
    }
    String page = Files.readString(folder.resolve("salt.html"));
    assertTrue(page.contains("<svg"));
    assertTrue(page.contains("Salt over depth"));
    assertTrue(Files.readString(folder.resolve("manifest.json")).contains("\"salt\""));
  }

  @ParameterizedTest
  @CsvSource({
    "--share, 0 %, share",
    "--share, 12 %, 'share must be in (0, 10 %], was 12'",
    "--share, salty, share",
    "--depth, 49 mm, 'depth must be above 0 and at most that of the middle, 48'",
    "--evenness, 100 %, 'evenness must be above 0 and below 100 %'"
  })
  void wrongWishes_areRefused(String option, String value, String message) {
    assertEquals(2, run(LOIN, option, value, "--json"));
    assertTrue(err.toString().contains(message), err.toString());
  }

  @Test
  void vegetable_isRefused() throws IOException {
    String text = Files.readString(Path.of(LOIN)).replace("food: pork", "food: vegetable");
    Path file =
        Files.writeString(
            folder.resolve("cook.yaml"), text.replace("material: pork loin", "material: beetroot"));
    assertEquals(2, run(file.toString(), "--json"));
    assertTrue(err.toString().contains("food must be meat"), err.toString());
  }
}
