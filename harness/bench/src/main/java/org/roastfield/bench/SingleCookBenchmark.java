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
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.ensemble.RepeatedCook;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;

/**
 * One cook of RS-1, warm: in memory of its own that is used again, and through the facade that
 * keeps all traces. Many short windows: read the lowest and the 25 % quantile on a shared machine.
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

  /** Whether conductivity and heat capacity depend on temperature. */
  @Param({"constant", "varying"})
  public String properties = "constant";

  /** Accuracy [K]. */
  @Param({"0.02"})
  public double accuracy = 0.02;

  /** Cells. */
  @Param({"18", "40", "160"})
  public int cells = 40;

  /** Width of the cell at the face [m]. */
  @Param({"0.00032"})
  public double surfaceCell = 0.00032;

  private Cook cook = Rs1.cook("C1", false);
  private Simulator simulator = Simulator.withDefaults();
  private RepeatedCook repeated = RepeatedCook.of(Settings.withDefaults(), cook);

  /** A new state; JMH fills the parameters. */
  public SingleCookBenchmark() {}

  /** Builds the cook. */
  @Setup
  public void build() {
    cook = Rs1.cook(problem, properties.equals("varying"));
    Settings settings =
        Settings.withDefaults()
            .withAccuracy(accuracy)
            .withCells(cells)
            .withSurfaceCell(surfaceCell);
    simulator = Simulator.with(settings);
    repeated = RepeatedCook.of(settings, cook);
  }

  /** In memory that is used again; allocates nothing. */
  @Benchmark
  public MemberStatus repeated() {
    return repeated.run(cook);
  }

  /** Through the facade, all traces kept. */
  @Benchmark
  public double facade() {
    return simulator.run(cook).orElseThrow().endTime();
  }
}
