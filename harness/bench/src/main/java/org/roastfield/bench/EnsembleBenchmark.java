package org.roastfield.bench;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.Cancellation;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.simulation.Settings;

/**
 * Ensembles of RS-1 whose members differ by ±5 % in conductivity, radius, transfer, wetness and
 * contact, and ±1 K at the start. Time is that of the whole ensemble. 500 members of the whole
 * cook, 2.4 h long, are more than a live update with two hours still to go.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 8, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 200, time = 20, timeUnit = TimeUnit.MILLISECONDS)
public class EnsembleBenchmark {

  /** Case of RS-1. */
  @Param({"C1", "S1", "P1"})
  public String problem = "C1";

  /** Members. */
  @Param({"1000"})
  public int members = 1000;

  /** Workers, on as many threads. */
  @Param({"1", "2"})
  public int workers = 1;

  /** Accuracy [K]. */
  @Param({"0.034"})
  public double accuracy = 0.034;

  /** Cells. */
  @Param({"18"})
  public int cells = 18;

  /** Width of the cell at the face [m]. */
  @Param({"0.00034"})
  public double surfaceCell = 0.00034;

  private Cook template = Rs1.cook("C1", false);
  private Cook[] cooks = new Cook[0];
  private EnsembleSimulator simulator = EnsembleSimulator.with(Settings.withDefaults());
  private ExecutorService executor = Executors.newSingleThreadExecutor();

  /** A new state; JMH fills the parameters. */
  public EnsembleBenchmark() {}

  /** Draws the members. */
  @Setup
  public void build() {
    executor.shutdown();
    executor = Executors.newFixedThreadPool(workers);
    template = Rs1.cook(problem, false);
    cooks = new Cook[members];
    for (int i = 0; i < members; i++) {
      cooks[i] = Rs1.member(problem, i);
    }
    simulator =
        EnsembleSimulator.with(
            Settings.withDefaults()
                .withAccuracy(accuracy)
                .withCells(cells)
                .withSurfaceCell(surfaceCell));
  }

  /** Ends the threads. */
  @TearDown
  public void shutDown() {
    executor.shutdown();
  }

  /** The whole ensemble. */
  @Benchmark
  public EnsembleResult ensemble() {
    return simulator.run(template, members, i -> cooks[i], executor, workers, new Cancellation());
  }
}
