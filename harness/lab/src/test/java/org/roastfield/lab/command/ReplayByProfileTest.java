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
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.cooker.SampleProfiles;
import org.roastfield.lab.report.PageChecks;

class ReplayByProfileTest {

  private static final String LOG = "../../datasets/cooks/syn-boathouse-pork-loin-1";
  private static final String COOK = "../../datasets/cooks/boathouse-pork-loin/cook.yaml";

  @TempDir private Path folder = Path.of("");

  private record Run(int code, String out, String err) {}

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute(arguments);
    return new Run(code, out.toString(), err.toString());
  }

  private String profile(String id, String from, String to) throws IOException {
    Path path = folder.resolve(id + ".json");
    String text = CookerProfileJson.text(SampleProfiles.sure(id, 1.5), "0.1.0");
    Files.writeString(path, text.replace(from, to));
    return path.toString();
  }

  @Test
  void profile_isSaidEverywhere() throws IOException {
    Path out = folder.resolve("out");
    String pit = profile("hot-pit", "", "");
    Run run =
        run("replay", LOG, "--cook", COOK, "--cooker", pit, "--until", "90min", "--out", out + "");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("nothing fitted, by profile hot-pit\n"), run.out());
    assertTrue(run.out().contains("numbers of the cooker: convection × 1.50\n"), run.out());
    assertTrue(run.out().contains("RMS error without it"), run.out());
    JsonNode json = new ObjectMapper().readTree(Files.readString(out.resolve("replay.json")));
    assertEquals("hot-pit", json.at("/profile/id").textValue());
    assertFalse(json.at("/profile/made_from_this_log").booleanValue());
    assertTrue(
        json.at("/core_error/rms_K").doubleValue()
            > json.at("/profile/rms_without_K").doubleValue());
    assertEquals(
        json.at("/core/time_s").size(), json.at("/profile/band/low_degC").size(), json.toString());
    String manifest = Files.readString(out.resolve("manifest.json"));
    assertTrue(manifest.contains("hot-pit.json") && manifest.contains("draws"), manifest);
    String html = Files.readString(out.resolve("replay.html"));
    PageChecks.assertStandsAlone(html);
    PageChecks.assertTextInside(html);
    assertTrue(html.contains("class=\"band\""), "no band");
  }

  @Test
  void profileThatIsNotToBeReliedOn_isRefused() throws IOException {
    Run misfit =
        run("replay", LOG, "--cook", COOK, "--cooker", profile("odd-pit", "as-stated", "misfit"));
    assertEquals(2, misfit.code());
    assertTrue(misfit.err().contains("profile odd-pit is not to be relied on"), misfit.err());
    Run other =
        run(
            "replay",
            LOG,
            "--cook",
            COOK,
            "--cooker",
            profile("old-pit", "\"model_version\" : \"1.2\"", "\"model_version\" : \"0.9\""));
    assertEquals(2, other.code());
    assertTrue(other.err().contains("old-pit.json:5:21: found \"0.9\""), other.err());
    Path renamed = folder.resolve("renamed.json");
    Files.copy(folder.resolve("odd-pit.json"), renamed);
    Run name = run("replay", LOG, "--cook", COOK, "--cooker", renamed.toString());
    assertEquals(2, name.code());
    assertEquals(
        "roastfield: renamed.json:3:10: found \"odd-pit\", expected renamed, the name of the file:"
            + " rename the file, or change its id with it\n",
        name.err());
    Run none = run("replay", LOG, "--cook", COOK, "--cooker", folder.resolve("no.json") + "");
    assertEquals(2, none.code());
    assertTrue(none.err().contains("no.json"), none.err());
  }

  @Test
  void profileOfAnOlderModel_isUsed_andSaidToBe() throws IOException {
    String old = profile("old-pit", "\"model_version\" : \"1.2\"", "\"model_version\" : \"1.0\"");
    Run plan =
        run(
            "plan",
            COOK,
            "--cooker",
            old,
            "--members",
            "20",
            "--out",
            folder.resolve("plan").toString());
    assertEquals(0, plan.code(), plan.err());
    String words = plan.out().replaceAll("\\s+", " ");
    assertTrue(
        words.contains(
            "profile old-pit from 1 log by model 1.0, older than this one's 1.2: calibrate its logs"
                + " again when you can"),
        words);
  }
}
