package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.RunManifest.InputFile;

/**
 * A log as read, with its entry for the manifest.
 *
 * @param log what it says
 * @param entry name, size and hash of the very bytes that were parsed
 */
record LogInput(CookLog log, InputFile entry) {

  /** Reads the readings of a log, or of a log package, whose other files are checked with them. */
  static LogInput read(Path path) throws IOException {
    if (!LogPackageReader.isFolder(path)) {
      return file(path);
    }
    LogPackageReader.read(path);
    return file(LogPackageReader.readingsOf(path));
  }

  private static LogInput file(Path path) throws IOException {
    byte[] bytes = CookLogReader.bytes(path);
    String name = String.valueOf(path.getFileName());
    return new LogInput(CookLogReader.parse(name, bytes), Inputs.file("log", name, bytes));
  }
}
