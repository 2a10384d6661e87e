package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a stage states, for display: every single value under the names of its keys, in the words
 * and units of the file.
 */
final class StageFacts {

  private static final List<String> KEYS =
      List.of(
          "chamber",
          "box",
          "wetness",
          "baste",
          "emissivity",
          "contact",
          "board",
          "coal-bed",
          "wrap",
          "lid",
          "faces");

  private StageFacts() {}

  static List<Fact> of(FaceSetup upper, FaceSetup lower, Section stage) {
    List<Fact> facts = new ArrayList<>();
    for (String key : KEYS) {
      stage.optional(key).ifPresent(entry -> entry.collect(key, facts));
    }
    if (!stage.has("wetness") && !facesState(stage) && (upper.drying() || lower.drying())) {
      FaceSetup face = upper.drying() ? upper : lower;
      facts.add(new Fact("wetness (not stated, so by the surface)", face.wetnessWords()));
    }
    if (!stage.has("box") && upper.walls() == upper.air() && lower.walls() == lower.air()) {
      facts.add(new Fact("walls", "as warm as the air"));
    }
    lower
        .contact()
        .or(upper::contact)
        .filter(metal -> metal.settling().isPresent())
        .ifPresent(metal -> facts.add(new Fact("contact over time", metal.words())));
    if (upper.cover().load().isLoaded()) {
      facts.add(
          new Fact(
              "humidity ratio without the cut",
              String.format(Locale.ROOT, "%.4f kg/kg", upper.humidityRatio())));
    }
    return facts;
  }

  private static boolean facesState(Section stage) {
    return stage
        .optional("faces")
        .map(entry -> entry.section("upper", "lower"))
        .map(
            both ->
                both.required("upper").hasAny("wetness")
                    && both.required("lower").hasAny("wetness"))
        .orElse(false);
  }
}
