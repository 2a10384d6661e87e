package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every log package is a data package by the public profile, not by ours alone. */
class PublicProfileTest {

  private static final Path DATASETS = Path.of("", "..", "..", "datasets");

  @Test
  void everyPackageThatIsWritten_isAccepted() {
    for (int seed = 0; seed < 100; seed++) {
      assertEquals(List.of(), PublicProfile.complaints(text(seed)));
    }
  }

  @Test
  void everyPublishedPackage_isAccepted() throws IOException {
    List<Path> published;
    try (Stream<Path> files = Files.walk(DATASETS)) {
      published = files.filter(path -> path.endsWith(PackageFiles.DESCRIPTOR)).toList();
    }
    assertFalse(published.isEmpty());
    for (Path path : published) {
      assertEquals(List.of(), PublicProfile.complaints(Files.readString(path)), path.toString());
    }
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        arguments("\"resources\" :", "\"files\" :"),
        arguments("\"resources\" : [", "\"resources\" : [ {\"path\": \"a.csv\"},"),
        arguments("\"path\" : \"readings.csv\"", "\"path\" : \"../readings.csv\""),
        arguments("\"path\" : \"readings.csv\"", "\"path\" : \"/readings.csv\""),
        arguments("\"path\" : \"readings.csv\"", "\"path\" : \"a/../../readings.csv\""),
        arguments("\"path\" : \"readings.csv\"", "\"path\" : \"a.csv\", \"data\" : []"),
        arguments("\"name\" : \"readings\",", ""),
        arguments("\"type\" : \"table\"", "\"type\" : \"grid\""),
        arguments("\"mediatype\" : \"text/csv\"", "\"mediatype\" : \"csv\""),
        arguments("\"hash\" : \"sha256:", "\"hash\" : \"zzz"),
        arguments("\"bytes\" : 10", "\"bytes\" : \"ten\""),
        arguments("\"commentChar\" : \"#\"", "\"commentChar\" : 35"),
        arguments("\"type\" : \"number\"", "\"type\" : \"temperature\""),
        arguments("\"type\" : \"string\"", "\"type\" : \"text\""),
        arguments("\"required\" : true", "\"required\" : \"yes\""),
        arguments("\"missingValues\" : [ \"\" ]", "\"missingValues\" : \"\""),
        arguments("\"primaryKey\" : [ \"time_s\" ]", "\"primaryKey\" : [ ]"),
        arguments("\"fields\" : [", "\"columns\" : ["),
        arguments("\"sources\" : [", "\"sources\" : [ { },"),
        arguments("\"title\" : \"", "\"title\" : 1, \"t\" : \""));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void mistake_isRefused(String right, String wrong) {
    String text = text(0);
    assertFalse(text.equals(text.replace(right, wrong)), text);
    assertFalse(PublicProfile.complaints(text.replace(right, wrong)).isEmpty());
  }

  private static String text(int seed) {
    LogPackage log = SamplePackages.random(new Random(seed), "words");
    return DescriptorText.of(log, 10, "0".repeat(64));
  }
}
