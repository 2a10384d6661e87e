package org.roastfield.lab.result;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.roastfield.core.units.Temperatures;

/**
 * JSON as all results write it: indented, line feeds, keys with units, the same bytes for the same
 * values.
 */
public final class Json {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private Json() {}

  /** An empty object. */
  public static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  /** A document's first two keys. */
  public static ObjectNode document(String schema, int version) {
    return object().put("schema", schema).put("schema_version", version);
  }

  /** Text with a line feed at the end. */
  public static String text(JsonNode node) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(indenter);
    try {
      return MAPPER.writer(printer).writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values is always JSON", e);
    }
  }

  /** Degrees Celsius of a temperature [K], to a ten-thousandth. */
  public static double celsius(double kelvin) {
    return rounded(Temperatures.toCelsius(kelvin), 1e4);
  }

  /** Kelvin of a difference, to a ten-thousandth. */
  public static double difference(double kelvin) {
    return rounded(kelvin, 1e4);
  }

  /** Seconds to a thousandth. */
  public static double seconds(double seconds) {
    return rounded(seconds, 1e3);
  }

  /** Value to a millionth of its unit: grams to the milligram, rates as far as logs tell them. */
  static double millionths(double value) {
    return rounded(value, 1e6);
  }

  /** Value to one part in {@code scale} of a unit. */
  public static double rounded(double value, double scale) {
    return Math.round(value * scale) / scale;
  }
}
