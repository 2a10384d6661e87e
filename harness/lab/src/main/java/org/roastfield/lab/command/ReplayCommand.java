package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.Replay;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.report.ReplayReport;
import org.roastfield.lab.result.ReplayJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.TemperatureScale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Computes a logged cook again and says how far off that is. */
@Command(
    name = "replay",
    mixinStandardHelpOptions = true,
    description = {
      "Computes a logged cook from its chamber readings and compares the core.",
      "The surface is that of the cook file's first stage. Nothing is fitted."
    })
final class ReplayCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "LOG.csv", description = "Log with a core column.")
  private Path logPath = Path.of("");

  @Option(
      names = "--cook",
      paramLabel = "COOK.yaml",
      required = true,
      description = "Cook file: cut, probe, surface, and the chamber if the log has none.")
  private Path cookPath = Path.of("");

  @Mixin private ComparisonArguments comparison = new ComparisonArguments();

  @Option(
      names = "--start-from-log",
      description = "Start at the log's first core reading, not at the cook file's temperature.")
  private boolean startFromLog;

  @Option(names = "--fahrenheit", description = "Show °F on screen instead of °C.")
  private boolean fahrenheit;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  @Mixin private AccuracyOptions accuracy = new AccuracyOptions();

  ReplayCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput cook = CookInput.read(cookPath);
    LogInput log = LogInput.read(logPath);
    Settings settings = accuracy.settings();
    Replay replay = replay(cook.cook(), log.log());
    Outcome outcome = Simulator.with(settings).run(replay.cook());
    if (outcome instanceof Outcome.Failed failed) {
      return FailedRun.report(spec, cook.cook(), failed, answer.json());
    }
    RunManifest manifest =
        Manifests.of("replay", List.of(cook.entry(), log.entry()), settings, optionEntries());
    finish(cook.cook(), log.log(), replay.compare(outcome.orElseThrow()), manifest);
    return 0;
  }

  private Replay replay(CookFile cook, CookLog log) {
    try {
      return Replay.of(cook, log, comparison.options(), startFromLog);
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private List<RunManifest.Setting> optionEntries() {
    List<RunManifest.Setting> entries = new ArrayList<>(comparison.settings());
    entries.add(new RunManifest.Setting("start_from_log", Boolean.toString(startFromLog)));
    return entries;
  }

  private void finish(CookFile cook, CookLog log, ReplayResult replay, RunManifest manifest)
      throws IOException {
    Map<String, String> files =
        AnswerOptions.files("replay", ReplayJson.text(cook, log, replay), manifest);
    files.put("replay.html", ReplayReport.html(cook, log, replay, manifest));
    TemperatureScale scale = fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    answer.give(spec, cook.name() + " replay", ReplayText.of(cook, log, replay, scale), files);
  }
}
