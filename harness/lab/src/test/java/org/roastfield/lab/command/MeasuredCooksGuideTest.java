package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log and the cook file that measured-cooks.md shows are read by the commands it shows. */
class MeasuredCooksGuideTest {

  private static final Path GUIDE =
      Path.of("", "..", "..", "thermal-core", "docs", "measured-cooks.md");

  @TempDir Path folder = Path.of("");

  @Test
  void examples_run() throws IOException {
    String guide = Files.readString(GUIDE);
    String log = file("log.csv", block(guide, "time_min"));
    String cook = file("cook.yaml", block(guide, "roastfield: cook/1"));
    assertRuns("replay", log, "--cook", cook, "--out", folder.resolve("out").toString());
    String options = "--free none --set convection=1.63 --until 415min ";
    assertTrue(guide.contains("--free none --set convection=1.63"));
    String printed = assertRuns("fit " + log + " --cook " + cook + " --rate 7°C..8°C " + options);
    assertTrue(printed.contains("compared with probe leaf"), printed);
  }

  private String assertRuns(String line) {
    return assertRuns(line.split(" "));
  }

  private String assertRuns(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(arguments);
    assertEquals("", err.toString());
    assertEquals(0, code);
    return out.toString();
  }

  /** The indented lines from the one that starts with a word to the next that is not indented. */
  private static List<String> block(String text, String start) {
    return text.lines()
        .dropWhile(line -> !line.startsWith("    " + start))
        .takeWhile(line -> line.startsWith("    "))
        .map(line -> line.substring(4))
        .toList();
  }

  private String file(String name, List<String> lines) throws IOException {
    return Files.write(folder.resolve(name), lines).toString();
  }
}
