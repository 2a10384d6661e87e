package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.files.CookerReference;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.RunManifest.InputFile;
import picocli.CommandLine.Option;

/** Option that says what is known of the cooker from logs. */
final class CookerOption {

  @Option(
      names = "--cooker",
      paramLabel = "COOKER.json",
      description =
          "Profile of the cooker, as calibrate writes it (default of plan: that which the cook file"
              + " names; without one, what cookers of all kinds have).")
  private Optional<Path> cooker = Optional.empty();

  CookerOption() {}

  /** The profile that is asked for. */
  Optional<CookerProfileFile> stated() throws IOException {
    return cooker.isPresent()
        ? Optional.of(CookerProfileFile.read(cooker.get()))
        : Optional.empty();
  }

  /** The profile that is asked for, or else the one that a cook file names. */
  Optional<CookerProfileFile> of(CookFile cook) throws IOException {
    return cooker.isPresent() ? stated() : cook.notes().cooker().flatMap(CookerReference::profile);
  }

  /** Entry of a profile for the manifest. */
  static InputFile entry(CookerProfileFile profile) {
    byte[] bytes = profile.json().getBytes(StandardCharsets.UTF_8);
    return Inputs.file("cooker", profile.id() + ".json", bytes);
  }
}
