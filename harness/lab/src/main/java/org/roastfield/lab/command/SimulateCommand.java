package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.report.SimulationReport;
import org.roastfield.lab.result.ResultJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.result.RunManifest.Setting;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.DrawnCooks;
import org.roastfield.lab.timeline.Milestone;
import org.roastfield.lab.timeline.TemperatureScale;
import org.roastfield.lab.timeline.Timeline;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes a cook and says when what happens. */
@Command(
    name = "simulate",
    mixinStandardHelpOptions = true,
    description = "Computes a cook: its timeline on screen, result, manifest and report as files.")
final class SimulateCommand implements Callable<Integer> {

  private static final int MOST_MEMBERS = 20_000;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "COOK.yaml", description = "Cook file.")
  private Path cookPath = Path.of("");

  @Option(
      names = "--members",
      paramLabel = "N",
      description =
          "How many cooks with drawn inputs to compute beside, for spreads and chances (default:"
              + " none; at most 20000).")
  private Optional<Integer> members = Optional.empty();

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed of the draws (default: ${DEFAULT-VALUE}).")
  private long seed;

  @Option(names = "--fahrenheit", description = "Show °F on screen instead of °C.")
  private boolean fahrenheit;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  @Mixin private AccuracyOptions accuracy = new AccuracyOptions();

  SimulateCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput input = CookInput.read(cookPath);
    Simulator simulator = Simulator.with(accuracy.settings());
    Outcome outcome = simulator.run(input.cook().cook());
    if (outcome instanceof Outcome.Failed failed) {
      return FailedRun.report(spec, input.cook(), failed, answer.json());
    }
    finish(input, outcome.orElseThrow());
    return 0;
  }

  private ComputedCook computed(CookFile cook, SimulationResult result) {
    ComputedCook computed = ComputedCook.of(cook, result);
    if (members.isEmpty()) {
      return computed;
    }
    if (!(members.get() >= 1 && members.get() <= MOST_MEMBERS)) {
      throw new BadInputException(
          "option --members must be in [1, " + MOST_MEMBERS + "], was " + members.get());
    }
    return computed.with(DrawnCooks.spread(computed, members.get(), seed));
  }

  private List<Setting> draws() {
    return members.isEmpty()
        ? List.of()
        : List.of(
            new Setting("members", Integer.toString(members.get())),
            new Setting("seed", Long.toString(seed)));
  }

  private void finish(CookInput input, SimulationResult result) throws IOException {
    CookFile cook = input.cook();
    RunManifest manifest =
        Manifests.of("simulate", List.of(input.entry()), result.settings(), draws());
    List<Milestone> plain = Timeline.of(cook, result, TemperatureScale.CELSIUS);
    ComputedCook computed = computed(cook, result);
    Map<String, String> files =
        AnswerOptions.files("result", ResultJson.text(computed, plain), manifest);
    files.put("report.html", SimulationReport.html(computed, plain, manifest));
    TemperatureScale scale = fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    answer.give(spec, cook.name(), TimelineText.of(computed, scale), files);
  }
}
