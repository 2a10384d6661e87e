package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.RunManifest.InputFile;

/**
 * A cook file as read, with its entry for the manifest.
 *
 * @param cook what it says
 * @param entry name, size and hash of the very bytes that were parsed
 */
record CookInput(CookFile cook, InputFile entry) {

  static CookInput read(Path path) throws IOException {
    byte[] bytes = CookFileReader.bytes(path);
    String name = String.valueOf(path.getFileName());
    return new CookInput(CookFileReader.parse(path, bytes), Inputs.file("cook", name, bytes));
  }
}
