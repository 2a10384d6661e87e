package org.roastfield.core.ensemble;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;

/** Computes members one by one with their whole results, and keeps what is read of them. */
final class MemberReader<T> {

  private final Simulator simulator;
  private final IntFunction<Cook> cooks;
  private final BiFunction<Integer, SimulationResult, T> reading;
  private final Cancellation cancellation;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicReferenceArray<EnsembleReadings.Member<T>> members;

  MemberReader(
      Simulator simulator,
      int members,
      IntFunction<Cook> cooks,
      BiFunction<Integer, SimulationResult, T> reading,
      Cancellation cancellation) {
    this.simulator = simulator;
    this.members = new AtomicReferenceArray<>(members);
    this.cooks = cooks;
    this.reading = reading;
    this.cancellation = cancellation;
  }

  EnsembleReadings<T> readings(Executor executor, int workers) {
    CompletableFuture<?>[] running = new CompletableFuture<?>[workers];
    Arrays.setAll(running, i -> CompletableFuture.runAsync(this::work, executor));
    CompletableFuture.allOf(running).join();
    List<EnsembleReadings.Member<T>> all =
        IntStream.range(0, members.length()).mapToObj(this::memberOrNotRun).toList();
    return new EnsembleReadings<>(all);
  }

  private EnsembleReadings.Member<T> memberOrNotRun(int i) {
    EnsembleReadings.Member<T> member = members.get(i);
    return member == null
        ? new EnsembleReadings.Member<>(MemberStatus.NOT_RUN, null, "cancelled before its turn")
        : member;
  }

  private void work() {
    int member = next.getAndIncrement();
    while (member < members.length() && !cancellation.isCancelled()) {
      members.set(member, computed(member));
      member = next.getAndIncrement();
    }
  }

  private EnsembleReadings.Member<T> computed(int member) {
    Cook cook;
    try {
      cook = cooks.apply(member);
    } catch (IllegalArgumentException | IllegalStateException e) {
      return new EnsembleReadings.Member<>(
          MemberStatus.NOT_BUILT, null, String.valueOf(e.getMessage()));
    }
    Outcome outcome = simulator.run(cook);
    if (outcome instanceof Outcome.Failed failed) {
      MemberStatus status = MemberStatus.valueOf(failed.reason().name());
      return new EnsembleReadings.Member<>(status, null, failed.message());
    }
    T read = reading.apply(member, outcome.orElseThrow());
    return new EnsembleReadings.Member<>(MemberStatus.COMPLETED, read, "");
  }
}
