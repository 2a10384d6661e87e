package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.List;

/**
 * What a stage states, for display: every single value under the names of its keys, in the words
 * and units of the file.
 */
final class StageFacts {

  private StageFacts() {}

  static List<Fact> of(FaceSetup upper, FaceSetup lower, Section stage) {
    List<Fact> facts = new ArrayList<>();
    for (String key : List.of("chamber", "wetness", "emissivity", "contact", "coal-bed", "faces")) {
      stage.optional(key).ifPresent(entry -> entry.collect(key, facts));
    }
    if (upper.walls() == upper.air() && lower.walls() == lower.air()) {
      facts.add(new Fact("walls", "as warm as the air"));
    }
    return facts;
  }
}
