package org.roastfield.lab.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.files.LogPackageWriter;
import org.roastfield.lab.files.SamplePackages;

class AtomicFolderTest {

  @TempDir Path parent = Path.of("");

  @Test
  void failureWhileWriting_leavesNothingBehind() throws IOException {
    assertThrows(
        IOException.class,
        () ->
            AtomicFolder.write(
                parent.resolve("a"),
                folder -> {
                  Files.writeString(folder.resolve("x"), "half");
                  throw new IOException("full");
                }));
    assertEquals(List.of(), names());
  }

  @Test
  void folderThatIsThere_isRefused() throws IOException {
    Files.createDirectory(parent.resolve("a"));
    assertThrows(
        FileAlreadyExistsException.class,
        () -> AtomicFolder.write(parent.resolve("a"), folder -> {}));
    assertEquals(List.of("a"), names());
  }

  /** A writer that is killed at any moment leaves only whole packages and old or new files. */
  @Test
  void killedWriter_leavesWholePackagesOnly() throws IOException, InterruptedException {
    Path file = parent.resolve("a.txt");
    int whole = 0;
    for (int round = 0; round < 6; round++) {
      Path folder = Files.createDirectory(parent.resolve("round-" + round));
      Process child = start(folder, file);
      while (child.isAlive() && Files.notExists(folder.resolve("p0"))) {
        Thread.sleep(1);
      }
      Thread.sleep(3L * round * round);
      child.destroyForcibly();
      assertTrue(child.waitFor(20, TimeUnit.SECONDS));
      whole += check(folder);
      String text = Files.readString(file);
      assertTrue(text.equals("a".repeat(100_000)) || text.equals("b".repeat(100_000)));
    }
    assertTrue(whole >= 6, "packages written: " + whole);
  }

  private static Process start(Path folder, Path file) throws IOException {
    String paths =
        System.getProperty("java.class.path")
            + File.pathSeparator
            + System.getProperty("jdk.module.path", "");
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            paths + File.pathSeparator + Endless.classes(),
            Endless.class.getName(),
            folder.toString(),
            file.toString())
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("out.txt").toFile())
        .start();
  }

  private static int check(Path folder) throws IOException {
    int whole = 0;
    try (Stream<Path> files = Files.list(folder)) {
      for (Path one : files.toList()) {
        if (one.getFileName().toString().startsWith("p")) {
          assertEquals(SamplePackages.small().facts(), LogPackageReader.read(one).facts());
          whole++;
        }
      }
    }
    assertEquals("", Files.readString(folder.resolve("out.txt")));
    return whole;
  }

  /** Writes packages, and one file in turns, until it is killed. */
  static final class Endless {

    private Endless() {}

    public static void main(String[] arguments) throws IOException {
      Path folder = Path.of(arguments[0]);
      Path file = Path.of(arguments[1]);
      for (int i = 0; i < 100_000; i++) {
        AtomicFile.write(file, (i % 2 == 0 ? "a" : "b").repeat(100_000));
        AtomicFolder.write(
            folder.resolve("p" + i),
            partial -> LogPackageWriter.write(SamplePackages.small(), partial));
      }
    }

    /** Where the test's own classes are, and those of the lab. */
    static String classes() {
      return Stream.of(Endless.class, LogPackage.class)
          .map(type -> type.getProtectionDomain().getCodeSource().getLocation().getPath())
          .distinct()
          .reduce((a, b) -> a + File.pathSeparator + b)
          .orElseThrow();
    }
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(parent)) {
      return files.map(file -> String.valueOf(file.getFileName())).sorted().toList();
    }
  }
}
