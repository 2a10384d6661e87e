package org.roastfield.lab.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The published schema of cook files, and an independent validator of JSON Schema. */
final class CookSchema {

  private static final Path FILE =
      Path.of("", "..", "..", "datasets", "schema", "cook.schema.json");

  private static final JsonNode ROOT = load();

  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(ROOT);

  private CookSchema() {}

  private static JsonNode load() {
    try {
      return new ObjectMapper().readTree(FILE.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonNode root() {
    return ROOT;
  }

  /** Whether the schema has nothing against a file. */
  static boolean accepts(JsonNode instance) {
    return SCHEMA.validate(instance).isEmpty();
  }

  /** What the schema has against a file. */
  static List<String> complaints(JsonNode instance) {
    return SCHEMA.validate(instance).stream().map(Object::toString).toList();
  }

  /** A YAML text as JSON, as editors see it; empty if it is no tree of ours. */
  static Optional<JsonNode> json(SourceText source) {
    try {
      return Optional.of(json(YamlTree.rootOf(source)));
    } catch (CookFileException e) {
      return Optional.empty();
    }
  }

  private static JsonNode json(Node node) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    if (node instanceof MappingNode mapping) {
      ObjectNode object = json.objectNode();
      mapping
          .getValue()
          .forEach(
              pair ->
                  object.set(
                      pair.getKeyNode() instanceof ScalarNode key ? key.getValue() : "?",
                      json(pair.getValueNode())));
      return object;
    }
    if (node instanceof SequenceNode sequence) {
      ArrayNode array = json.arrayNode();
      sequence.getValue().forEach(item -> array.add(json(item)));
      return array;
    }
    return scalar((ScalarNode) node);
  }

  private static JsonNode scalar(ScalarNode node) {
    JsonNodeFactory json = JsonNodeFactory.instance;
    Tag tag = node.isPlain() ? tag(node.getValue()) : Tag.STR;
    if (tag.equals(Tag.NULL)) {
      return json.nullNode();
    }
    if (tag.equals(Tag.BOOL)) {
      return json.booleanNode(node.getValue().equalsIgnoreCase("true"));
    }
    if (tag.equals(Tag.INT) || tag.equals(Tag.FLOAT)) {
      try {
        return json.numberNode(new BigDecimal(node.getValue()));
      } catch (NumberFormatException e) {
        return json.textNode(node.getValue());
      }
    }
    return json.textNode(node.getValue());
  }

  private static Tag tag(String text) {
    return LoadSettings.builder()
        .setSchema(new CoreSchema())
        .build()
        .getSchema()
        .getScalarResolver()
        .resolve(text, true);
  }

  /** All schemas of objects with known keys. */
  static Set<JsonNode> objects() {
    Set<JsonNode> found = new LinkedHashSet<>();
    collect(ROOT, found);
    return found;
  }

  /** Where in the schema an object stands, for messages. */
  static String nameOf(JsonNode object) {
    return nameOf(ROOT, "", object).orElse("?");
  }

  private static Optional<String> nameOf(JsonNode node, String path, JsonNode object) {
    if (node.equals(object)) {
      return Optional.of(path.isEmpty() ? "the file" : path);
    }
    if (node.isArray()) {
      return StreamSupport.stream(node.spliterator(), false)
          .flatMap(each -> nameOf(each, path, object).stream())
          .findFirst();
    }
    return node.properties().stream()
        .flatMap(pair -> nameOf(pair.getValue(), path + "/" + pair.getKey(), object).stream())
        .findFirst();
  }

  private static void collect(JsonNode node, Set<JsonNode> found) {
    if (node.isObject() && node.path("additionalProperties").isBoolean()) {
      found.add(node);
    }
    node.forEach(child -> collect(child, found));
  }

  /** The schema of an object: what a reference names, of several the one that has all its keys. */
  static Optional<JsonNode> objectSchema(JsonNode schema, Set<String> keys) {
    if (schema.has("$ref")) {
      return objectSchema(ROOT.at(schema.get("$ref").textValue().substring(1)), keys);
    }
    if (schema.has("anyOf") && !schema.has("properties")) {
      List<JsonNode> fitting = new ArrayList<>();
      schema.get("anyOf").forEach(each -> objectSchema(each, keys).ifPresent(fitting::add));
      return fitting.stream().findFirst();
    }
    if (!schema.has("properties")) {
      return Optional.empty();
    }
    return keys.stream().allMatch(schema.get("properties")::has)
        ? Optional.of(schema)
        : Optional.empty();
  }

  /** Keys that a schema of an object knows. */
  static List<String> keys(JsonNode schema) {
    List<String> keys = new ArrayList<>();
    schema.get("properties").fieldNames().forEachRemaining(keys::add);
    return keys;
  }
}
