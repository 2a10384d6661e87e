package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Faces that are wet where it is hot. */
class WetFaceTest {

  private static final double WATER_ACTIVITY = 0.99;
  private static final double BOILING =
      SaturationPressure.boilingPoint(MoistAir.STANDARD_PRESSURE / WATER_ACTIVITY);

  /** Boiling points here and in the law are found to 1e-10 K. */
  private static final double ROUND_OFF = 1e-9;

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.12, 1})
  void faceThatASearHasDried_fallsToBoilingAtOnceWhenWetAgain(double wetness) {
    for (Shape shape : SampleCooks.shapes()) {
      Cook cook = SampleCooks.roast(shape, SampleCooks.CONSTANT, wetness);
      SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
      StageResult rest = result.stage("rest");
      assertTrue(result.stage("sear 4").upperSurfaceAtEnd() > BOILING);
      assertBelowBoiling(result, result.upperSurface(), rest.start() + 1e-3);
      assertTrue(rest.upperSurfaceAtEnd() < BOILING);
    }
  }

  /** A face may rest one number below boiling; reading it from a step's cubic may round it up. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.12, 1})
  void noStepInTheWetRestEndsAboveBoiling(double wetness) {
    Cook cook = SampleCooks.roast(Slab.ofThickness(0.06), SampleCooks.CONSTANT, wetness);
    CookIntegration integration =
        CookIntegration.of(cook, new CookIntegration.Accuracy(0.01, 40, 0.5e-3, 200_000));
    Trajectory trajectory = integration.newTrajectory();
    int first = 0;
    for (Stage stage : cook.stages()) {
      first = trajectory.steps();
      assertEquals(CookIntegration.End.RULE_MET, integration.run(stage, trajectory));
    }
    Reading face = integration.reading(Probe.SURFACE);
    for (int step = first; step < trajectory.steps(); step++) {
      double value = trajectory.inStep(face, step, trajectory.stepEnd(step));
      assertTrue(value <= BOILING + 2 * Math.ulp(BOILING), () -> "face at " + value);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.3, 1})
  void turnedSlab_keepsItsWetFaceBelowBoiling(double wetness) {
    Cook cook = SampleCooks.turned(SampleCooks.CONSTANT, wetness);
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    StageResult again = result.stage("first side again");
    assertTrue(result.stage("second side").upperSurfaceAtEnd() > BOILING);
    assertBelowBoiling(result, result.upperSurface(), again.start() + 1e-3);
    assertTrue(Math.abs(result.energy().relativeResidual()) <= 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {120, 180, 250})
  void wetFaceInAHotChamber_neverReachesBoiling(double celsius) {
    SurfaceLaw law =
        Chamber.steady(Temperatures.celsius(celsius), 0.05, MoistAir.STANDARD_PRESSURE)
            .around(25, 0.9, 0.2, WATER_ACTIVITY);
    Cook cook = SampleCooks.plain(Slab.ofThickness(0.03), SampleCooks.CONSTANT, law);
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    assertBelowBoiling(result, result.upperSurface(), 0);
  }

  @Test
  void wetFaceOnAHotPlate_staysBelowBoilingWhereTheDryOneDoesNot() {
    SurfaceLaw plate = new Contact(300, Signal.constant(Temperatures.celsius(230)));
    SurfaceLaw steam =
        Chamber.steady(Temperatures.celsius(100), 0.1, MoistAir.STANDARD_PRESSURE)
            .around(20, 0.9, 1, WATER_ACTIVITY);
    Slab slab = Slab.ofThickness(0.03);
    SimulationResult dry =
        Bodies.run(Settings.withDefaults(), SampleCooks.plain(slab, SampleCooks.CONSTANT, plate));
    SimulationResult wet =
        Bodies.run(
            Settings.withDefaults(),
            SampleCooks.plain(slab, SampleCooks.CONSTANT, SurfaceLaw.sum(plate, steam)));
    assertTrue(dry.upperSurface().at(dry.endTime()) > BOILING);
    assertBelowBoiling(wet, wet.upperSurface(), 0);
  }

  /** Between steps as well: a rule that waits for more than boiling is not met by a cubic. */
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.12, 1})
  void endRuleAboveBoiling_isNeverMetByAWetFace(double wetness) {
    for (Shape shape : SampleCooks.shapes()) {
      Cook cook = SampleCooks.roast(shape, SampleCooks.CONSTANT, wetness);
      List<Stage> stages = new ArrayList<>(cook.stages());
      SurfaceLaw wet = stages.remove(stages.size() - 1).upper();
      StageEnd above = new StageEnd.Rises(Probe.SURFACE, BOILING + 1e-5, 900);
      stages.add(Stage.allRound("rest", wet, above));
      Outcome outcome =
          Simulator.with(Settings.withDefaults()).run(new Cook(cook.cut(), stages, List.of()));
      assertTrue(outcome instanceof Outcome.Failed, () -> "met by " + shape);
    }
  }

  private static void assertBelowBoiling(SimulationResult result, Trace face, double from) {
    int samples = 2000;
    for (int i = 0; i <= samples; i++) {
      double time = from + (result.endTime() - from) * i / samples;
      double value = face.at(Math.min(time, result.endTime()));
      assertTrue(value <= BOILING + ROUND_OFF, () -> value + " K at " + time + " s");
    }
  }
}
