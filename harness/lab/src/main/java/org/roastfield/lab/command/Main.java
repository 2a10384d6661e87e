package org.roastfield.lab.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Start of the command line, in a JVM of its own or in the caller's. */
public final class Main {

  private Main() {}

  /** Runs a command and leaves the JVM with its exit code. */
  public static void main(String[] arguments) {
    System.exit(run(utf8(FileDescriptor.out), utf8(FileDescriptor.err), arguments));
  }

  /**
   * Runs a command in this JVM, as a notebook does.
   *
   * @param out what it prints
   * @param err what it complains of
   * @return its exit code
   */
  public static int run(PrintWriter out, PrintWriter err, String... arguments) {
    int code = commandLine().setOut(out).setErr(err).execute(arguments);
    out.flush();
    err.flush();
    return code;
  }

  /** The command line with its rules for errors. */
  static CommandLine commandLine() {
    return new CommandLine(new RoastfieldCommand())
        .setParameterExceptionHandler(Failures::usage)
        .setExecutionExceptionHandler(Failures::execution)
        .setCaseInsensitiveEnumValuesAllowed(true);
  }

  /** Output is UTF-8 whatever the locale, since °C and names are. */
  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
  }
}
