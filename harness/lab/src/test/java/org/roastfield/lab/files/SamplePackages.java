package org.roastfield.lab.files;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Made-up log packages. */
public final class SamplePackages {

  private SamplePackages() {}

  /** A small one with something of everything. */
  public static LogPackage small() {
    return random(new Random(1), "a note, with \"quotes\"");
  }

  /** Any. */
  public static LogPackage random(Random random, String words) {
    List<ChannelFormat> formats = new ArrayList<>();
    List<LogChannel> channels = new ArrayList<>();
    int rows = 2 + random.nextInt(40);
    List<String> names = List.of("core", "grate", "thin-end");
    for (int c = 0; c < 1 + random.nextInt(3); c++) {
      LogUnit unit =
          List.of(LogUnit.CELSIUS, LogUnit.FAHRENHEIT, LogUnit.KELVIN).get(random.nextInt(3));
      ChannelFormat format = new ChannelFormat(names.get(c), unit, random.nextInt(4));
      formats.add(format);
      channels.add(channel(random, format, rows));
    }
    double end = (rows - 1) * 0.25;
    CookLog log = new CookLog("readings.csv", List.of("made up"), rows, 0, end, channels);
    Optional<OffsetDateTime> starts =
        random.nextBoolean()
            ? Optional.of(OffsetDateTime.parse("2026-06-13T15:10:00.5+02:00"))
            : Optional.empty();
    String title = words.length() > 5 ? words : "a title";
    LogFacts facts =
        new LogFacts(
            "syn-sample",
            title,
            random.nextBoolean(),
            random.nextBoolean() ? Optional.of("Apache-2.0") : Optional.empty(),
            starts,
            List.of(
                new LogFacts.Source("log.csv", Optional.of("0123456789abcdef".repeat(4))),
                new LogFacts.Source(title, Optional.empty())));
    return new LogPackage(
        facts,
        formats,
        log,
        random.nextBoolean()
            ? Optional.of(ChamberSetting.of(LogUnit.CELSIUS.si(93.3)))
            : Optional.empty(),
        List.of(
            new LogEvent(0, 60, LogEvent.Kind.LID_OPENED, LogEvent.Origin.COOK, words),
            new LogEvent(5, Double.NaN, LogEvent.Kind.TURNED, LogEvent.Origin.INFERRED, "")),
        List.of(new Spot(5, "core", LogUnit.CELSIUS.si(54.5), words)),
        List.of(new ProbeCheck("core", ProbeCheck.Kind.ICE_BATH, LogUnit.CELSIUS.si(0.5), 0, "")),
        random.nextBoolean()
            ? Optional.of(
                new Afterwards(
                    OptionalDouble.of(2.4),
                    OptionalDouble.of(2.1),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty()))
            : Optional.empty(),
        random.nextBoolean() ? Optional.of("roastfield: cook/1\n") : Optional.empty(),
        "# sample\n\nMade up.\n");
  }

  private static LogChannel channel(Random random, ChannelFormat format, int rows) {
    List<Double> times = new ArrayList<>();
    List<Double> kelvin = new ArrayList<>();
    List<Double> missing = new ArrayList<>();
    double scale = Math.pow(10, format.decimals());
    for (int i = 0; i < rows; i++) {
      double value = Math.round((280 + 100 * random.nextDouble()) * scale) / scale;
      if (i > 0 && i < rows - 1 && random.nextInt(5) == 0) {
        missing.add(i * 0.25);
      } else {
        times.add(i * 0.25);
        kelvin.add(format.unit().si(value));
      }
    }
    return LogChannel.of(format.channel(), array(times), array(kelvin), array(missing));
  }

  private static double[] array(List<Double> list) {
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
