package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.lab.result.AtomicFolder;

/** A log package that is not right is refused with the place of the mistake. */
class LogPackageErrorsTest {

  private static final String KINDS =
      "one of lid-opened, turned, wrapped, unwrapped, fuel-added, setting-changed, basted,"
          + " probe-moved, probe-out, taken-off, remark";

  @TempDir Path folder = Path.of("");

  static Stream<Arguments> tables() {
    return Stream.of(
        arguments(
            "events.csv",
            "",
            "1:1: found nothing, expected the header time,until,kind,origin,note"),
        arguments(
            "events.csv",
            "time,until,what,origin,note\n",
            "1:12: found \"what\", expected the header time,until,kind,origin,note"),
        arguments(
            "events.csv",
            "time,until,kind,origin,note\n5 min,,lid-open,cook,\n",
            "2:8: found \"lid-open\", expected " + KINDS),
        arguments(
            "events.csv",
            "time,until,kind,origin,note\n5,,turned,cook,\n",
            "2:1: found \"5\", expected a time, such as 20 min or 1 h 30 min (s, min, h)"),
        arguments(
            "events.csv",
            "time,until,kind,origin,note\n5 min,1 min,lid-opened,cook,\n",
            "2:1: found a row that cannot be, expected end must be after time and at most thirty"
                + " days [s], or NaN, was 60.0"),
        arguments(
            "events.csv",
            "time,until,kind,origin,note\n5 min,,turned,me,\n",
            "2:15: found \"me\", expected one of cook, device, inferred"),
        arguments(
            "spots.csv",
            "time,place,shown,note\n5 min,core,57,\n",
            "2:12: found \"57\", expected a temperature, such as 57 °C (°C, °F, K)"),
        arguments(
            "spots.csv",
            "time,place,shown,note\n5 min,core,57 °C\n",
            "2:1: found 3 cells, expected 4 separated by commas"),
        arguments(
            "spots.csv",
            "time,place,shown,note\n5 min,../x,57 °C,\n",
            "2:1: found a row that cannot be, expected place must be lower-case letters, digits and"
                + " hyphens, at most 40, was \"../x\""),
        arguments(
            "checks.csv",
            "probe,kind,shown,altitude,note\ncore,boiling-water,99 °C,,\n",
            "2:26: found nothing, expected an altitude, such as 12 m (m, ft)"),
        arguments(
            "checks.csv",
            "probe,kind,shown,altitude,note\ncore,tea,99 °C,,\n",
            "2:6: found \"tea\", expected ice-bath or boiling-water"),
        arguments(
            "afterwards.yaml",
            "roastfield: afterwards/1\nring: 6\n",
            "2:7: found \"6\", expected a length, such as 96 mm (mm, cm, m, in); 6 of mm, cm or"
                + " in?"),
        arguments(
            "datapackage.json",
            "{\"roastfield\": \"log/1\",",
            "1:24: found the end of the file, expected the closing } of the JSON object"),
        arguments(
            "datapackage.json",
            "{\"roastfield\": \"log/2\"}",
            "1:16: found \"log/2\", expected log/1"));
  }

  @ParameterizedTest
  @MethodSource("tables")
  void mistake_isNamedWithItsPlace(String name, String text, String message) throws IOException {
    LogPackageWriter.write(SamplePackages.small(), folder);
    Files.writeString(folder.resolve(name), text);
    assertEquals(name + ":" + message, error());
  }

  @Test
  void readingsThatWereChanged_areRefused() throws IOException {
    LogPackageWriter.write(SamplePackages.small(), folder);
    Path readings = folder.resolve("readings.csv");
    Files.writeString(readings, Files.readString(readings) + "999,1\n");
    assertTrue(error().startsWith("readings.csv:1:1: found sha256 "), error());
  }

  @Test
  void pathOutsideTheFolder_isRefused() throws IOException {
    LogPackageWriter.write(SamplePackages.small(), folder);
    Path descriptor = folder.resolve("datapackage.json");
    String text = Files.readString(descriptor);
    Files.writeString(descriptor, text.replace("\"readings.csv\"", "\"../readings.csv\""));
    assertTrue(error().endsWith("found \"../readings.csv\", expected readings.csv"), error());
  }

  /** What could not be read back is not written: the same sizes both ways. */
  @Test
  void packageBeyondWhatCanBeRead_isNotWritten() throws IOException {
    LogPackage small = SamplePackages.small();
    int rows = PackageFiles.largest(PackageFiles.READINGS) / 10;
    double[] times = new double[rows];
    double[] kelvin = new double[rows];
    for (int i = 0; i < rows; i++) {
      times[i] = 0.25 * i;
      kelvin[i] = 300 + i % 2;
    }
    CookLog log =
        new CookLog(
            "readings.csv",
            List.of(),
            rows,
            0,
            times[rows - 1],
            List.of(LogChannel.of("core", times, kelvin)));
    LogPackage large =
        new LogPackage(
            small.facts(),
            List.of(new ChannelFormat("core", LogUnit.KELVIN, 2)),
            log,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            "");
    Path target = folder.resolve("large");
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> AtomicFolder.write(target, partial -> LogPackageWriter.write(large, partial)));
    assertTrue(
        String.valueOf(e.getMessage())
            .matches("readings.csv must be at most 33554432 bytes to be read back, was \\d+"),
        e.getMessage());
    assertEquals(List.of(), List.of(Objects.requireNonNull(folder.toFile().list())));
  }

  @Test
  void sourceNoteBeyondWhatCanBeRead_isNotWritten() {
    LogPackage small = SamplePackages.small();
    LogPackage wordy =
        new LogPackage(
            small.facts(),
            small.formats(),
            small.readings(),
            small.setting(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            "x".repeat((1 << 20) + 1));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> LogPackageWriter.write(wordy, folder));
    assertEquals(
        "SOURCE.md must be at most 1048576 bytes to be read back, was 1048577", e.getMessage());
  }

  @Test
  void moreRowsThanCanBeRead_areNotWritten() {
    List<Spot> spots = Collections.nCopies(20_001, new Spot(5, "core", 300, ""));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> PeopleTables.SPOTS.text(spots));
    assertEquals(
        "rows of time,place,shown,note must be at most 20000 to be read back, were 20001",
        e.getMessage());
  }

  @Test
  void linkInTheFolder_isRefused() throws IOException {
    LogPackageWriter.write(SamplePackages.small(), folder);
    Path outside = Files.createTempFile("spots", ".csv");
    Files.delete(folder.resolve("spots.csv"));
    Files.createSymbolicLink(folder.resolve("spots.csv"), outside);
    assertEquals(
        "spots.csv:1:1: found a link or folder, expected a file of the log package", error());
    Files.delete(outside);
  }

  @Test
  void missingFile_isNamed() throws IOException {
    LogPackageWriter.write(SamplePackages.small(), folder);
    Files.delete(folder.resolve("events.csv"));
    assertEquals("events.csv:1:1: found no such file, expected it in the log package", error());
  }

  @Test
  void unitsThatPeopleWrite_areUnderstood() throws IOException {
    LogPackageWriter.write(SamplePackages.small(), folder);
    Files.writeString(
        folder.resolve("spots.csv"), "time,place,shown,note\n1 h 30 min,core,135 °F,ok\n");
    Spot spot = LogPackageReader.read(folder).spots().get(0);
    assertEquals(5400, spot.time());
    assertEquals(330.372, spot.temperature(), 1e-3);
  }

  /**
   * Water boils at 98.3 °C at 500 m (standard atmosphere), so a probe at 99.3 °C shows 1 K much.
   */
  @Test
  void checks_becomeAPriorOfTheBias() {
    ProbeCheck boiling =
        new ProbeCheck("core", ProbeCheck.Kind.BOILING_WATER, LogUnit.CELSIUS.si(99.3), 500, "");
    assertEquals(1, boiling.bias(), 0.1);
    ProbeCheck ice =
        new ProbeCheck("core", ProbeCheck.Kind.ICE_BATH, LogUnit.CELSIUS.si(0.4), 0, "");
    BiasPrior prior = BiasPrior.of("core", List.of(boiling, ice)).orElseThrow();
    double weight = 1 / 0.01 + 1 / 0.25;
    assertEquals((0.4 / 0.01 + boiling.bias() / 0.25) / weight, prior.mean(), 1e-9);
    assertEquals(Math.sqrt(1 / weight + 0.09), prior.deviation(), 1e-12);
    assertTrue(BiasPrior.of("grate", List.of(boiling)).isEmpty());
  }

  private String error() {
    CookFileException e =
        assertThrows(CookFileException.class, () -> LogPackageReader.read(folder));
    return String.valueOf(e.getMessage());
  }
}
