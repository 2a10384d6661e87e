package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.report.PageChecks;
import org.roastfield.lab.synthetic.ChildJvm;

/** A process that is told to stop leaves what it knows beside what was there. */
class StoppedCalibrationTest {

  private static final String RECIPES = "../../datasets/synthetic/cooks.csv";
  private static final String COOK = "../../datasets/cooks/boathouse-pork-loin/cook.yaml";
  private static final String FINISHED = "a profile that a search of hours came to";

  /** So many searches that none of the signals comes after them. */
  private static final String STARTS = "64";

  @TempDir private Path folder = Path.of("");

  private static int run(StringWriter said, String... arguments) {
    return Main.commandLine()
        .setOut(new PrintWriter(said))
        .setErr(new PrintWriter(said))
        .execute(arguments);
  }

  @Test
  void finishedProfile_outlivesAStoppedSearch_whosePartialOneStandsBeside()
      throws IOException, InterruptedException {
    StringWriter said = new StringWriter();
    String made = folder.resolve("made").toString();
    String log = "syn-slipway-bison-strip-1";
    assertEquals(0, run(said, "make-data", RECIPES, "--out", made, "--only", log), said::toString);
    Path out = Files.createDirectory(folder.resolve("pits")).resolve("pit.json");
    Files.writeString(out, FINISHED);
    Path partial = out.resolveSibling("pit-partial.json");
    for (long wait = 500; !Files.exists(partial); wait = wait * 3 / 2) {
      String words = stopped(wait, "calibrate", made, "--out", out.toString(), "--starts", STARTS);
      assertEquals(FINISHED, Files.readString(out), words);
      assertNothingHalf(out);
      assertTrue(
          Files.exists(partial)
              ? words.contains("unchecked; " + out + " is as it was")
              : words.isEmpty() || words.contains("nothing could be known of the cooker yet"),
          words);
    }
    CookerProfile profile = CookerProfileJson.read(CookerProfileFile.read(partial));
    assertFalse(profile.complete());
    assertEquals("unchecked", profile.diagnosis().status());
    assertEquals(1, profile.logs().size());
    PageChecks.assertStandsAlone(Files.readString(out.resolveSibling("pit-partial.html")));
    StringWriter plan = new StringWriter();
    String planned = folder.resolve("plan").toString();
    String[] use = {
      "plan", COOK, "--cooker", partial.toString(), "--members", "20", "--out", planned
    };
    assertEquals(profile.hasInformation() ? 0 : 2, run(plan, use), plan::toString);
  }

  private static void assertNothingHalf(Path out) throws IOException {
    try (Stream<Path> all = Files.list(out.resolveSibling(""))) {
      List<String> names = all.map(path -> String.valueOf(path.getFileName())).sorted().toList();
      assertTrue(
          names.equals(List.of("pit.json"))
              || names.equals(
                  List.of(
                      "pit-partial.html",
                      "pit-partial.json",
                      "pit-partial.manifest.json",
                      "pit.json")),
          names::toString);
    }
  }

  /** What a process said that was told to stop after some milliseconds. */
  private String stopped(long wait, String... arguments) throws IOException, InterruptedException {
    Process child = ChildJvm.start(folder, List.of(), Main.class, arguments);
    assertFalse(child.waitFor(wait, TimeUnit.MILLISECONDS), () -> ChildJvm.said(folder));
    new ProcessBuilder("kill", isDeaf(child) ? "-TERM" : "-INT", Long.toString(child.pid()))
        .start()
        .waitFor();
    assertTrue(child.waitFor(60, TimeUnit.SECONDS), "still there");
    return ChildJvm.said(folder);
  }

  /** Whether whoever started this test had SIGINT ignored, which children cannot undo. */
  private static boolean isDeaf(Process child) throws IOException {
    Path status = Path.of("/proc", Long.toString(child.pid()), "status");
    if (!Files.exists(status)) {
      return false;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("SigIgn:"))
        .anyMatch(line -> (Long.parseUnsignedLong(line.substring(7).strip(), 16) & 2) != 0);
  }
}
