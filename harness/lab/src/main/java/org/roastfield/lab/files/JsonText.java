package org.roastfield.lab.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
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
      throw error(source, e);
    }
    if (!node.isObject()) {
      throw source.error(0, node.isMissingNode() ? "nothing" : "another value", "one JSON object");
    }
    return node;
  }

  private static CookFileException error(SourceText source, JsonProcessingException e) {
    JsonLocation place = e.getLocation();
    int line = place == null ? 1 : Math.max(1, place.getLineNr());
    int column = place == null ? 1 : Math.max(1, place.getColumnNr());
    String message = e.getOriginalMessage();
    String found = "no JSON here";
    String expected = "keys and texts in double quotes, commas between them and no others";
    if (e instanceof JsonEOFException || message.startsWith("Unexpected end-of-input")) {
      found = "the end of the file";
      expected = "the closing } of the JSON object";
    } else if (e instanceof StreamConstraintsException) {
      found = message.contains("nesting") ? "deep nesting" : "a long number or text";
      expected =
          "at most "
              + DEEPEST
              + " levels, numbers of "
              + LONGEST_NUMBER
              + " digits and texts"
              + " of "
              + LONGEST_TEXT
              + " characters";
    } else if (message.startsWith("Duplicate field ")) {
      found = message.substring("Duplicate field ".length()) + " a second time";
      expected = "each key once";
    } else if (message.startsWith("Trailing token")) {
      found = "more behind the object";
      expected = "one JSON object";
    }
    return new CookFileException(source.fileName(), line, column, found, expected);
  }
}
