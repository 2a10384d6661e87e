package org.roastfield.lab.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.roastfield.lab.command.Main;

/** Commands, files and numbers in a few words, for the cells of a notebook in a checkout. */
public final class Notebook {

  private Notebook() {}

  /** Top of the checkout that the working directory is in. */
  public static Path top() {
    Path folder = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(folder.resolve("datasets/cooks"))) {
      Path parent = folder.getParent();
      if (parent == null) {
        throw new IllegalStateException(
            "working directory must be in a checkout, was " + Path.of("").toAbsolutePath());
      }
      folder = parent;
    }
    return folder;
  }

  /** An empty folder in the build's, for what the commands of a notebook write. */
  public static Path emptied(String name) throws IOException {
    Path folder = top().resolve("harness/lab/target/notebooks").resolve(name);
    if (Files.exists(folder)) {
      try (Stream<Path> old = Files.walk(folder)) {
        for (Path path : old.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
    return Files.createDirectories(folder);
  }

  /**
   * Does what {@code ./harness/roastfield} does.
   *
   * @param arguments words and paths
   * @return what the command prints
   * @throws IllegalStateException if the command fails, with what it complains of
   */
  public static String roastfield(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = Stream.of(arguments).map(Object::toString).toArray(String[]::new);
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), words);
    if (code != 0) {
      throw new IllegalStateException("exit code " + code + ": " + err);
    }
    return out.toString();
  }

  /** A file of JSON. */
  public static JsonNode json(Path file) throws IOException {
    return new ObjectMapper().readTree(file.toFile());
  }

  /**
   * Numbers of an array, NaN where there is none.
   *
   * @param pointer JSON pointer from each element to its number; empty where elements are numbers
   */
  public static List<Double> numbers(JsonNode array, String pointer) {
    return StreamSupport.stream(array.spliterator(), false)
        .map(element -> element.at(pointer).asDouble(Double.NaN))
        .toList();
  }

  /** Each number times a factor. */
  public static List<Double> times(double factor, List<Double> numbers) {
    return numbers.stream().map(number -> factor * number).toList();
  }

  /** Prints a line, by the rules of {@link String#format}. */
  public static void print(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
