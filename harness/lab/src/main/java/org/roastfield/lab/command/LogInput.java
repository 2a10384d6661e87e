package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.RunManifest.InputFile;

/**
 * A log as read, with its entry for the manifest.
 *
 * @param log what it says
 * @param events beside the readings; none of a file of readings alone
 * @param entry name, size and hash of the very bytes that were parsed
 */
record LogInput(CookLog log, List<LogEvent> events, InputFile entry) {

  /** Reads the readings of a log, or of a log package, whose other files are checked with them. */
  static LogInput read(Path path) throws IOException {
    if (!LogPackageReader.isFolder(path)) {
      return file(path, List.of());
    }
    List<LogEvent> events = LogPackageReader.read(path).events();
    return file(LogPackageReader.readingsOf(path), events);
  }

  private static LogInput file(Path path, List<LogEvent> events) throws IOException {
    byte[] bytes = CookLogReader.bytes(path);
    String name = String.valueOf(path.getFileName());
    InputFile entry = Inputs.file("log", name, bytes);
    return new LogInput(CookLogReader.parse(name, bytes), events, entry);
  }
}
