package org.roastfield.lab.result;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every file that the lab writes goes through {@link AtomicFile}, or into the unfinished folder of
 * an {@link AtomicFolder}: what their tests kill is all that writes.
 */
class WritersTest {

  private static final Path SOURCES = Path.of("src", "main", "java");

  private static final Pattern WRITES =
      Pattern.compile(
          "Files\\s*\\.\\s*(write|writeString|newOutputStream|newBufferedWriter|copy|createFile"
              + "|newByteChannel)\\(|new (FileOutputStream|FileWriter|RandomAccessFile"
              + "|PrintWriter\\((Path|File))\\b|FileChannel\\.open|\\.toFile\\(\\)");

  private static Set<String> filesWith(Pattern pattern) throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
        if (pattern.matcher(Files.readString(file)).find()) {
          found.add(String.valueOf(file.getFileName()).replace(".java", ""));
        }
      }
    }
    return found;
  }

  @Test
  void onlyTheAtomicWriters_andThePackagesInTheirFolder_writeFiles() throws IOException {
    Set<String> allowed =
        new TreeSet<>(
            List.of(
                "AtomicFile",
                "LogPackageWriter",
                // An empty folder of the build, for what a notebook commands.
                "Notebook",
                "PackageFiles",
                // Standard output and error.
                "Main"));
    assertEquals(allowed, filesWith(WRITES));
  }

  @Test
  void packagesAreWrittenIntoUnfinishedFolders() throws IOException {
    assertEquals(
        filesWith(Pattern.compile("LogPackageWriter\\.write\\(")),
        filesWith(
            Pattern.compile("AtomicFolder\\.write\\([^;]*->\\s*LogPackageWriter\\.write\\(")));
    assertEquals(Set.of("LogPackageWriter"), filesWith(Pattern.compile("PackageFiles\\.write\\(")));
  }
}
