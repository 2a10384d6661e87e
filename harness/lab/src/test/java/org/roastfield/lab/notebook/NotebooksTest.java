package org.roastfield.lab.notebook;

import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The notebooks run from clean, and lie in the repository without what they print. */
class NotebooksTest {

  private static final Path FOLDER = Path.of("../../notebooks");
  private static final Path PAGES = Path.of("target/notebooks");
  private static final Pattern QUOTED = Pattern.compile("`[^`]*`|\\]\\([^)]*\\)|(?m)^ {4}.*$");
  private static final Pattern SHOWN =
      Pattern.compile(Kernel.SHOWN + "[^" + Kernel.SHOWN + "]*" + Kernel.SHOWN);
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(file -> file.toString().endsWith(".ipynb")).sorted().toList();
    }
  }

  /** What each cell prints and shows goes to a page in the build's folder. */
  @ParameterizedTest
  @MethodSource("files")
  void everyCell_runs_andPrintsEachNumberOfTheText(Path file) throws IOException {
    NotebookFile notebook = NotebookFile.read(file);
    NotebookPage page = new NotebookPage(notebook.title());
    StringBuilder printed = new StringBuilder();
    try (Kernel kernel = Kernel.start()) {
      for (int i = 0; i < notebook.cells().size(); i++) {
        NotebookFile.Cell cell = notebook.cells().get(i);
        String output = cell.isCode() ? run(kernel, cell, notebook.name() + ", cell " + i) : "";
        printed.append(output);
        page.add(cell, output);
      }
    }
    Files.createDirectories(PAGES);
    Files.writeString(PAGES.resolve(notebook.name() + ".html"), page.finished());
    assertEquals(List.of(), numbersNotIn(printed.toString(), notebook));
  }

  private static String run(Kernel kernel, NotebookFile.Cell cell, String place) {
    try {
      return kernel.run(cell.source());
    } catch (AssertionError e) {
      throw new AssertionError(place + " " + e.getMessage(), e);
    }
  }

  /** Code, commands and links of the text may have numbers of their own, and so may pictures. */
  private static List<String> numbersNotIn(String printed, NotebookFile notebook) {
    Set<String> known = numbers(SHOWN.matcher(printed).replaceAll("")).collect(toSet());
    return notebook.cells().stream()
        .filter(cell -> !cell.isCode())
        .flatMap(cell -> numbers(QUOTED.matcher(cell.source()).replaceAll("")))
        .filter(number -> !known.contains(number))
        .toList();
  }

  private static Stream<String> numbers(String text) {
    return NUMBER.matcher(text).results().map(MatchResult::group);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyNotebook_isOfTheFormat_withoutOutputs(Path file) {
    JsonNode root = NotebookFile.read(file).file();
    assertEquals("4.5", root.get("nbformat").asInt() + "." + root.get("nbformat_minor").asInt());
    assertEquals("java", root.at("/metadata/kernelspec/name").asText());
    Set<String> ids = new HashSet<>();
    for (JsonNode cell : root.get("cells")) {
      String id = cell.get("id").asText();
      assertTrue(id.matches("[a-zA-Z0-9_-]{1,64}") && ids.add(id), id);
      assertTrue(cell.get("metadata").isEmpty(), id);
      boolean isCode = cell.get("cell_type").asText().equals("code");
      assertEquals(isCode, cell.has("outputs"), id);
      assertEquals(isCode, cell.has("execution_count"), id);
      assertTrue(!isCode || cell.get("outputs").isEmpty(), id + " has outputs: strip them");
      assertTrue(!isCode || cell.get("execution_count").isNull(), id + " has a count: strip it");
    }
  }

  /** What is learned, which data, which command, and that the numbers are made up. */
  @ParameterizedTest
  @MethodSource("files")
  void firstCell_asksAQuestion_andSaysWhereNumbersComeFrom(Path file) {
    NotebookFile.Cell first = NotebookFile.read(file).cells().get(0);
    assertFalse(first.isCode());
    assertTrue(first.source().startsWith("# "), first.source());
    assertTrue(NotebookFile.read(file).title().endsWith("?"), first.source());
    for (String part : List.of("You learn", "Data: `", "made up", "    ./harness/roastfield ")) {
      assertTrue(first.source().contains(part), part);
    }
  }

  @Test
  void notebooks_areNumberedWithoutGap_andStandInTheirReadme() throws IOException {
    String readme = Files.readString(FOLDER.resolve("README.md"));
    List<Path> files = files();
    assertFalse(files.isEmpty());
    for (int i = 0; i < files.size(); i++) {
      NotebookFile notebook = NotebookFile.read(files.get(i));
      assertTrue(notebook.name().startsWith("0" + (i + 1) + "-"), notebook.name());
      String row = "[" + notebook.name() + "](" + notebook.name() + ".ipynb) | " + notebook.title();
      assertTrue(readme.contains(row), row);
    }
  }
}
