package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.heldout.ProfileReplay;
import org.roastfield.lab.plan.UnplannableException;
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
      "The surface is that of the cook file's first stage; with a profile the cook goes through all"
          + " stages that the log times, as for calibrate. Nothing is fitted."
    })
final class ReplayCommand implements Callable<Integer> {

  /** Of the draws behind a band. */
  private static final long SEED = 1;

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

  @Mixin private CookerOption cooker = new CookerOption();

  @Option(names = "--fahrenheit", description = "Show °F on screen instead of °C.")
  private boolean fahrenheit;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  @Mixin private AccuracyOptions accuracy = new AccuracyOptions();

  ReplayCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput cook = CookInput.read(cookPath);
    LogInput log = LogInput.read(logPath);
    Optional<CookerProfileFile> profile = cooker.stated();
    try {
      return profile.isPresent() ? byProfile(cook, log, profile.get()) : plain(cook, log);
    } catch (IllegalArgumentException | UnplannableException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private int plain(CookInput cook, LogInput log) throws IOException {
    Replay replay = Replay.of(cook.cook(), log.log(), comparison.options(), startFromLog);
    Outcome outcome = Simulator.with(accuracy.settings()).run(replay.cook());
    if (outcome instanceof Outcome.Failed failed) {
      return FailedRun.report(spec, cook.cook(), failed, answer.json());
    }
    finish(cook, log, replay.compare(outcome.orElseThrow()), List.of());
    return 0;
  }

  private int byProfile(CookInput cook, LogInput log, CookerProfileFile profile)
      throws IOException {
    Simulator simulator = Simulator.with(accuracy.settings());
    ProfileReplay replay =
        ProfileReplay.of(
            cook.cook(),
            log.log(),
            log.events(),
            log.entry().sha256(),
            comparison.options(),
            startFromLog,
            CookerProfileJson.read(profile));
    Outcome outcome = simulator.run(replay.cook());
    if (outcome instanceof Outcome.Failed failed) {
      return FailedRun.report(spec, cook.cook(), failed, answer.json());
    }
    ReplayResult result = replay.compare(outcome.orElseThrow(), simulator, SEED);
    finish(cook, log, result, List.of(CookerOption.entry(profile)));
    return 0;
  }

  private List<RunManifest.Setting> optionEntries(ReplayResult replay) {
    List<RunManifest.Setting> entries = new ArrayList<>(comparison.settings());
    entries.add(new RunManifest.Setting("start_from_log", Boolean.toString(startFromLog)));
    if (replay.profile().isPresent()) {
      entries.add(new RunManifest.Setting("draws", Integer.toString(ProfileReplay.DRAWS)));
      entries.add(new RunManifest.Setting("seed", Long.toString(SEED)));
    }
    return entries;
  }

  private void finish(
      CookInput input, LogInput log, ReplayResult replay, List<RunManifest.InputFile> more)
      throws IOException {
    List<RunManifest.InputFile> inputs = new ArrayList<>(List.of(input.entry(), log.entry()));
    inputs.addAll(more);
    RunManifest manifest =
        Manifests.of("replay", inputs, accuracy.settings(), optionEntries(replay));
    CookFile cook = input.cook();
    Map<String, String> files =
        AnswerOptions.files("replay", ReplayJson.text(cook, log.log(), replay), manifest);
    files.put("replay.html", ReplayReport.html(cook, log.log(), replay, manifest));
    TemperatureScale scale = fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    String words = ReplayText.of(cook, log.log(), replay, scale);
    answer.give(spec, cook.name() + " replay", words, files);
  }
}
