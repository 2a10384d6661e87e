package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.cooker.OtherCookers;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.result.RunManifest;
import picocli.CommandLine.Option;

/** Option that says of what other cookers something is known. */
final class AmongOption {

  @Option(
      names = "--among",
      paramLabel = "COOKER.json",
      split = ",",
      description = {
        "Profiles of eight other cookers at least, or folders of them: what is believed of this one"
            + " before its logs is learned from these, not assumed. Left out: those of the same logs,"
            + " those that were stopped, and misfits."
      })
  private List<Path> places = new ArrayList<>();

  AmongOption() {}

  /** Whether there are to be any. */
  boolean isAsked() {
    return !places.isEmpty();
  }

  /**
   * Profiles that were read.
   *
   * @param used of other cookers that can tell
   * @param leftOut names of the others, each with why
   * @param entries of those used, for the manifest
   */
  record Read(List<CookerProfile> used, List<String> leftOut, List<RunManifest.InputFile> entries) {

    /** What they say of cookers. */
    OtherCookers cookers() {
      return OtherCookers.of(used);
    }
  }

  /**
   * Reads them.
   *
   * @param hashes of the readings of the logs that are given: a profile of one of them is of this
   *     cooker
   */
  Read read(List<String> hashes) throws IOException {
    Read read = new Read(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    Set<String> given = new HashSet<>(hashes);
    for (Path file : files()) {
      CookerProfileFile text = CookerProfileFile.read(file);
      CookerProfile profile = CookerProfileJson.read(text);
      if (profile.logs().stream().anyMatch(log -> given.contains(log.sha256()))) {
        read.leftOut.add(profile.id() + " (of logs that are given here)");
      } else if (!OtherCookers.canTell(profile)) {
        read.leftOut.add(profile.id() + " (" + profile.diagnosis().status() + ")");
      } else {
        read.used.add(profile);
        read.entries.add(CookerOption.entry(text));
      }
    }
    return read;
  }

  private List<Path> files() throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path place : places) {
      if (Files.isDirectory(place)) {
        try (Stream<Path> inside = Files.list(place)) {
          inside.filter(AmongOption::isNamedAsProfiles).sorted().forEach(files::add);
        }
      } else {
        files.add(place);
      }
    }
    return files;
  }

  /** Manifests beside them have a second point in their names. */
  private static boolean isNamedAsProfiles(Path file) {
    return String.valueOf(file.getFileName()).matches("[a-z][a-z0-9-]{0,59}\\.json");
  }
}
