package org.roastfield.lab.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.plan.Planner;
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
      "Tries plans on made-up cooks whose truth they do not know, beside rules of thumb and someone",
      "who knows the numbers of each cook, and prints one table. The same seed prints the same."
    })
final class TryPlanCommand implements Callable<Integer> {

  private static final int FEWEST = 40;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--cooks",
      paramLabel = "N",
      defaultValue = "1000",
      description = "How many cooks, at least 40; default ${DEFAULT-VALUE}, some minutes.")
  private int cooks;

  @Option(
      names = "--seed",
      paramLabel = "SEED",
      defaultValue = "1",
      description = "Seed of everything drawn; default ${DEFAULT-VALUE}.")
  private long seed;

  TryPlanCommand() {}

  @Override
  public Integer call() {
    if (cooks < FEWEST) {
      throw new BadInputException("--cooks must be at least " + FEWEST + ", was " + cooks);
    }
    int workers = Runtime.getRuntime().availableProcessors();
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    try {
      EnsembleSimulator simulator = EnsembleSimulator.with(Planner.PLANNING).on(executor, workers);
      List<PlanTrial.Tried> tried = new PlanTrial(simulator, seed).run(cooks, done -> {});
      PrintWriter screen = spec.commandLine().getOut();
      new TrialTable(tried).lines().forEach(screen::println);
      screen.flush();
      return 0;
    } finally {
      executor.shutdownNow();
    }
  }
}
