package org.roastfield.core.cook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.material.ChoiOkos;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

class CookTest {

  private static final Material MATERIAL = Material.constant("m", 0.5, 1000, 3600);
  private static final Cut SLAB = new Cut(Slab.ofThickness(0.05), MATERIAL, 280);
  private static final Cut ROUND = new Cut(Cylinder.ofRadius(0.05), MATERIAL, 280);
  private static final SurfaceLaw AIR = new Convection(10, Signal.constant(400));
  private static final SurfaceLaw PLATE = new Contact(200, Signal.constant(500));
  private static final StageEnd LATER = StageEnd.after(60);
  private static final Stage EVEN = Stage.allRound("gentle", AIR, LATER);
  private static final Stage TURNED = Stage.ofFaces("sear", AIR, PLATE, LATER);

  @Test
  void cook_isSymmetricIfEveryStageIs() {
    assertTrue(Cook.of(SLAB, EVEN).isSymmetric());
    assertFalse(Cook.of(SLAB, EVEN, TURNED).isSymmetric());
  }

  @Test
  void equalLaws_treatTheCutAlikeAllRound() {
    SurfaceLaw equal = new Convection(10, Signal.constant(400));
    assertTrue(Stage.ofFaces("gentle", AIR, equal, LATER).isAllRound());
  }

  @Test
  void onlyASlab_hasDifferentFaces() {
    assertRefused(
        "faces may differ only in a slab, but stage \"sear\" treats those of"
            + " Cylinder[radius=0.05] differently",
        () -> Cook.of(ROUND, EVEN, TURNED));
  }

  @Test
  void cook_needsAStage() {
    assertRefused("number of stages must be in [1, 10000], was 0", () -> Cook.of(SLAB));
  }

  @Test
  void probeNames_areUniqueAndNotThoseOfCoreAndSurface() {
    assertRefused(
        "probe name must be unique, was \"a\"",
        () -> withProbes(Probe.atDepth("a", 0.01), Probe.atDepth("a", 0.02)));
    assertRefused(
        "probe name must be unique, was \"core\"", () -> withProbes(Probe.atDepth("core", 0.01)));
    assertRefused(
        "probe name must be unique, was \"surface\"",
        () -> withProbes(Probe.atDepth("surface", 0.01)));
  }

  @Test
  void probes_lieInTheCut() {
    assertRefused(
        "depth of probe a must be in [0.0, 0.05], was 0.051",
        () -> withProbes(Probe.atDepth("a", 0.051)));
    assertRefused(
        "depth of probe deep must be in [0.0, 0.05], was 0.06",
        () -> Cook.of(ROUND, until(new StageEnd.Rises(Probe.atDepth("deep", 0.06), 330, 60))));
    assertRefused(
        "depth of probe deep must be in [0.0, 0.05], was 0.06",
        () -> Cook.of(ROUND, until(new StageEnd.Falls(Probe.atDepth("deep", 0.06), 330, 60))));
  }

  @Test
  void lists_areCopied() {
    List<Stage> stages = new ArrayList<>(List.of(EVEN));
    Cook cook = new Cook(SLAB, stages, List.of());
    stages.clear();
    assertEquals(1, cook.stages().size());
    assertThrows(UnsupportedOperationException.class, () -> cook.stages().clear());
  }

  @Test
  void frozenCut_isRefusedWithAdvice() {
    Material loin = ChoiOkos.material("loin", Composition.ofMeat(0.72, 0.21, 0.06, 0.01));
    assertRefused(
        "startTemperature must be at least 272.15 K (-1.00 °C) for loin, was 255.15 K (-18.00 °C);"
            + " freezing and thawing are not represented: thaw the cut fully, in the cold, and"
            + " state the temperature in its middle",
        () -> new Cut(Slab.ofThickness(0.05), loin, Temperatures.celsius(-18)));
    assertRefused(
        "startTemperature must be at most 423.15 K (150.00 °C), up to which the properties of loin"
            + " are known, was 433.15 K (160.00 °C)",
        () -> new Cut(Slab.ofThickness(0.05), loin, Temperatures.celsius(160)));
  }

  @Test
  void cutAtItsFreezingPoint_isRefusedWithAdvice() {
    Material cauliflower = Materials.named("cauliflower").material();
    assertRefused(
        "startTemperature must be above 272.35 K (-0.80 °C) for cauliflower,"
            + " was 272.35 K (-0.80 °C); freezing and thawing are not represented: thaw the cut"
            + " fully, in the cold, and state the temperature in its middle",
        () -> new Cut(Slab.ofThickness(0.05), cauliflower, cauliflower.freezingPoint()));
    Cut chilled = new Cut(Slab.ofThickness(0.05), cauliflower, cauliflower.freezingPoint() + 0.01);
    assertEquals(cauliflower, chilled.material());
  }

  @Test
  void startTemperature_isPositive() {
    assertRefused(
        "startTemperature must be finite and greater than 0, was NaN",
        () -> new Cut(Slab.ofThickness(0.05), MATERIAL, Double.NaN));
  }

  @Test
  void stageName_isNotBlank() {
    assertRefused("name must not be blank, was \"\"", () -> Stage.allRound("", AIR, LATER));
  }

  private static Stage until(StageEnd end) {
    return Stage.allRound("gentle", AIR, end);
  }

  private static Cook withProbes(Probe... probes) {
    return new Cook(SLAB, List.of(EVEN), List.of(probes));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
