package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.replay.Fit;
import org.roastfield.lab.replay.FitParameter;
import org.roastfield.lab.result.FitJson;
import org.roastfield.lab.result.ManifestJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.TemperatureScale;
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
      description = "Cook file: cut, probe, surface, and the chamber if the log has none.")
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
      split = ",",
      description =
          "Value of a parameter, fitted from there or kept: factors of what the cook file states,"
              + " for start a difference in kelvin.")
  private Map<String, Double> set = Map.of();

  @Mixin private ComparisonArguments comparison = new ComparisonArguments();

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where fit.json and manifest.json go (default: nowhere).")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--json", description = "Print fit.json instead of the summary.")
  private boolean json;

  @Option(names = "--fahrenheit", description = "Show °F on screen instead of °C.")
  private boolean fahrenheit;

  @Mixin private AccuracyOptions accuracy = new AccuracyOptions();

  FitCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput cook = CookInput.read(cookPath);
    LogInput log = LogInput.read(logPath);
    try {
      List<FitParameter> parameters = parameters();
      Simulator simulator = Simulator.with(accuracy.settings());
      Fit fit = Fit.of(cook.cook(), log.log(), comparison.options(), simulator);
      finish(cook, log, parameters, fit.fit(parameters, given()));
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
    return 0;
  }

  private void finish(
      CookInput cook, LogInput log, List<FitParameter> parameters, Fit.Fitted fitted)
      throws IOException {
    TemperatureScale scale = fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    String fitText = FitJson.text(cook.cook(), log.log(), parameters, fitted);
    PrintWriter screen = spec.commandLine().getOut();
    screen.print(json ? fitText : FitText.of(cook.cook(), log.log(), parameters, fitted, scale));
    if (out.isPresent()) {
      RunManifest manifest =
          Manifests.of("fit", List.of(cook.entry(), log.entry()), accuracy.settings(), options());
      OutputFolder folder = new OutputFolder(out.get());
      folder.write(Map.of("fit.json", fitText, "manifest.json", ManifestJson.text(manifest)));
      if (!json) {
        screen.println("Wrote fit.json, manifest.json in " + folder.path());
      }
    }
    screen.flush();
  }

  private List<RunManifest.Setting> options() {
    List<RunManifest.Setting> entries = new ArrayList<>(comparison.settings());
    entries.add(new RunManifest.Setting("free", String.join(",", free)));
    new TreeMap<>(set)
        .forEach(
            (word, value) ->
                entries.add(new RunManifest.Setting("set_" + word, Double.toString(value))));
    return entries;
  }

  private List<FitParameter> parameters() {
    List<FitParameter> parameters = new ArrayList<>();
    if (!free.equals(List.of("none"))) {
      for (String word : free) {
        FitParameter parameter = FitParameter.of(word);
        if (parameters.contains(parameter)) {
          throw new IllegalArgumentException("--free must name each only once, was " + free);
        }
        parameters.add(parameter);
      }
    }
    return parameters;
  }

  private Map<FitParameter, Double> given() {
    Map<FitParameter, Double> given = new EnumMap<>(FitParameter.class);
    set.forEach((word, value) -> given.put(FitParameter.of(word), value));
    return given;
  }
}
