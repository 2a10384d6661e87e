package org.roastfield.lab.command;

import java.io.PrintWriter;
import org.roastfield.core.simulation.FailureReason;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.result.ResultJson;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;

/** What a command says of a computation that failed. */
final class FailedRun {

  private FailedRun() {}

  /** Prints message and advice, as JSON too if asked for; gives the exit code. */
  static int report(CommandSpec spec, CookFile cook, Outcome.Failed failed, boolean json) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("roastfield: the computation failed: " + failed.message());
    err.println("Try this: " + advice(cook, failed));
    err.flush();
    if (json) {
      PrintWriter out = spec.commandLine().getOut();
      out.print(ResultJson.failure(cook, failed));
      out.flush();
    }
    return ExitCode.SOFTWARE;
  }

  /** What to try, in the words of the cook file where it is known what a file does to get here. */
  static String advice(CookFile cook, Outcome.Failed failed) {
    boolean wet =
        cook.stages().stream()
            .filter(stage -> failed.stage().startsWith(stage.name()))
            .anyMatch(stage -> stage.upper().wetness() > 0 || stage.lower().wetness() > 0);
    return failed.reason() == FailureReason.FACE_UNBALANCED && wet
        ? "a face that an earlier stage left hotter than boiling cannot be wet at once: say wetness: 0"
            + " for stage \""
            + failed.stage()
            + "\", or sear less"
        : failed.advice();
  }
}
