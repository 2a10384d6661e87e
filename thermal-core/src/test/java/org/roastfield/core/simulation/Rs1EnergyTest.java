package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.reference.Rs1Reference;

/** Heat and water of each stage of RS-1, per surface. */
class Rs1EnergyTest {

  /** Volume mean temperature that stored heat may be wrong by, as the core may [K]. */
  private static final double MEAN_TEMPERATURE_ALLOWED = 0.05;

  /** What the water is allowed to be wrong by: the vapour pressure of about 0.1 K. */
  private static final double WATER_ALLOWED = 5e-3;

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void storedHeat_followsTheReferenceStageByStage(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    double[] stored = new double[3];
    List<SimulationResult> results = upToEachStage(reference);
    for (int i = 0; i < 3; i++) {
      stored[i] = results.get(i).energy().stored();
      double before = i == 0 ? 0 : stored[i - 1];
      double expected = 1e6 * reference.energies().get(i).enthalpyChange();
      assertEquals(expected, stored[i] - before, MEAN_TEMPERATURE_ALLOWED * capacity(reference));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void heatThroughTheSurface_followsTheReferenceStageByStage(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    List<SimulationResult> results = upToEachStage(reference);
    for (int i = 0; i < 3; i++) {
      double before = i == 0 ? 0 : results.get(i - 1).energy().throughUpper();
      double expected = 1e6 * reference.energies().get(i).conductionIn();
      assertEquals(
          expected,
          results.get(i).energy().throughUpper() - before,
          MEAN_TEMPERATURE_ALLOWED * capacity(reference));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void waterLost_followsTheReferenceStageByStage(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    List<SimulationResult> results = upToEachStage(reference);
    for (int i = 0; i < 3; i++) {
      double before = i == 0 ? 0 : results.get(i - 1).water().evaporatedUpper();
      double expected = reference.energies().get(i).waterLostKilogramsPerSquareMetre();
      double lost = results.get(i).water().evaporatedUpper() - before;
      assertEquals(expected, lost, WATER_ALLOWED * expected + 1e-15);
    }
  }

  /** Heat that warms the body by a kelvin, per surface [J/(m²·K)]. */
  private static double capacity(Rs1Reference reference) {
    Rs1Reference.Material m = reference.material();
    Rs1Reference.Body body = reference.body();
    return m.density() * m.specificHeatCapacity() * body.radiusMetres() / (body.exponent() + 1);
  }

  /** Results at the ends of roast, sear and rest. */
  static List<SimulationResult> upToEachStage(Rs1Reference reference) {
    Cook cook = Rs1Cook.of(reference);
    List<SimulationResult> results = new ArrayList<>();
    for (String name : List.of("roast", "sear", "rest")) {
      int count = 0;
      for (int i = 0; i < cook.stages().size(); i++) {
        count = cook.stages().get(i).name().equals(name) ? i + 1 : count;
      }
      List<Stage> stages = cook.stages().subList(0, count);
      results.add(Bodies.run(Settings.withDefaults(), new Cook(cook.cut(), stages, cook.probes())));
    }
    return results;
  }
}
