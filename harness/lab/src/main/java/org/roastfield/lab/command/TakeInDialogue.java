package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.roastfield.lab.intake.IntakeException;
import org.roastfield.lab.intake.Proposal;
import org.roastfield.lab.intake.Proposer;
import org.roastfield.lab.intake.Visible;
import org.roastfield.lab.intake.Wishes;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * Asks a person what a log does not say. Answers are options as on the command line, one a line and
 * without quotes, and each gives a new proposal; an empty line takes the last one, once it has no
 * open question.
 */
final class TakeInDialogue {

  private static final String TAKE =
      "Enter takes it in like this, an option changes it, q leaves: ";
  private static final String ANSWER = "An option that answers, or q to leave: ";

  private final Terminal terminal;
  private final PrintWriter screen;
  private final Consumer<Proposal> show;
  private final Path file;
  private final Wishes stated;

  /**
   * @param show prints a proposal with its reasons and questions
   * @param stated on the command line
   */
  TakeInDialogue(
      Terminal terminal, PrintWriter screen, Consumer<Proposal> show, Path file, Wishes stated) {
    this.terminal = terminal;
    this.screen = screen;
    this.show = show;
    this.file = file;
    this.stated = stated;
  }

  /** The proposal that is taken, or none if the person leaves. */
  Optional<Proposal> from(Proposal first) throws IOException {
    Proposal proposal = first;
    List<String> said = new ArrayList<>();
    while (true) {
      boolean open = !proposal.questions().isEmpty();
      Optional<String> line = terminal.ask(open ? ANSWER : TAKE).map(String::strip);
      if (line.isEmpty() || line.get().equals("q")) {
        return Optional.empty();
      }
      if (line.get().isEmpty() && !open) {
        return Optional.of(proposal);
      }
      if (!line.get().isEmpty()) {
        proposal = after(line.get(), said, proposal);
      }
    }
  }

  /** The proposal with one answer more; the last one if the answer is none. */
  private Proposal after(String line, List<String> said, Proposal last) throws IOException {
    List<String> all = new ArrayList<>(said);
    all.add(line);
    try {
      Proposal next = Proposer.propose(file, wishes(all).or(stated));
      said.add(line);
      show.accept(next);
      return next;
    } catch (IntakeException | BadInputException | ParameterException e) {
      screen.println(Visible.text(String.valueOf(e.getMessage())));
      screen.flush();
      return last;
    }
  }

  private static Wishes wishes(List<String> said) {
    LayoutOptions options = new LayoutOptions();
    new CommandLine(options)
        .setOverwrittenOptionsAllowed(true)
        .parseArgs(said.toArray(String[]::new));
    return options.wishes();
  }
}
