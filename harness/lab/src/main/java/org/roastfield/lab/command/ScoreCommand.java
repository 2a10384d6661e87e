package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.Settings;
import org.roastfield.lab.cooker.NamedCooker;
import org.roastfield.lab.heldout.HeldOutScores;
import org.roastfield.lab.heldout.LoggedCookToScore;
import org.roastfield.lab.heldout.ScoredCook;
import org.roastfield.lab.report.HeldOutReport;
import org.roastfield.lab.result.HeldOutJson;
import org.roastfield.lab.result.ManifestJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.score.ScoreSummary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Scores forecasts of logged cooks by what other cooks say. */
@Command(
    name = "score",
    mixinStandardHelpOptions = true,
    description = {
      "Scores calibration on cooks that were not fitted: each log in turn is kept aside, and what the"
          + " others on its cooker say is held against it, with the log cut at a quarter, a half and"
          + " three quarters of the way.",
      "Logs are packages with a cook file whose first stage waits for a core temperature."
    })
final class ScoreCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "FOLDER",
      description = "Log packages, or folders of log packages.")
  private List<Path> folders = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      required = true,
      description = "Folder for scores.json, scores.html and manifest.json.")
  private Path out = Path.of("");

  @Option(names = "--seed", paramLabel = "NUMBER", description = "Seed of the draws (default: 1).")
  private long seed = 1;

  ScoreCommand() {}

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    new OutputFolder(out).check();
    List<RunManifest.InputFile> inputs = new ArrayList<>();
    List<ScoredCook> cooks = new ArrayList<>();
    for (Path folder : PackageInput.among(folders, 2)) {
      cooks.add(read(folder, inputs));
    }
    cookers(cooks, screen);
    HeldOutScores scores = scored(cooks, screen);
    RunManifest manifest =
        Manifests.of(
            "score",
            inputs,
            Settings.withDefaults(),
            List.of(new RunManifest.Setting("seed", Long.toString(seed))));
    print(screen, scores);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("scores.json", HeldOutJson.text(scores));
    files.put("manifest.json", ManifestJson.text(manifest));
    files.put("scores.html", HeldOutReport.html(scores, manifest));
    new OutputFolder(out).write(files);
    screen.println("Wrote " + String.join(", ", files.keySet()) + " in " + out);
    screen.flush();
    return 0;
  }

  /** Which cooks foretell each other. */
  private static void cookers(List<ScoredCook> cooks, PrintWriter screen) {
    Map<String, Integer> counts = new TreeMap<>();
    cooks.forEach(cook -> counts.merge(cook.cooker(), 1, Integer::sum));
    counts.forEach(
        (cooker, count) ->
            screen.println(
                cooker.equals(LoggedCookToScore.UNNAMED)
                    ? "no cooker is named by " + count + " of the logs: they count as of one"
                    : "cooker " + cooker + ": " + count + (count == 1 ? " log" : " logs")));
    screen.flush();
  }

  private static ScoredCook read(Path folder, List<RunManifest.InputFile> inputs)
      throws IOException {
    PackageInput input = PackageInput.read(folder);
    inputs.addAll(input.entries());
    try {
      NamedCooker.of(input.cook(), input.log());
      return LoggedCookToScore.of(input.cook(), input.log());
    } catch (IllegalArgumentException e) {
      throw new BadInputException(folder + ": " + e.getMessage());
    }
  }

  private HeldOutScores scored(List<ScoredCook> cooks, PrintWriter screen) {
    try {
      return HeldOutScores.of(
          cooks,
          seed,
          what -> {
            screen.println("  " + what);
            screen.flush();
          });
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private static void print(PrintWriter screen, HeldOutScores scores) {
    for (HeldOutScores.TraceError error : scores.errors()) {
      screen.printf(
          Locale.ROOT,
          "%s: core off by %.2f K (root mean square), foretold from %d other cooks%n",
          error.cook(),
          error.rootMeanSquare(),
          error.others());
    }
    scores
        .forecasts()
        .forEach((share, by) -> by.forEach((name, one) -> line(screen, share, name, one)));
    scores.leftOut().forEach(screen::println);
  }

  private static void line(PrintWriter screen, double share, String name, ScoreSummary one) {
    screen.printf(
        Locale.ROOT,
        "%2.0f %% seen, %-24s %d cooks: error %+.0f min, CRPS %.1f min, covered %.2f / %.2f / %.2f"
            + " of 0.50 / 0.80 / 0.90, 90 %% is %.0f min wide%n",
        100 * share,
        name,
        one.cooks(),
        one.bias() / 60,
        one.crps() / 60,
        one.coverage(0.5).share(),
        one.coverage(0.8).share(),
        one.coverage(0.9).share(),
        one.coverage(0.9).width() / 60);
  }
}
