package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;

/** Members whose air goes by correlation, each with its own draught, against the single cook. */
class CorrelationEnsembleTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final Settings SETTINGS = Settings.withDefaults().withCells(16).withAccuracy(1e-6);
  private static final int MEMBERS = 5;

  @Test
  void lanes_agreeWithTheSingleCook() {
    EnsembleResult lanes =
        EnsembleSimulator.with(SETTINGS).run(cook(0), MEMBERS, CorrelationEnsembleTest::cook);
    assertEquals(MEMBERS, lanes.completed());
    for (int i = 0; i < MEMBERS; i++) {
      SimulationResult single = Simulator.with(SETTINGS).run(cook(i)).orElseThrow();
      assertEquals(single.work().acceptedSteps(), lanes.acceptedSteps(i));
      for (int stage = 0; stage < 2; stage++) {
        double expected = single.stages().get(stage).coreAtEnd();
        assertEquals(expected, lanes.coreAtEnd(i, stage), 1e-9);
      }
      assertEquals(single.water().evaporatedUpper(), lanes.evaporated(i), 1e-9);
    }
  }

  private static Cook cook(int member) {
    FilmCoefficient film =
        FilmCoefficient.windyAir(FaceForm.HORIZONTAL_CYLINDER, 0.09, 0.1 * member, PRESSURE);
    Chamber pit = Chamber.steady(388, 0.03, PRESSURE);
    Chamber room = Chamber.steady(295, 0.008, PRESSURE);
    Material meat = Material.constant("meat", 0.48, 1060, 3450);
    return Cook.of(
        new Cut(Cylinder.ofDiameter(0.09), meat, 281),
        Stage.allRound("gentle", pit.around(film, 0.92, 0.3, 0.98), StageEnd.after(7200)),
        Stage.allRound("rest", room.around(film, 0.92, 0.1, 0.98), StageEnd.after(1800)));
  }
}
