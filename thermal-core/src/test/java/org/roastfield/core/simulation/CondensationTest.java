package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/** A cold cut in humid smoke: water settles on it until its face is as warm as the dew point. */
class CondensationTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double HUMIDITY = 0.12;
  private static final double WATER_ACTIVITY = 0.98;
  private static final SurfaceLaw SMOKE =
      Chamber.steady(363.15, HUMIDITY, PRESSURE)
          .around(
              FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.09, PRESSURE),
              0.9,
              1,
              WATER_ACTIVITY);

  @Test
  void water_settlesUntilTheFaceReachesTheDewPointAndLeavesAfterwards() {
    SimulationResult whole = run(3600);
    double dewPoint =
        MoistAir.dewPoint(MoistAir.vapourPressure(HUMIDITY, PRESSURE) / WATER_ACTIVITY);
    double turn = 0;
    while (whole.upperSurface().at(turn) < dewPoint) {
      turn += 1;
    }
    double settled = run(turn).water().evaporatedUpper();
    assertTrue(settled < -0.005, () -> settled + " kg/m² left");
    assertTrue(run(turn / 2).water().evaporatedUpper() > settled);
    assertTrue(run(turn + 600).water().evaporatedUpper() > settled);
  }

  /** Each kilogram that settles brings its latent heat, beside convection and radiation. */
  @Test
  void heat_isThatOfTheLawWithItsCondensation() {
    SimulationResult result = run(120);
    double heat = 0;
    double water = 0;
    int steps = 20_000;
    SurfaceFlux flux = new SurfaceFlux();
    for (int i = 0; i < steps; i++) {
      double share = (i + 0.5) / steps;
      double time = 120 * share * share;
      double weight = 240 * share / steps;
      flux.clear();
      SMOKE.evaluate(result.upperSurface().at(time), time, flux);
      heat += weight * flux.heatFlux();
      water += weight * flux.evaporation();
    }
    assertEquals(heat, result.energy().throughUpper(), 2e-4 * heat);
    assertEquals(water, result.water().evaporatedUpper(), -2e-4 * water);
    assertTrue(water < 0);
  }

  private static SimulationResult run(double duration) {
    Cook cook = Bodies.oneStage(Cylinder.ofDiameter(0.09), SMOKE, duration);
    return Bodies.run(Bodies.accuracy(1e-4), cook);
  }
}
