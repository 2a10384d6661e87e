package org.roastfield.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.roastfield.core.cook.Probe;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.plan.CookerBelief;
import org.roastfield.lab.plan.PlanAsk;
import org.roastfield.lab.plan.PlanMaker;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * The whole plan of the boathouse supper from its file, with sears, what-ifs and chances, on two
 * workers and at most 300 MB: what the {@code plan} command does between reading and writing. Run
 * from the root of the checkout.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx300m")
@Warmup(iterations = 6, time = 4)
@Measurement(iterations = 8, time = 4)
public class PlanBenchmark {

  private static final Path COOK = Path.of("datasets/cooks/boathouse-pork-loin/cook.yaml");
  private static final int WORKERS = 2;

  /** Cooks that are drawn. */
  @Param("2000")
  public int members;

  private final CookFile file = read();
  private final ExecutorService executor = Executors.newFixedThreadPool(WORKERS);

  /** A new state; JMH fills the parameter. */
  public PlanBenchmark() {}

  private static CookFile read() {
    try {
      return CookFileReader.read(COOK);
    } catch (IOException e) {
      throw new UncheckedIOException("run from the root of the checkout", e);
    }
  }

  /** Ends the workers. */
  @TearDown
  public void stop() {
    executor.shutdown();
  }

  /** One plan. */
  @Benchmark
  public PlanSheet plan() {
    VariedCook cook = VariedCook.planned(file, Probe.CORE);
    return PlanMaker.sheet(cook, CookerBelief.population(cook), ask(), executor, WORKERS);
  }

  private PlanAsk ask() {
    return new PlanAsk(
        Optional.empty(),
        Optional.empty(),
        zero -> OptionalDouble.empty(),
        Probe.CORE,
        members,
        1,
        true,
        false,
        TemperatureScale.CELSIUS);
  }
}
