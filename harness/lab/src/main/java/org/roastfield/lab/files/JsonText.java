package org.roastfield.lab.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** Reads JSON from files of other people: no key twice, bounded depth, numbers and texts. */
final class JsonText {

  private static final int DEEPEST = 40;
  private static final int LONGEST_NUMBER = 100;
  private static final int LONGEST_TEXT = 100_000;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxNumberLength(LONGEST_NUMBER)
                          .maxStringLength(LONGEST_TEXT)
                          .build())
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonText() {}

  /**
   * The object that is all of a text.
   *
   * @throws CookFileException if it is none
   */
  static JsonNode object(SourceText source) {
    JsonNode node;
    try {
      node = MAPPER.readTree(source.text());
    } catch (JsonProcessingException e) {
      JsonLocation place = e.getLocation();
      String problem = e.getOriginalMessage().lines().findFirst().orElse("");
      throw new CookFileException(
          source.fileName(),
          place == null ? 1 : Math.max(1, place.getLineNr()),
          place == null ? 1 : Math.max(1, place.getColumnNr()),
          "no JSON here (" + problem + ")",
          "one JSON object");
    }
    if (!node.isObject()) {
      throw source.error(0, node.isMissingNode() ? "nothing" : "another value", "one JSON object");
    }
    return node;
  }
}
