package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Small and large files that are made to exhaust a reader are refused in good time. */
class HostileFilesTest {

  private static final Duration SOON = Duration.ofSeconds(10);

  @TempDir Path folder = Path.of("");

  private static String error(String text) {
    return String.valueOf(
        assertThrows(CookFileException.class, () -> CookTexts.read(text)).getMessage());
  }

  @Test
  void fileBeyondTheLimit_isNotReadToItsEnd() throws IOException {
    Path path = folder.resolve("large.yaml");
    Files.write(path, new byte[CookFileReader.LARGEST + 1]);
    CookFileException e = assertThrows(CookFileException.class, () -> CookFileReader.read(path));
    assertEquals(
        "large.yaml:1:1: found more than 1048576 bytes, expected a file of at most that size",
        e.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"[", "{a: ", "- ", "? ", "'", "\"", "a: &a ", "*a ", "!!a ", "\n", "#", "a: "})
  void oneMebibyteOfOneSign_isRefusedSoon(String sign) {
    String text = sign.repeat((CookFileReader.LARGEST - 10) / sign.length());
    assertTimeout(SOON, () -> error(text));
  }

  @Test
  void manyKeys_areRefusedAtTheFirst() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 60_000; i++) {
      text.append("key").append(i).append(": 1\n");
    }
    assertTimeout(SOON, () -> error(text.toString()));
  }

  @Test
  void manyStages_areCountedBeforeTheyAreRead() {
    String stage =
        CookTexts.SLAB.substring(CookTexts.SLAB.indexOf("  - name: rest"), CookTexts.SLAB.length());
    StringBuilder text = new StringBuilder(CookTexts.SLAB);
    for (int i = 0; i < 199; i++) {
      text.append(stage.replace("rest", "rest " + i));
    }
    assertEquals(
        "cook.yaml:14:3: found a list, expected at most 200 stages", error(text.toString()));
  }

  @Test
  void namesOfFiles_areTheirLastPart_inMessages() throws IOException {
    Path path = folder.resolve("cook.yaml");
    Files.writeString(path, "a: b\n", StandardCharsets.UTF_8);
    CookFileException e = assertThrows(CookFileException.class, () -> CookFileReader.read(path));
    assertEquals("cook.yaml", e.file());
  }

  @Test
  void folderAndFileThatIsNotThere_areNoCooks() {
    assertThrows(CookFileException.class, () -> CookFileReader.read(folder));
    assertThrows(IOException.class, () -> CookFileReader.read(folder.resolve("none.yaml")));
  }

  @Test
  void cookerBehindALink_isNotFollowed() throws IOException {
    Path outside = Files.writeString(folder.resolve("secret.json"), "{}");
    Path cookers = Files.createDirectories(folder.resolve("a").resolve("cookers"));
    Files.createSymbolicLink(cookers.resolve("pit.json"), outside);
    Path cook =
        Files.writeString(
            folder.resolve("a").resolve("cook.yaml"), CookTexts.SLAB + "cooker: pit\n");
    CookFileException e = assertThrows(CookFileException.class, () -> CookFileReader.read(cook));
    assertEquals(22, e.line());
  }
}
