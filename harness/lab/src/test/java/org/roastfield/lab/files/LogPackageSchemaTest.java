package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The published profile of log packages against an independent validator of JSON Schema. */
class LogPackageSchemaTest {

  private static final Path SCHEMA = Path.of("../../datasets/schema/log-package.schema.json");
  private static final Path PUBLISHED =
      Path.of("../../datasets/cooks/syn-boathouse-pork-loin-1/datapackage.json");

  static Stream<Arguments> mistakes() {
    return Stream.of(
        arguments("\"log/1\"", "\"log/2\""),
        arguments("\"name\" : \"syn-sample\"", "\"name\" : \"Syn Sample\""),
        arguments("\"readings.csv\"", "\"../readings.csv\""),
        arguments("\"sha256:", "\"md5:"),
        arguments("\"unit\" : \"s\"", "\"unit\" : \"min\""),
        arguments("\"Cel\"", "\"[degF]\""),
        arguments("\"decimals\" : ", "\"digits\" : "),
        arguments("\"spots.csv\"", "\"checks.csv\""),
        arguments("\"madeUp\" : false", "\"madeUp\" : \"no\""),
        arguments("\"sources\" :", "\"origins\" :"),
        arguments(
            "time_s\",\n        \"type\" : \"number\"",
            "time_s\",\n        \"type\" : \"string\""));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void mistake_isRefusedByTheSchema(String right, String wrong) throws IOException {
    String text = text();
    assertFalse(text.equals(text.replace(right, wrong)), text);
    assertEquals(List.of(), complaints(text));
    assertFalse(complaints(text.replace(right, wrong)).isEmpty());
  }

  @Test
  void everyPackageThatIsWritten_isAccepted() throws IOException {
    for (int seed = 0; seed < 100; seed++) {
      LogPackage log = SamplePackages.random(new Random(seed), "words");
      assertEquals(List.of(), complaints(DescriptorText.of(log, 10, "0".repeat(64))));
    }
    assertEquals(List.of(), complaints(Files.readString(PUBLISHED)));
  }

  private static String text() {
    CookLog log =
        CookLogReader.parse(
            "readings.csv", "time_s,core_degC\n0,5\n".getBytes(StandardCharsets.UTF_8));
    LogFacts facts =
        new LogFacts(
            "syn-sample",
            "sample",
            false,
            Optional.empty(),
            Optional.empty(),
            List.of(new LogFacts.Source("a test", Optional.empty())));
    LogPackage sample =
        new LogPackage(
            facts,
            List.of(new ChannelFormat("core", LogUnit.CELSIUS, 0)),
            log,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            "");
    return DescriptorText.of(sample, 21, "0".repeat(64));
  }

  private static List<String> complaints(String text) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode root = mapper.readTree(SCHEMA.toFile());
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(root);
    return schema.validate(mapper.readTree(text)).stream().map(Object::toString).toList();
  }
}
