package org.roastfield.bench;

import java.util.List;
import java.util.Locale;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;

/**
 * Largest errors over members of {@link EnsembleBenchmark}, each against a converged run of its
 * own: {@code java -cp harness/bench/target/benchmarks.jar org.roastfield.bench.EnsembleErrors
 * MEMBERS ACCURACY-K CELLS FACE-CELL-M}. By the single cook's driver, from which lanes differ by
 * less than the digits shown.
 */
public final class EnsembleErrors {

  private static final Settings CONVERGED =
      Settings.withDefaults().withAccuracy(1e-4).withCells(160).withSurfaceCell(1e-4);

  private EnsembleErrors() {}

  /** Prints a line for each case; see the class. */
  public static void main(String[] arguments) {
    if (arguments.length != 4) {
      throw new IllegalArgumentException("arguments must be MEMBERS ACCURACY-K CELLS FACE-CELL-M");
    }
    int members = Integer.parseInt(arguments[0]);
    Settings settings =
        Settings.withDefaults()
            .withAccuracy(Double.parseDouble(arguments[1]))
            .withCells(Integer.parseInt(arguments[2]))
            .withSurfaceCell(Double.parseDouble(arguments[3]));
    for (String problem : List.of("C1", "S1", "P1")) {
      System.out.println(line(problem, members, settings));
    }
  }

  private static String line(String problem, int members, Settings settings) {
    double core = 0;
    double face = 0;
    double pull = 0;
    long steps = 0;
    for (int i = 0; i < members; i++) {
      SimulationResult converged = run(problem, i, CONVERGED);
      SimulationResult result = run(problem, i, settings);
      CookErrors errors = CookErrors.of(converged, result);
      core = Math.max(core, errors.core());
      face = Math.max(face, errors.soon());
      pull = Math.max(pull, Math.abs(errors.pull()));
      steps += result.work().acceptedSteps() + result.work().rejectedSteps();
    }
    return String.format(
        Locale.ROOT,
        "%s: core %.4f K, face from 3 s %.3f K, pull %.2f s, %.1f steps",
        problem,
        core,
        face,
        pull,
        (double) steps / members);
  }

  private static SimulationResult run(String problem, int member, Settings settings) {
    return Simulator.with(settings).run(Rs1.member(problem, member)).orElseThrow();
  }
}
