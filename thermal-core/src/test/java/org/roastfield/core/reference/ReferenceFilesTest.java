package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReferenceFilesTest {
  private static final String CHECKSUMS = "checksums.sha256";
  private static final String README = "README.md";

  @Test
  void everyFileHasItsChecksum() throws NoSuchAlgorithmException {
    Map<String, String> checksums = checksums();
    assertEquals(12, checksums.size());
    for (Map.Entry<String, String> entry : checksums.entrySet()) {
      byte[] bytes = ReferenceFiles.bytes("/reference/" + entry.getKey());
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      assertEquals(entry.getValue(), HexFormat.of().formatHex(digest), entry.getKey());
    }
  }

  @Test
  void everyDataFileIsListed() throws IOException, URISyntaxException {
    Set<String> present = filesPresent();
    assertTrue(present.remove(CHECKSUMS));
    assertTrue(present.remove(README));
    assertEquals(checksums().keySet(), present);
  }

  @Test
  void everyDataFileStandsInTheReadme() {
    String readme = ReferenceFiles.text("/reference/" + README);
    for (String file : checksums().keySet()) {
      assertTrue(readme.contains("`" + file + "`"), file);
    }
  }

  @Test
  void missingFileIsRefusedByName() {
    IllegalArgumentException thrown =
        assertThrows(
            IllegalArgumentException.class, () -> ReferenceFiles.bytes("/reference/absent.csv"));
    assertEquals(
        "path must name a file on the class path, was /reference/absent.csv", thrown.getMessage());
  }

  private static Map<String, String> checksums() {
    Map<String, String> checksums = new TreeMap<>();
    ReferenceFiles.text("/reference/" + CHECKSUMS)
        .lines()
        .forEach(line -> checksums.put(line.substring(66), line.substring(0, 64)));
    return checksums;
  }

  private static Set<String> filesPresent() throws IOException, URISyntaxException {
    URL url = Objects.requireNonNull(ReferenceFiles.class.getResource("/reference/" + CHECKSUMS));
    Path folder = Objects.requireNonNull(Path.of(url.toURI()).getParent());
    Set<String> files = new TreeSet<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      paths
          .filter(Files::isRegularFile)
          .forEach(path -> files.add(folder.relativize(path).toString().replace('\\', '/')));
    }
    return files;
  }
}
