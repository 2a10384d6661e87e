package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.lab.files.ChamberSetting;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.LogFacts;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogPackageWriter;
import org.roastfield.lab.intake.Change;
import org.roastfield.lab.intake.Finding;
import org.roastfield.lab.intake.IntakeException;
import org.roastfield.lab.intake.Proposal;
import org.roastfield.lab.intake.Proposer;
import org.roastfield.lab.intake.SourceNote;
import org.roastfield.lab.intake.TakeIn;
import org.roastfield.lab.intake.Taken;
import org.roastfield.lab.intake.Visible;
import org.roastfield.lab.result.AtomicFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes a delimited log of any layout in. */
@Command(
    name = "take-in",
    mixinStandardHelpOptions = true,
    description = {
      "Takes a delimited log of any layout into a log package.",
      "With --time and --channel it does as told. Without, it proposes what the columns are, with"
          + " reasons. At a terminal it then asks; elsewhere it prints the command that says it all."
    })
final class TakeInCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FILE.csv", description = "Log.")
  private Path file = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Folder to make (default: the name of the log, in the working folder).")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--accept", description = "Take the proposal as it is, unless it has questions.")
  private boolean accept;

  @Mixin private LayoutOptions layout = new LayoutOptions();
  @Mixin private LogFactOptions facts = new LogFactOptions();

  private final Optional<Terminal> terminal;

  TakeInCommand() {
    this(Terminal.ofProcess());
  }

  /** With a person who can be asked, or none. */
  TakeInCommand(Optional<Terminal> terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    try {
      return run();
    } catch (IntakeException | IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private int run() throws IOException {
    Proposal first = Proposer.propose(file, layout.wishes());
    Optional<Proposal> agreed = layout.wishes().areEnough() ? Optional.of(first) : agreed(first);
    if (agreed.isEmpty()) {
      printCommand(first);
      return 2;
    }
    Proposal proposal = agreed.get();
    if (!proposal.questions().isEmpty()) {
      throw new BadInputException("the log does not say it all, see the questions above");
    }
    Taken taken = TakeIn.read(file, proposal.declaration(), facts.cutOn());
    LogPackage log = log(proposal, taken);
    Path folder = out.orElseGet(() -> Path.of(log.facts().name()));
    AtomicFolder.write(folder, partial -> LogPackageWriter.write(log, partial));
    report(taken, folder);
    return 0;
  }

  /** What of a proposal is taken: all of it if that was said, else what a person says to it. */
  private Optional<Proposal> agreed(Proposal first) throws IOException {
    print(first);
    boolean open = !first.questions().isEmpty();
    if (terminal.isPresent() && (open || !accept)) {
      PrintWriter screen = spec.commandLine().getOut();
      return new TakeInDialogue(terminal.get(), screen, this::print, file, layout.wishes())
          .from(first);
    }
    return accept ? Optional.of(first) : Optional.empty();
  }

  private void printCommand(Proposal proposal) {
    PrintWriter screen = spec.commandLine().getOut();
    boolean open = !proposal.questions().isEmpty();
    screen.println(
        "Nothing was written. To take it in like this"
            + (open ? ", with an answer to what it does not say:\n" : ":\n"));
    screen.println("  roastfield take-in " + Proposal.quoted(file.toString()) + outOption());
    screen.println("    " + proposal.options());
    screen.flush();
  }

  private String outOption() {
    return out.map(path -> " --out=" + Proposal.quoted(path.toString())).orElse("") + " \\";
  }

  private void print(Proposal proposal) {
    PrintWriter screen = spec.commandLine().getOut();
    screen.println(file.getFileName() + " seems to be:\n");
    proposal.reasons().forEach(reason -> screen.println("  - " + Visible.text(reason)));
    if (!proposal.questions().isEmpty()) {
      screen.println("\nIt does not say:\n");
      proposal.questions().forEach(question -> screen.println("  - " + Visible.text(question)));
    }
    screen.println();
    screen.flush();
  }

  private LogPackage log(Proposal proposal, Taken taken) throws IOException {
    String fileName = String.valueOf(file.getFileName());
    LogFacts described = facts.facts(fileName, taken);
    Optional<ChamberSetting> setting = facts.setting();
    if (setting.isPresent() && taken.log().channel("chamber").isPresent()) {
      throw new BadInputException("--setting is for a log without a chamber channel, this has one");
    }
    return new LogPackage(
        described,
        taken.formats(),
        taken.log(),
        setting,
        List.of(),
        List.of(),
        List.of(),
        Optional.empty(),
        cook(),
        SourceNote.of(described.title(), fileName, facts.statements(described), proposal, taken));
  }

  private Optional<String> cook() throws IOException {
    if (facts.cook().isEmpty()) {
      return Optional.empty();
    }
    byte[] bytes = CookFileReader.bytes(facts.cook().get());
    CookFileReader.parse(String.valueOf(facts.cook().get().getFileName()), bytes);
    return Optional.of(new String(bytes, StandardCharsets.UTF_8));
  }

  private void report(Taken taken, Path folder) {
    PrintWriter screen = spec.commandLine().getOut();
    screen.println(
        "Wrote " + folder + ": " + taken.log().rows() + " times, channels " + channels(taken));
    for (Change change : taken.changes()) {
      screen.println("  changed: " + counted(change));
    }
    for (Change change : taken.asideCounts()) {
      screen.println("  set aside: " + counted(change));
    }
    List<String> lines = new ArrayList<>();
    for (Finding finding : taken.findings()) {
      lines.add("  " + finding.kind().words() + ", " + finding.channel() + ": " + place(finding));
    }
    lines.stream().limit(30).forEach(screen::println);
    if (lines.size() > 30) {
      screen.println("  and " + (lines.size() - 30) + " more findings");
    }
    screen.flush();
  }

  private static String channels(Taken taken) {
    return String.join(", ", taken.formats().stream().map(format -> format.header()).toList());
  }

  private static String counted(Change change) {
    return change.what() + " (" + change.count() + ", first in line " + change.firstLine() + ")";
  }

  private static String place(Finding finding) {
    return String.format(
        Locale.ROOT,
        "%.2f %s at %.1f-%.1f min",
        finding.size(),
        finding.kind().unit(),
        finding.from() / 60,
        finding.until() / 60);
  }
}
