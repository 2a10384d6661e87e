package org.roastfield.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;
import org.roastfield.core.simulation.Simulator;

/**
 * The first cook in a new JVM, with the loading of the library's classes: one shot in each of many
 * forks.
 */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(12)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class ColdStartBenchmark {

  /** A new state. */
  public ColdStartBenchmark() {}

  /** Builds and computes C1. */
  @Benchmark
  public double firstCook() {
    return Simulator.withDefaults().run(Rs1.cook("C1", false)).orElseThrow().endTime();
  }
}
