package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/**
 * What company brings: eight lanes work in rows, which become vector instructions, and one works
 * alone in rows of one. By thread CPU time, the least of many windows, so that other work on the
 * machine does not count.
 */
class LaneSpeedTest {

  private static final int LANES = 8;

  /** Seen: 0.26; the kernels one lane at a time would give 1. */
  private static final double SHARE = 0.5;

  private static final int WINDOWS = 30;
  private static final int COOKS_IN_A_WINDOW = 40;

  @Test
  void eightLanes_takeLessThanHalfOfOne_aCook() {
    double alone = Double.POSITIVE_INFINITY;
    double together = Double.POSITIVE_INFINITY;
    for (int i = 0; i < WINDOWS; i++) {
      alone = Math.min(alone, perCook(1));
      together = Math.min(together, perCook(LANES));
    }
    double share = together / alone;
    assertTrue(share <= SHARE, () -> "of the time alone " + share);
  }

  /** CPU time of a cook among so many [ns]. */
  private static double perCook(int members) {
    EnsembleSimulator simulator = EnsembleSimulator.with(Settings.withDefaults());
    int ensembles = COOKS_IN_A_WINDOW / members;
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    for (int i = 0; i < ensembles; i++) {
      simulator.run(COOKS.get(0), members, COOKS::get);
    }
    long after = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    return (double) (after - before) / (ensembles * members);
  }

  private static final List<Cook> COOKS =
      IntStream.range(0, LANES).mapToObj(i -> cook(0.03 + 0.0005 * i)).toList();

  private static Cook cook(double radius) {
    SurfaceLaw pit = chamber(115).around(8, 0.9, 0.3, 0.98);
    SurfaceLaw fire = chamber(230).around(25, 0.9, 0, 1);
    SurfaceLaw room = chamber(22).around(6, 0.9, 0, 1);
    return Cook.of(
        new Cut(Cylinder.ofRadius(radius), SampleCooks.CONSTANT, Temperatures.celsius(8)),
        Stage.allRound("gentle", pit, StageEnd.coreRisesTo(Temperatures.celsius(50), 40_000)),
        Stage.allRound("sear", fire, StageEnd.after(180)),
        Stage.allRound("rest", room, StageEnd.after(900)));
  }

  private static Chamber chamber(double celsius) {
    return Chamber.steady(Temperatures.celsius(celsius), 0.01, MoistAir.STANDARD_PRESSURE);
  }
}
