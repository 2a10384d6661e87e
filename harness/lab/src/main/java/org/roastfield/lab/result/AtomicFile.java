package org.roastfield.lab.result;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file so that a reader sees all of it or what was there before: a temporary file in the
 * same folder, then a move.
 */
public final class AtomicFile {

  private AtomicFile() {}

  /**
   * Writes text in UTF-8; what stood there is replaced, and nothing else is left behind on failure.
   *
   * @throws IOException if it cannot be written, for instance because the folder does not exist
   */
  public static void write(Path target, String text) throws IOException {
    Path partial = partial(target);
    try {
      Files.writeString(
          partial,
          text,
          StandardCharsets.UTF_8,
          StandardOpenOption.CREATE_NEW,
          StandardOpenOption.WRITE);
      Files.move(
          partial, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(partial);
    }
  }

  /** A name of its own for each process and call, so that two writers do not meet. */
  static Path partial(Path target) {
    String unique =
        ProcessHandle.current().pid() + "-" + Long.toUnsignedString(System.nanoTime(), 36);
    return target.resolveSibling("." + target.getFileName() + "." + unique + ".partial");
  }
}
