package org.roastfield.lab.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.lab.files.Quantities;
import org.roastfield.lab.replay.ComparisonOptions;
import org.roastfield.lab.replay.RateSpan;
import org.roastfield.lab.result.RunManifest;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Options that say what of a log is compared. */
final class ComparisonArguments {

  @Option(
      names = "--probe",
      paramLabel = "NAME",
      description =
          "Probe of the cook file that the core readings are from, or core for the true core"
              + " (default: the only one that is meant for the core or has errors stated).")
  private Optional<String> probe = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "TIME",
      converter = QuantityConverters.Time.class,
      description = "Leave out the errors of earlier readings, such as 3min.")
  private Optional<Double> from = Optional.empty();

  @Option(
      names = "--until",
      paramLabel = "TIME",
      converter = QuantityConverters.Time.class,
      description = "Leave out what the log says later, such as 415min.")
  private Optional<Double> until = Optional.empty();

  @Option(
      names = "--target",
      paramLabel = "TEMPERATURE",
      split = ",",
      converter = QuantityConverters.Temperature.class,
      description =
          "Core temperatures whose times are compared, such as 50°C,60°C (default: every 10 °C).")
  private List<Double> targets = new ArrayList<>();

  @Option(
      names = "--rate",
      paramLabel = "FROM..TO",
      split = ",",
      converter = Span.class,
      description = "Temperatures between which heating rates are compared, such as 40°C..60°C.")
  private List<RateSpan> rates = new ArrayList<>();

  @Option(
      names = "--lost",
      paramLabel = "MASS",
      converter = QuantityConverters.Mass.class,
      description = "What the cut weighed less afterwards, such as 120g, to compare.")
  private Optional<Double> lost = Optional.empty();

  ComparisonArguments() {}

  /** Two temperatures with two dots between. */
  static final class Span implements ITypeConverter<RateSpan> {

    Span() {}

    @Override
    public RateSpan convert(String text) {
      String[] ends = text.split("\\.\\.", -1);
      if (ends.length != 2) {
        throw new TypeConversionException(
            "must be two temperatures, such as 40°C..60°C, was \"" + text + "\"");
      }
      try {
        return new RateSpan(Quantities.temperature(ends[0]), Quantities.temperature(ends[1]));
      } catch (IllegalArgumentException e) {
        throw new TypeConversionException(e.getMessage());
      }
    }
  }

  /**
   * The options.
   *
   * @throws IllegalArgumentException if they contradict one another
   */
  ComparisonOptions options() {
    return new ComparisonOptions(
        probe, from.orElse(0.0), optional(until), targets, rates, optional(lost));
  }

  private static OptionalDouble optional(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
  }

  /** What was asked for, for the manifest. */
  List<RunManifest.Setting> settings() {
    List<RunManifest.Setting> entries = new ArrayList<>();
    probe.ifPresent(name -> entries.add(new RunManifest.Setting("probe", name)));
    from.ifPresent(time -> entries.add(new RunManifest.Setting("from_s", Double.toString(time))));
    until.ifPresent(time -> entries.add(new RunManifest.Setting("until_s", Double.toString(time))));
    if (!targets.isEmpty()) {
      entries.add(new RunManifest.Setting("targets_K", targets.toString()));
    }
    for (RateSpan span : rates) {
      entries.add(new RunManifest.Setting("rate_K", span.low() + ".." + span.high()));
    }
    lost.ifPresent(mass -> entries.add(new RunManifest.Setting("lost_kg", Double.toString(mass))));
    return entries;
  }
}
