package org.roastfield.lab.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds the profile of a cooker that a cook file names: in a folder {@value #FOLDER} beside the
 * cook file, or beside one of the {@value #LEVELS} folders above it; the nearest counts. A name is
 * words joined by hyphens and so never a path.
 */
final class Cookers {

  static final String FOLDER = "cookers";

  private static final int LEVELS = 2;

  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,59}");

  private Cookers() {}

  /**
   * Reference of a cook file.
   *
   * @param entry name of the cooker
   * @param cookFile where the cook file is; empty if it came without a place
   * @throws IOException if a folder or the profile cannot be read at all
   */
  static CookerReference read(Entry entry, Optional<Path> cookFile) throws IOException {
    String id = entry.text();
    if (!ID.matcher(id).matches()) {
      throw entry.error("the name of a cooker: words in lower case joined by hyphens");
    }
    if (cookFile.isEmpty()) {
      return new CookerReference(id, Optional.empty());
    }
    List<Path> folders = folders(cookFile.get());
    for (Path folder : folders) {
      Path profile = folder.resolve(id + ".json");
      if (Files.isRegularFile(profile, LinkOption.NOFOLLOW_LINKS)) {
        return new CookerReference(id, Optional.of(CookerProfileFile.read(profile)));
      }
    }
    throw entry.error(unknown(id, folders));
  }

  /** Existing folders of cookers, the nearest first. */
  private static List<Path> folders(Path cookFile) {
    List<Path> folders = new ArrayList<>();
    Path above = cookFile.toAbsolutePath().normalize().getParent();
    for (int level = 0; level <= LEVELS && above != null; level++) {
      Path folder = above.resolve(FOLDER);
      if (Files.isDirectory(folder)) {
        folders.add(folder);
      }
      above = above.getParent();
    }
    return folders;
  }

  private static String unknown(String id, List<Path> folders) throws IOException {
    if (folders.isEmpty()) {
      return "a cooker with a profile "
          + FOLDER
          + "/"
          + id
          + ".json, in the cook file's folder or"
          + " up to "
          + LEVELS
          + " above it";
    }
    List<String> known = new ArrayList<>();
    for (Path folder : folders) {
      known.addAll(ids(folder));
    }
    String places = String.join(" or ", folders.stream().map(Path::toString).toList());
    String hint = Spelling.nearest(id, known).map(near -> "; nearest known: " + near).orElse("");
    return "a cooker with a profile " + id + ".json in " + places + hint;
  }

  private static List<String> ids(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(SourceText::name)
          .filter(name -> name.endsWith(".json"))
          .map(name -> name.substring(0, name.length() - ".json".length()))
          .filter(name -> ID.matcher(name).matches())
          .sorted()
          .toList();
    }
  }
}
