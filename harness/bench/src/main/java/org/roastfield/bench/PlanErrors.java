package org.roastfield.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.simulation.Settings;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.plan.CookerBelief;

/**
 * What grids and steps of plans are off by, over the draws that a plan without a profile makes of a
 * cook file, each against a converged run of its own: {@code java -cp
 * harness/bench/target/benchmarks.jar org.roastfield.bench.PlanErrors COOK.yaml MEMBERS [ACCURACY-K
 * CELLS FACE-CELL-M]}; without numbers, of {@link Planner#PLANNING}.
 */
public final class PlanErrors {

  private static final Settings CONVERGED =
      Settings.withDefaults().withAccuracy(2e-3).withCells(60).withSurfaceCell(1e-4);

  private PlanErrors() {}

  /** Prints errors beside the spread of the draws; see the class. */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 2 && arguments.length != 5) {
      throw new IllegalArgumentException(
          "arguments must be COOK.yaml MEMBERS [ACCURACY-K CELLS FACE-CELL-M]");
    }
    List<Cook> cooks = draws(Path.of(arguments[0]), Integer.parseInt(arguments[1]));
    Settings settings =
        arguments.length == 2
            ? Planner.PLANNING
            : Settings.withDefaults()
                .withAccuracy(Double.parseDouble(arguments[2]))
                .withCells(Integer.parseInt(arguments[3]))
                .withSurfaceCell(Double.parseDouble(arguments[4]));
    EnsembleResult converged = run(CONVERGED, cooks);
    EnsembleResult result = run(settings, cooks);
    int last = cooks.get(0).stages().size() - 1;
    Sums pull = new Sums();
    Sums peak = new Sums();
    int steps = 0;
    for (int i = 0; i < cooks.size(); i++) {
      if (converged.status(i) == MemberStatus.COMPLETED) {
        pull.add(result.stageEnd(i, 0), converged.stageEnd(i, 0));
        peak.add(result.corePeak(i, last), converged.corePeak(i, last));
        steps += result.acceptedSteps(i) + result.rejectedSteps(i);
      }
    }
    System.out.println("end of the first stage: " + pull.words("s"));
    System.out.println("highest core of the last: " + peak.words("K"));
    System.out.println("steps of a draw: " + steps / pull.count);
  }

  private static List<Cook> draws(Path file, int members) throws IOException {
    VariedCook cook = VariedCook.planned(CookFileReader.read(file), Probe.CORE);
    CookerBelief belief = CookerBelief.population(cook);
    ParameterSet parameters = belief.prior().parameters();
    SplittableRandom random = new SplittableRandom(1);
    List<Cook> cooks = new ArrayList<>();
    for (int i = 0; i < members; i++) {
      cooks.add(cook.apply(parameters.point(belief.prior().draw(random))));
    }
    return cooks;
  }

  private static EnsembleResult run(Settings settings, List<Cook> cooks) {
    return EnsembleSimulator.with(settings).run(cooks.get(0), cooks.size(), cooks::get);
  }

  /** Sums of errors, and of the values themselves. */
  private static final class Sums {

    private int count;
    private double mean;
    private double squares;
    private double largest;
    private double values;
    private double valueSquares;

    void add(double value, double converged) {
      double error = value - converged;
      count++;
      mean += error;
      squares += error * error;
      largest = Math.max(largest, Math.abs(error));
      values += converged;
      valueSquares += converged * converged;
    }

    String words(String unit) {
      double middle = values / count;
      return String.format(
          Locale.ROOT,
          "off by %.3f %s on average, %.3f root mean square, %.3f at most, of a spread (sd) of %.3f",
          mean / count,
          unit,
          Math.sqrt(squares / count),
          largest,
          Math.sqrt(valueSquares / count - middle * middle));
    }
  }
}
