package org.roastfield.lab.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class NotebookTest {

  @Test
  void top_holdsTheDatasets() {
    assertTrue(Files.exists(Notebook.top().resolve("datasets/README.md")));
  }

  @Test
  void command_givesWhatItPrints_andFailsWithWhatItComplainsOf() {
    assertTrue(Notebook.roastfield("--version").startsWith("roastfield "));
    IllegalStateException failure =
        assertThrows(
            IllegalStateException.class,
            () -> Notebook.roastfield("simulate", Path.of("no-such-cook.yaml")));
    String message = String.valueOf(failure.getMessage());
    assertTrue(message.startsWith("exit code 2: roastfield: "), message);
    assertTrue(message.contains("no-such-cook.yaml"), message);
  }

  @Test
  void folder_isEmptied_ofAllBelowIt() throws IOException {
    Path folder = Notebook.emptied("notebook-test");
    Files.writeString(Files.createDirectories(folder.resolve("a/b")).resolve("old.txt"), "old");
    assertEquals(folder, Notebook.emptied("notebook-test"));
    Files.delete(folder);
  }

  @Test
  void numbers_areFoundByPointer_andMissingOnesAreNone() throws IOException {
    Path file = Notebook.emptied("notebook-test").resolve("numbers.json");
    Files.writeString(file, "{\"plain\": [1, 2.5], \"rows\": [{\"a\": {\"b\": 3}}, {}]}");
    JsonNode json = Notebook.json(file);
    assertEquals(List.of(1.0, 2.5), Notebook.numbers(json.get("plain"), ""));
    assertEquals(List.of(3.0, Double.NaN), Notebook.numbers(json.get("rows"), "/a/b"));
    assertEquals(List.of(2.0, 5.0), Notebook.times(2, List.of(1.0, 2.5)));
  }
}
