package org.roastfield.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.ensemble.RepeatedCook;
import org.roastfield.core.simulation.Settings;

/** What detail costs: the boathouse pork loin in full against RS-1, both with default settings. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 8, time = 300, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 60, time = 50, timeUnit = TimeUnit.MILLISECONDS)
public class DetailBenchmark {

  private final Cook plain = Rs1.cook("C1");
  private final Cook full = Boathouse.porkLoin();
  private final RepeatedCook plainly = RepeatedCook.of(Settings.withDefaults(), plain);
  private final RepeatedCook fully = RepeatedCook.of(Settings.withDefaults(), full);

  /** A new state. */
  public DetailBenchmark() {}

  /** RS-1, case C1. */
  @Benchmark
  public MemberStatus modelProblem() {
    return plainly.run(plain);
  }

  /** The pork loin in full. */
  @Benchmark
  public MemberStatus porkLoin() {
    return fully.run(full);
  }
}
