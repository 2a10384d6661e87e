package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Text of a cook file is text in whatever comes out, and never a place. */
class HostileTextTest {

  private static final String SCRIPT = "<script>alert(1)</script>";

  /** Every text that a cook file may choose freely holds markup. */
  private static final String COOK =
      """
      roastfield: cook/1
      name: "X ../../N"
      starts: 2026-06-13T18:00
      cut:
        shape: slab
        thickness: 40 mm
        start-temperature: 5 °C
        material: {name: "X M", conductivity: 0.48 W/(m·K), density: 1060 kg/m³, heat-capacity: 3500 J/(kg·K)}
        surface: {rub: "X R"}
      probes:
        - {name: "X P", depth: 15 mm}
      stages:
        - name: "X S"
          chamber: {air: 110 °C, heat-transfer: 6 W/(m²·K)}
          wetness: 0
          end: {probe: "X P", reaches: 30 °C, at-latest: 3 h}
      """
          .replace("X", SCRIPT);

  @TempDir Path folder = Path.of("");

  @Test
  void markupInAnyText_isShownAsText() throws IOException {
    Path cook = Files.writeString(folder.resolve("cook.yaml"), COOK);
    Path out = folder.resolve("out");
    StringWriter printed = new StringWriter();
    int code =
        Main.commandLine()
            .setOut(new PrintWriter(printed, true))
            .setErr(new PrintWriter(printed, true))
            .execute("simulate", cook.toString(), "--out", out.toString());
    assertEquals(0, code, printed::toString);
    String html = Files.readString(out.resolve("report.html"));
    assertFalse(html.contains("<script"), html);
    for (String text : new String[] {"../../N", "M", "R", "P", "S"}) {
      assertTrue(html.contains("&lt;script&gt;alert(1)&lt;/script&gt; " + text), text);
    }
  }

  @Test
  void nameLikeAPath_namesAFolderInThisOne() {
    for (String name :
        new String[] {"../../etc/passwd", "..", ".", "/", "C:\\x", "a/../../b", "\0"}) {
      Path plain = Path.of(OutputFolder.plain(name));
      assertEquals(1, plain.getNameCount(), name);
      assertEquals(plain, plain.normalize(), name);
      assertFalse(plain.isAbsolute(), name);
      assertFalse(plain.startsWith(".."), name);
    }
  }
}
