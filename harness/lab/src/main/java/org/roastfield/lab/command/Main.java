package org.roastfield.lab.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Start of the command line. */
public final class Main {

  private Main() {}

  /** Runs a command and leaves the JVM with its exit code. */
  public static void main(String[] arguments) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    int code = commandLine().setOut(out).setErr(err).execute(arguments);
    out.flush();
    err.flush();
    System.exit(code);
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
