package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outcomes as {@code simulate} shows them: on screen, in the result, in the report. */
class SimulateOutcomesTest {

  private static final Path COOKS = Path.of("", "..", "..", "datasets", "cooks");

  @TempDir Path folder = Path.of("");

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int simulate(String cook, String... more) {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "simulate",
                COOKS.resolve(cook).resolve("cook.yaml").toString(),
                "--out",
                folder.toString()));
    arguments.addAll(List.of(more));
    return Main.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(arguments.toArray(String[]::new));
  }

  private JsonNode result() throws IOException {
    return new ObjectMapper().readTree(Files.readString(folder.resolve("result.json")));
  }

  @Test
  void members_giveSpreadsAndChances() throws IOException {
    assertEquals(0, simulate("boathouse-pork-loin", "--members", "20", "--seed", "4"));
    String text = out.toString();
    assertTrue(text.contains("\n10 / 50 / 90 % of 20 cooks whose inputs were drawn"), text);
    assertTrue(text.contains("\n  highest core                "), text);
    assertTrue(text.contains(" of 20 cooks meet it: "), text);
    JsonNode inside = result().get("inside");
    JsonNode spread = inside.get("spread");
    assertEquals(20, spread.get("asked").asInt());
    assertEquals(4, spread.get("seed").asLong());
    JsonNode core = spread.get("rows").get(0);
    assertEquals("degC", core.get("unit").asText());
    assertTrue(core.get("p10").asDouble() < core.get("p90").asDouble());
    JsonNode finding = inside.get("published").get(0).get("findings").get(0);
    double share = finding.get("share_of_drawn_cooks").asDouble();
    assertTrue(share >= 0 && share <= 1);
    String manifest = Files.readString(folder.resolve("manifest.json"));
    assertTrue(manifest.contains("\"members\" : \"20\""), manifest);
    assertTrue(Files.readString(folder.resolve("report.html")).contains("share of drawn cooks"));
  }

  @Test
  void withoutMembers_nothingIsSaidOfChances() throws IOException {
    assertEquals(0, simulate("boathouse-pork-loin"));
    assertTrue(out.toString().contains("Spreads of these and chances: --members 500"));
    JsonNode inside = result().get("inside");
    assertTrue(inside.path("spread").isMissingNode());
    assertTrue(
        inside
            .get("published")
            .get(0)
            .get("findings")
            .get(0)
            .path("share_of_drawn_cooks")
            .isMissingNode());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-3", "20001"})
  void wrongNumberOfMembers_isRefused(String members) {
    assertEquals(2, simulate("boathouse-pork-loin", "--members", members));
    assertTrue(
        err.toString().contains("option --members must be in [1, 20000], was " + members),
        err.toString());
  }

  @Test
  void taper_hasDonenessAtItsStations() throws IOException {
    assertEquals(0, simulate("boathouse-lamb-leg"));
    for (String station : List.of("thick end, trade", "middle, research", "thin end, trade")) {
      assertTrue(out.toString().contains("\n  " + station + " "), out.toString());
    }
    JsonNode stations = result().get("stations");
    for (JsonNode station : stations) {
      double sum = 0;
      for (JsonNode band : station.get("inside").get("doneness").get(0).get("bands")) {
        sum += band.get("share").asDouble();
      }
      assertEquals(1, sum, 1e-9);
    }
    String page = Files.readString(folder.resolve("report.html"));
    assertTrue(page.contains("Inside the thin end"));
    assertTrue(page.contains("Lethality over time"));
  }
}
