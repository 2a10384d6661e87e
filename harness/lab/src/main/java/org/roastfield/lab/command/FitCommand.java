package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.Fit;
import org.roastfield.lab.replay.FitParameter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits a few numbers to a logged core. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    description = {
      "Fits size (R²/α), surface drive and start temperature to a logged core.",
      "The face dries and is fed; everything else about it is that of the cook file's first stage."
    })
final class FitCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "LOG.csv", description = "Log with a core column.")
  private Path logPath = Path.of("");

  @Option(
      names = "--cook",
      paramLabel = "COOK.yaml",
      required = true,
      description = "Cook file: cut, surface, and the chamber if the log has none.")
  private Path cookPath = Path.of("");

  @Option(
      names = "--free",
      paramLabel = "NAME",
      split = ",",
      description =
          "What to fit: size, drive, start, convection, or none (default: size,drive,start).")
  private List<String> free = List.of("size", "drive", "start");

  @Option(
      names = "--set",
      paramLabel = "NAME=NUMBER",
      description =
          "Value of a parameter, fitted from there or kept: factors of what the cook file states,"
              + " for start a difference in kelvin.")
  private Map<String, Double> set = Map.of();

  @Option(
      names = "--from",
      paramLabel = "TIME",
      converter = QuantityConverters.Time.class,
      description = "Leave out readings before, such as 3min.")
  private Optional<Double> from = Optional.empty();

  @Option(
      names = "--until",
      paramLabel = "TIME",
      converter = QuantityConverters.Time.class,
      description = "Leave out what the log says later, such as 415min.")
  private Optional<Double> until = Optional.empty();

  @Mixin private AccuracyOptions accuracy = new AccuracyOptions();

  FitCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput cook = CookInput.read(cookPath);
    LogInput log = LogInput.read(logPath);
    try {
      Fit fit =
          Fit.of(
              cook.cook(),
              log.log(),
              from.orElse(0.0),
              until.orElse(log.log().end()),
              Simulator.with(accuracy.settings()));
      print(cook.cook(), fit.fit(parameters(), given()));
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
    return 0;
  }

  private List<FitParameter> parameters() {
    List<FitParameter> parameters = new ArrayList<>();
    if (!free.equals(List.of("none"))) {
      free.forEach(word -> parameters.add(FitParameter.of(word)));
    }
    return parameters;
  }

  private Map<FitParameter, Double> given() {
    Map<FitParameter, Double> given = new EnumMap<>(FitParameter.class);
    set.forEach((word, value) -> given.put(FitParameter.of(word), value));
    return given;
  }

  private void print(CookFile cook, Fit.Fitted fitted) {
    PrintWriter screen = spec.commandLine().getOut();
    SimulationResult result = fitted.result();
    ErrorSummary errors = fitted.errors();
    TextTable table = new TextTable(false, false);
    for (FitParameter parameter : FitParameter.values()) {
      boolean isFree = free.contains(parameter.word());
      double value = fitted.values().getOrDefault(parameter, parameter.neutral());
      table.add("  " + parameter.word(), number("%.3f", value) + (isFree ? " fitted" : " given"));
    }
    table.add(
        "  distance to the core",
        number("%.1f mm", 1000 * result.cook().cut().shape().halfThickness()));
    table.add(
        "  start temperature",
        number("%.1f °C", Temperatures.toCelsius(result.cook().cut().startTemperature())));
    table.add("  RMS error", number("%.2f K", errors.rms()));
    table.add("  bias", number("%+.2f K", errors.bias()));
    table.add(
        "  worst error",
        number("%+.2f K", errors.worst()) + " at " + Times.hours(errors.worstTime()) + " h");
    table.add("  readings used", Integer.toString(errors.readings()));
    table.add("  evaporated", number("%.2f kg/m²", result.water().evaporatedUpper()));
    screen.println(cook.name() + ", fitted to its logged core\n");
    screen.print(table);
    screen.flush();
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
