package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Foodstuff;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Cooks that cross the melting of fat and the denaturation of proteins. */
class LatentHeatCookTest {

  private static final double RADIUS = 0.048;

  @ParameterizedTest
  @ValueSource(strings = {"beef brisket", "pork loin", "chicken thigh", "salmon"})
  void heatStoredInAnEvenCut_isThatOfTheMaterial(String name) {
    Material material = Materials.named(name).material();
    Cylinder shape = Cylinder.ofRadius(0.02);
    double hot = Temperatures.celsius(95);
    SurfaceLaw law = new Convection(200, Signal.constant(hot));
    Cut cut = new Cut(shape, material, Temperatures.celsius(5));
    Stage heat = Stage.allRound("heat", law, StageEnd.after(8 * 3600));
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-6), Cook.of(cut, heat));
    double expected =
        material.density()
            * shape.volumePerArea()
            * material.heatBetween(Temperatures.celsius(5), hot);
    assertEquals(expected, result.energy().stored(), 1e-7 * expected);
  }

  @Test
  void errorsFallWithTheSquareOfTheCells() {
    double exact = coreAfterTwoHours(320, 1e-6);
    double coarse = Math.abs(coreAfterTwoHours(20, 1e-6) - exact);
    double middle = Math.abs(coreAfterTwoHours(40, 1e-6) - exact);
    double fine = Math.abs(coreAfterTwoHours(80, 1e-6) - exact);
    assertTrue(fine <= middle / 3.5 && middle <= coarse / 3.5, () -> coarse + ", " + middle);
    assertTrue(middle <= 1e-3, () -> "40 cells miss by " + middle);
  }

  @Test
  void errorsFallWithTheAccuracy() {
    double exact = coreAfterTwoHours(40, 1e-6);
    double loose = Math.abs(coreAfterTwoHours(40, 1e-2) - exact);
    double tight = Math.abs(coreAfterTwoHours(40, 1e-4) - exact);
    assertTrue(loose <= 1e-2, () -> "at 0.01 K the error is " + loose);
    assertTrue(tight <= 0.1 * loose, () -> "at 1e-4 K the error is " + tight);
  }

  @ParameterizedTest
  @ValueSource(strings = {"beef brisket", "pork shoulder", "pork loin", "salmon"})
  void latentHeats_costAtMostEightMoreSteps(String name) {
    Material sensible = ChoiOkos.material(name, Materials.named(name).composition());
    long latent = steps(Materials.named(name).material());
    assertTrue(latent <= steps(sensible) + 8, () -> latent + " steps");
  }

  @Test
  void heatsOfBrisket_delayItByAQuarter() {
    Material sensible =
        ChoiOkos.material("sensible", Materials.named("beef brisket").composition());
    double ratio = secondsToPull(SampleCooks.BRISKET) / secondsToPull(sensible);
    assertEquals(1.25, ratio, 0.05);
  }

  @ParameterizedTest
  @ValueSource(strings = {"pork loin", "chicken breast"})
  void denaturation_givesBackLessThanAQuarterOfAKelvin(String name) {
    double rise = givenBackByThePeak(name);
    assertTrue(rise > 0.1 && rise < 0.25, () -> rise + " K");
  }

  private static double coreAfterTwoHours(int cells, double accuracy) {
    Material material = Materials.named("beef brisket").material();
    Cut cut = new Cut(Cylinder.ofRadius(RADIUS), material, Temperatures.celsius(5));
    SurfaceLaw law = new Convection(30, Signal.constant(Temperatures.celsius(120)));
    Stage heat = Stage.allRound("heat", law, StageEnd.after(7200));
    Settings settings = Settings.withDefaults().withCells(cells).withAccuracy(accuracy);
    SimulationResult result = Bodies.run(settings, Cook.of(cut, heat));
    return result.core().at(7200);
  }

  private static double secondsToPull(Material material) {
    Cook cook = SampleCooks.roast(Cylinder.ofRadius(RADIUS), material, 0.3);
    return Bodies.run(Settings.withDefaults(), cook).stage("gentle").end();
  }

  private static long steps(Material material) {
    Cook cook = SampleCooks.roast(Cylinder.ofRadius(RADIUS), material, 0.3);
    WorkCounters work = Bodies.run(Settings.withDefaults(), cook).work();
    return work.acceptedSteps() + work.rejectedSteps();
  }

  /**
   * Heat of denaturation that the outer layers give back between the end of the sear and the core's
   * peak, as a rise of the whole cut [K].
   */
  private static double givenBackByThePeak(String name) {
    Foodstuff food = Materials.named(name);
    Material material = food.material();
    SimulationResult result =
        Bodies.run(
            Settings.withDefaults(), SampleCooks.roast(Cylinder.ofRadius(RADIUS), material, 0));
    StageResult rest = result.stage("rest");
    TemperatureProfile before = result.profile(rest.start());
    TemperatureProfile after = result.profile(result.corePeak(rest).time());
    int points = 1000;
    double sum = 0;
    for (int i = 0; i < points; i++) {
      double position = RADIUS * (i + 0.5) / points;
      double back =
          denatured(material, before.at(position)) - denatured(material, after.at(position));
      sum += 2 * (i + 0.5) / points * Math.max(0, back) / points;
    }
    return sum / material.heatCapacity().at(Temperatures.celsius(60));
  }

  private static double denatured(Material material, double temperature) {
    return material.latentHeats().stream()
        .filter(heat -> !heat.name().equals("fat"))
        .mapToDouble(heat -> heat.takenUp(temperature))
        .sum();
  }
}
