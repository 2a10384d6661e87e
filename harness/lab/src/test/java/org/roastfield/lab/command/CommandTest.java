package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookTexts;

class CommandTest {

  @TempDir Path folder = Path.of("");

  private String cook = "";
  private String log = "";
  private String out = "";

  /** What a command printed and its exit code. */
  record Run(int code, String out, String err) {}

  @BeforeEach
  void files() throws IOException {
    cook = write("cook.yaml", Published.porkLoinBytes());
    log = write("readings.csv", Published.syntheticLogBytes());
    out = folder.resolve("out").toString();
  }

  @Test
  void simulate_printsTheTimelineAndWritesItsFiles() throws IOException {
    Run run = run("simulate", cook, "--out", out);
    assertEquals(0, run.code());
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("Boathouse pork loin (numbers made up, not measured)\n"));
    assertTrue(run.out().contains("\n15:10   0:00   8.0 °C"), run.out());
    assertTrue(run.out().contains("core is warmest (carryover "), run.out());
    assertTrue(run.out().contains("check with a thermometer you trust"), run.out());
    assertTrue(run.out().contains(" BELOW the published minimum"), run.out());
    assertTrue(run.out().contains("carbon monoxide"), run.out());
    assertTrue(run.out().contains(" of the turnover\n"), run.out());
    assertEquals(List.of("manifest.json", "report.html", "result.json"), written());
  }

  /** A bias of 2 K and steps of 0.5 K, so 5 °C at the start reads 7. */
  @Test
  void simulate_printsWhatAProbeShowsBesideTheTrueCore() throws IOException {
    String probe = "{name: tip, off-centre: 4 mm, response: 60 s, bias: 2 K, resolution: 0.5 K}";
    String text = CookTexts.SLAB.replace("{name: tip, depth: 15 mm}", probe);
    Run run = run("simulate", write("probe.yaml", bytes(text)), "--out", out);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out().contains("Probe tip\nclock  hours    shows  true there  true core\n"), run.out());
    assertTrue(run.out().contains("18:00   0:00   7.0 °C      5.0 °C     5.0 °C\n"), run.out());
    JsonNode json = json(Files.readString(Path.of(out, "result.json")));
    JsonNode tip = json.get("traces").get("probes").get(0);
    assertEquals(16, tip.get("depth_mm").asDouble(), 1e-9);
    assertEquals(7, tip.get("shown_degC").get(0).asDouble(), 1e-9);
  }

  @Test
  void simulateTaper_printsALineForEachStation() throws IOException {
    String leg = write("leg.yaml", Published.lambLegBytes());
    Run run = run("simulate", leg, "--out", out);
    assertEquals(0, run.code(), run.err());
    List<String> lines = run.out().lines().toList();
    String thick = lines.stream().filter(l -> l.startsWith("thick end")).findFirst().orElseThrow();
    assertTrue(thick.contains("102 mm") && thick.contains("54.0 °C"), thick);
    assertTrue(run.out().contains("\nmiddle "), run.out());
    assertTrue(run.out().contains("\nthin end "), run.out());
    JsonNode stations = json(Files.readString(Path.of(out, "result.json"))).get("stations");
    assertEquals(3, stations.size());
    double core = 0;
    for (JsonNode station : stations) {
      double next = station.get("core_at_end_of_longest_stage_degC").asDouble();
      assertTrue(next > core + 2, run.out());
      core = next;
    }
  }

  @Test
  void simulateJson_printsTheResultAndNothingElse() throws IOException {
    Run run = run("simulate", cook, "--json", "--out", out);
    assertEquals(0, run.code());
    assertEquals(Files.readString(Path.of(out, "result.json")), run.out());
    assertEquals("roastfield-result", json(run.out()).get("schema").asText());
  }

  @Test
  void jsonWithoutFolder_writesNothing() throws IOException {
    String named =
        write("named.yaml", bytes(CookTexts.SLAB.replace("Strip steak", "Written nowhere")));
    assertEquals(0, run("simulate", named, "--json").code());
    assertFalse(Files.exists(Path.of("roastfield-out", "written-nowhere")));
  }

  @Test
  void simulateTwice_writesTheSameBytes() throws IOException {
    Run first = run("simulate", cook, "--out", folder.resolve("a").toString());
    Run second = run("simulate", cook, "--out", folder.resolve("b").toString());
    assertEquals(withoutLastLine(first.out()), withoutLastLine(second.out()));
    for (String name : List.of("result.json", "manifest.json", "report.html")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("a").resolve(name)),
          Files.readAllBytes(folder.resolve("b").resolve(name)),
          name);
    }
  }

  @Test
  void files_nameNoFolder() throws IOException {
    run("simulate", cook, "--out", out);
    run("replay", log, "--cook", cook, "--out", out);
    for (String name : written()) {
      String text = Files.readString(Path.of(out, name));
      assertFalse(text.contains(folder.toString()), name);
    }
  }

  @Test
  void fahrenheit_isShownOnScreenOnly() throws IOException {
    Run run = run("simulate", cook, "--out", out, "--fahrenheit");
    assertTrue(run.out().contains("46.4 °F"), run.out());
    assertFalse(run.out().contains(" 8.0 °C"), run.out());
    assertTrue(Files.readString(Path.of(out, "result.json")).contains("core_degC"));
  }

  @Test
  void accuracyAndCells_standInTheManifest() throws IOException {
    run("simulate", cook, "--out", out, "--accuracy", "0.002", "--cells", "64");
    JsonNode settings = json(Files.readString(Path.of(out, "manifest.json"))).get("settings");
    assertEquals("0.002", settings.get("accuracy_K").asText());
    assertEquals("64", settings.get("cells").asText());
  }

  @Test
  void replay_printsErrorsAndWritesItsFiles() throws IOException {
    Run run = run("replay", log, "--cook", cook, "--out", out);
    assertEquals(0, run.code());
    assertTrue(run.out().contains("  RMS error "), run.out());
    assertTrue(run.out().contains("  worst error "), run.out());
    assertTrue(run.out().contains("     50.0 °C "), run.out());
    assertTrue(run.out().contains("chamber: the log's readings"), run.out());
    assertTrue(run.out().contains("check with a thermometer you trust"), run.out());
    assertEquals(List.of("manifest.json", "replay.html", "replay.json"), written());
    JsonNode root = json(Files.readString(Path.of(out, "replay.json")));
    assertEquals(
        root.get("core").get("time_s").size(), root.get("core_error").get("readings").asInt());
  }

  @Test
  void replayOptions_areHonoured() throws IOException {
    Run run =
        run(
            "replay",
            log,
            "--cook",
            cook,
            "--json",
            "--target",
            "20°C,86 °F",
            "--until",
            "1 h",
            "--start-from-log");
    JsonNode root = json(run.out());
    assertEquals(2, root.get("times_to_core_temperature").size());
    assertEquals(
        30, root.get("times_to_core_temperature").get(1).get("core_degC").asDouble(), 1e-9);
    assertTrue(root.get("times_to_core_temperature").get(1).get("measured_s").isNull());
    assertTrue(root.get("start_from_log").asBoolean());
    JsonNode times = root.get("core").get("time_s");
    assertEquals(3600, times.get(times.size() - 1).asDouble());
  }

  @Test
  void makeLog_writesThePublishedLog() throws IOException {
    Path made = folder.resolve("made").resolve("readings.csv");
    Run run = run("make-log", cook, "--seed", "1", "--out", made.toString());
    assertEquals(0, run.code());
    assertArrayEquals(Published.syntheticLogBytes(), Files.readAllBytes(made));
  }

  @Test
  void computationThatFails_isOneWithAdvice() throws IOException {
    String late =
        write("late.yaml", bytes(CookTexts.SLAB.replace("at-latest: 3 h", "at-latest: 3 min")));
    Run run = run("simulate", late, "--out", out);
    assertEquals(1, run.code());
    assertTrue(run.err().startsWith("roastfield: the computation failed: stage \"gentle heat\""));
    assertTrue(run.err().contains("\nTry this: "), run.err());
    assertFalse(Files.exists(Path.of(out)));
    assertEquals("failed", json(run("simulate", late, "--json").out()).get("status").asText());
  }

  @Test
  void mistakeInTheFile_isTwoWithItsPlace_andNoStackTrace() throws IOException {
    String bad = write("bad.yaml", bytes(CookTexts.SLAB.replace("wetness: 0.3", "wetnes: 0.3")));
    Run run = run("simulate", bad);
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertEquals(
        "roastfield: bad.yaml:16:5: found \"wetnes\", expected one of name, chamber, box, wetness,"
            + " baste, emissivity, contact, board, coal-bed, wrap, lid, faces, turns, end; nearest known"
            + " key: wetness\n",
        run.err());
  }

  @Test
  void targetAboveTheChamber_isTwoWithItsPlace() throws IOException {
    String bad = write("bad.yaml", bytes(CookTexts.SLAB.replace("core: 46 °C", "core: 120 °C")));
    Run run = run("simulate", bad);
    assertEquals(2, run.code());
    assertEquals(
        "roastfield: bad.yaml:17:17: found \"120 °C\", expected a temperature below 110 °C, the"
            + " hottest that the cut meets up to here\n",
        run.err());
  }

  @Test
  void missingFile_isTwo() {
    String missing = folder.resolve("none.yaml").toString();
    Run run = run("simulate", missing);
    assertEquals(2, run.code());
    assertEquals("roastfield: no such file or folder: " + missing + "\n", run.err());
  }

  @Test
  void folderInsteadOfAFile_isTwo() {
    Run run = run("simulate", folder.toString());
    assertEquals(2, run.code());
    assertTrue(run.err().startsWith("roastfield: "), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @Test
  void fileInsteadOfAFolder_isTwo() {
    Run run = run("simulate", cook, "--out", cook);
    assertEquals(2, run.code());
    assertTrue(run.err().startsWith("roastfield: "), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @Test
  void wrongUsage_isTwoWithAHint() {
    assertUsage("Unknown option: '--jason'", "simulate", cook, "--jason");
    assertUsage("Missing required parameter: 'COOK.yaml'", "simulate");
    assertUsage("Missing required option: '--cook=COOK.yaml'", "replay", log);
    assertUsage(
        "Invalid value for option '--until'", "replay", log, "--cook", cook, "--until", "1");
    assertUsage("Invalid value for option '--cells'", "simulate", cook, "--cells", "many");
    assertUsage("option --cells must be in [", "simulate", cook, "--cells", "2");
    assertUsage("option --accuracy must be in [", "simulate", cook, "--accuracy", "NaN");
    assertUsage("Missing required subcommand");
  }

  @Test
  void logWithoutCore_isTwo() throws IOException {
    String coreless = write("log.csv", bytes("time_s,chamber_degC\n0,5\n60,6\n"));
    Run run = run("replay", coreless, "--cook", cook);
    assertEquals(2, run.code());
    assertEquals("roastfield: log.csv has no core channel to compare with\n", run.err());
  }

  @Test
  void helpAndVersion_areZero() {
    for (String command : List.of("simulate", "replay", "fit", "make-log", "study", "score")) {
      Run run = run(command, "--help");
      assertEquals(0, run.code());
      assertTrue(run.out().startsWith("Usage: roastfield " + command), run.out());
    }
    assertTrue(run("--help").out().contains("Exit codes:"));
    assertTrue(run("--version").out().matches("roastfield \\d+\\.\\d+\\.\\d+\\S*\n"));
  }

  @Test
  void nameOfTheCook_makesAPlainFolderName() {
    assertEquals("boathouse-pork-loin", OutputFolder.plain("Boathouse pork loin"));
    assertEquals("etc-passwd", OutputFolder.plain("../../etc/passwd"));
    assertEquals("cook", OutputFolder.plain("肉"));
  }

  private static void assertUsage(String message, String... arguments) {
    Run run = run(arguments);
    assertEquals(2, run.code(), run.err());
    assertEquals("", run.out());
    assertTrue(run.err().startsWith("roastfield: " + message), run.err());
  }

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(arguments);
    return new Run(code, out.toString(), err.toString());
  }

  private String write(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes).toString();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.list(Path.of(out))) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }

  private static String withoutLastLine(String text) {
    return text.substring(0, text.indexOf("Wrote "));
  }

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }
}
