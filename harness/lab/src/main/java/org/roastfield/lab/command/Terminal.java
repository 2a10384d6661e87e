package org.roastfield.lab.command;

import java.io.Console;
import java.util.Optional;

/** A person who can be asked. */
interface Terminal {

  /** The line that is typed after a prompt, empty at the end of input. */
  Optional<String> ask(String prompt);

  /** That of the process; none in a pipe, where nobody could answer. */
  @SuppressWarnings("SystemConsoleNull") // a console of JDK 22 or later is asked below
  static Optional<Terminal> ofProcess() {
    Console console = System.console();
    if (console == null || !isTerminal(console)) {
      return Optional.empty();
    }
    return Optional.of(prompt -> Optional.ofNullable(console.readLine("%s", prompt)));
  }

  /** From JDK 22 on a console says so itself; before there is one at a terminal only. */
  private static boolean isTerminal(Console console) {
    try {
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a console that does not say if it is a terminal", e);
    }
  }
}
