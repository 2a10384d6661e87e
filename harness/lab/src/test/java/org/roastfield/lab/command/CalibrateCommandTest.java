package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.cooker.SampleProfiles;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.report.PageChecks;

class CalibrateCommandTest {

  private static final String RECIPES = "../../datasets/synthetic/cooks.csv";
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

  private Path made(String... ids) {
    Path made = folder.resolve("made");
    for (String id : ids) {
      assertEquals(0, run("make-data", RECIPES, "--out", made.toString(), "--only", id).code());
    }
    return made;
  }

  @Test
  void log_makesAProfile_thatReadsBack_andThatPlansUse() throws IOException {
    Path made = made("syn-slipway-pork-loin-1");
    Path out = folder.resolve("slipway-pit.json");
    String[] arguments = {"calibrate", made.toString(), "--out", out.toString()};
    Run run = run(arguments);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().startsWith("Cooker slipway-pit, from 1 log (numbers made up)\n"));
    String text = Files.readString(out);
    CookerProfile profile = CookerProfileJson.read(CookerProfileFile.read(out));
    assertTrue(profile.complete());
    assertTrue(profile.madeUp());
    assertEquals(1, profile.logs().size());
    assertTrue(profile.logs().get(0).rms() < 0.5, text);
    for (int p = 0; p < profile.parameters().size(); p++) {
      assertTrue(profile.belief().spread(p) > 0 && profile.contraction(p) < 1, text);
      assertEquals(profile.contraction(p) >= 0.3, profile.isIdentified(p));
    }
    String html = Files.readString(folder.resolve("slipway-pit.html"));
    PageChecks.assertStandsAlone(html);
    PageChecks.assertTextInside(html);
    assertTrue(Files.readString(folder.resolve("slipway-pit.manifest.json")).contains("calibrate"));
    assertEquals(run.out(), run(arguments).out());
    assertEquals(text, Files.readString(out));
    Run plan =
        run(
            "plan",
            COOK,
            "--cooker",
            out.toString(),
            "--members",
            "60",
            "--out",
            folder.resolve("plan").toString());
    assertEquals(0, plan.code(), plan.err());
    assertTrue(plan.out().contains("profile slipway-pit from 1 log"), plan.out());
  }

  @Test
  void logThatAProfileHas_isRefused_withAdvice() throws IOException {
    Path made = made("syn-slipway-pork-loin-1");
    Path out = folder.resolve("pit.json");
    String[] once = {"calibrate", made.toString(), "--free", "convection", "--out", out.toString()};
    Run first = run(once);
    assertEquals(0, first.code(), first.err());
    Path again = folder.resolve("again.json");
    Run twice =
        run("calibrate", made.toString(), "--cooker", out.toString(), "--out", again.toString());
    assertEquals(2, twice.code());
    assertEquals(
        "roastfield: log syn-slipway-pork-loin-1 has the readings of log syn-slipway-pork-loin-1 of"
            + " profile pit: they would count twice; leave it out, or calibrate all logs together"
            + " without --cooker\n",
        twice.err());
    assertFalse(Files.exists(again));
    String package1 = made.resolve("syn-slipway-pork-loin-1").toString();
    Run both = run("calibrate", package1, package1, "--out", again.toString());
    assertEquals(2, both.code());
    assertTrue(both.err().contains("would count twice"), both.err());
  }

  /** What is believed before the logs is what eight other cookers were found to be like. */
  @Test
  void otherCookers_sayWhatIsBelievedBeforeTheLogs() throws IOException {
    Path made = made("syn-slipway-bison-strip-1");
    Path pits = Files.createDirectory(folder.resolve("pits"));
    Path out = folder.resolve("pit.json");
    String[] arguments = {
      "calibrate",
      made.toString(),
      "--free",
      "convection",
      "--among",
      pits.toString(),
      "--out",
      out.toString()
    };
    for (int i = 0; i < 8; i++) {
      Run few = run(arguments);
      assertEquals(2, few.code());
      assertTrue(few.err().contains("at least 8 that can be relied on, were " + i), few.err());
      CookerProfile other = SampleProfiles.sure("pit-" + i, 1.2);
      Files.writeString(pits.resolve(other.id() + ".json"), CookerProfileJson.text(other, "0"));
    }
    Run run = run(arguments);
    assertEquals(0, run.code(), run.err());
    String words = run.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("is learned from pit-0, pit-1,"), words);
    CookerProfile profile = CookerProfileJson.read(CookerProfileFile.read(out));
    assertEquals(Math.pow(1.2, 8.0 / 12), profile.parameters().get(0).median(), 0.01);
    assertEquals("learned from 8 other cookers", profile.parameters().get(0).source());
    assertTrue(Files.readString(folder.resolve("pit.manifest.json")).contains("pit-7.json"));
    Files.copy(out, pits.resolve("pit.json"));
    Run again = run(arguments);
    assertEquals(
        run.out().replaceAll("\\s+", " "),
        again
            .out()
            .replaceAll("\\s+", " ")
            .replace("; left out: pit (of logs that are given here)", ""));
    Path second = made("syn-slipway-pork-loin-1").resolve("syn-slipway-pork-loin-1");
    arguments[1] = second.toString();
    List<String> more = new ArrayList<>(List.of(arguments));
    more.addAll(List.of("--cooker", out.toString()));
    Run both = run(more.toArray(new String[0]));
    assertTrue(both.err().contains("calibrate all of its logs together"), both.err());
    assertEquals(2, both.code());
  }

  @Test
  void wrongInput_isTwo_andLeavesNothing() {
    Path out = folder.resolve("pit.json");
    Run none = run("calibrate", folder.toString(), "--out", out.toString());
    assertEquals(2, none.code());
    assertEquals("roastfield: at least one log package is needed, found 0\n", none.err());
    Run name = run("calibrate", folder.toString(), "--out", folder.resolve("Pit 1").toString());
    assertEquals(2, name.code());
    assertTrue(name.err().startsWith("roastfield: --out must end in a name"), name.err());
    Path made = made("syn-slipway-pork-loin-1");
    Run free = run("calibrate", made.toString(), "--out", out.toString(), "--free", "convexion");
    assertEquals(2, free.code());
    assertTrue(free.err().contains("was convexion"), free.err());
    Run cut = run("calibrate", made.toString(), "--out", out.toString(), "--free", "size");
    assertEquals(2, cut.code());
    assertEquals(
        "roastfield: at least one number of the cooker must be free, such as convection\n",
        cut.err());
    assertFalse(Files.exists(out));
  }

  /** The rest of a log whose truth is the fitted model lies where it was foretold. */
  @Test
  void firstShareOfALog_foretellsTheRest() throws IOException {
    Path made = made("syn-slipway-bison-strip-1");
    Path out = folder.resolve("pit.json");
    Run run = run("calibrate", made.toString(), "--first", "40%", "--out", out.toString());
    assertEquals(0, run.code(), run.err());
    String words = run.out().replaceAll("\\s+", " ");
    Matcher found =
        Pattern.compile("core of [-a-z0-9]+: (\\d+) of the (\\d+) readings after (\\d+) min")
            .matcher(words);
    assertTrue(found.find(), words);
    double share = Double.parseDouble(found.group(1)) / Double.parseDouble(found.group(2));
    assertTrue(share > 0.5, words);
    assertTrue(Files.readString(folder.resolve("pit.manifest.json")).contains("\"first\""));
    Run none = run("calibrate", made.toString(), "--first", "100%", "--out", out.toString());
    assertEquals(2, none.code());
    assertEquals(
        "roastfield: --first must be above 0 % and below 100 %, was 100.0 %\n", none.err());
  }

  @Test
  void logsOfTwoCookers_areRefused_andSoIsAFolderThatIsNotThere() {
    Path out = folder.resolve("pit.json");
    Path made = made("syn-slipway-bison-strip-1", "syn-net-loft-pork-loin-1");
    Run two = run("calibrate", made.toString(), "--out", out.toString());
    assertEquals(2, two.code());
    assertEquals(
        "roastfield: logs must be of one cooker, were of net-loft-oven (log"
            + " syn-net-loft-pork-loin-1), slipway-pit (log syn-slipway-bison-strip-1): calibrate"
            + " each cooker from its own logs\n",
        two.err());
    Path nowhere = folder.resolve("nowhere").resolve("pit.json");
    Run none = run("calibrate", made.toString(), "--out", nowhere.toString());
    assertEquals(2, none.code());
    assertEquals(
        "roastfield: --out must be in a folder that exists and can be written into, was "
            + nowhere
            + "\n",
        none.err());
  }

  @Test
  void profileOfAnotherModel_isRefused_withAdvice() throws IOException {
    Path other = folder.resolve("other.json");
    Files.writeString(
        other, "{\"schema\": \"cooker/1\", \"id\": \"other\", \"model_version\": \"2.0\"}");
    Run plan = run("plan", COOK, "--cooker", other.toString());
    assertEquals(2, plan.code());
    assertTrue(plan.err().contains("calibrate the logs again"), plan.err());
  }
}
