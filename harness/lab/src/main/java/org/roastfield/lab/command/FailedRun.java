package org.roastfield.lab.command;

import java.io.PrintWriter;
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
    err.println("Try this: " + failed.advice());
    err.flush();
    if (json) {
      PrintWriter out = spec.commandLine().getOut();
      out.print(ResultJson.failure(cook, failed));
      out.flush();
    }
    return ExitCode.SOFTWARE;
  }
}
