package org.roastfield.lab.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.result.Json;
import org.roastfield.lab.trial.PlanTrial;
import org.roastfield.lab.trial.TrialTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tries plans on made-up cooks. */
@Command(
    name = "try-plan",
    mixinStandardHelpOptions = true,
    description = {
      "Tries plans on made-up cooks whose truth they do not know, beside rules of thumb and"
          + " someone",
      "who knows the numbers of each cook, and prints one table. The same seed prints the same."
    })
final class TryPlanCommand implements Callable<Integer> {

  private static final int FEWEST = 40;
  private static final int FEWEST_COOKERS = 4;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--cooks",
      paramLabel = "N",
      defaultValue = "1000",
      description = "How many cooks, at least 40; default ${DEFAULT-VALUE}, some minutes.")
  private int cooks;

  @Option(
      names = "--cookers",
      paramLabel = "N",
      defaultValue = "100",
      description =
          "How many cookers are planned for after four logs each, ten cooks on each, at least 4;"
              + " default ${DEFAULT-VALUE}; 0 for none.")
  private int cookers;

  @Option(
      names = "--seed",
      paramLabel = "SEED",
      defaultValue = "1",
      description = "Seed of everything drawn; default ${DEFAULT-VALUE}.")
  private long seed;

  @Option(names = "--out", paramLabel = "FILE.json", description = "Where to write the tables.")
  private Optional<Path> out = Optional.empty();

  TryPlanCommand() {}

  @Override
  public Integer call() throws IOException {
    if (cooks < FEWEST) {
      throw new BadInputException("--cooks must be at least " + FEWEST + ", was " + cooks);
    }
    if (cookers != 0 && cookers < FEWEST_COOKERS) {
      throw new BadInputException(
          "--cookers must be 0 or at least " + FEWEST_COOKERS + ", was " + cookers);
    }
    ExecutorService executor =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      ObjectNode root = Json.document("roastfield-plan-trial", 1);
      root.put("command", command());
      PlanTrial trial = new PlanTrial(executor, seed);
      print(trial.withoutLogs(cooks), root);
      if (cookers > 0) {
        print(trial.afterLogs(cookers), root);
      }
      if (out.isPresent()) {
        AtomicFile.write(out.get(), Json.text(root));
      }
      return 0;
    } finally {
      executor.shutdownNow();
    }
  }

  private String command() {
    return "roastfield try-plan --cooks " + cooks + " --cookers " + cookers + " --seed " + seed;
  }

  private void print(TrialTable table, ObjectNode root) {
    PrintWriter screen = spec.commandLine().getOut();
    table.lines().forEach(screen::println);
    screen.flush();
    table.addTo(root);
  }
}
