package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.CoalBed;
import org.roastfield.core.surface.FaceForm;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/** Air by correlation and coal beds in cook files. */
class SurroundingsTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final String STATED = "heat-transfer: 6 W/(m²·K)";
  private static final String SIZED =
      CookTexts.SLAB.replace(
          "thickness: 40 mm", "thickness: 40 mm\n  length: 200 mm\n  width: 120 mm");
  private static final String ROUND =
      CookTexts.SLAB.replace("slab\n  thickness: 40 mm", "cylinder\n  diameter: 90 mm");
  private static final String REST =
      "chamber: {air: 20 °C, heat-transfer: 5 W/(m²·K)}\n    wetness: 0\n    end: {after: 20 min}";

  @Test
  void stillAirPastARoundCut_isMeasuredByItsDiameter() {
    FaceSetup face = gentle(ROUND.replace(STATED, "heat-transfer: still air")).upper();
    assertEquals(
        new HeatTransfer.ByCorrelation(
            FilmCoefficient.stillAir(FaceForm.HORIZONTAL_CYLINDER, 0.09, PRESSURE)),
        face.heatTransfer());
    assertEquals("still air", face.heatTransfer().words());
    String ball = ROUND.replace("cylinder", "sphere").replace(STATED, "heat-transfer: still air");
    assertEquals(
        new HeatTransfer.ByCorrelation(FilmCoefficient.stillAir(FaceForm.SPHERE, 0.09, PRESSURE)),
        gentle(ball).upper().heatTransfer());
  }

  @Test
  void stillAirPastABox_isThatAroundItsGirth() {
    String box = "box\n  thickness: 60 mm\n  width: 120 mm\n  length: 30 cm";
    String text = CookTexts.SLAB.replace("slab\n  thickness: 40 mm", box);
    FaceSetup face = gentle(text.replace(STATED, "heat-transfer: still air")).upper();
    HeatTransfer.ByCorrelation transfer = (HeatTransfer.ByCorrelation) face.heatTransfer();
    assertEquals(FaceForm.HORIZONTAL_CYLINDER, transfer.film().form());
    assertEquals(2 * (0.06 + 0.12) / Math.PI, transfer.film().length(), 1e-12);
  }

  @Test
  void wind_hasASpeedAndAFactor() {
    String windy = ROUND.replace(STATED, "heat-transfer: {wind: 0.3 m/s, factor: 1.2}");
    HeatTransfer transfer = gentle(windy).upper().heatTransfer();
    assertEquals(
        new HeatTransfer.ByCorrelation(
            FilmCoefficient.windyAir(FaceForm.HORIZONTAL_CYLINDER, 0.09, 0.3, PRESSURE).times(1.2)),
        transfer);
    assertEquals("wind of 0.3 m/s × 1.2", transfer.words());
    assertEquals("6 W/(m²·K)", gentle(ROUND).upper().heatTransfer().words());
    String still = ROUND.replace(STATED, "heat-transfer: {factor: 1.2}");
    assertEquals("still air × 1.2", gentle(still).upper().heatTransfer().words());
  }

  /** Area over perimeter of 200 mm × 120 mm: 37.5 mm. */
  @Test
  void facesOfALyingSlab_areDifferentInStillAir() {
    CookFile file = CookTexts.read(SIZED.replace(STATED, "heat-transfer: still air"));
    StageSetup stage = file.stages().get(0);
    assertFilm(FaceForm.UPPER_FACE, stage.upper());
    assertFilm(FaceForm.LOWER_FACE, stage.lower());
    assertFalse(file.cook().isSymmetric());
    assertEquals(file.stages().get(1).upper(), file.stages().get(1).lower());
    assertTrue(
        stage.facts().contains(new Fact("chamber, heat transfer", "still air")),
        stage.facts().toString());
  }

  private static void assertFilm(FaceForm form, FaceSetup face) {
    HeatTransfer.ByCorrelation transfer = (HeatTransfer.ByCorrelation) face.heatTransfer();
    assertEquals(form, transfer.film().form());
    assertEquals(0.0375, transfer.film().length(), 1e-12);
  }

  @Test
  void turnedSlab_hasItsFreeFaceUpAndItsTouchedFaceOverTheCoals() {
    String turns =
        """
        contact: {plate: 260 °C, conductance: 300 W/(m²·K), share: 25 %}
            coal-bed: {temperature: 700 °C, view-factor: 40 %}
            chamber: {air: 120 °C, heat-transfer: still air}
            wetness: 0
            turns: {count: 2, every: 30 s}""";
    List<Stage> stages = CookTexts.read(SIZED.replace(REST, turns)).cook().stages();
    double air = 393.15;
    double up = FilmCoefficient.stillAir(FaceForm.UPPER_FACE, 0.0375, PRESSURE).at(350, air);
    double down = FilmCoefficient.stillAir(FaceForm.LOWER_FACE, 0.0375, PRESSURE).at(350, air);
    double walls = radiation(0.92, air);
    double coals = radiation(0.92 * 0.4, 973.15) + 0.6 * walls;
    double free = up * (air - 350) + walls;
    double touched = 0.75 * (down * (air - 350) + coals) + 0.25 * 300 * (533.15 - 350);
    assertEquals(free, heatFlux(stages.get(1).upper()), 1e-6 * free);
    assertEquals(touched, heatFlux(stages.get(1).lower()), 1e-6 * touched);
    assertEquals(touched, heatFlux(stages.get(2).upper()), 1e-6 * touched);
    assertEquals(free, heatFlux(stages.get(2).lower()), 1e-6 * free);
  }

  @Test
  void coals_areSeenByTheLowerFaceOfASlabAndAllAroundARoundCut() {
    String key = "\n    coal-bed: {temperature: 700 °C, view-factor: 0.2}\n    wetness: 0.3";
    StageSetup slab = gentle(CookTexts.SLAB.replace("\n    wetness: 0.3", key));
    assertEquals(Optional.empty(), slab.upper().bed());
    assertEquals(Optional.of(new BedSetup(973.15, 0.2)), slab.lower().bed());
    StageSetup round = gentle(ROUND.replace("\n    wetness: 0.3", key));
    assertEquals(Optional.of(new BedSetup(973.15, 0.2)), round.upper().bed());
    double plain = heatFlux(gentle(ROUND).upper().law(PRESSURE));
    double over = heatFlux(round.upper().law(PRESSURE));
    double more = 0.2 * (radiation(0.92, 973.15) - radiation(0.92, 383.15));
    assertEquals(more, over - plain, 1e-6 * more);
  }

  @Test
  void coalsUnderASlabOfKnownSize_mayBeMeasured() {
    String faces =
        "faces: {upper: {}, lower: {coal-bed: {temperature: 700 °C, diameter: 40 cm, distance: 20"
            + " cm}}}\n    wetness: 0.3";
    BedSetup bed = gentle(SIZED.replace("wetness: 0.3", faces)).lower().bed().orElseThrow();
    double radius = Math.sqrt(0.2 * 0.12 / Math.PI);
    assertEquals(CoalBed.viewFactorOfDiscs(radius, 0.2, 0.2), bed.viewFactor(), 1e-12);
  }

  /** Hot coals let a core rise above air and walls, and the reader of end rules knows. */
  @Test
  void cookOverCoalsInStillAir_isComputed() {
    String text =
        ROUND
            .replace(STATED, "heat-transfer: still air")
            .replace(
                "wetness: 0.3",
                "coal-bed: {temperature: 600 °C, view-factor: 5 %}\n    wetness: 0.3")
            .replace("{core: 46 °C, at-latest: 3 h}", "{core: 60 °C, at-latest: 6 h}");
    CookFile file = CookTexts.read(text);
    SimulationResult result = Simulator.withDefaults().run(file.cook()).orElseThrow();
    assertTrue(Math.abs(result.energy().relativeResidual()) < 1e-12);
    assertTrue(result.water().evaporatedUpper() > 0);
    double end = result.stage("gentle heat").end();
    assertEquals(333.15, result.core().at(end), 1e-3);
  }

  static Stream<Arguments> mistakes() {
    return Stream.of(
        arguments(
            CookTexts.SLAB,
            "heat-transfer: still air",
            "15:65: found \"still air\", expected a coefficient, such as 7 W/(m²·K), for a slab"
                + " whose length and width are not both stated"),
        arguments(
            ROUND,
            "heat-transfer: stil air",
            "15:65: found \"stil air\", expected still air, a coefficient, such as 7 W/(m²·K), or"
                + " keys and values (wind, factor)"),
        arguments(
            ROUND,
            "heat-transfer: {wind: 0.3 m}",
            "15:72: found \"0.3 m\", expected a speed, such as 0.3 m/s (m/s, km/h)"),
        arguments(
            ROUND,
            "heat-transfer: {breeze: 0.3 m/s}",
            "15:66: found \"breeze\", expected one of wind, factor"),
        arguments(
            ROUND,
            "heat-transfer: 6 m/s",
            "15:65: found \"6 m/s\", expected a coefficient, such as 7 W/(m²·K)"),
        arguments(
            ROUND,
            "heat-transfer: {wind: 0.0001 m/s}",
            "15:65: found keys and values, expected a value that can be computed with: windSpeed"
                + " past the horizontal cylinder must be 0 or keep Re in [0.4, 400000.0] for films"
                + " of 240-800 K (take still air below, state a coefficient above), was 1.0E-4"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void mistakesInHeatTransfer_areNamed(String text, String by, String message) {
    assertMessage(text.replace(STATED, by), message);
  }

  @Test
  void airBeyondTheCorrelations_isRefused() {
    assertMessage(
        ROUND.replace(STATED, "heat-transfer: still air").replace("air: 110 °C", "air: 590 °C"),
        "15:65: found \"still air\", expected a coefficient, such as 7 W/(m²·K), for air that is"
            + " not from -33.15 °C to 526.85 °C");
  }

  static Stream<Arguments> bedMistakes() {
    return Stream.of(
        arguments(
            "{temperature: 700 °C}",
            "16:15: found no key \"view-factor\", expected it among these keys"),
        arguments(
            "{temperature: 700 °C, view-factor: 1.2}",
            "16:50: found \"1.2\", expected a value from 0 to 1"),
        arguments(
            "{temperature: 700 °C, diameter: 40 cm, distance: 20 cm}",
            "16:47: found \"40 cm\", expected a view-factor instead, for a cut that is no slab of"
                + " stated length and width"),
        arguments(
            "{temperature: 700 °C, diameter: 40 cm, view-factor: 0.3}",
            "16:67: found \"0.3\", expected no view-factor beside a diameter, which gives it"),
        arguments(
            "{temperature: 700 °C, distance: 40 cm, view-factor: 0.3}",
            "16:47: found \"40 cm\", expected no distance without the diameter of the bed"));
  }

  @ParameterizedTest
  @MethodSource("bedMistakes")
  void mistakesInACoalBed_areNamed(String bed, String message) {
    assertMessage(
        ROUND.replace("\n    wetness: 0.3", "\n    coal-bed: " + bed + "\n    wetness: 0.3"),
        message);
  }

  @Test
  void coalsAboveAFace_areRefused() {
    String faces =
        "faces: {upper: {coal-bed: {temperature: 700 °C, view-factor: 0.3}}, lower: {}}\n"
            + "    wetness: 0.3";
    assertMessage(
        CookTexts.SLAB.replace("wetness: 0.3", faces),
        "16:21: found \"coal-bed\", expected one of chamber, wetness, emissivity, contact, board");
  }

  private static StageSetup gentle(String text) {
    return CookTexts.read(text).stages().get(0);
  }

  private static double radiation(double emissivity, double temperature) {
    return emissivity * Radiation.STEFAN_BOLTZMANN * (Math.pow(temperature, 4) - Math.pow(350, 4));
  }

  private static double heatFlux(SurfaceLaw law) {
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(350, 0, flux);
    return flux.heatFlux();
  }

  private static void assertMessage(String text, String message) {
    Exception refused = assertThrows(CookFileException.class, () -> CookTexts.read(text));
    assertEquals("cook.yaml:" + message, refused.getMessage());
  }
}
