package org.roastfield.core.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.roastfield.core.units.Temperatures.celsius;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.simulation.Peak;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/** The examples of README.md and DEVELOPERS.md, run. */
class UserGuideTest {

  private static final Pattern JAVA_BLOCK = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL);

  @Test
  void exampleOfTheReadme_givesTheStatedNumbers() {
    Material pork = Materials.named("pork loin").material();
    Cut loin = new Cut(Cylinder.ofDiameter(0.096), pork, celsius(8));
    Chamber pit = Chamber.steady(celsius(115), 0.035, MoistAir.STANDARD_PRESSURE);
    Chamber room = Chamber.steady(celsius(22), 0.008, MoistAir.STANDARD_PRESSURE);
    StageEnd pull = StageEnd.coreRisesTo(celsius(54), 6 * 3600);
    Stage gentle = Stage.allRound("gentle heat", pit.around(6, 0.92, 0.3, 0.98), pull);
    Stage rest = Stage.allRound("rest", room.around(4, 0.92, 0.1, 0.98), StageEnd.after(3600));

    SimulationResult result =
        Simulator.withDefaults().run(Cook.of(loin, gentle, rest)).orElseThrow();
    double minutesToPull = result.stage("gentle heat").end() / 60;
    Peak peak = result.corePeak(result.stage("rest"));
    double minutesToPeak = (peak.time() - result.stage("rest").start()) / 60;

    assertEquals(147.4, minutesToPull, 0.05);
    assertEquals(celsius(57.14), peak.temperature(), 0.01);
    assertEquals(26, minutesToPeak, 0.5);
    assertTrue(peak.interior());
  }

  @Test
  void inputsOfTheExample_moveThePullByTheStatedShares() {
    double stated = secondsToPull(0.096, 0.3);
    assertEquals(1.10, secondsToPull(0.096 * 1.06, 0.3) / stated, 0.005);
    assertEquals(0.92, secondsToPull(0.096, 0.2) / stated, 0.005);
    assertEquals(1.13, secondsToPull(0.096, 0.45) / stated, 0.005);
  }

  private static double secondsToPull(double diameter, double wetness) {
    Material pork = Materials.named("pork loin").material();
    Cut loin = new Cut(Cylinder.ofDiameter(diameter), pork, celsius(8));
    Chamber pit = Chamber.steady(celsius(115), 0.035, MoistAir.STANDARD_PRESSURE);
    StageEnd pull = StageEnd.coreRisesTo(celsius(54), 12 * 3600);
    Stage gentle = Stage.allRound("gentle heat", pit.around(6, 0.92, wetness, 0.98), pull);
    return Simulator.withDefaults().run(Cook.of(loin, gentle)).orElseThrow().endTime();
  }

  /** Radiation of a bed of coals that fills part of what the face sees. */
  record Coals(double viewFactor, double emissivity, Signal bedTemperature) implements SurfaceLaw {

    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
      double strength = viewFactor * emissivity * Radiation.STEFAN_BOLTZMANN;
      double bed = Math.pow(bedTemperature.at(time), 4);
      flux.addHeat(
          strength * (bed - Math.pow(surfaceTemperature, 4)),
          -4 * strength * Math.pow(surfaceTemperature, 3));
    }

    @Override
    public double shortestPeriod() {
      return bedTemperature.shortestPeriod();
    }
  }

  @Test
  void exampleOfALaw_addsUpWithTheOthers() {
    SurfaceFlux flux = new SurfaceFlux();
    SurfaceLaw coals = new Coals(0.35, 0.9, Signal.constant(celsius(700)));
    SurfaceLaw.sum(coals, new Convection(10, Signal.constant(celsius(200))))
        .evaluate(celsius(80), 0, flux);
    double radiated = 0.35 * 0.9 * 5.670374419e-8 * (8.9687e11 - 1.5553e10);
    assertEquals(radiated + 1200, flux.heatFlux(), 2);
    assertEquals(-4 * 0.35 * 0.9 * 5.670374419e-8 * 4.4043e7 - 10, flux.slope(), 1e-3);
  }

  @Test
  void examplesInTheDocuments_areThoseOfThisTest() {
    String source =
        lines(
            Documents.text(
                Documents.module()
                    .resolve("src/test/java/org/roastfield/core/guide/UserGuideTest.java")));
    for (String document : List.of("README.md", "DEVELOPERS.md")) {
      Matcher matcher = JAVA_BLOCK.matcher(Documents.text(Documents.root().resolve(document)));
      assertTrue(matcher.find(), document);
      do {
        String example = lines(matcher.group(1));
        assertTrue(source.contains(example), () -> document + " has an untested\n" + example);
      } while (matcher.find());
    }
  }

  /** Lines without indent and without blank ones. */
  private static String lines(String text) {
    return text.lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .collect(Collectors.joining("\n"));
  }
}
