package org.roastfield.bench;

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
import org.openjdk.jmh.annotations.Warmup;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;

/**
 * One cook of RS-1, warm, through the public API, traces kept. Many short windows: read the lowest
 * and the 25 % quantile on a shared machine.
 *
 * <p>With {@code -prof gc}, the bytes of a cook are those of its grid, scratch memory and result;
 * {@code accuracy} multiplies the steps and leaves them.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 8, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 60, time = 50, timeUnit = TimeUnit.MILLISECONDS)
public class SingleCookBenchmark {

  /** Case of RS-1. */
  @Param({"C1", "S1", "P1"})
  public String problem = "C1";

  /** Accuracy [K]. */
  @Param({"0.01"})
  public double accuracy = 0.01;

  /** Cells. */
  @Param({"40"})
  public int cells = 40;

  private Simulator simulator = Simulator.withDefaults();
  private Cook cook = Rs1.cook("C1");

  /** A new state; JMH fills the parameters. */
  public SingleCookBenchmark() {}

  /** Builds the cook. */
  @Setup
  public void build() {
    simulator = Simulator.with(Settings.withDefaults().withAccuracy(accuracy).withCells(cells));
    cook = Rs1.cook(problem);
  }

  /** Time of the last state [s]. */
  @Benchmark
  public double cook() {
    return simulator.run(cook).orElseThrow().endTime();
  }
}
