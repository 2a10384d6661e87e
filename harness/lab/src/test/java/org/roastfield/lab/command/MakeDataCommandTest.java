package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MakeDataCommandTest {

  private static final Path PUBLISHED = Path.of("../../datasets/synthetic");
  private static final String ONE = "syn-net-loft-bison-strip-3";

  @TempDir Path folder = Path.of("");

  private Path list = Path.of("");
  private Path out = Path.of("");

  private record Run(int code, String out, String err) {}

  @BeforeEach
  void files() throws IOException {
    list = Files.copy(PUBLISHED.resolve("cooks.csv"), folder.resolve("cooks.csv"));
    out = folder.resolve("out");
  }

  @Test
  void oneCook_isMadeAndComparedWithItsSums() throws IOException {
    Files.copy(PUBLISHED.resolve("checksums.sha256"), folder.resolve("checksums.sha256"));
    Run run = run(list.toString(), "--out", out.toString(), "--only", ONE);
    assertEquals(
        "Wrote 1 cooks to " + out + ", made up\nAll 5 files are those of checksums.sha256\n",
        run.out());
    assertEquals("", run.err());
    assertEquals(0, run.code());
    assertTrue(Files.readString(out.resolve("truth/" + ONE + ".json")).contains("\"held-out\""));
    assertTrue(Files.readString(out.resolve("manifest.json")).contains("\"make-data\""));
    Run again = run(list.toString(), "--out", out.toString(), "--only", ONE);
    assertEquals(2, again.code());
    assertTrue(again.err().contains("is there already"), again.err());
  }

  @Test
  void otherSum_isNamed_andIsOne() throws IOException {
    String sums = Files.readString(PUBLISHED.resolve("checksums.sha256"));
    String path = ONE + "/readings.csv";
    int at = sums.indexOf(path) - 66;
    String wrong = sums.substring(0, at) + "0".repeat(64) + sums.substring(at + 64);
    Files.writeString(folder.resolve("checksums.sha256"), wrong);
    Run run = run(list.toString(), "--out", out.toString(), "--only", ONE);
    assertEquals(1, run.code());
    assertEquals("roastfield: not those of checksums.sha256: " + path + "\n", run.err());
  }

  @Test
  void newSums_areWrittenBesideTheList() throws IOException {
    Files.writeString(
        list,
        """
        id,cut,cooker,setting_degC,seed,split,departures
        syn-mine,bison-strip,pontoon-barrel,120,7,fit,
        """);
    Run run = run(list.toString(), "--out", out.toString(), "--new-sums");
    assertEquals(0, run.code(), run.err());
    assertEquals(5, Files.readAllLines(folder.resolve("checksums.sha256")).size());
    assertEquals(0, run(list.toString(), "--out", folder.resolve("b").toString()).code());
  }

  @Test
  void wrongUse_isTwo() {
    Run unknown = run(list.toString(), "--out", out.toString(), "--only", "syn-none");
    assertEquals(2, unknown.code());
    assertEquals("roastfield: no recipe in cooks.csv has the id syn-none\n", unknown.err());
    Run both = run(list.toString(), "--out", out.toString(), "--only", ONE, "--new-sums");
    assertEquals(2, both.code());
    assertEquals(
        "roastfield: --new-sums needs all of the cooks, so it cannot be with --only\n", both.err());
  }

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] all = new String[arguments.length + 1];
    all[0] = "make-data";
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    int code =
        Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err)).execute(all);
    return new Run(code, out.toString(), err.toString());
  }
}
