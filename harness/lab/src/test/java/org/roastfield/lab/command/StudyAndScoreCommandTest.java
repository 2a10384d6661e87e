package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyAndScoreCommandTest {

  private static final String RECIPES = "../../datasets/synthetic/cooks.csv";

  @TempDir Path folder = Path.of("");

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

  @Test
  void unknownStudy_isTwo_andNamesThoseThereAre() {
    Run run = run("study", "everything");
    assertEquals(2, run.code());
    assertEquals(
        "roastfield: NAME must be one of [recovery, rounded, ranks, other-truth, cookers], was"
            + " \"everything\"\n",
        run.err());
  }

  @Test
  void storedStudies_areOfTheFullSize_withTheirCommand() throws IOException {
    for (String name : new String[] {"recovery", "rounded", "ranks", "other-truth", "cookers"}) {
      String json = Files.readString(Path.of("../../datasets/baselines/studies/" + name + ".json"));
      assertTrue(
          json.contains("\"command\" : \"roastfield study " + name + " --size full --seed 1\""),
          name);
    }
  }

  @Test
  void oneLog_isTooFewToScore() throws IOException {
    Path made = made("syn-slipway-bison-strip-1");
    Run run = run("score", made.toString(), "--out", folder.resolve("scores").toString());
    assertEquals(2, run.code());
    assertEquals("roastfield: at least two log packages are needed, found 1\n", run.err());
    assertFalse(Files.exists(folder.resolve("scores")));
  }

  @Test
  void twoLogs_areScoredByEachOther() throws IOException {
    Path made = made("syn-slipway-bison-strip-1", "syn-slipway-bison-strip-2");
    Path out = folder.resolve("scores");
    Run run = run("score", made.toString(), "--out", out.toString());
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertTrue(run.out().startsWith("cooker slipway-pit: 2 logs\n"), run.out());
    assertTrue(run.out().contains("foretold from 1 other cooks"), run.out());
    assertTrue(run.out().contains("50 % seen, straight line of 30 min"), run.out());
    String json = Files.readString(out.resolve("scores.json"));
    assertTrue(json.contains("\"forecaster\" : \"profile and log so far\""), json);
    assertTrue(Files.readString(out.resolve("manifest.json")).contains("\"score\""));
    assertTrue(Files.readString(out.resolve("scores.html")).contains("Cooks kept aside"));
  }

  @Test
  void aFileInPlaceOfTheFolder_isRefusedBeforeAnyFit() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "");
    Path made = made("syn-slipway-bison-strip-1", "syn-slipway-bison-strip-2");
    Run run = run("score", made.toString(), "--out", file.resolve("scores").toString());
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertTrue(
        run.err().startsWith("roastfield: --out must be a folder that can be written into"),
        run.err());
  }

  private Path made(String... ids) {
    Path made = folder.resolve("made");
    for (String id : ids) {
      Run run = run("make-data", RECIPES, "--out", made.toString(), "--only", id);
      assertEquals(0, run.code(), run.err());
    }
    return made;
  }
}
