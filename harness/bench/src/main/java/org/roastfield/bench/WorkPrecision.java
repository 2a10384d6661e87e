package org.roastfield.bench;

import static org.roastfield.bench.MarkdownTable.fixed;
import static org.roastfield.bench.MarkdownTable.plain;
import static org.roastfield.bench.MarkdownTable.rounded;
import static org.roastfield.bench.MarkdownTable.signed;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.WorkCounters;

/**
 * How much work an error costs: prints {@code thermal-core/docs/work-precision.md}. Counts and
 * errors only, no times, so that the document is the same on every machine.
 */
public final class WorkPrecision {

  private static final List<String> CASES = List.of("C1", "S1", "P1");
  private static final List<Double> ACCURACIES = List.of(0.1, 0.03, 0.01, 0.003, 0.001);
  private static final List<Integer> CELLS = List.of(12, 16, 24, 40, 80);
  private static final double USUAL_WIDTH = 0.5e-3;
  private static final double FAST_ACCURACY = 0.02;
  private static final List<Integer> FEW_CELLS = List.of(16, 18, 20, 24, 40);
  private static final List<Double> WIDTHS = List.of(0.5e-3, 0.4e-3, 0.35e-3, 0.3e-3, 0.2e-3);
  private static final int MOST_STEPS = 200_000;
  private static final Settings CONVERGED = new Settings(1e-6, 640, 0.05e-3, MOST_STEPS);
  private static final Settings NEARLY = new Settings(1e-5, 320, 0.1e-3, MOST_STEPS);

  private static final String HEAD =
      """
      # Work and precision

      Written by

          mvn -B -ntp -q -DskipTests -pl harness/bench -am package && java -cp harness/bench/target/benchmarks.jar \
      org.roastfield.bench.WorkPrecision > thermal-core/docs/work-precision.md

      What an error costs on the model problem RS-1 ([statement](../../datasets/reference/rs1/spec.md)), over accuracies asked for and numbers of cells. Errors
      are the largest differences from a converged run of this code: 640 cells, 0.05 mm at the face, accuracy 1e-6 K.

      - *core*: every minute of roast and rest, every second of the sear, and the ends of all stages;
      - *face*: in the sear, every half second to the end of the leg, from 3 s or from 10 s after a switch on;
      - *pull*: the time at which the core reaches 48 °C, less that of the converged run;
      - *kept + repeated*: steps; *solves*: of a tridiagonal system; *fluxes*: evaluations of the surface law.

      There are no times here, so the tables are the same on every machine; times are measured by the benchmarks.""";

  private final MarkdownTable out;
  private final Map<String, SimulationResult> converged = new TreeMap<>();

  private WorkPrecision(PrintStream out) {
    this.out = new MarkdownTable(out);
  }

  /** Prints the document to standard output; takes no arguments. */
  public static void main(String[] args) {
    if (args.length != 0) {
      throw new IllegalArgumentException("args must be empty, was " + List.of(args));
    }
    new WorkPrecision(new PrintStream(System.out, true, StandardCharsets.UTF_8)).print();
  }

  private void print() {
    out.line(HEAD);
    convergence();
    CASES.forEach(this::accuraciesAndCells);
    widths();
    drivers();
  }

  private void convergence() {
    out.start(
        "The converged runs",
        "Their numbers, and how a run of 320 cells, 0.1 mm at the face and accuracy 1e-5 K differs:",
        "case",
        "pull [s]",
        "core at the end [°C]",
        "kept + repeated",
        "core [K]",
        "face, 3 s [K]",
        "face, 10 s [K]",
        "pull [s]");
    for (String name : CASES) {
      SimulationResult exact = run(name, CONVERGED);
      converged.put(name, exact);
      CookErrors errors = CookErrors.of(exact, run(name, NEARLY));
      double end = exact.stages().get(exact.stages().size() - 1).coreAtEnd();
      out.row(
          name,
          fixed(CookErrors.pull(exact), 3),
          fixed(end - Rs1Law.ZERO_CELSIUS, 4),
          steps(exact.work()),
          rounded(errors.core()),
          rounded(errors.soon()),
          rounded(errors.later()),
          signed(errors.pull()));
    }
  }

  private void accuraciesAndCells(String name) {
    out.start(
        name,
        "Cells 0.5 mm wide at the face.",
        "accuracy [K]",
        "cells",
        "core [K]",
        "face, 3 s [K]",
        "face, 10 s [K]",
        "pull [s]",
        "kept + repeated",
        "solves",
        "fluxes");
    for (double accuracy : ACCURACIES) {
      for (int cells : CELLS) {
        SimulationResult result = run(name, settings(accuracy, cells, USUAL_WIDTH));
        CookErrors errors = CookErrors.of(exact(name), result);
        out.row(
            plain(accuracy),
            Integer.toString(cells),
            rounded(errors.core()),
            rounded(errors.soon()),
            rounded(errors.later()),
            signed(errors.pull()),
            steps(result.work()),
            Long.toString(result.work().solves()),
            Long.toString(result.work().fluxEvaluations()));
      }
    }
  }

  private void widths() {
    out.start(
        "Width of the cells at the face",
        "Accuracy 0.02 K, the worst of the three cases; steps are those of C1. The face needs narrow cells, the core needs enough of them.",
        "width [mm]",
        "cells",
        "core [K]",
        "face, 3 s [K]",
        "face, 10 s [K]",
        "pull [s]",
        "kept + repeated");
    for (double width : WIDTHS) {
      for (int cells : FEW_CELLS) {
        width(width, cells);
      }
    }
  }

  private void width(double width, int cells) {
    Settings settings = settings(FAST_ACCURACY, cells, width);
    double core = 0;
    double soon = 0;
    double later = 0;
    double pull = 0;
    for (String name : CASES) {
      CookErrors errors = CookErrors.of(exact(name), run(name, settings));
      core = Math.max(core, errors.core());
      soon = Math.max(soon, errors.soon());
      later = Math.max(later, errors.later());
      pull = Math.max(pull, Math.abs(errors.pull()));
    }
    out.row(
        fixed(1e3 * width, 2),
        Integer.toString(cells),
        rounded(core),
        rounded(soon),
        rounded(later),
        rounded(pull),
        steps(run(CASES.get(0), settings).work()));
  }

  private void drivers() {
    out.start(
        "Alone and in lanes",
        "The same cook computed alone, and in an ensemble with fifteen others; *face* at the ends of the legs, cells there 0.5 mm wide.",
        "case",
        "accuracy [K]",
        "cells",
        "core [K]",
        "lanes",
        "face [K]",
        "lanes",
        "pull [s]",
        "lanes",
        "kept + repeated",
        "lanes");
    for (String name : CASES) {
      driver(name, settings(0.03, 12, USUAL_WIDTH));
      driver(name, settings(FAST_ACCURACY, 16, USUAL_WIDTH));
      driver(name, settings(0.01, 40, USUAL_WIDTH));
      driver(name, settings(0.001, 80, USUAL_WIDTH));
    }
  }

  private void driver(String name, Settings settings) {
    SimulationResult result = run(name, settings);
    CookErrors alone = CookErrors.of(exact(name), result);
    LaneErrors lanes = LaneErrors.of(name, settings, exact(name));
    out.row(
        name,
        plain(settings.accuracy()),
        Integer.toString(settings.cells()),
        rounded(alone.core()),
        rounded(lanes.core()),
        rounded(alone.legEnds()),
        rounded(lanes.legEnds()),
        signed(alone.pull()),
        signed(lanes.pull()),
        steps(result.work()),
        lanes.accepted() + " + " + lanes.rejected());
  }

  private SimulationResult exact(String name) {
    SimulationResult exact = converged.get(name);
    if (exact == null) {
      throw new IllegalArgumentException("name must be that of a case, was " + name);
    }
    return exact;
  }

  private static String steps(WorkCounters work) {
    return work.acceptedSteps() + " + " + work.rejectedSteps();
  }

  private static Settings settings(double accuracy, int cells, double width) {
    return new Settings(accuracy, cells, width, MOST_STEPS);
  }

  private static SimulationResult run(String name, Settings settings) {
    Cook cook = Rs1.cook(name);
    List<Stage> stages = cook.stages().stream().map(WorkPrecision::reproducible).toList();
    return Simulator.with(settings).run(new Cook(cook.cut(), stages, cook.probes())).orElseThrow();
  }

  private static Stage reproducible(Stage stage) {
    return Stage.allRound(stage.name(), new OneFace((Rs1Law) stage.upper()), stage.end());
  }
}
