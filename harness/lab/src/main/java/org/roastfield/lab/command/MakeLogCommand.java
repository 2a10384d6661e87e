package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.synthetic.SyntheticLog;
import org.roastfield.lab.synthetic.SyntheticLog.Made;
import org.roastfield.lab.synthetic.SyntheticSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes up a log. */
@Command(
    name = "make-log",
    mixinStandardHelpOptions = true,
    description = {
      "Makes up a log of a cook's first stage.",
      "A computation in a chamber that drifts and is opened, read by probes that err. The same seed"
          + " gives the same bytes."
    })
final class MakeLogCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "COOK.yaml", description = "Cook file.")
  private Path cookPath = Path.of("");

  @Option(
      names = "--seed",
      paramLabel = "N",
      required = true,
      description = "Seed of the random numbers.")
  private long seed;

  @Option(names = "--out", paramLabel = "LOG.csv", required = true, description = "File to write.")
  private Path out = Path.of("");

  @Option(
      names = "--id",
      paramLabel = "ID",
      description = "Name of the log (default: syn-NAME-OF-THE-COOK-SEED).")
  private Optional<String> id = Optional.empty();

  MakeLogCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput cook = CookInput.read(cookPath);
    Made made = make(cook);
    if (made instanceof Made.Failed failed) {
      return FailedRun.report(spec, cook.cook(), failed.failed(), false);
    }
    Path folder = out.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    AtomicFile.write(out, ((Made.Text) made).csv());
    PrintWriter screen = spec.commandLine().getOut();
    screen.println("Wrote " + out + ", made up");
    screen.flush();
    return 0;
  }

  private Made make(CookInput cook) {
    String name = id.orElseGet(() -> "syn-" + OutputFolder.plain(cook.cook().name()) + "-" + seed);
    try {
      return SyntheticLog.of(
          name, cook.entry(), cook.cook(), seed, SyntheticSettings.withDefaults());
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }
}
