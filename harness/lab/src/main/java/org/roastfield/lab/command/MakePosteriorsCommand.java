package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.study.ReferenceCases;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Draws the reference posteriors that calibration is compared with. */
@Command(
    name = "make-posteriors",
    mixinStandardHelpOptions = true,
    description = {
      "Draws from the posteriors of twelve made-up logs by tempered sequential Monte Carlo.",
      "Tests hold the approximations of calibrate against what is stored of them. Takes some minutes."
    })
final class MakePosteriorsCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--out",
      paramLabel = "FILE.json",
      required = true,
      description = "Where to write what came out.")
  private Path out = Path.of("");

  MakePosteriorsCommand() {}

  @Override
  public Integer call() throws IOException {
    OutputFolder.checkFile(out);
    PrintWriter screen = spec.commandLine().getOut();
    int cases = ReferenceCases.count();
    String text =
        ReferenceCases.json(
            done -> {
              screen.println("  " + done + " of " + cases);
              screen.flush();
            });
    AtomicFile.write(out, text);
    screen.println("Wrote " + out);
    screen.flush();
    return 0;
  }
}
