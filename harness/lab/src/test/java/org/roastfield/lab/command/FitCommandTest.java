package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.Published;

class FitCommandTest {

  private static final String HALFWAY = "{name: halfway, depth: 24 mm}";

  private static final String STILL = "heat-transfer: still air}\n    wetness: 0.3";

  @TempDir Path folder = Path.of("");

  private String log = "";

  /** What the command printed and its exit code. */
  private record Run(int code, String out, String err) {}

  @BeforeEach
  void files() throws IOException {
    log = Files.write(folder.resolve("readings.csv"), Published.syntheticLogBytes()).toString();
  }

  /** A made-up log, fitted by what a probe shows, with everything that one may ask for. */
  @Test
  void fit_printsNumbersTimesRatesAndWater() throws IOException {
    String leaf = "{name: leaf, off-centre: 2 mm, response: 60 s}";
    Run run =
        run(
            cook(HALFWAY, leaf),
            List.of("--free", "size,convection", "--set", "drive=0.5,start=-0.2"),
            List.of("--from", "3min", "--until", "100min", "--target", "20°C"),
            List.of("--rate", "15°C..30°C", "--lost", "100 g"));
    assertEquals(0, run.code(), run.err());
    for (String piece :
        List.of(
            "Boathouse pork loin, log readings.csv (numbers made up, not measured)\n\n  size ",
            " fitted\n  drive                 0.500 given\n  start                 -0.200 given\n",
            "\nCore, computed less measured, 2 fitted\n  RMS error      0.",
            "\nprobe shows  measured  computed ",
            "\n    20.0 °C    0:",
            "\n      heating rate    measured    computed ",
            "\n15.0 °C to 30.0 °C  0.",
            "\n  evaporated    ",
            "\n  weighed loss  100.0 g\n",
            "\n  core readings: compared with probe leaf\n",
            "\n  wetness: as the face dries and is fed, in place of the cook file's 0.3\n",
            "check with a thermometer you trust")) {
      assertTrue(run.out().contains(piece), () -> piece + " in\n" + run.out());
    }
  }

  @Test
  void json_holdsWhatTheScreenShows_andTheManifestWhatWasAsked() throws IOException {
    String cook = cook(HALFWAY, HALFWAY);
    String out = folder.resolve("out").toString();
    List<String> asked = List.of("--free", "size", "--set", "drive=0.5", "--lost", "100 g");
    Run run = run(cook, asked, List.of("--until", "100min", "--json", "--out", out));
    assertEquals(0, run.code(), run.err());
    assertEquals(Files.readString(Path.of(out, "fit.json")), run.out());
    JsonNode root = new ObjectMapper().readTree(run.out());
    assertEquals("roastfield-fit", root.get("schema").asText());
    assertTrue(root.get("parameters").get("size").get("fitted").asBoolean());
    assertEquals(0.5, root.get("parameters").get("drive").get("value").asDouble());
    assertEquals(0.1, root.get("water_lost").get("weighed_kg").asDouble());
    assertEquals(
        root.get("core").get("time_s").size(), root.get("core_error").get("readings").asInt());
    JsonNode settings =
        new ObjectMapper().readTree(Path.of(out, "manifest.json").toFile()).get("settings");
    assertEquals("size", settings.get("free").asText());
    assertEquals("0.5", settings.get("set_drive").asText());
    assertEquals("6000.0", settings.get("until_s").asText());
  }

  /** A dry log says nothing of a drive: it ends at its bound, and that is said. */
  @Test
  void numberAtItsBound_isNotToldByTheLog() throws IOException {
    String cold = "time_s,core_degC\n0,8\n600,8\n1200,8\n1800,8\n";
    log = Files.writeString(folder.resolve("cold.csv"), cold).toString();
    Run run = run(cook(HALFWAY, HALFWAY), List.of("--free", "size"));
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out().contains("  size                  3.000 fitted, at its bound: the log does not"),
        run.out());
  }

  @Test
  void fit_saysWhatIsWrong() throws IOException {
    assertMessage("parameter must be size, drive, start or convection, was \"h\"", "--free", "h");
    assertMessage("--free must name each only once, was [size, size]", "--free", "size,size");
    assertMessage("drive must be in [0.001, 10.0], was -1.0", "--set", "drive=-1");
    assertMessage(
        "until must be greater than 600.0, was 60.0", "--from", "10min", "--until", "1min");
    assertMessage(
        "probe must be core or one of cook.yaml (halfway), was \"tap\"", "--probe", "tap");
    assertMessage(
        "readings.csv must have at least two core readings to compare with, has 0",
        "--from",
        "9 h");
  }

  /** Air by correlation is measured by the size that is tried. */
  @Test
  void fitInStillAir_isDoneLikeAnyOther() throws IOException {
    Run still = run(cook("heat-transfer: 6 W/(m²·K)}\n    wetness: 0.3", STILL));
    assertEquals(0, still.code(), still.err());
    assertTrue(still.out().contains("  size "), still.out());
  }

  @Test
  void cookFilesThatNoFitCanFollow_areRefused() throws IOException {
    String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
    String gentle =
        text.substring(text.indexOf("  - name: gentle"), text.indexOf("  - name: sear"));
    Run turned = run(cook(gentle, ""));
    assertEquals(2, turned.code());
    assertEquals(
        "roastfield: the first stage of cook.yaml must be without turns, was \"sear\"\n",
        turned.err());
  }

  @Test
  void quantitiesWithoutUnits_areRefused() throws IOException {
    String rate = "must be two temperatures, such as 40°C..60°C, was \"40°C\"";
    assertUsage("Invalid value for option '--rate' (FROM..TO): " + rate, "--rate", "40°C");
    String mass =
        "must be a weight, such as 2.4 kg or 5 lb 4 oz (kg, g, lb, oz); 100 of kg, g, lb or oz?, was \"100\"";
    assertUsage("Invalid value for option '--lost': " + mass, "--lost", "100");
  }

  private void assertMessage(String message, String... options) throws IOException {
    Run run = run(cook(HALFWAY, HALFWAY), List.of(options));
    assertEquals(2, run.code());
    assertEquals("roastfield: " + message + "\n", run.err());
  }

  private void assertUsage(String message, String... options) throws IOException {
    Run run = run(cook(HALFWAY, HALFWAY), List.of(options));
    assertEquals(2, run.code());
    assertTrue(run.err().startsWith("roastfield: " + message), run.err());
  }

  private String cook(String before, String after) throws IOException {
    String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
    assertTrue(text.contains(before), before);
    return Files.writeString(folder.resolve("cook.yaml"), text.replace(before, after)).toString();
  }

  @SafeVarargs
  private Run run(String cook, List<String>... options) {
    List<String> arguments = new ArrayList<>(List.of("fit", log, "--cook", cook));
    arguments.addAll(List.of("--cells", "16", "--accuracy", "0.02"));
    for (List<String> part : options) {
      arguments.addAll(part);
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(arguments.toArray(String[]::new));
    return new Run(code, out.toString(), err.toString());
  }
}
