package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.study.Bar;
import org.roastfield.lab.study.Study;
import org.roastfield.lab.study.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts calibration to the test on made-up cooks. */
@Command(
    name = "study",
    mixinStandardHelpOptions = true,
    description = {
      "Puts calibration to the test on made-up cooks whose truth is known.",
      "recovery: are numbers found as closely as it says? rounded: and from whole degrees? ranks: are"
          + " truths anywhere among posterior draws, equally often? other-truth: the same where"
          + " another model made the logs."
          + " cookers: do profiles hold, help the next cook, and stand out if wrong?",
      "Exit code 1 if a bar is missed."
    })
final class StudyCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      paramLabel = "NAME",
      description = "recovery, rounded, ranks, other-truth or cookers.")
  private String name = "";

  @Option(
      names = "--size",
      paramLabel = "full|ci",
      description = "As many cooks as the bars ask for, or a look of a minute (default: ci).")
  private Study.Size size = Study.Size.CI;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      description = "Seed of all that is drawn (default: 1).")
  private long seed = 1;

  @Option(names = "--out", paramLabel = "FILE.json", description = "Where to write the findings.")
  private Optional<Path> out = Optional.empty();

  StudyCommand() {}

  @Override
  public Integer call() throws IOException {
    Study study = chosen();
    out.ifPresent(OutputFolder::checkFile);
    PrintWriter screen = spec.commandLine().getOut();
    int cases = study.cases(size);
    screen.println(study.question());
    screen.println(cases + " cases, made up; seed " + seed);
    screen.flush();
    StudyResult result = study.result(size, seed, done -> progress(screen, done, cases));
    print(screen, result);
    if (out.isPresent()) {
      AtomicFile.write(out.get(), result.json());
      screen.println("Wrote " + out.get());
    }
    screen.flush();
    return result.isMet() ? 0 : 1;
  }

  private Study chosen() {
    List<String> names = new ArrayList<>();
    for (Study study : Study.all()) {
      if (study.name().equals(name)) {
        return study;
      }
      names.add(study.name());
    }
    throw new BadInputException("NAME must be one of " + names + ", was \"" + name + "\"");
  }

  private static void progress(PrintWriter screen, int done, int cases) {
    int tenth = Math.max(1, cases / 10);
    if (done % tenth == 0 && done < cases) {
      screen.println("  " + done + " of " + cases);
      screen.flush();
    }
  }

  private static void print(PrintWriter screen, StudyResult result) {
    for (Bar bar : result.bars()) {
      screen.printf(
          Locale.ROOT,
          "%-7s %s: %.3f in [%.4g, %.4g]%n",
          bar.isMet() ? "met" : bar.counts() ? "MISSED" : "no bar",
          bar.what(),
          bar.value(),
          bar.low(),
          bar.high());
    }
    result.remarks().forEach(remark -> screen.println("  " + remark));
    screen.println(result.isMet() ? "All bars are met." : "A bar is missed.");
  }
}
