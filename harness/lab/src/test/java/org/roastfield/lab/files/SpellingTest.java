package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpellingTest {

  private static final List<String> KEYS = List.of("wetness", "walls", "end", "depth");

  @Test
  void distance_countsInsertionsDeletionsReplacementsAndSwaps() {
    assertEquals(0, Spelling.distance("wetness", "wetness"));
    assertEquals(1, Spelling.distance("wetness", "wetnes"));
    assertEquals(1, Spelling.distance("wetness", "wetnesss"));
    assertEquals(1, Spelling.distance("wetness", "watness"));
    assertEquals(1, Spelling.distance("wetness", "ewtness"));
    assertEquals(3, Spelling.distance("kitten", "sitting"));
    assertEquals(7, Spelling.distance("", "wetness"));
  }

  @Test
  void nearest_isTheClosestWordWithinHalfItsLength() {
    assertEquals(Optional.of("walls"), Spelling.nearest("wall", KEYS));
    assertEquals(Optional.of("depth"), Spelling.nearest("dephts", KEYS));
    assertEquals(Optional.empty(), Spelling.nearest("temperature", KEYS));
    assertEquals(Optional.empty(), Spelling.nearest("x".repeat(1_000_000), KEYS));
  }
}
