package org.roastfield.lab.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A notebook as it lies in the repository.
 *
 * @param name without its ending
 * @param file all of it
 * @param cells from first to last
 */
record NotebookFile(String name, JsonNode file, List<Cell> cells) {

  /**
   * A part of it.
   *
   * @param isCode whether it is run, otherwise it is text
   */
  record Cell(boolean isCode, String source) {}

  static NotebookFile read(Path path) {
    try {
      JsonNode file = new ObjectMapper().readTree(path.toFile());
      List<Cell> cells = new ArrayList<>();
      for (JsonNode cell : file.get("cells")) {
        StringBuilder source = new StringBuilder();
        cell.get("source").forEach(line -> source.append(line.asText()));
        cells.add(new Cell(cell.get("cell_type").asText().equals("code"), source.toString()));
      }
      String name = String.valueOf(path.getFileName()).replace(".ipynb", "");
      return new NotebookFile(name, file, List.copyOf(cells));
    } catch (IOException e) {
      throw new UncheckedIOException(path.toString(), e);
    }
  }

  /** Its question, the first line of the first cell. */
  String title() {
    return cells.get(0).source().lines().findFirst().orElse("").replaceFirst("^# ", "");
  }
}
