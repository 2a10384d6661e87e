package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.integration.FrozenPlan;

/** Derivatives of RS-1 by six parameters against differences on its frozen step plan. */
class SensitivityTest {

  private static final double TRACE_ALLOWED = 1e-5;
  private static final double EVENT_ALLOWED = 1e-4;

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void traces_agreeWithDifferences(String name) {
    FrozenDifferences differences = differences(name);
    Sensitivities s = differences.sensitivities();
    for (int p = 0; p < s.point().size(); p++) {
      String what = name + " " + s.point().coordinate(p).name();
      assertEquals(0, differences.error(p, s.core(), Probe.CORE), TRACE_ALLOWED, what);
      assertEquals(0, differences.error(p, s.upperSurface(), Probe.SURFACE), TRACE_ALLOWED, what);
      SensitivityTrace middle = s.probe(Rs1Point.MIDDLE);
      assertEquals(0, differences.error(p, middle, Rs1Point.MIDDLE), TRACE_ALLOWED, what);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void stageEndsAndWater_agreeWithDifferences(String name) {
    FrozenDifferences differences = differences(name);
    Sensitivities s = differences.sensitivities();
    for (int p = 0; p < s.point().size(); p++) {
      String what = name + " " + s.point().coordinate(p).name();
      for (int i = 0; i < s.result().stages().size(); i++) {
        int stage = i;
        String where = what + ", stage " + stage;
        double end = differences.error(p, s.stageEnd(stage, p), r -> r.end(stage));
        assertEquals(0, end, EVENT_ALLOWED, where);
        double surface = s.upperSurfaceAtEnd(stage, p);
        assertEquals(0, differences.error(p, surface, r -> r.surface(stage)), TRACE_ALLOWED, where);
      }
      int last = s.result().stages().size() - 1;
      double core = differences.error(p, s.coreAtEnd(last, p), r -> r.core(last));
      assertEquals(0, core, TRACE_ALLOWED, what);
      double water = differences.error(p, s.evaporatedUpper(p), FrozenPlan.Replay::evaporated);
      assertEquals(0, water, TRACE_ALLOWED, what);
    }
  }

  @Test
  void coreAtTheEndOfTheRoast_staysAtItsTarget() {
    Sensitivities s = differences("C1").sensitivities();
    for (int p = 0; p < s.point().size(); p++) {
      double unit = s.point().coordinate(p).scale();
      assertEquals(0, unit * s.coreAtEnd(0, p), 1e-8);
    }
  }

  @Test
  void parameterOfALaterStage_changesNothingBefore() {
    Sensitivities s = differences("C1").sensitivities();
    int contact = s.point().index("contact");
    assertEquals(0, s.stageEnd(0, contact));
    assertEquals(0, s.core().at(contact, s.result().stages().get(0).end()));
    assertTrue(s.upperSurface().at(contact, s.result().stages().get(1).end()) > 0);
  }

  @Test
  void peakInsideTheRest_movesWithTheParameters() {
    FrozenDifferences differences = differences("S1");
    Sensitivities s = differences.sensitivities();
    int rest = s.result().stages().size() - 1;
    assertTrue(s.result().corePeak(s.result().stages().get(rest)).interior());
    for (int p = 0; p < s.point().size(); p++) {
      PeakSensitivity peak = s.corePeak(rest, p);
      String what = s.point().coordinate(p).name();
      double height = differences.error(p, peak.temperature(), r -> peak(r, rest).temperature());
      assertEquals(0, height, TRACE_ALLOWED, what);
      double time = differences.error(p, peak.time(), r -> peakTime(r, rest));
      assertEquals(0, time, EVENT_ALLOWED, what);
    }
  }

  @Test
  void peakAtTheEndOfTheRest_isThatOfTheEnd() {
    Sensitivities s = differences("C1").sensitivities();
    int rest = s.result().stages().size() - 1;
    for (int p = 0; p < s.point().size(); p++) {
      PeakSensitivity peak = s.corePeak(rest, p);
      assertEquals(s.stageEnd(rest, p), peak.time());
      assertEquals(s.coreAtEnd(rest, p), peak.temperature());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void result_isThatWithoutDerivativesBitForBit(String name) {
    Rs1Point rs1 = Rs1Point.of(name);
    Cook cook = rs1.cook(rs1.point());
    SimulationResult plain = Simulator.withDefaults().run(cook).orElseThrow();
    SimulationResult carried =
        Simulator.withDefaults().sensitivities(rs1.point(), rs1::cook).result();
    assertEquals(plain.stages(), carried.stages());
    assertEquals(plain.work(), carried.work());
    assertEquals(plain.water(), carried.water());
    assertEquals(plain.upperSurface().at(6500), carried.upperSurface().at(6500));
  }

  @Test
  void jacobian_holdsOneRowATimeAndOneColumnAParameter() {
    Sensitivities s = differences("C1").sensitivities();
    double[][] rows = s.core().jacobian(600, 3600, 8000);
    assertEquals(3, rows.length);
    for (int p = 0; p < s.point().size(); p++) {
      assertEquals(s.core().at(p, 3600), rows[1][p]);
    }
  }

  private static Peak peak(FrozenPlan.Replay replay, int stage) {
    return new PeakSearch(replay.trajectory(), replay.coreReading())
        .between(replay.end(stage - 1), replay.end(stage));
  }

  /** Time of the peak, more exactly: where it is as warm a second before as a second after. */
  private static double peakTime(FrozenPlan.Replay replay, int stage) {
    double low = peak(replay, stage).time() - 1;
    double high = low + 2;
    for (int i = 0; i < 40; i++) {
      double middle = 0.5 * (low + high);
      double after = replay.trajectory().at(replay.coreReading(), middle + 1);
      if (after > replay.trajectory().at(replay.coreReading(), middle - 1)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static FrozenDifferences differences(String name) {
    Rs1Point rs1 = Rs1Point.of(name);
    return new FrozenDifferences(Settings.withDefaults(), rs1.point(), rs1::cook);
  }
}
