package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.roastfield.lab.result.ManifestJson;
import org.roastfield.lab.result.RunManifest;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/**
 * Where the answer of a command about one cook goes: words on the screen and files in a folder, or
 * JSON on the screen.
 */
final class AnswerOptions {

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description =
          "Where the files go that the last line names (default: a folder in roastfield-out here,"
              + " named after the cook; with --json, nowhere).")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--json", description = "Print the answer as JSON instead of words.")
  private boolean json;

  AnswerOptions() {}

  /** Whether the screen is for JSON alone. */
  boolean json() {
    return json;
  }

  /**
   * Files by name: the answer as JSON, its manifest, and what follows.
   *
   * @param name of the answer's file, without its ending
   */
  static Map<String, String> files(String name, String answer, RunManifest manifest) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(name + ".json", answer);
    files.put("manifest.json", ManifestJson.text(manifest));
    return files;
  }

  /**
   * Prints and writes an answer.
   *
   * @param name that the folder gets if none is given
   * @param words for the screen
   * @param files by name, the first of them the answer as JSON
   */
  void give(CommandSpec spec, String name, String words, Map<String, String> files)
      throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    screen.print(json ? files.values().iterator().next() : words);
    if (out.isPresent() || !json) {
      OutputFolder folder = out.map(OutputFolder::new).orElseGet(() -> OutputFolder.named(name));
      folder.write(files);
      if (!json) {
        screen.println("Wrote " + String.join(", ", files.keySet()) + " in " + folder.path());
      }
    }
    screen.flush();
  }
}
