package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** What is written is read again as it was. */
class LogPackagePropertiesTest {

  @Property(tries = 60)
  void wholePackage(@ForAll long seed, @ForAll @StringLength(max = 60) String words)
      throws IOException {
    LogPackage log = SamplePackages.random(new Random(seed), note(words));
    Path folder = Files.createTempDirectory("log-package");
    try {
      LogPackageWriter.write(log, folder);
      LogPackage read = LogPackageReader.read(folder);
      assertEquals(log.facts(), read.facts());
      assertEquals(log.formats(), read.formats());
      assertEquals(log.setting(), read.setting());
      assertEquals(log.events(), read.events());
      assertEquals(log.spots(), read.spots());
      assertEquals(log.checks(), read.checks());
      assertEquals(log.afterwards(), read.afterwards());
      assertEquals(log.cook(), read.cook());
      assertEquals(log.source(), read.source());
      assertSame(log.readings(), read.readings());
    } finally {
      delete(folder);
    }
  }

  private static void assertSame(CookLog log, CookLog read) {
    assertEquals(log.rows(), read.rows());
    for (int c = 0; c < log.channels().size(); c++) {
      LogChannel one = log.channels().get(c);
      LogChannel other = read.channels().get(c);
      assertEquals(one.size(), other.size());
      assertEquals(one.missing(), other.missing());
      for (int i = 0; i < one.size(); i++) {
        assertEquals(one.time(i), other.time(i));
        assertEquals(one.temperature(i), other.temperature(i), 1e-9);
      }
      for (int i = 0; i < one.missing(); i++) {
        assertEquals(one.missingTime(i), other.missingTime(i));
      }
    }
  }

  @Property
  void event(
      @ForAll @IntRange(max = 800_000) int millis, @ForAll @StringLength(max = 80) String words) {
    for (LogEvent.Kind kind : LogEvent.Kind.values()) {
      for (LogEvent.Origin origin : LogEvent.Origin.values()) {
        double time = millis / 1000.0;
        List<LogEvent> events =
            List.of(
                new LogEvent(time, Double.NaN, kind, origin, note(words)),
                new LogEvent(time, (millis + 1000) / 1000.0, kind, origin, ""));
        assertEquals(
            events,
            PeopleTables.EVENTS.read("events.csv", bytes(PeopleTables.EVENTS.text(events))));
      }
    }
  }

  @Property
  void spotAndCheck(
      @ForAll @IntRange(min = -900, max = 14_000) int tenths,
      @ForAll @StringLength(max = 80) String words) {
    double kelvin = LogUnit.CELSIUS.si(tenths / 10.0);
    List<Spot> spots = List.of(new Spot(12.5, "thick-end", kelvin, note(words)));
    assertEquals(
        spots, PeopleTables.SPOTS.read("spots.csv", bytes(PeopleTables.SPOTS.text(spots))));
    List<ProbeCheck> checks =
        List.of(
            new ProbeCheck(
                "core", ProbeCheck.Kind.BOILING_WATER, kelvin, (tenths + 900) / 10.0, ""),
            new ProbeCheck("core", ProbeCheck.Kind.ICE_BATH, kelvin, 0, note(words)));
    assertEquals(
        checks, PeopleTables.CHECKS.read("checks.csv", bytes(PeopleTables.CHECKS.text(checks))));
  }

  @Property
  void afterwards(
      @ForAll @IntRange(min = 1, max = 90_000) int grams,
      @ForAll @StringLength(max = 200) String words) {
    Afterwards found =
        new Afterwards(
            OptionalDouble.of(grams / 1000.0),
            OptionalDouble.empty(),
            OptionalDouble.of(0.006),
            OptionalDouble.of(LogUnit.CELSIUS.si(57.5)),
            Optional.of(LocalDateTime.of(2026, 6, 13, 18, 30)),
            note(words).isEmpty() ? Optional.empty() : Optional.of(note(words)));
    assertEquals(found, AfterwardsFile.read("afterwards.yaml", bytes(AfterwardsFile.text(found))));
  }

  /** A grid of decimals in any unit comes back digit for digit. */
  @Property
  void digitsOfAReading_stayAsTheyWere(
      @ForAll @IntRange(min = -90_000, max = 1_000_000) int thousandths,
      @ForAll @IntRange(max = 3) int decimals) {
    for (LogUnit unit : List.of(LogUnit.CELSIUS, LogUnit.FAHRENHEIT)) {
      double value = Math.round(thousandths / Math.pow(10, 3 - decimals)) / Math.pow(10, decimals);
      StringBuilder expected = new StringBuilder();
      ReadingsText.append(expected, value, decimals);
      StringBuilder through = new StringBuilder();
      ReadingsText.append(through, unit.fromSi(unit.si(value)), decimals);
      assertEquals(expected.toString(), through.toString());
      assertEquals(value, Double.parseDouble(expected.toString()), 1e-12);
    }
  }

  /** A note that a person can write: without control characters or space at its ends. */
  private static String note(String words) {
    StringBuilder note = new StringBuilder();
    words
        .codePoints()
        .filter(point -> !Character.isISOControl(point) && Character.isDefined(point))
        .filter(point -> point < 0xD800 || point > 0xDFFF)
        .filter(point -> point < 0xFFF0)
        .forEach(note::appendCodePoint);
    return note.toString().strip();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static void delete(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      walk.sorted(Comparator.reverseOrder()).forEach(files::add);
    }
    for (Path file : files) {
      Files.delete(file);
    }
    assertTrue(Files.notExists(folder));
  }
}
