package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands of the README print what the README shows. */
class ReadmeTest {

  private static final Path ROOT = Path.of("", "..", "..");
  private static final Pattern PLAN =
      Pattern.compile("^ {4}\\./harness/roastfield plan (\\S+)$", Pattern.MULTILINE);
  private static final Pattern COMMAND =
      Pattern.compile("^ {4}\\./harness/roastfield simulate (\\S+)$", Pattern.MULTILINE);
  private static final Pattern BLOCK =
      Pattern.compile("^```\\R(.*?)\\R```$", Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern RESIDUAL =
      Pattern.compile("(?<=^energy residual {2})\\d\\.\\de-\\d\\d(?= of the turnover$)");

  @TempDir Path folder = Path.of("");

  /** The README shows all but the line that names the folder. */
  @Test
  void firstCommand_isPlan_andItsTimetableIsShown() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    assertTrue(readme.indexOf("roastfield plan") < readme.indexOf("roastfield simulate"));
    String printed = printed("plan", ROOT.resolve(first(PLAN, readme)));
    int end = printed.indexOf("\nWrote plan.json, manifest.json, plan.html, plan.ics in ");
    assertEquals(printed.substring(0, end), block(readme, 0));
    for (String file : List.of("plan.html", "plan.ics", "plan.json")) {
      assertTrue(readme.contains("`" + file + "`"), file);
    }
  }

  @Test
  void timetable_isWhatTheCommandPrints() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    List<String> shown = lines(block(readme, 1));
    String printed = simulate(ROOT.resolve(first(COMMAND, readme)));
    List<String> table = lines(printed.substring(0, printed.indexOf("\nCautions\n")).strip());
    assertEquals(1, table.stream().filter("energy residual  ~ of the turnover"::equals).count());
    assertEquals(String.join("\n", table), String.join("\n", shown));
  }

  @Test
  void filesThatTheCommandWrites_areNamed() throws IOException {
    String readme = Files.readString(ROOT.resolve("README.md"));
    String printed = simulate(ROOT.resolve(first(COMMAND, readme)));
    assertTrue(printed.contains("\nWrote result.json, manifest.json, report.html in "), printed);
    assertTrue(readme.contains("`result.json`, `manifest.json` and a report"));
    assertTrue(readme.contains("`roastfield-out/" + OutputFolder.plain(title(printed)) + "/`"));
  }

  private static String title(String printed) {
    return printed.substring(0, printed.indexOf(" (numbers made up"));
  }

  /** A block of the README without a language. */
  private static String block(String readme, int index) {
    Matcher matcher = BLOCK.matcher(readme);
    for (int i = 0; i <= index; i++) {
      assertTrue(matcher.find(), BLOCK::pattern);
    }
    return matcher.group(1);
  }

  private String simulate(Path cook) {
    return printed("simulate", cook);
  }

  private String printed(String command, Path cook) {
    StringWriter out = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(out, true))
            .execute(command, cook.toString(), "--out", folder.toString());
    assertEquals(0, code);
    return out.toString();
  }

  private static String first(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    assertTrue(matcher.find(), pattern::pattern);
    return matcher.group(1);
  }

  /** Lines with the residual, which is round-off, by its form alone. */
  private static List<String> lines(String text) {
    return text.lines().map(line -> RESIDUAL.matcher(line).replaceFirst("~")).toList();
  }
}
