package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.RunManifest;

/**
 * A log package with its cook file, as read.
 *
 * @param folder of the package
 * @param entries of the cook file and the readings for the manifest
 */
record PackageInput(
    Path folder, LogPackage log, CookFile cook, List<RunManifest.InputFile> entries) {

  /** Hash of the readings. */
  String hash() {
    return entries.get(1).sha256();
  }

  /**
   * Packages among folders, and in them.
   *
   * @param least how many there must be
   */
  static List<Path> among(List<Path> folders, int least) throws IOException {
    List<Path> packages = new ArrayList<>();
    for (Path folder : folders) {
      if (isPackage(folder)) {
        packages.add(folder);
      } else if (Files.isDirectory(folder)) {
        try (Stream<Path> inside = Files.list(folder)) {
          inside.filter(PackageInput::isPackage).sorted().forEach(packages::add);
        }
      } else {
        throw new BadInputException(folder + " is no folder");
      }
    }
    if (packages.size() < least) {
      throw new BadInputException(
          "at least "
              + (least == 1 ? "one log package is" : "two log packages are")
              + " needed, found "
              + packages.size());
    }
    return packages;
  }

  private static boolean isPackage(Path folder) {
    return Files.exists(folder.resolve("datapackage.json"));
  }

  static PackageInput read(Path folder) throws IOException {
    LogPackage log = LogPackageReader.read(folder);
    String text =
        log.cook()
            .orElseThrow(
                () ->
                    new BadInputException(
                        folder + " has no cook.yaml, which says what was cooked: put one there"));
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    String name = folder.getFileName() + "/cook.yaml";
    List<RunManifest.InputFile> entries =
        List.of(
            Inputs.file("cook", name, bytes),
            Inputs.file(
                "log",
                folder.getFileName() + "/readings.csv",
                Files.readAllBytes(LogPackageReader.readingsOf(folder))));
    return new PackageInput(folder, log, CookFileReader.parse(name, bytes), entries);
  }

  /** No log may speak twice, by what was read and not by its name. */
  static void refuseTwice(Optional<CookerProfile> known, List<PackageInput> inputs) {
    Map<String, String> taken = new HashMap<>();
    known.ifPresent(
        profile ->
            profile
                .logs()
                .forEach(
                    log ->
                        taken.put(
                            log.sha256(), "log " + log.name() + " of profile " + profile.id())));
    for (PackageInput input : inputs) {
      String same = taken.put(input.hash(), "log " + input.log().facts().name());
      if (same != null) {
        throw new BadInputException(
            "log "
                + input.log().facts().name()
                + " has the readings of "
                + same
                + ": they would count twice; leave it out, or calibrate all logs together without"
                + " --cooker");
      }
    }
  }
}
