package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.roastfield.lab.files.CookFileException;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * What a failed command prints, and its exit code. A stack trace means a defect of Roastfield,
 * never of the input.
 */
final class Failures {

  private Failures() {}

  /** Wrong arguments. */
  static int usage(ParameterException e, String[] arguments) {
    CommandLine command = e.getCommandLine();
    say(command, String.valueOf(e.getMessage()));
    if (!UnmatchedArgumentException.printSuggestions(e, command.getErr())) {
      CommandSpec spec = command.getCommandSpec();
      command.getErr().println("Try: " + spec.qualifiedName() + " --help");
    }
    return CommandLine.ExitCode.USAGE;
  }

  /** Files that are wrong or cannot be read or written. */
  static int execution(Exception e, CommandLine command, ParseResult arguments) throws Exception {
    if (e instanceof CookFileException || e instanceof BadInputException) {
      say(command, String.valueOf(e.getMessage()));
    } else if (e instanceof IOException io) {
      say(command, text(io));
    } else {
      throw e;
    }
    return CommandLine.ExitCode.USAGE;
  }

  private static String text(IOException e) {
    if (e instanceof NoSuchFileException missing) {
      return "no such file or folder: " + missing.getFile();
    }
    if (e instanceof AccessDeniedException denied) {
      return "no permission: " + denied.getFile();
    }
    if (e instanceof FileSystemException system) {
      return system.getFile() + ": " + reason(system);
    }
    return "cannot read or write: " + e.getMessage();
  }

  private static String reason(FileSystemException e) {
    String reason = e.getReason();
    return reason == null ? "cannot be read or written" : reason;
  }

  private static void say(CommandLine command, String message) {
    command.getErr().println("roastfield: " + message);
  }
}
