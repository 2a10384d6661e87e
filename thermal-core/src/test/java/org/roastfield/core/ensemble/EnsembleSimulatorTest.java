package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

class EnsembleSimulatorTest {

  private static final Settings SETTINGS = Settings.withDefaults().withCells(16);
  private static final int REST = 2;

  private static EnsembleResult run(int members, IntFunction<Cook> cook) {
    return EnsembleSimulator.with(SETTINGS).run(Draws.template(), members, cook);
  }

  private static void assertSameMember(EnsembleResult a, int i, EnsembleResult b, int j) {
    assertEquals(a.status(i), b.status(j));
    for (int stage = 0; stage <= REST; stage++) {
      assertEquals(a.stageEnd(i, stage), b.stageEnd(j, stage));
      assertEquals(a.coreAtEnd(i, stage), b.coreAtEnd(j, stage));
      assertEquals(a.surfaceAtEnd(i, stage), b.surfaceAtEnd(j, stage));
      assertEquals(a.corePeak(i, stage), b.corePeak(j, stage));
      assertEquals(a.corePeakTime(i, stage), b.corePeakTime(j, stage));
    }
    assertEquals(a.evaporated(i), b.evaporated(j));
    assertEquals(a.acceptedSteps(i), b.acceptedSteps(j));
    assertEquals(a.rejectedSteps(i), b.rejectedSteps(j));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 64, 127, 128, 129, 300})
  void aMember_isTheSameToTheBit_inABatchOfAnySize(int size) {
    EnsembleResult batch = run(size, Draws::member);
    assertEquals(size, batch.completed());
    for (int i = 0; i < size; i += 1 + size / 7) {
      int member = i;
      assertSameMember(batch, i, run(1, ignored -> Draws.member(member)), 0);
    }
  }

  @Test
  void aMember_isTheSameToTheBit_inAnyOrder() {
    int size = 300;
    EnsembleResult forward = run(size, Draws::member);
    EnsembleResult backward = run(size, i -> Draws.member(size - 1 - i));
    for (int i = 0; i < size; i++) {
      assertSameMember(forward, i, backward, size - 1 - i);
    }
  }

  @Test
  void aMember_isTheSameToTheBit_amongOtherLaws() {
    EnsembleResult alone = run(1, i -> Draws.member(3));
    EnsembleResult mixed =
        run(200, i -> i == 77 ? Draws.member(3) : own(388 + 0.1 * i, i % 2 == 0 ? 0 : 5));
    assertSameMember(alone, 0, mixed, 77);
    EnsembleResult ownAlone = run(1, i -> own(388 + 0.1 * 12, 0));
    assertSameMember(ownAlone, 0, mixed, 12);
    EnsembleResult ownAmongBuiltIn =
        run(200, i -> i == 5 ? own(388 + 0.1 * 12, 0) : Draws.member(i));
    assertSameMember(ownAlone, 0, ownAmongBuiltIn, 5);
  }

  private static Cook own(double air, double amplitude) {
    SurfaceLaw law = new Draws.OwnLaw(15, air, amplitude, 1500);
    return Draws.cook(
        0.045,
        0.48,
        Stage.allRound("gentle", law, StageEnd.coreRisesTo(Temperatures.celsius(50), 40_000)),
        Stage.allRound("sear", new Draws.OwnLaw(200, 500, 0, 1), StageEnd.after(120)),
        Stage.allRound("rest", new Draws.OwnLaw(9, 295, 0, 1), StageEnd.after(1800)));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7})
  void aMember_isTheSameToTheBit_onAnyNumberOfWorkers(int workers) {
    EnsembleResult one = run(500, Draws::member);
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    try {
      EnsembleResult many =
          EnsembleSimulator.with(SETTINGS)
              .run(Draws.template(), 500, Draws::member, executor, workers, new Cancellation());
      for (int i = 0; i < 500; i++) {
        assertSameMember(one, i, many, i);
      }
    } finally {
      executor.shutdown();
    }
  }

  /** Both drivers take the same steps; they differ in the order of operations only. */
  @Test
  void lanes_agreeWithTheSingleCook() {
    Settings tight = SETTINGS.withAccuracy(1e-6);
    EnsembleResult lanes =
        EnsembleSimulator.with(tight).run(Draws.template(), 1, i -> Draws.template());
    SimulationResult single = Simulator.with(tight).run(Draws.template()).orElseThrow();
    assertEquals(single.work().acceptedSteps(), lanes.acceptedSteps(0));
    for (int stage = 0; stage <= REST; stage++) {
      StageResult expected = single.stages().get(stage);
      assertEquals(expected.coreAtEnd(), lanes.coreAtEnd(0, stage), 1e-9);
      assertEquals(expected.upperSurfaceAtEnd(), lanes.surfaceAtEnd(0, stage), 1e-9);
      assertEquals(expected.end(), lanes.stageEnd(0, stage), 1e-6);
    }
    assertEquals(single.water().evaporatedUpper(), lanes.evaporated(0), 1e-9);
    assertEquals(
        single.corePeak(single.stage("rest")).temperature(), lanes.corePeak(0, REST), 1e-6);
  }

  @Test
  void aFailedMember_isAnOutcomeAndHarmsNobody() {
    EnsembleResult healthy = run(40, Draws::member);
    EnsembleResult mixed =
        run(
            40,
            i ->
                switch (i) {
                  case 3 -> throw new IllegalArgumentException("radius must be positive");
                  case 4 -> throw new NullPointerException();
                  case 5 -> unreachable();
                  case 6 -> nonsense();
                  default -> Draws.member(i);
                });
    assertEquals(MemberStatus.NOT_BUILT, mixed.status(3));
    assertEquals("radius must be positive", mixed.message(3));
    assertEquals(MemberStatus.NOT_BUILT, mixed.status(4));
    assertEquals(MemberStatus.END_RULE_NOT_MET, mixed.status(5));
    assertEquals(0, mixed.lastStage(5));
    assertEquals(MemberStatus.FACE_UNBALANCED, mixed.status(6));
    assertEquals(36, mixed.completed());
    for (int i = 7; i < 40; i++) {
      assertSameMember(healthy, i, mixed, i);
    }
  }

  private static Cook unreachable() {
    return Draws.cook(
        0.045,
        0.48,
        Stage.allRound(
            "gentle",
            new Draws.OwnLaw(15, 310, 0, 1),
            StageEnd.coreRisesTo(Temperatures.celsius(50), 40_000)));
  }

  private static Cook nonsense() {
    return Draws.cook(
        0.045,
        0.48,
        Stage.allRound(
            "gentle", (t, time, flux) -> flux.addHeat(Double.NaN, -1), StageEnd.after(60)));
  }

  /** A period of 6 s makes a lane take more than a hundred times the steps of its neighbours. */
  @Test
  void aSlowLane_doesNotChangeOrHoldUpTheOthers() {
    EnsembleResult healthy = run(64, Draws::member);
    EnsembleResult mixed = run(64, i -> i == 0 ? own6() : Draws.member(i));
    assertEquals(MemberStatus.COMPLETED, mixed.status(0));
    int slow = mixed.acceptedSteps(0);
    assertTrue(slow > 100 * mixed.acceptedSteps(1) / 2, () -> "slow lane took " + slow);
    for (int i = 1; i < 64; i++) {
      assertSameMember(healthy, i, mixed, i);
    }
  }

  private static Cook own6() {
    return Draws.cook(
        0.045,
        0.48,
        Stage.allRound(
            "gentle",
            new Draws.OwnLaw(15, 388, 5, 6),
            StageEnd.coreRisesTo(Temperatures.celsius(50), 40_000)));
  }

  /**
   * Steps bounded by a quarter period see every swing, however loose the accuracy; a law that hides
   * its period is stepped over.
   */
  @Test
  void aFluctuatingChamber_isNotSteppedOver() {
    SurfaceLaw open = new Draws.OwnLaw(15, 388, 20, 200);
    SurfaceLaw hidden = (t, time, flux) -> open.evaluate(t, time, flux);
    double exact = pull(open, 1e-4);
    assertEquals(exact, pull(open, 0.2), 1);
    double missed = Math.abs(pull(hidden, 0.2) - exact);
    assertTrue(missed > 10, () -> "missed by " + missed);
  }

  private static double pull(SurfaceLaw law, double accuracy) {
    StageEnd end = StageEnd.coreRisesTo(Temperatures.celsius(50), 40_000);
    Cook cook = Draws.cook(0.045, 0.48, Stage.allRound("gentle", law, end));
    return EnsembleSimulator.with(SETTINGS.withAccuracy(accuracy))
        .run(cook, 1, i -> cook)
        .stageEnd(0, 0);
  }

  @Test
  void membersThatLanesDoNotServe_areComputedOneByOne() {
    Cook loin = withLoin(Draws.template());
    EnsembleResult mixed = run(3, i -> i == 1 ? loin : Draws.member(i));
    Outcome outcome = Simulator.with(SETTINGS).run(loin);
    SimulationResult single = outcome.orElseThrow();
    assertEquals(MemberStatus.COMPLETED, mixed.status(1));
    assertEquals(single.stage("gentle").end(), mixed.stageEnd(1, 0));
    assertEquals(single.stage("rest").coreAtEnd(), mixed.coreAtEnd(1, REST));
    assertSameMember(run(3, Draws::member), 2, mixed, 2);
  }

  @Test
  void membersThatLanesDoNotServe_areTheSameToTheBitInAnyOrder() {
    IntFunction<Cook> loin = i -> withLoin(Draws.member(i));
    EnsembleResult forward = run(6, loin);
    EnsembleResult backward = run(6, i -> loin.apply(5 - i));
    for (int i = 0; i < 6; i++) {
      assertSameMember(forward, i, backward, 5 - i);
    }
  }

  /**
   * A rest that is wet after a dry sear starts next to boiling, where the law's slope has no bound.
   */
  @Test
  void waterOfAWetRestAfterADrySear_doesNotDependOnTheAccuracy() {
    double coarse = run(1, i -> Draws.template()).evaporated(0);
    double fine =
        EnsembleSimulator.with(SETTINGS.withAccuracy(1e-5))
            .run(Draws.template(), 1, i -> Draws.template())
            .evaporated(0);
    assertEquals(fine, coarse, 1e-3);
  }

  private static Cook withLoin(Cook cook) {
    Cut cut =
        new Cut(
            cook.cut().shape(),
            ChoiOkos.material("loin", Composition.ofMeat(0.722, 0.214, 0.057, 0.0105)),
            cook.cut().startTemperature());
    return new Cook(cut, cook.stages(), List.of());
  }

  @Test
  void cancellation_leavesTheRestNotRun() {
    Cancellation cancellation = new Cancellation();
    EnsembleResult result =
        EnsembleSimulator.with(SETTINGS)
            .run(
                Draws.template(),
                5000,
                i -> {
                  if (i == 1000) {
                    cancellation.cancel();
                  }
                  return Draws.member(i);
                },
                Runnable::run,
                1,
                cancellation);
    assertTrue(cancellation.isCancelled());
    assertTrue(result.completed() < 1001);
    assertTrue(result.completed() > 0);
    assertEquals(MemberStatus.NOT_RUN, result.status(4999));
    assertTrue(Double.isNaN(result.stageEnd(4999, 0)));
  }

  @Test
  void samples_followTheTraceOfTheSingleCook() {
    double[] times = {0, 60, 3600, 7200, 1e6};
    EnsembleResult result =
        EnsembleSimulator.with(SETTINGS)
            .withSampleTimes(times)
            .run(Draws.template(), 2, i -> Draws.template());
    SimulationResult single = Simulator.with(SETTINGS).run(Draws.template()).orElseThrow();
    assertEquals(Draws.template().cut().startTemperature(), result.coreAt(0, 0), 1e-12);
    for (int i = 1; i < 4; i++) {
      assertEquals(single.core().at(times[i]), result.coreAt(1, i), 1e-5);
    }
    assertTrue(Double.isNaN(result.coreAt(0, 4)));
    assertEquals(0, result.coresAt(4).size());
    assertThrows(IllegalStateException.class, () -> result.coresAt(4).median());
  }

  @Test
  void distributions_countTheMembersThatGotThere() {
    EnsembleResult result = run(101, i -> i == 0 ? unreachable() : Draws.member(i));
    Distribution pull = result.stageEnds(0);
    assertEquals(100, pull.size());
    assertTrue(pull.quantile(0.1) < pull.median() && pull.median() < pull.quantile(0.9));
    assertEquals(1, pull.shareUpTo(pull.quantile(1)));
    assertFalse(pull.shareUpTo(pull.quantile(0) - 1) > 0);
    assertEquals(100, result.corePeaks(REST).size());
    assertEquals(100, result.coresAtEnd(REST).size());
  }

  /** Each number once, and all of them done when it returns. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void ownTasks_areRunOnceEach_onAnyNumberOfWorkers(int workers) {
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    try {
      AtomicIntegerArray calls = new AtomicIntegerArray(100);
      EnsembleSimulator own = EnsembleSimulator.with(SETTINGS).on(executor, workers);
      own.forEach(calls.length(), calls::incrementAndGet);
      for (int i = 0; i < calls.length(); i++) {
        assertEquals(1, calls.get(i));
      }
      own.forEach(0, i -> calls.incrementAndGet(i));
      assertEquals(1, calls.get(0));
    } finally {
      executor.shutdown();
    }
  }
}
