package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.roastfield.core.reference.ReferenceFiles;

/**
 * Work against {@code datasets/baselines/work-counters.csv}, to the last step. Every law and kernel
 * here is made of operations that IEEE 754 or StrictMath define to the bit, so a difference is a
 * change of the method, wanted or not. If wanted: copy the file that this test writes to {@code
 * thermal-core/target}.
 */
class WorkCountersTest {

  @Test
  void work_isThatOfTheBaseline() throws IOException {
    String computed = WorkCases.file();
    Files.writeString(Path.of("target", "work-counters.csv"), computed, StandardCharsets.UTF_8);
    assertEquals(ReferenceFiles.text("/baselines/work-counters.csv"), computed);
  }

  @Test
  void work_isTheSameWhenRepeated() {
    assertEquals(WorkCases.file(), WorkCases.file());
  }
}
