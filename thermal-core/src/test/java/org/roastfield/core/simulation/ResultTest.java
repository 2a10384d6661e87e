package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** What a result offers: traces, profiles, notes, repeatability. */
class ResultTest {

  @Test
  void sameCookTwice_givesTheSameBits() {
    Cook cook = SampleCooks.roast(Sphere.ofRadius(0.04), SampleCooks.LOIN);
    SimulationResult one = Bodies.run(Settings.withDefaults(), cook);
    SimulationResult two = Bodies.run(Settings.withDefaults(), cook);
    assertEquals(one.endTime(), two.endTime());
    assertEquals(one.stages(), two.stages());
    assertEquals(one.energy(), two.energy());
    assertEquals(one.water(), two.water());
    assertEquals(one.work(), two.work());
    for (double share = 0; share <= 1; share += 1.0 / 64) {
      double time = share * one.endTime();
      assertEquals(one.core().at(time), two.core().at(time));
      assertEquals(one.upperSurface().at(time), two.upperSurface().at(time));
    }
  }

  @Test
  void simulator_carriesNothingFromCookToCook() {
    Cook roast = SampleCooks.roast(Sphere.ofRadius(0.04), SampleCooks.LOIN);
    Cook turned = SampleCooks.turned(SampleCooks.CONSTANT);
    Simulator simulator = Simulator.withDefaults();
    EnergyBalance alone = Simulator.withDefaults().run(roast).orElseThrow().energy();
    assertTrue(simulator.run(turned) instanceof Outcome.Completed);
    assertEquals(alone, simulator.run(roast).orElseThrow().energy());
  }

  @Test
  void result_keepsCookAndSettings() {
    Cook cook = SampleCooks.turned(SampleCooks.CONSTANT);
    Settings settings = Settings.withDefaults().withCells(20);
    SimulationResult result = Bodies.run(settings, cook);
    assertEquals(cook, result.cook());
    assertEquals(settings, result.settings());
  }

  @Test
  void profileOfASymmetricCut_runsFromTheMiddleToTheSurface() {
    Cook cook = SampleCooks.plain(Sphere.ofRadius(0.04), SampleCooks.CONSTANT, hot());
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    TemperatureProfile profile = result.profile(1200);
    assertEquals(1200, profile.time());
    assertEquals(42, profile.size());
    assertEquals(0, profile.position(0));
    assertEquals(0.04, profile.position(41));
    assertEquals(result.core().at(1200), profile.temperature(0));
    assertEquals(result.upperSurface().at(1200), profile.temperature(41));
    for (int i = 1; i < profile.size(); i++) {
      assertTrue(profile.position(i) > profile.position(i - 1));
      assertTrue(profile.temperature(i) > profile.temperature(i - 1));
    }
  }

  @Test
  void profileOfATurnedSlab_runsFromTheLowerToTheUpperFace() {
    SimulationResult result =
        Bodies.run(Settings.withDefaults(), SampleCooks.turned(SampleCooks.CONSTANT));
    TemperatureProfile profile = result.profile(200);
    assertEquals(-0.0275, profile.position(0), 1e-15);
    assertEquals(0.0275, profile.position(profile.size() - 1), 1e-15);
    assertEquals(result.lowerSurface().at(200), profile.temperature(0));
    assertEquals(result.upperSurface().at(200), profile.temperature(profile.size() - 1));
    assertEquals(result.core().at(200), profile.at(0));
    assertTrue(profile.temperature(0) > profile.at(0));
  }

  @Test
  void probesOfASlab_areMeasuredFromTheUpperFace() {
    Cut cut = new Cut(Slab.ofThickness(0.04), Bodies.CONSTANT, Bodies.START);
    SurfaceLaw plate = new Contact(200, Signal.constant(450));
    Stage stage = Stage.ofFaces("sear", SurfaceLaw.insulated(), plate, StageEnd.after(120));
    SimulationResult result = Bodies.run(Settings.withDefaults(), Cook.of(cut, stage));
    double nearTop = result.probe(Probe.atDepth("top", 0.004)).at(120);
    double nearPlate = result.probe(Probe.atDepth("plate", 0.036)).at(120);
    assertTrue(nearPlate > nearTop + 10);
    assertEquals(
        result.lowerSurface().at(120), result.probe(Probe.atDepth("face", 0.04)).at(120), 1e-9);
  }

  @Test
  void lowerSurfaceOfASymmetricCut_isTheUpper() {
    Cook cook = SampleCooks.plain(Slab.ofThickness(0.04), SampleCooks.CONSTANT, hot());
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    assertEquals(result.upperSurface().at(700), result.lowerSurface().at(700));
    assertEquals(0, result.energy().throughLower());
    assertEquals(0, result.water().evaporatedLower());
  }

  @Test
  void traces_haveNamesAndEnds() {
    Cook cook = SampleCooks.plain(Slab.ofThickness(0.04), SampleCooks.CONSTANT, hot());
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    assertEquals("core", result.core().name());
    assertEquals("surface", result.upperSurface().name());
    assertEquals("lower surface", result.lowerSurface().name());
    assertEquals(0, result.core().start());
    assertEquals(2400, result.core().end());
  }

  @Test
  void temperaturesOutsideTheKnownRange_areNoted() {
    SurfaceLaw fierce = new Contact(2000, Signal.constant(Temperatures.celsius(350)));
    Cook cook = SampleCooks.plain(Slab.ofThickness(0.04), SampleCooks.LOIN, fierce);
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    Note note = result.notes().get(0);
    assertEquals(
        List.of("property range", "boiling inside"),
        result.notes().stream().map(Note::subject).toList());
    assertTrue(
        note.text()
            .matches(
                "cell temperatures ran from \\d+\\.\\d to \\d+\\.\\d °C; the properties of pork"
                    + " loin are known from -1\\.0 to 150\\.0 °C and were held constant outside"
                    + " for \\d+ s"),
        note::text);
  }

  @Test
  void temperaturesInsideTheKnownRange_needNoNote() {
    Cook cook = SampleCooks.plain(Slab.ofThickness(0.04), SampleCooks.LOIN, hot());
    assertTrue(Bodies.run(Settings.withDefaults(), cook).notes().isEmpty());
  }

  @Test
  void settings_areCheckedAndCopied() {
    Settings settings = Settings.withDefaults();
    assertEquals(new Settings(0.01, 40, 0.2e-3, 200_000), settings);
    assertEquals(0.1, settings.withAccuracy(0.1).accuracy());
    assertEquals(80, settings.withCells(80).cells());
    assertEquals(1e-3, settings.withSurfaceCell(1e-3).surfaceCell());
    assertEquals(5, settings.withMostSteps(5).mostSteps());
    assertEquals(settings, Simulator.withDefaults().settings());
    assertRefused("accuracy must be in [1.0E-9, 1.0], was 2.0", () -> settings.withAccuracy(2));
    assertRefused(
        "accuracy must be in [1.0E-9, 1.0], was NaN", () -> settings.withAccuracy(Double.NaN));
    assertRefused("cells must be in [6, 50000], was 5", () -> settings.withCells(5));
    assertRefused(
        "surfaceCell must be finite and greater than 0, was 0.0",
        () -> settings.withSurfaceCell(0));
    assertRefused("mostSteps must be in [1, 2147483647], was 0", () -> settings.withMostSteps(0));
  }

  private static SurfaceLaw hot() {
    return new Convection(25, Signal.constant(Temperatures.celsius(120)));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  /** x · n / n may miss x by a rounding; that counts as the end, more does not. */
  @Test
  void timesAndPlacesThatMissAnEndByRounding_countAsTheEnd() {
    for (int i = 1; i <= 200; i++) {
      double duration = 60 + Math.sqrt(i);
      SimulationResult result =
          Bodies.run(
              Settings.withDefaults(),
              Bodies.oneStage(
                  Bodies.shape(RadialMode.CYLINDER, 0.03 + 1e-5 * Math.sqrt(i)),
                  SurfaceLaw.insulated(),
                  duration));
      double end = Math.nextUp(result.endTime());
      double edge = Math.nextUp(result.cook().cut().shape().halfThickness());
      assertEquals(Bodies.START, result.core().at(end), 1e-9);
      assertEquals(Bodies.START, result.profile(end).at(edge), 1e-9);
      assertThrows(IllegalArgumentException.class, () -> result.core().at(result.endTime() + 1e-6));
    }
  }
}
