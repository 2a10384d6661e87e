package org.roastfield.lab.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.lab.files.ChamberSetting;
import org.roastfield.lab.files.LogFacts;
import org.roastfield.lab.intake.Taken;
import picocli.CommandLine.Option;

/** Options that say where a log comes from and what is known besides its readings. */
final class LogFactOptions {

  @Option(names = "--name", paramLabel = "NAME", description = "Of the package.")
  private Optional<String> name = Optional.empty();

  @Option(names = "--title", paramLabel = "TEXT", description = "One line for people.")
  private Optional<String> title = Optional.empty();

  @Option(
      names = "--licence",
      paramLabel = "ID",
      description = "Such as Apache-2.0 or CC-BY-4.0; without one the log must not be shipped.")
  private Optional<String> licence = Optional.empty();

  @Option(names = "--source", paramLabel = "TEXT", description = "Who logged it, when, with what.")
  private Optional<String> source = Optional.empty();

  @Option(
      names = "--on",
      paramLabel = "COOKER",
      description =
          "Cooker it was on, such as slipway-pit: calibrate and score keep cookers apart.")
  private Optional<String> cooker = Optional.empty();

  @Option(names = "--made-up", description = "No such cook took place.")
  private boolean madeUp;

  @Option(
      names = "--cut-on",
      paramLabel = "TIME",
      converter = QuantityConverters.Time.class,
      description = "When the cut went on, on the log's count of time or after its first row.")
  private Optional<Double> cutOn = Optional.empty();

  @Option(
      names = "--setting",
      paramLabel = "TEMPERATURE",
      converter = QuantityConverters.Temperature.class,
      description = "Setting of a chamber without a probe, such as 93.3°C.")
  private Optional<Double> setting = Optional.empty();

  @Option(names = "--cook", paramLabel = "COOK.yaml", description = "Cook file to put beside it.")
  private Optional<Path> cook = Optional.empty();

  LogFactOptions() {}

  OptionalDouble cutOn() {
    return cutOn.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  Optional<ChamberSetting> setting() {
    return setting.map(ChamberSetting::of);
  }

  Optional<Path> cook() {
    return cook;
  }

  LogFacts facts(String fileName, Taken taken) {
    String plain = OutputFolder.plain(fileName.replaceAll("\\.[A-Za-z0-9]{1,5}$", ""));
    List<LogFacts.Source> sources = new ArrayList<>();
    sources.add(new LogFacts.Source(fileName, Optional.of(taken.sha256())));
    source.ifPresent(text -> sources.add(new LogFacts.Source(text, Optional.empty())));
    LogFacts facts =
        new LogFacts(
            name.orElse(plain),
            title.orElse(name.orElse(plain)),
            madeUp,
            licence,
            taken.starts(),
            sources);
    return cooker.map(facts::on).orElse(facts);
  }

  List<String> statements(LogFacts facts) {
    List<String> statements = new ArrayList<>();
    statements.add(facts.madeUp() ? "made up: no such cook took place" : "measured, not made up");
    statements.add(
        "licence: "
            + facts.licence().orElse("none stated, so this must not be passed on or shipped"));
    statements.add("cooker: " + facts.cooker().orElse("not stated"));
    statements.add("source: " + source.orElse("not stated"));
    statements.add(
        cutOn
            .map(time -> "the cut went on " + time + " s into the log")
            .orElse("the cut is taken to have gone on when the log begins; nobody stated it"));
    setting()
        .ifPresent(
            one ->
                statements.add(
                    String.format(
                        Locale.ROOT,
                        "no chamber probe: set to %.1f °C, assumed off by %.0f K (standard"
                            + " deviation) with a drift of %.0f K over %.0f s",
                        one.temperature() - 273.15,
                        one.biasDeviation(),
                        one.driftDeviation(),
                        one.driftTime())));
    return statements;
  }
}
