package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.ReferenceFiles;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Crust;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.SurfaceWater;
import org.roastfield.core.units.Temperatures;

/**
 * A sear that boils the face dry against {@code boiloff.json}, which spreads boiling over 99-101 °C
 * and keeps conductivity and heat capacity of the moist food in the crust.
 */
class BoilOffTest {

  private static final double FRONT = 0.1e-3;
  private static final double SURFACE = 5;
  private static final double BELOW_FRONT = 1;
  private static final double WATER = 0.03;

  @ParameterizedTest
  @CsvSource({"eps0, 0", "eps0.9_Tw260, 0.9"})
  void frontSurfaceWaterAndProfiles_areThoseOfTheEnthalpyMethod(String key, double emissivity) {
    JsonNode file = ReferenceFiles.json("/reference/boiloff.json");
    JsonNode parameters = file.path("parameters");
    SimulationResult result = run(parameters, emissivity);
    double waterHeld = parameters.path("rho").asDouble() * parameters.path("Xw0").asDouble();
    for (JsonNode row : file.path(key).path("rows")) {
      double time = row.path(0).asDouble();
      double water = -result.upperFaceWaterAt(time);
      double front = water / waterHeld;
      double referenceFront = row.path(2).asDouble() * 1e-3;
      assertEquals(referenceFront, front, FRONT, () -> "front at " + time + " s");
      double surface = Temperatures.toCelsius(result.upperSurface().at(time));
      assertEquals(row.path(1).asDouble(), surface, SURFACE, () -> "surface at " + time + " s");
      double boiled = row.path(6).asDouble();
      assertEquals(boiled, water, WATER * boiled, () -> "water at " + time + " s");
      JsonNode profile = file.path(key).path("profiles").path(Long.toString(Math.round(time)));
      if (!profile.isMissingNode()) {
        assertProfile(parameters, profile, result.profile(time), referenceFront);
      }
    }
    assertTrue(Math.abs(result.energy().relativeResidual()) <= 1e-12);
    FaceWater face = result.upperFaceWater().orElseThrow();
    assertTrue(Math.abs(face.relativeResidual()) <= 1e-12);
    assertEquals(-face.held() / waterHeld, face.crust(), 1e-12);
  }

  private static void assertProfile(
      JsonNode parameters, JsonNode profile, TemperatureProfile computed, double front) {
    double half = parameters.path("half_thickness").asDouble();
    int compared = 0;
    for (int i = 0; i < profile.path("depth_mm").size(); i++) {
      double depth = profile.path("depth_mm").path(i).asDouble() * 1e-3;
      if (depth >= front + 1e-3) {
        double value = Temperatures.toCelsius(computed.at(half - depth));
        double reference = profile.path("T").path(i).asDouble();
        assertEquals(reference, value, BELOW_FRONT, () -> depth + " m at " + computed.time());
        compared++;
      }
    }
    assertTrue(compared >= 7);
  }

  private static SimulationResult run(JsonNode p, double emissivity) {
    Signal hot = Signal.constant(Temperatures.celsius(p.path("Ta").asDouble()));
    SurfaceLaw dry =
        SurfaceLaw.sum(new Contact(p.path("h").asDouble(), hot), new Radiation(emissivity, hot));
    double density = p.path("rho").asDouble();
    double conductivity = p.path("k").asDouble();
    DryingFace face =
        new DryingFace(
            dry,
            SurfaceLaw.insulated(),
            SurfaceWater.none(),
            new Crust(conductivity, density * p.path("Xw0").asDouble()),
            Temperatures.celsius(100));
    Cut cut =
        new Cut(
            Slab.ofThickness(2 * p.path("half_thickness").asDouble()),
            Material.constant("reference", conductivity, density, p.path("cp").asDouble()),
            Temperatures.celsius(p.path("T0").asDouble()));
    return Bodies.run(
        Settings.withDefaults(),
        Cook.of(cut, Stage.allRound("contact", face, StageEnd.after(300))));
  }
}
