package org.roastfield.lab.files;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The public profile of data packages, and an independent validator of JSON Schema. */
public final class PublicProfile {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private static final Schema PACKAGE_1 =
      schema("data-package-1.json", SpecificationVersion.DRAFT_4);
  private static final Schema TABLE_1 = schema("table-schema-1.json", SpecificationVersion.DRAFT_4);
  private static final Schema PACKAGE_2 =
      schema("data-package-2.restated.json", SpecificationVersion.DRAFT_2020_12);

  private PublicProfile() {}

  private static Schema schema(String name, SpecificationVersion version) {
    try (InputStream in = PublicProfile.class.getResourceAsStream("/profiles/" + name)) {
      return SchemaRegistry.withDefaultDialect(version)
          .getSchema(MAPPER.readTree(Objects.requireNonNull(in, name)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the profiles have against the text of a descriptor. */
  public static List<String> complaints(String descriptor) {
    JsonNode root;
    try {
      root = MAPPER.readTree(descriptor);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    List<String> complaints = new ArrayList<>();
    add(complaints, PACKAGE_1, root);
    add(complaints, PACKAGE_2, root);
    for (JsonNode resource : root.path("resources")) {
      if (resource.has("schema")) {
        add(complaints, TABLE_1, resource.get("schema"));
      }
    }
    return complaints;
  }

  private static void add(List<String> complaints, Schema schema, JsonNode node) {
    schema.validate(node).forEach(one -> complaints.add(one.toString()));
  }
}
