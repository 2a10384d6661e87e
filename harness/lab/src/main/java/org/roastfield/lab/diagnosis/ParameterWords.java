package org.roastfield.lab.diagnosis;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Names of a calibration's parameters in a sentence. */
final class ParameterWords {

  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("convection", "convection"),
          Map.entry("walls", "warmth of the walls"),
          Map.entry("air-bias", "bias of the chamber's probe"),
          Map.entry("humidity", "humidity"),
          Map.entry("contact", "contact heat"),
          Map.entry("fire-drift", "drift of the air about its setting"),
          Map.entry("fire-drift-time", "time over which it drifts"),
          Map.entry("lid-depth", "fall of the air under an open lid"),
          Map.entry("lid-recovery", "time to recover from it"),
          Map.entry("convection-of-cook", "convection of that cook alone"),
          Map.entry("rest", "heat transfer in the rest"),
          Map.entry("size", "size of the cut"),
          Map.entry("diffusivity", "diffusivity of the cut"),
          Map.entry("wetness", "wetness"),
          Map.entry("start", "start temperature"),
          Map.entry("probe-offset", "place of the probe"),
          Map.entry("probe-bias", "bias of the probe"));

  private ParameterWords() {}

  /** A parameter without its log: one that is not known keeps its id. */
  static String of(String id) {
    String own = id.replaceFirst("/.*", "");
    String channel = own.contains(".") ? " " + own.substring(own.indexOf('.') + 1) : "";
    String word = own.replaceFirst("\\..*", "");
    return WORDS.getOrDefault(word, word) + channel;
  }

  /** The same with its log, if it has one. */
  static String named(String id) {
    return log(id).isEmpty() ? of(id) : of(id) + " of " + log(id);
  }

  /** Log of a parameter; empty for the cooker's. */
  static String log(String id) {
    return id.contains("/") ? id.substring(id.indexOf('/') + 1) : "";
  }

  /** "a, b and c". */
  static String list(List<String> words) {
    return IntStream.range(0, words.size())
        .mapToObj(i -> (i == 0 ? "" : i == words.size() - 1 ? " and " : ", ") + words.get(i))
        .collect(Collectors.joining());
  }
}
