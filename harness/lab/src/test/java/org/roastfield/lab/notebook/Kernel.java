package org.roastfield.lab.notebook;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Runs cells of Java in this JVM, one after another, as a notebook's kernel does.
 *
 * <p>They see the classes of this test's class path and module path. Beside these they have {@code
 * show}, as the kernel of {@code notebooks/jupyter} gives it.
 */
final class Kernel implements AutoCloseable {

  /** Stands before and after what a cell shows, in what it prints. */
  static final String SHOWN = "\u001e";

  private static final String SHOW =
      "void show(String html) { System.out.print('\\u001e' + html + '\\u001e'); }";

  private final JShell shell;

  private Kernel(JShell shell) {
    this.shell = shell;
  }

  /** A kernel that has run nothing yet. */
  static Kernel start() {
    Kernel kernel = new Kernel(JShell.builder().executionEngine("local").build());
    Stream.of("jdk.module.path", "java.class.path")
        .flatMap(path -> Stream.of(System.getProperty(path, "").split(File.pathSeparator, -1)))
        .filter(path -> !path.isEmpty())
        .forEach(kernel.shell::addToClasspath);
    kernel.run(SHOW);
    return kernel;
  }

  /**
   * Runs a cell.
   *
   * @return what it printed and showed
   * @throws AssertionError if it is not Java, does not compile or throws
   */
  String run(String cell) {
    PrintStream screen = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      evaluate(cell);
    } finally {
      System.setOut(screen);
    }
    return printed.toString(StandardCharsets.UTF_8);
  }

  private void evaluate(String cell) {
    String rest = cell;
    while (!rest.isBlank()) {
      CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      if (!next.completeness().isComplete()) {
        throw new AssertionError("is not complete: " + rest);
      }
      shell.eval(next.source()).forEach(this::check);
      rest = next.remaining();
    }
    shell.snippets().forEach(this::checkResolved);
  }

  private void check(SnippetEvent event) {
    if (event.status() == Status.REJECTED) {
      String reasons =
          shell
              .diagnostics(event.snippet())
              .map(reason -> reason.getMessage(Locale.ROOT))
              .collect(Collectors.joining("; "));
      throw new AssertionError("does not compile, " + reasons + ": " + event.snippet().source());
    }
    if (event.exception() != null) {
      String reason = event.exception().getMessage();
      throw new AssertionError(
          "throws " + reason + ": " + event.snippet().source(), event.exception());
    }
  }

  /** What names something that no cell has declared compiles, and would fail when it is called. */
  private void checkResolved(Snippet snippet) {
    Status status = shell.status(snippet);
    if (status == Status.RECOVERABLE_DEFINED || status == Status.RECOVERABLE_NOT_DEFINED) {
      throw new AssertionError("names what is not declared: " + snippet.source());
    }
  }

  @Override
  public void close() {
    shell.close();
  }
}
