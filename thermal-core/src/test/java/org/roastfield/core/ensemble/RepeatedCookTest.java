package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;

class RepeatedCookTest {

  private static final Settings SETTINGS = Settings.withDefaults();
  private static final int RUNS = 200;
  private static final int ATTEMPTS = 100;

  /** Less than the smallest object [bytes]. */
  private static final double ENOUGH = 16;

  @Test
  void aRun_givesTheBitsOfTheSimulator() {
    Cook cook = Draws.template();
    RepeatedCook repeated = RepeatedCook.of(SETTINGS, cook);
    repeated.run(Draws.member(1));
    assertEquals(MemberStatus.COMPLETED, repeated.run(cook));
    SimulationResult result = Simulator.with(SETTINGS).run(cook).orElseThrow();
    for (int i = 0; i < 3; i++) {
      StageResult stage = result.stages().get(i);
      assertEquals(stage.end(), repeated.stageEnd(i));
      assertEquals(stage.coreAtEnd(), repeated.coreAtEnd(i));
      assertEquals(stage.upperSurfaceAtEnd(), repeated.surfaceAtEnd(i));
    }
    assertEquals(result.water().evaporatedUpper(), repeated.evaporated());
  }

  @Test
  void aRun_allocatesNothing() {
    Cook cook = Draws.template();
    RepeatedCook repeated = RepeatedCook.of(SETTINGS, cook);
    double bytes = bytesPerRun(repeated, cook);
    assertTrue(bytes < ENOUGH, "bytes a run: " + bytes);
  }

  /**
   * Mean over runs after the just-in-time compiler has settled; the measurement itself allocates a
   * little.
   */
  private static double bytesPerRun(RepeatedCook repeated, Cook cook) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    double least = Double.POSITIVE_INFINITY;
    for (int attempt = 0; attempt < ATTEMPTS && !(least < ENOUGH); attempt++) {
      long before = threads.getThreadAllocatedBytes(thread);
      for (int i = 0; i < RUNS; i++) {
        repeated.run(cook);
      }
      long after = threads.getThreadAllocatedBytes(thread);
      least = Math.min(least, (double) (after - before) / RUNS);
    }
    return least;
  }

  @Test
  void aRunThatFails_leavesNoNumbersOfTheLast() {
    Cook cook = Draws.template();
    RepeatedCook repeated = RepeatedCook.of(SETTINGS, cook);
    repeated.run(cook);
    Cook never =
        Draws.cook(
            0.045,
            0.48,
            Stage.allRound(
                "gentle", new Draws.OwnLaw(15, 310, 0, 1), StageEnd.coreRisesTo(330, 20_000)));
    assertEquals(MemberStatus.END_RULE_NOT_MET, repeated.run(never));
    assertTrue(Double.isNaN(repeated.stageEnd(0)));
    assertTrue(Double.isNaN(repeated.coreAtEnd(2)));
    assertThrows(IllegalArgumentException.class, () -> repeated.stageEnd(3));
  }
}
