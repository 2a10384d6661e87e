package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;

class RepeatedCookTest {

  private static final Settings SETTINGS = Settings.withDefaults();
  private static final int RUNS = 200;
  private static final int ATTEMPTS = 100;

  /** Less than the smallest object [bytes]. */
  private static final double ENOUGH = 16;

  /** Two faces with new laws in each of five stages, two of them with metal [bytes]. */
  private static final double LAWS_OF_STAGES = 2500;

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
    double bytes = bytesPerRun(repeated, cook, ENOUGH);
    assertTrue(bytes < ENOUGH, "bytes a run: " + bytes);
  }

  @Test
  void aRunOfFacesThatRemember_allocatesNothing() {
    Cook cook = drying(SurfaceLaw.insulated());
    RepeatedCook repeated = RepeatedCook.of(SETTINGS, cook);
    double bytes = bytesPerRun(repeated, cook, ENOUGH);
    assertEquals(MemberStatus.COMPLETED, repeated.run(cook));
    assertTrue(bytes < ENOUGH, "bytes a run: " + bytes);
  }

  /** Contact is set to the beginning of each stage by new laws; hundreds of steps add nothing. */
  @Test
  void aRunOfTouch_allocatesForItsStagesOnly() {
    Cook cook = drying(Touch.ofPlate(Signal.constant(520)));
    RepeatedCook fine = RepeatedCook.of(SETTINGS.withAccuracy(1e-4), cook);
    double bytes = bytesPerRun(fine, cook, LAWS_OF_STAGES);
    assertEquals(MemberStatus.COMPLETED, fine.run(cook));
    long steps =
        Simulator.with(SETTINGS.withAccuracy(1e-4)).run(cook).orElseThrow().work().acceptedSteps();
    assertTrue(bytes < LAWS_OF_STAGES, "bytes a run: " + bytes);
    assertTrue(steps * ENOUGH > LAWS_OF_STAGES, "steps: " + steps);
  }

  /** Gentle heat, two turns over hot metal or none, and a rest, of a face that dries. */
  private static Cook drying(SurfaceLaw metal) {
    SurfaceLaw pit = drying(390, 8, SurfaceLaw.insulated());
    SurfaceLaw hot = drying(450, 8, metal);
    return Draws.cook(
        0.03,
        0.48,
        Stage.allRound("gentle", pit, StageEnd.coreRisesTo(310, 20_000)),
        Stage.allRound("on", hot, StageEnd.after(90)),
        Stage.allRound("off", pit, StageEnd.after(90)),
        Stage.allRound("on again", hot, StageEnd.after(90)),
        Stage.allRound("rest", drying(295, 5, SurfaceLaw.insulated()), StageEnd.after(900)));
  }

  private static SurfaceLaw drying(double air, double h, SurfaceLaw metal) {
    Chamber chamber = Chamber.steady(air, 0.02, MoistAir.STANDARD_PRESSURE);
    return DryingFace.ofMeat(
        SurfaceLaw.sum(chamber.around(h, 0.9, 0, 1), metal),
        Evaporation.of(1, h, 0.98, chamber.vapourPressure(), chamber.pressure()),
        1,
        chamber.pressure());
  }

  /**
   * Mean over runs after the just-in-time compiler has settled; the measurement itself allocates a
   * little.
   */
  private static double bytesPerRun(RepeatedCook repeated, Cook cook, double enough) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    double least = Double.POSITIVE_INFINITY;
    for (int attempt = 0; attempt < ATTEMPTS && !(least < enough); attempt++) {
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
