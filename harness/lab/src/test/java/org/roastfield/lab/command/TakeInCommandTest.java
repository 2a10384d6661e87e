package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogPackageReader;
import picocli.CommandLine;

class TakeInCommandTest {

  private static final String LOG =
      "Time (min);Pit 'A' °F;Meat °F\n0;230,5;41\n1;231,0;42\n2;229;---\n";

  @TempDir Path folder = Path.of("");

  @Test
  void withoutAnswers_theProposalAndItsCommandArePrinted_andNothingIsWritten() throws IOException {
    Path file = write(LOG);
    Run run = run(file.toString());
    assertEquals(2, run.code());
    assertEquals("", run.err());
    assertTrue(run.out().contains("Meat °F is the core: its header says so"), run.out());
    assertTrue(run.out().contains("--channel='core=Meat °F:degF' --no-probe=---"), run.out());
    assertTrue(run.out().contains("--channel='chamber=Pit '\\''A'\\'' °F:degF'"), run.out());
    assertEquals(List.of("log.csv"), names());
  }

  /** The command that is printed does the same as accepting. */
  @Test
  void printedCommand_givesTheSamePackageAsAccepting() throws IOException {
    Path file = write(LOG);
    String out = run(file.toString()).out();
    String options = out.substring(out.lastIndexOf("--encoding")).strip();
    Process shell =
        new ProcessBuilder("sh", "-c", "printf '%s\\n' " + options)
            .redirectErrorStream(true)
            .start();
    List<String> told =
        new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");
    assertEquals(0, run(file.toString(), "--accept", "--out", one.toString()).code());
    List<String> arguments = new ArrayList<>(told);
    arguments.add(file.toString());
    arguments.add("--out=" + two);
    Run run = run(arguments.toArray(String[]::new));
    assertEquals(0, run.code(), run.err());
    assertEquals(
        Files.readString(one.resolve("datapackage.json")),
        Files.readString(two.resolve("datapackage.json")));
    assertEquals(
        "time_s,chamber_degF,core_degF\n0,230.5,41\n60,231.0,42\n120,229.0,\n",
        Files.readString(one.resolve("readings.csv")));
  }

  /** What would colour or turn a terminal is spelt out, and such a column is named by number. */
  @Test
  void headerThatWouldSteerTheTerminal_isSpeltOut() throws IOException {
    Path file = write("Time (min),Core \u001b[31m\u202eC\n0,5\n1,6\n");
    Run run = run(file.toString());
    assertTrue(run.out().contains("Core \\u001b[31m\\u202eC is the core"), run.out());
    assertTrue(run.out().contains("--channel=core=#2:degC"), run.out());
    assertTrue(run.out().chars().noneMatch(c -> c == 0x1b || c == 0x202e));
  }

  @Test
  void settingWithoutAChamberProbe_andAFolderThatIsThere() throws IOException {
    Path file = write("min,core_F,core_C\n0,43,6.11\n7,45,7.22\n");
    String out = folder.resolve("roast").toString();
    Run first = run(file.toString(), "--accept", "--setting", "93.3°C", "--out", out);
    assertEquals(0, first.code(), first.err());
    LogPackage log = LogPackageReader.read(Path.of(out));
    assertEquals(366.45, log.setting().orElseThrow().temperature(), 1e-9);
    assertTrue(log.facts().licence().isEmpty());
    assertTrue(log.source().contains("must not be passed on"), log.source());
    assertTrue(log.source().contains("core\\_C left out: it is core\\_F in another unit"));
    Run second = run(file.toString(), "--accept", "--out", out);
    assertEquals(2, second.code());
    assertTrue(second.err().contains("is there already"), second.err());
  }

  @Test
  void proposalWithAQuestion_isNotAccepted() throws IOException {
    Path file = write("piece,t_s,core °C\nA,0,5\nA,10,6\nB,0,5\nB,10,7\n");
    Run run = run(file.toString(), "--accept", "--out", folder.resolve("x").toString());
    assertEquals(2, run.code());
    assertTrue(run.out().contains("are A, B in piece several probes, or cuts?"), run.out());
    assertTrue(run.out().contains("its numbers seldom fall"), run.out());
    assertFalse(Files.exists(folder.resolve("x")));
    assertTrue(run(file.toString()).out().contains("with an answer to what it does not say"));
    Run one =
        run(file.toString(), "--accept", "--rows=piece=B", "--out", folder.resolve("x").toString());
    assertEquals(0, one.code(), one.err());
    assertTrue(one.out().contains("its numbers never fall"), one.out());
  }

  @Test
  void replayReadsAPackage_asItsReadings() throws IOException {
    Path cooks = Path.of("..", "..", "datasets", "cooks");
    String cook = cooks.resolve("boathouse-pork-loin/cook.yaml").toString();
    Path log = cooks.resolve("syn-boathouse-pork-loin-1");
    Run folder = run("replay", log.toString(), "--cook", cook, "--json");
    Run file = run("replay", log.resolve("readings.csv").toString(), "--cook", cook, "--json");
    assertEquals(0, folder.code(), folder.err());
    assertEquals(file.out(), folder.out());
    assertFalse(file.out().isEmpty());
  }

  /** At a terminal the proposal can be taken, changed by options without quotes, or left. */
  @Test
  void atATerminal_emptyLineTakesTheProposal() throws IOException {
    Path out = folder.resolve("x");
    Run run = asked(List.of(""), write(LOG).toString(), "--out", out.toString());
    assertEquals(0, run.code(), run.err());
    assertEquals("time_s,chamber_degF,core_degF", firstLine(out));
    assertTrue(run.out().contains("Meat °F is the core: its header says so"), run.out());
  }

  @Test
  void atATerminal_anOptionChangesTheProposal_untilItIsTaken() throws IOException {
    Path out = folder.resolve("x");
    Run run =
        asked(
            List.of(
                "--channel=core=Meat:degF",
                "--tim=#1=h",
                "--time=#1=s",
                "--channel=core=Meat °F:degC",
                ""),
            write(LOG).toString(),
            "--out",
            out.toString());
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("found no column \"Meat\", expected one of"), run.out());
    assertTrue(run.out().contains("Unknown option: '--tim=#1=h'"), run.out());
    assertEquals("time_s,core_degC", firstLine(out));
  }

  @Test
  void atATerminal_questionsAreAnsweredFirst() throws IOException {
    Path file = write("piece,t_s,core °C\nA,0,5\nA,10,6\nB,0,5\nB,10,7\n");
    Path out = folder.resolve("x");
    Run run =
        asked(
            List.of("", "--rows=piece=B", ""),
            file.toString(),
            "--accept",
            "--out",
            out.toString());
    assertEquals(0, run.code(), run.err());
    assertTrue(Files.readString(out.resolve("readings.csv")).endsWith("10,7\n"));
    assertTrue(run.out().contains("are A, B in piece several probes, or cuts?"), run.out());
  }

  @Test
  void atATerminal_leavingOrTheEndOfInput_writesNothing() throws IOException {
    Path file = write(LOG);
    for (List<String> answers : List.of(List.of("q"), List.<String>of())) {
      Run run = asked(answers, file.toString());
      assertEquals(2, run.code());
      assertTrue(run.out().contains("Nothing was written."), run.out());
      assertEquals(List.of("log.csv"), names());
    }
  }

  /** What is told is not asked. */
  @Test
  void atATerminal_whoStatesAllIsNotAsked() throws IOException {
    Path out = folder.resolve("x");
    Run run =
        asked(
            List.of("q"),
            write(LOG).toString(),
            "--time=#1=min",
            "--channel=core=#3:degF",
            "--no-probe=---",
            "--out",
            out.toString());
    assertEquals(0, run.code(), run.err());
  }

  private static String firstLine(Path folder) throws IOException {
    return Files.readAllLines(folder.resolve("readings.csv")).get(0);
  }

  private static Run asked(List<String> answers, String... arguments) {
    Iterator<String> next = answers.iterator();
    Terminal terminal = prompt -> next.hasNext() ? Optional.of(next.next()) : Optional.empty();
    return run(new CommandLine(new TakeInCommand(Optional.of(terminal))), arguments);
  }

  private record Run(int code, String out, String err) {}

  private static Run run(String... arguments) {
    boolean other = arguments[0].equals("replay");
    String[] all =
        other
            ? arguments
            : Stream.concat(Stream.of("take-in"), Stream.of(arguments)).toArray(String[]::new);
    return run(Main.commandLine(), all);
  }

  private static Run run(CommandLine line, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    line.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    int code = line.execute(arguments);
    return new Run(code, out.toString(), err.toString());
  }

  private Path write(String text) throws IOException {
    return Files.writeString(folder.resolve("log.csv"), text);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }
}
