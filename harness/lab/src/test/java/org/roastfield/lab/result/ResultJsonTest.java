package org.roastfield.lab.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.TemperatureProfile;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookTexts;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.TemperatureScale;
import org.roastfield.lab.timeline.Timeline;

class ResultJsonTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  @Test
  void textReadAndWrittenAgain_isTheSameBytes() throws JsonProcessingException {
    String text = text(Published.porkLoin());
    assertEquals(text, Json.text(MAPPER.readTree(text)));
  }

  @Test
  void everyValue_isThatOfTheResult() throws JsonProcessingException {
    CookFile file = Published.porkLoin();
    SimulationResult result = run(file);
    JsonNode root = MAPPER.readTree(text(file));
    assertEquals(ResultJson.SCHEMA, root.get("schema").asText());
    assertEquals(1, root.get("schema_version").asInt());
    assertEquals("completed", root.get("status").asText());
    JsonNode traces = root.get("traces");
    int last = traces.get("time_s").size() - 1;
    assertEquals(result.endTime(), traces.get("time_s").get(last).asDouble(), 1e-3);
    for (int i = 0; i <= last; i += 7) {
      double time = Math.min(traces.get("time_s").get(i).asDouble(), result.endTime());
      double core = Temperatures.toCelsius(result.core().at(time));
      assertEquals(core, traces.get("core_degC").get(i).asDouble(), 1e-3);
    }
    assertEquals(last + 1, traces.get("probes").get(0).get("temperature_degC").size());
    assertEquals(
        result.energy().turnover(), root.get("energy").get("turnover_J_per_m2").asDouble());
    assertEquals(
        result.water().evaporatedUpper(),
        root.get("water").get("evaporated_upper_kg_per_m2").asDouble());
    assertEquals(result.work().acceptedSteps(), root.get("work").get("accepted_steps").asLong());
  }

  @Test
  void profiles_runFromMiddleToSurface() throws JsonProcessingException {
    CookFile file = Published.porkLoin();
    JsonNode profiles = MAPPER.readTree(text(file)).get("profiles");
    assertEquals(21, profiles.get("at").size());
    JsonNode tenth = profiles.get("at").get(10);
    SimulationResult result = run(file);
    TemperatureProfile profile = result.profile(result.endTime() / 2);
    assertEquals(profile.size(), tenth.get("temperature_degC").size());
    for (int i = 0; i < profile.size(); i++) {
      assertEquals(
          profile.position(i) * 1000, profiles.get("from_middle_mm").get(i).asDouble(), 1e-4);
      assertEquals(
          Temperatures.toCelsius(profile.temperature(i)),
          tenth.get("temperature_degC").get(i).asDouble(),
          1e-4);
    }
  }

  @Test
  void twoRuns_giveTheSameBytes() {
    assertEquals(text(Published.porkLoin()), text(Published.porkLoin()));
  }

  @Test
  void textOfTheFile_isEscaped() throws JsonProcessingException {
    String name = "\"</script>\\ \u2028 °C";
    String yaml = CookTexts.SLAB.replace("name: Strip steak", "name: '" + name + "'");
    String text = text(CookTexts.read(yaml));
    assertEquals(name, MAPPER.readTree(text).get("cook").get("name").asText());
  }

  @Test
  void failure_saysWhyAndWhatToTry() throws JsonProcessingException {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("at-latest: 3 h", "at-latest: 3 min"));
    Outcome.Failed failed = (Outcome.Failed) Simulator.withDefaults().run(file.cook());
    JsonNode root = MAPPER.readTree(ResultJson.failure(file, failed));
    assertEquals("failed", root.get("status").asText());
    assertEquals("END_RULE_NOT_MET", root.get("reason").asText());
    assertEquals("gentle heat", root.get("stage").asText());
    assertEquals(180, root.get("time_s").asDouble(), 1e-3);
    assertFalse(root.get("advice").asText().isEmpty());
  }

  @Test
  void manifest_namesInputsAndSettings_butNoFolderAndNoClock() throws JsonProcessingException {
    RunManifest manifest =
        new RunManifest(
            "1.2.3",
            "simulate",
            List.of(Inputs.file("cook", "cook.yaml", new byte[] {'a', 'b', 'c'})),
            Inputs.settings(Simulator.withDefaults().settings()),
            "17");
    JsonNode root = MAPPER.readTree(ManifestJson.text(manifest));
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        root.get("inputs").get(0).get("sha256").asText());
    assertEquals("0.01", root.get("settings").get("accuracy_K").asText());
    assertTrue(Version.text().matches("\\d+\\.\\d+\\.\\d+.*"), Version.text());
  }

  private static String text(CookFile file) {
    SimulationResult result = run(file);
    TemperatureScale scale = TemperatureScale.CELSIUS;
    return ResultJson.text(ComputedCook.of(file, result), Timeline.of(file, result, scale));
  }

  private static SimulationResult run(CookFile file) {
    return Simulator.withDefaults().run(file.cook()).orElseThrow();
  }
}
