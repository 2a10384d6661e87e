package org.roastfield.bench;

import java.util.SplittableRandom;
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
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.CookModel;
import org.roastfield.core.inference.ImportanceSampler;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.WeightedDraws;

/**
 * Seven numbers learned from {@link LongLog}: the most probable ones, and 600 draws around them.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx256m")
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 10, time = 1)
public class CalibrationBenchmark {

  /** Whether the face dries. */
  @Param({"false", "true"})
  public boolean dries;

  private Calibration calibration = of(LongLog.model(false));
  private MapEstimate estimate = calibration.map();

  /** A new state; JMH fills the parameter. */
  public CalibrationBenchmark() {}

  /** Makes up the log. */
  @Setup
  public void build() {
    calibration = of(LongLog.model(dries));
    estimate = calibration.map();
  }

  private static Calibration of(CookModel model) {
    return Calibration.of(Prior.of(model.parameters()), model.evidence(), model);
  }

  /** One search from the prior's mean. */
  @Benchmark
  public MapEstimate map() {
    return calibration.map();
  }

  /** 600 importance draws. */
  @Benchmark
  public WeightedDraws draws() {
    return ImportanceSampler.standard()
        .sample(estimate, calibration.density(estimate), new SplittableRandom(1));
  }
}
