package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.LatentHeat;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Materials;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Taper;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.Published;

class CookFileReaderTest {

  private static final String REST =
      "chamber: {air: 20 °C, heat-transfer: 5 W/(m²·K)}\n    wetness: 0\n    end: {after: 20 min}";

  @Test
  void slab_isReadInSiUnits() {
    CookFile file = CookTexts.read(CookTexts.SLAB);
    assertEquals("Strip steak", file.name());
    assertEquals("cook.yaml", file.fileName());
    assertEquals(LocalDateTime.of(2026, 6, 13, 18, 0), file.starts());
    assertFalse(file.madeUp());
    assertEquals(Food.BEEF, file.food());
    assertEquals(MoistAir.STANDARD_PRESSURE, file.pressure());
    assertEquals(Slab.ofThickness(0.040), file.cook().cut().shape());
    assertEquals(278.15, file.cook().cut().startTemperature(), 1e-9);
    assertEquals(List.of(Probe.atDepth("tip", 0.015)), file.cook().probes());
    assertTrue(file.extent().isEmpty());
  }

  @Test
  void nameOfTheCatalogue_isItsMaterial() {
    CookFile file = CookTexts.read(withMaterial("beef brisket"));
    Material brisket = Materials.named("beef brisket").material();
    Material read = file.cook().cut().material();
    assertEquals("beef brisket", read.name());
    assertEquals(brisket.density(), read.density());
    assertEquals(brisket.latentHeats(), read.latentHeats());
    assertEquals(brisket.freezingPoint(), read.freezingPoint());
    assertTrue(
        file.facts()
            .contains(
                new Fact(
                    "material",
                    "beef brisket (catalogue; " + Materials.named("beef brisket").source() + ")")),
        () -> file.facts().toString());
  }

  @Test
  void composition_meltsAndDenaturesAsItsFoodDoes() {
    String composition = "{name: own, composition: {water: 70 %, protein: 20 %, fat: 10 %}}";
    String text = withMaterial(composition);
    assertEquals(12e3 + 3.2e3, latentHeat(CookTexts.read(text)), 1e-6);
    String fish = text.replace("food: beef", "food: fish");
    assertEquals(3.2e3, latentHeat(CookTexts.read(fish)), 1e-6);
    CookFile unstated = CookTexts.read(text.replace("  food: beef\n", ""));
    assertEquals(12e3 + 3.2e3, latentHeat(unstated), 1e-6);
    assertTrue(
        unstated
            .facts()
            .contains(
                new Fact("melting and denaturation", "as of meat (food not stated, so assumed)")),
        () -> unstated.facts().toString());
  }

  @Test
  void foodThatIsNotStated_followsFromTheCatalogue() {
    String chicken = withMaterial("chicken breast").replace("  food: beef\n", "");
    assertEquals(Food.POULTRY, CookTexts.read(chicken).food());
    String loin = withMaterial("beef loin").replace("  food: beef\n", "");
    assertEquals(Food.UNSTATED, CookTexts.read(loin).food());
  }

  private static double latentHeat(CookFile file) {
    return file.cook().cut().material().latentHeats().stream().mapToDouble(LatentHeat::heat).sum();
  }

  private static String withMaterial(String material) {
    return CookTexts.spoilt(
        "{name: beef, conductivity: 0.48 W/(m·K), density: 1060 kg/m³, heat-capacity: 3500 J/(kg·K)}",
        material);
  }

  @Test
  void stages_becomeLawsAndEnds() {
    CookFile file = CookTexts.read(CookTexts.SLAB);
    Stage gentle = file.cook().stages().get(0);
    assertEquals(new StageEnd.Rises(Probe.CORE, 319.15, 10_800), gentle.end());
    assertEquals(StageEnd.after(1200), file.cook().stages().get(1).end());
    assertSame(gentle.upper(), gentle.lower());
    FaceSetup face = file.stages().get(0).upper();
    assertEquals(383.15, face.air(), 1e-9);
    assertEquals(face.air(), face.walls());
    assertEquals(0.92, face.emissivity());
    assertEquals(0.98, face.waterActivity());
  }

  @Test
  void assumedValues_standAmongTheFacts() {
    CookFile file = CookTexts.read(CookTexts.SLAB);
    assertTrue(
        file.facts().contains(new Fact("emissivity", "0.92 (not stated, so assumed)")),
        file.facts().toString());
    assertTrue(file.facts().contains(new Fact("thickness", "40 mm")));
    assertTrue(file.stages().get(0).facts().contains(new Fact("walls", "as warm as the air")));
  }

  @Test
  void altitude_lowersThePressure() {
    double pressure =
        CookTexts.read(CookTexts.spoilt("altitude: 0 m", "altitude: 1500 m")).pressure();
    assertEquals(84_556, pressure, 30);
  }

  @Test
  void cylinderWithLength_hasAreaAndMass() {
    String text =
        CookTexts.SLAB.replace(
            "slab\n  thickness: 40 mm", "cylinder\n  diameter: 10 cm\n  length: 0.3 m");
    Extent extent = CookTexts.read(text).extent().orElseThrow();
    assertEquals(Math.PI * 0.1 * 0.3, extent.area(), 1e-12);
    assertEquals(Math.PI * 0.05 * 0.05 * 0.3 * 1060, extent.mass(), 1e-9);
    assertEquals(Cylinder.ofDiameter(0.1), CookTexts.read(text).cook().cut().shape());
  }

  @Test
  void slabWithLengthAndWidth_hasOneFaceAndItsWholeMass() {
    String text =
        CookTexts.spoilt("thickness: 40 mm", "thickness: 40 mm\n  length: 20 cm\n  width: 10 cm");
    Extent extent = CookTexts.read(text).extent().orElseThrow();
    assertEquals(0.02, extent.area(), 1e-12);
    assertEquals(0.02 * 0.04 * 1060, extent.mass(), 1e-9);
  }

  @Test
  void finiteCylinder_isACompactPieceWithItsTrueAreaAndMass() {
    String text =
        CookTexts.SLAB.replace(
            "slab\n  thickness: 40 mm", "finite-cylinder\n  diameter: 10 cm\n  length: 0.15 m");
    CookFile file = CookTexts.read(text);
    assertEquals(Compact.ofCylinder(0.1, 0.15), file.cook().cut().shape());
    Extent extent = file.extent().orElseThrow();
    assertEquals(2 * Math.PI * 0.05 * (0.05 + 0.15), extent.area(), 1e-12);
    assertEquals(Math.PI * 0.05 * 0.05 * 0.15 * 1060, extent.mass(), 1e-9);
    assertTrue(
        file.facts()
            .contains(
                new Fact(
                    "Biot number of the shape", "0.5-5 (not stated, so made for all of these)")),
        file.facts().toString());
  }

  @Test
  void box_isMadeForTheBiotNumberStated() {
    String text =
        CookTexts.SLAB.replace(
            "slab\n  thickness: 40 mm",
            "box\n  thickness: 40 mm\n  width: 8 cm\n  length: 12 cm\n  biot-number: 0.8");
    CookFile file = CookTexts.read(text);
    assertEquals(Compact.ofBox(0.04, 0.08, 0.12, 0.8), file.cook().cut().shape());
    assertEquals(0.04 * 0.08 * 0.12 * 1060, file.extent().orElseThrow().mass(), 1e-9);
  }

  @Test
  void taper_isComputedAtItsThickestStation() {
    String text =
        CookTexts.SLAB.replace(
            "slab\n  thickness: 40 mm", "taper\n  diameters: [60 mm, 11 cm]\n  length: 0.3 m");
    CookFile file = CookTexts.read(text);
    assertEquals(Optional.of(Taper.between(0.06, 0.11, 0.3)), file.taper());
    assertEquals(0.11 - 0.05 / 6, file.cook().cut().shape().thickness(), 1e-12);
    assertTrue(file.extent().isEmpty());
    assertTrue(file.facts().contains(new Fact("diameters", "60 mm, 11 cm")));
  }

  @Test
  void turnsOfASlab_putOneFaceAfterTheOtherOnTheGrate() {
    String turns =
        """
        contact: {plate: 260 °C, conductance: 300 W/(m²·K)}
            chamber: {air: 20 °C, heat-transfer: 5 W/(m²·K)}
            wetness: 0
            turns: {count: 3, every: 30 s}""";
    CookFile file = CookTexts.read(CookTexts.spoilt(REST, turns));
    List<Stage> stages = file.cook().stages();
    assertEquals(4, stages.size());
    assertEquals("rest, turn 1", stages.get(1).name());
    assertEquals(StageEnd.after(30), stages.get(3).end());
    assertEquals(1, file.stages().get(1).firstStage());
    assertEquals(3, file.stages().get(1).lastStage());
    double onGrate = 300 * (533.15 - 350);
    assertEquals(onGrate, heatFlux(stages.get(1).lower()), 1e-6);
    assertEquals(onGrate, heatFlux(stages.get(2).upper()), 1e-6);
    assertEquals(onGrate, heatFlux(stages.get(3).lower()), 1e-6);
    assertTrue(heatFlux(stages.get(1).upper()) < 0);
  }

  @Test
  void turnsOfARoundCut_areRoundsOnAndOffTheGrate() {
    String turns =
        """
        contact: {plate: 260 °C, conductance: 300 W/(m²·K), share: 25 %}
            chamber: {air: 20 °C, heat-transfer: 5 W/(m²·K)}
            wetness: 0
            turns: {count: 8, every: 30 s, sides: 4}""";
    String text =
        CookTexts.spoilt(REST, turns).replace("slab\n  thickness", "cylinder\n  diameter");
    List<Stage> stages = CookTexts.read(text).cook().stages();
    assertEquals(5, stages.size());
    assertEquals(StageEnd.after(30), stages.get(1).end());
    assertEquals(StageEnd.after(90), stages.get(2).end());
    double contact = 0.25 * 300 * (533.15 - 350);
    double chamber = heatFlux(stages.get(2).upper());
    assertEquals(contact + 0.75 * chamber, heatFlux(stages.get(1).upper()), 1e-6);
  }

  @Test
  void facesOfASlab_stateWhatDiffers() {
    String faces =
        "faces: {upper: {wetness: 0.1}, lower: {contact: {plate: 80 °C, conductance: 20 W/m2K}}}\n"
            + "    wetness: 0.3";
    CookFile file = CookTexts.read(CookTexts.spoilt("wetness: 0.3", faces));
    StageSetup stage = file.stages().get(0);
    assertEquals(0.1, stage.upper().wetness());
    assertEquals(0.3, stage.lower().wetness());
    assertEquals(Optional.empty(), stage.upper().contact());
    assertEquals(20, stage.lower().contact().orElseThrow().conductance());
    assertFalse(file.cook().isSymmetric());
  }

  @Test
  void coreOfALaterStage_mayRiseOnHeatFromAnEarlierOne() {
    CookFile file =
        CookTexts.read(
            CookTexts.spoilt("end: {after: 20 min}", "end: {core: 60 °C, at-latest: 1 h}"));
    assertEquals(new StageEnd.Rises(Probe.CORE, 333.15, 3600), file.cook().stages().get(1).end());
  }

  @Test
  void publishedCook_isRead() {
    CookFile file = Published.porkLoin();
    assertTrue(file.madeUp());
    assertEquals(2.4, file.extent().orElseThrow().mass());
    assertEquals(LocalDateTime.of(2026, 6, 13, 18, 20), file.clockAt(11_400));
  }

  private static double heatFlux(SurfaceLaw law) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(350, 0, flux);
    return flux.heatFlux();
  }
}
