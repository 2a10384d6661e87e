package org.roastfield.bench;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
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
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSensitivities;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;

/**
 * One cook of RS-1 with derivatives by six parameters, and the same cook without; 200 members in
 * lanes with and without: read their ratios. Many short windows: read the lowest on a shared
 * machine.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 8, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 60, time = 50, timeUnit = TimeUnit.MILLISECONDS)
public class SensitivityBenchmark {

  private static final int MEMBERS = 200;

  /** Case of RS-1. */
  @Param({"C1", "S1", "P1"})
  public String problem = "C1";

  /** Cells. */
  @Param({"40"})
  public int cells = 40;

  private Simulator simulator = Simulator.withDefaults();
  private ParameterPoint point = ParameterPoint.empty();
  private Cook cook = Rs1.cook("C1");
  private Function<ParameterPoint, Cook> cooks = at -> cook;
  private ParameterPoint[] points = new ParameterPoint[0];
  private Cook[] members = new Cook[0];
  private EnsembleSimulator ensemble = EnsembleSimulator.with(Settings.withDefaults());

  /** A new state; JMH fills the parameters. */
  public SensitivityBenchmark() {}

  /** Builds the cook. */
  @Setup
  public void build() {
    simulator = Simulator.with(Settings.withDefaults().withCells(cells));
    point = Rs1Point.of(problem);
    cook = Rs1Point.cook(problem, point);
    cooks = at -> Rs1Point.cook(problem, at);
    ensemble = EnsembleSimulator.with(Settings.withDefaults().withCells(cells));
    points = new ParameterPoint[MEMBERS];
    members = new Cook[MEMBERS];
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < MEMBERS; i++) {
      ParameterPoint drawn = point;
      for (int p = 0; p < point.size(); p++) {
        ParameterPoint.Coordinate at = point.coordinate(p);
        double share = 0.1 * random.nextDouble() - 0.05;
        drawn = drawn.moved(p, at.value() + share * at.scale());
      }
      points[i] = drawn;
      members[i] = cooks.apply(drawn);
    }
  }

  /** Time of the last state [s]. */
  @Benchmark
  public double plain() {
    return simulator.run(cook).orElseThrow().endTime();
  }

  /** Derivative of the end of the roast by the first parameter. */
  @Benchmark
  public double sixParameters() {
    return simulator.sensitivities(point, cooks).stageEnd(0, 0);
  }

  /** Members in lanes, built beforehand. */
  @Benchmark
  public EnsembleResult plainMembers() {
    return ensemble.run(cook, MEMBERS, i -> members[i]);
  }

  /** The same with derivatives; 13 cooks are built for each. */
  @Benchmark
  public EnsembleSensitivities sixParametersOfMembers() {
    return ensemble.sensitivities(cook, MEMBERS, i -> points[i], cooks);
  }
}
