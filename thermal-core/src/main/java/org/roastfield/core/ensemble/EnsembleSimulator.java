package org.roastfield.core.ensemble;

import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.LaneIntegration;
import org.roastfield.core.integration.LaneMembers;
import org.roastfield.core.integration.MemberRecord;
import org.roastfield.core.integration.Standing;
import org.roastfield.core.integration.TangentRecord;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;

/**
 * Computes ensembles of cooks. Immutable; one simulator serves any number of threads.
 *
 * <p>Members with constant properties that are treated alike all round run side by side in lanes;
 * others one by one, with the same meaning of every number. A member that cannot be built or
 * computed is an outcome of its own. Memory: the numbers that {@link EnsembleResult} names, and
 * about half a megabyte for each worker.
 */
public final class EnsembleSimulator {

  /**
   * Members side by side in a worker: long enough rows for vector instructions, short enough for
   * the second-level cache.
   */
  private static final int LANES = 200;

  /** The same with derivatives, which need several times the memory. */
  private static final int DIFFERENTIATED_LANES = 64;

  private final Settings settings;
  private final double[] sampleTimes;
  private final Executor usual;
  private final int usualWorkers;

  private EnsembleSimulator(
      Settings settings, double[] sampleTimes, Executor usual, int usualWorkers) {
    this.settings = settings;
    this.sampleTimes = sampleTimes;
    this.usual = usual;
    this.usualWorkers = usualWorkers;
  }

  /** Simulator with the given settings, keeping no samples, in the calling thread. */
  public static EnsembleSimulator with(Settings settings) {
    return new EnsembleSimulator(settings, new double[0], Runnable::run, 1);
  }

  /**
   * The same for callers that know of no executor: what is run without one is run on this.
   *
   * @param executor runs the workers
   * @param workers how many share the members, at least 1
   */
  public EnsembleSimulator on(Executor executor, int workers) {
    Check.inRange("workers", workers, 1, Integer.MAX_VALUE);
    return new EnsembleSimulator(settings, sampleTimes, executor, workers);
  }

  /**
   * Runs a caller's own tasks beside each other on the executor that it runs on, and waits for
   * them.
   *
   * @param count how many
   * @param task called once for each number from 0 on, by several workers at once
   */
  public void forEach(int count, IntConsumer task) {
    AtomicInteger next = new AtomicInteger();
    Runnable work =
        () -> {
          for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
            task.accept(i);
          }
        };
    CompletableFuture<?>[] running = new CompletableFuture<?>[Math.min(count, usualWorkers)];
    Arrays.setAll(running, i -> CompletableFuture.runAsync(work, usual));
    CompletableFuture.allOf(running).join();
  }

  /**
   * The same, keeping each member's core at given times.
   *
   * @param times since the start of the cook [s], not negative, increasing; not modified
   */
  public EnsembleSimulator withSampleTimes(double... times) {
    for (int i = 0; i < times.length; i++) {
      Check.notNegative("times[" + i + "]", times[i]);
      if (i > 0 && !(times[i] > times[i - 1])) {
        throw new IllegalArgumentException(
            "times must increase, but times[" + i + "] = " + times[i] + " follows " + times[i - 1]);
      }
    }
    return new EnsembleSimulator(settings, times.clone(), usual, usualWorkers);
  }

  /**
   * Computes an ensemble in the calling thread, or {@link #on} another, and waits for it.
   *
   * @param template defines the grid over relative depth and the number of stages; usually the cook
   *     at the middle of the draws
   * @param members how many, at least 1
   * @param cook builds the cook of a member; a runtime exception of argument or state makes it
   *     {@link MemberStatus#NOT_BUILT}
   */
  public EnsembleResult run(Cook template, int members, IntFunction<Cook> cook) {
    return run(template, members, cook, usual, usualWorkers, new Cancellation());
  }

  /**
   * Computes an ensemble on the caller's executor, and waits for it.
   *
   * @param template defines the grid over relative depth and the number of stages
   * @param members how many, at least 1
   * @param cook builds the cook of a member; called by several workers at once
   * @param executor runs the workers
   * @param workers how many share the members, at least 1
   * @param cancellation stops the run; members not finished by then are {@link
   *     MemberStatus#NOT_RUN}
   */
  public EnsembleResult run(
      Cook template,
      int members,
      IntFunction<Cook> cook,
      Executor executor,
      int workers,
      Cancellation cancellation) {
    MemberRecord record = record(template, members);
    MemberQueue queue = new MemberQueue(members, template.stages().size(), cook, cancellation);
    compute(template, members, queue, record, null, executor, workers);
    return new EnsembleResult(members, record, sampleTimes.length, queue.notBuilt);
  }

  /**
   * Computes members to the end of the first stages that other cooks have in common with them, in
   * the calling thread or {@link #on} another.
   *
   * @param template defines the grid over relative depth and the number of stages
   * @param members how many, at least 1
   * @param cook builds the cook of a member, of these stages only, see {@link #run}
   */
  public BegunEnsemble begin(Cook template, int members, IntFunction<Cook> cook) {
    GoingOnQueue queue =
        new GoingOnQueue(members, template.stages().size(), cook, member -> null, true);
    EnsembleResult result = goOn(template, members, queue);
    return new BegunEnsemble(this, template, result, queue.ends);
  }

  EnsembleResult goOn(
      Cook template, int members, IntFunction<Cook> cook, IntFunction<@Nullable Standing> from) {
    return goOn(
        template, members, new GoingOnQueue(members, template.stages().size(), cook, from, false));
  }

  private EnsembleResult goOn(Cook template, int members, GoingOnQueue queue) {
    MemberRecord record = record(template, members);
    compute(template, members, queue, record, null, usual, usualWorkers);
    return new EnsembleResult(members, record, sampleTimes.length, queue.notBuilt);
  }

  /**
   * Computes an ensemble and the derivatives of each member by its parameters, in the calling
   * thread or {@link #on} another.
   *
   * @param template defines the grid over relative depth and the number of stages
   * @param members how many, at least 1
   * @param points parameters of a member; as many in all of them
   * @param cooks builds the cook at a point, see {@link
   *     org.roastfield.core.simulation.Simulator#sensitivities}
   */
  public EnsembleSensitivities sensitivities(
      Cook template,
      int members,
      IntFunction<ParameterPoint> points,
      Function<ParameterPoint, Cook> cooks) {
    return sensitivities(template, members, points, cooks, usual, usualWorkers, new Cancellation());
  }

  /**
   * The same on the caller's executor, and waits for it.
   *
   * <p>Members are computed as by {@link #run}, bit for bit; their derivatives ride along in the
   * lanes. With six parameters a member costs about two thirds of what the single cook's driver
   * takes with them: eleven plain members, or 2.7 plain cooks. A member whose cook has no
   * derivatives is {@link MemberStatus#NOT_BUILT}, with the reason as its message.
   */
  public EnsembleSensitivities sensitivities(
      Cook template,
      int members,
      IntFunction<ParameterPoint> points,
      Function<ParameterPoint, Cook> cooks,
      Executor executor,
      int workers,
      Cancellation cancellation) {
    return ofEach(template, members, points, member -> cooks, executor, workers, cancellation);
  }

  /**
   * The same where each member has a way of its own from its point to its cook, in the calling
   * thread or {@link #on} another.
   *
   * @param cooks what builds the cook of a member at a point
   */
  public EnsembleSensitivities sensitivitiesOfEach(
      Cook template,
      int members,
      IntFunction<ParameterPoint> points,
      IntFunction<Function<ParameterPoint, Cook>> cooks) {
    return ofEach(template, members, points, cooks, usual, usualWorkers, new Cancellation());
  }

  private EnsembleSensitivities ofEach(
      Cook template,
      int members,
      IntFunction<ParameterPoint> points,
      IntFunction<Function<ParameterPoint, Cook>> cooks,
      Executor executor,
      int workers,
      Cancellation cancellation) {
    Check.inRange("members", members, 1, Integer.MAX_VALUE);
    int parameters = points.apply(0).size();
    MemberRecord record = record(template, members);
    TangentRecord tangents = new TangentRecord(record, members, parameters);
    VariedQueue queue =
        new VariedQueue(members, template.stages().size(), points, cooks, parameters, cancellation);
    compute(template, members, queue, record, tangents, executor, workers);
    return new EnsembleSensitivities(
        new EnsembleResult(members, record, sampleTimes.length, queue.notBuilt),
        tangents,
        sampleTimes.length);
  }

  /**
   * Computes an ensemble with the whole result of each member at hand, and keeps what is read of
   * it: for outcomes that lanes do not record, which need the temperature of every place over time.
   * Members run one by one on the caller's executor, each as {@link
   * org.roastfield.core.simulation.Simulator} runs it alone, so that company, order and workers
   * change nothing; sample times are not used. It waits for them.
   *
   * @param members how many, at least 1
   * @param cook builds the cook of a member, see {@link #run}; called by several workers at once
   * @param reading of a completed member; called by several workers at once
   * @param executor runs the workers
   * @param workers how many share the members, at least 1
   * @param cancellation stops the run; members not begun by then are {@link MemberStatus#NOT_RUN}
   */
  public <T> EnsembleReadings<T> read(
      int members,
      IntFunction<Cook> cook,
      Function<SimulationResult, T> reading,
      Executor executor,
      int workers,
      Cancellation cancellation) {
    return readEach(
        members, cook, (member, result) -> reading.apply(result), executor, workers, cancellation);
  }

  /** The same by a reading that is told which member it is of. */
  public <T> EnsembleReadings<T> readEach(
      int members,
      IntFunction<Cook> cook,
      BiFunction<Integer, SimulationResult, T> reading,
      Executor executor,
      int workers,
      Cancellation cancellation) {
    Check.inRange("members", members, 1, Integer.MAX_VALUE);
    Check.inRange("workers", workers, 1, Integer.MAX_VALUE);
    return new MemberReader<>(Simulator.with(settings), members, cook, reading, cancellation)
        .readings(executor, workers);
  }

  private MemberRecord record(Cook template, int members) {
    Check.inRange("members", members, 1, Integer.MAX_VALUE);
    return new MemberRecord(members, template.stages().size(), sampleTimes);
  }

  private void compute(
      Cook template,
      int members,
      LaneMembers queue,
      MemberRecord record,
      @Nullable TangentRecord tangents,
      Executor executor,
      int workers) {
    Check.inRange("workers", workers, 1, Integer.MAX_VALUE);
    int width = Math.min(tangents == null ? LANES : DIFFERENTIATED_LANES, members);
    CompletableFuture<?>[] running = new CompletableFuture<?>[workers];
    for (int i = 0; i < workers; i++) {
      running[i] =
          CompletableFuture.runAsync(
              () -> new LaneIntegration(template, accuracy(), width, tangents).run(queue, record),
              executor);
    }
    CompletableFuture.allOf(running).join();
  }

  private CookIntegration.Accuracy accuracy() {
    return new CookIntegration.Accuracy(
        settings.accuracy(), settings.cells(), settings.surfaceCell(), settings.mostSteps());
  }
}
