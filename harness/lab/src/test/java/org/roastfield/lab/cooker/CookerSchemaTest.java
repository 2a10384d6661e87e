package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.lab.files.CookFileException;

/**
 * The published schema of cooker profiles against an independent validator of JSON Schema. What the
 * schema refuses, the reader refuses; what it accepts and the reader refuses is listed here.
 */
class CookerSchemaTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Path SCHEMA = Path.of("../../datasets/schema/cooker.schema.json");

  /** A value of its kind that says something else: what one statement asks of another. */
  private static final Set<String> READER_ALONE =
      new TreeSet<>(
          List.of(
              "between_cooks_spread 1e300",
              "contraction -7.5",
              "cooks 1e300",
              "coolest_air_degC 1e300",
              "high -7.5",
              "hottest_air_degC -7.5",
              "id \"true\"",
              "id \"zzz\"",
              "low -7.5",
              "low 1e300",
              "median -7.5",
              "median 1e300",
              "readings 1e300",
              "spread 1e300",
              "starts 1e300",
              "thinnest_mm 1e300"));

  private static final List<String> OTHERS =
      List.of("null", "true", "-7.5", "1e300", "\"zzz\"", "\"true\"", "\"1\"", "[]", "{}");

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(MAPPER.readTree(SCHEMA.toFile()));
  }

  private static List<String> complaints(Schema schema, JsonNode profile) {
    return schema.validate(profile).stream().map(Object::toString).toList();
  }

  private static boolean isRead(JsonNode profile) {
    try {
      SampleProfiles.read("sample-pit", profile.toString());
      return true;
    } catch (CookFileException e) {
      return false;
    }
  }

  private static String sample(int seed) {
    return CookerProfileJson.text(SampleProfiles.random(new Random(seed), "log-"), "0.1.0");
  }

  @Test
  void everyProfileThatIsWritten_isAccepted() throws IOException {
    Schema schema = schema();
    for (int seed = 0; seed < 100; seed++) {
      assertEquals(List.of(), complaints(schema, MAPPER.readTree(sample(seed))));
    }
  }

  @Test
  void parametersOfCookers_areNamed() throws IOException {
    List<String> ids = new ArrayList<>();
    MAPPER
        .readTree(SCHEMA.toFile())
        .at("/properties/parameters/items/properties/id/enum")
        .forEach(id -> ids.add(id.textValue()));
    List<Parameter> cooker = CookerNumbers.all().list();
    assertEquals(cooker.stream().map(Parameter::id).toList(), ids);
  }

  @Test
  void keyLeftOut_isMissedByBoth() throws IOException {
    Schema schema = schema();
    ObjectNode profile = (ObjectNode) MAPPER.readTree(sample(1));
    everyObject(
        profile,
        object -> {
          for (String key : keys(object)) {
            JsonNode value = object.remove(key);
            assertTrue(!isRead(profile), key);
            assertTrue(!complaints(schema, profile).isEmpty(), key);
            object.set(key, value);
          }
        });
  }

  @Test
  void keyOfAnotherProgram_isAllowedByBoth() throws IOException {
    Schema schema = schema();
    ObjectNode profile = (ObjectNode) MAPPER.readTree(sample(1));
    everyObject(profile, object -> object.put("of-another-program", 1));
    assertTrue(isRead(profile));
    assertEquals(List.of(), complaints(schema, profile));
  }

  @Test
  void whatTheSchemaRefuses_theReaderRefuses_andTheRestIsListed() throws IOException {
    Schema schema = schema();
    ObjectNode profile = (ObjectNode) MAPPER.readTree(sample(1));
    Set<String> alone = new TreeSet<>();
    everyObject(
        profile,
        object -> {
          for (String key : keys(object)) {
            JsonNode value = object.get(key);
            for (String other : OTHERS) {
              object.set(key, tree(other));
              boolean accepted = complaints(schema, profile).isEmpty();
              boolean read = isRead(profile);
              assertTrue(accepted || !read, () -> key + " " + other);
              if (accepted && !read) {
                alone.add(key + " " + other);
              }
            }
            object.set(key, value);
          }
        });
    assertEquals(READER_ALONE, alone);
  }

  private static JsonNode tree(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (IOException e) {
      throw new IllegalStateException(text, e);
    }
  }

  private static List<String> keys(ObjectNode object) {
    List<String> keys = new ArrayList<>();
    object.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  /** The object and those in it, of a list the first. */
  private static void everyObject(ContainerNode<?> node, Consumer<ObjectNode> action) {
    if (node instanceof ObjectNode object) {
      action.accept(object);
      object.forEach(
          child -> {
            if (child instanceof ContainerNode<?> inner) {
              everyObject(inner, action);
            }
          });
    } else if (node instanceof ArrayNode list && list.get(0) instanceof ObjectNode first) {
      everyObject(first, action);
    }
  }
}
