package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.surface.FaceRows.Face;

/** The laws in rows are the laws one by one. */
class StandardRowsTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double COLDEST_WET = SaturationPressure.LOWEST;
  private static final double BOILING = SaturationPressure.boilingPoint(PRESSURE / 0.98);
  private static final Signal CHANGING = time -> 300 + time;

  private static final Convection CONVECTION = new Convection(17, Signal.constant(390));
  private static final Contact CONTACT = new Contact(300, Signal.constant(500));
  private static final Radiation RADIATION = new Radiation(0.9, Signal.constant(450));
  private static final Evaporation WET = evaporation(0.4, Signal.constant(1500));
  private static final Evaporation UNUSUAL =
      new Evaporation(0.7, 12, 0.98, Signal.constant(900), PRESSURE, 0.9);
  private static final Evaporation DRY = evaporation(0, Signal.constant(1500));
  private static final Evaporation STILL = Evaporation.of(1, 0, 0.98, Signal.constant(1500), 9e4);

  private static Evaporation evaporation(double wetness, Signal vapour) {
    return Evaporation.of(wetness, 17, 0.98, vapour, PRESSURE);
  }

  static List<SurfaceLaw> dryLaws() {
    return List.of(
        CONVECTION,
        CONTACT,
        RADIATION,
        DRY,
        STILL,
        SurfaceLaw.insulated(),
        SurfaceLaw.sum(CONVECTION, CONTACT, RADIATION, DRY),
        SurfaceLaw.sum(RADIATION, RADIATION),
        SurfaceLaw.sum(CONVECTION, SurfaceLaw.sum(CONTACT, SurfaceLaw.sum(RADIATION))));
  }

  static List<SurfaceLaw> wetLaws() {
    return List.of(
        WET,
        UNUSUAL,
        SurfaceLaw.sum(CONVECTION, WET),
        SurfaceLaw.sum(WET, RADIATION, CONVECTION, CONTACT),
        SurfaceLaw.sum(SurfaceLaw.sum(UNUSUAL, CONTACT), RADIATION));
  }

  static List<SurfaceLaw> allLaws() {
    List<SurfaceLaw> laws = new ArrayList<>(dryLaws());
    laws.addAll(wetLaws());
    return laws;
  }

  @ParameterizedTest
  @MethodSource("dryLaws")
  void dryLaw_isTheScalarLawAtAnyTemperature(SurfaceLaw law) {
    for (double t = 50; t < 2000; t += 0.5) {
      assertScalar(law, t);
    }
  }

  @ParameterizedTest
  @MethodSource("wetLaws")
  void wetLaw_isTheScalarLawUpToBoiling(SurfaceLaw law) {
    for (double t = COLDEST_WET; t < BOILING; t += 0.01) {
      assertScalar(law, t);
    }
    assertScalar(law, Math.nextDown(BOILING - 1e-9));
  }

  @ParameterizedTest
  @MethodSource("wetLaws")
  void wetFace_hasNoValueAtAndAboveBoiling(SurfaceLaw law) {
    for (double t = BOILING + 1e-6; t < 1000; t += 0.37) {
      assertNoValue(law, t);
    }
  }

  @ParameterizedTest
  @MethodSource("wetLaws")
  void wetFace_hasNoValueBelowTheRangeOfSaturationPressure(SurfaceLaw law) {
    for (double t = Math.nextDown(COLDEST_WET); t > 50; t -= 0.37) {
      assertNoValue(law, t);
    }
  }

  /** Water so tightly bound does not boil in the range, but beyond it there is no pressure. */
  @Test
  void wetFace_hasNoValueAboveTheRangeOfSaturationPressure() {
    SurfaceLaw bound = Evaporation.of(1, 20, 0.02, Signal.constant(1000), PRESSURE);
    assertScalar(bound, SaturationPressure.HIGHEST);
    assertNoValue(bound, Math.nextUp(SaturationPressure.HIGHEST));
    assertNoValue(bound, 700);
  }

  @ParameterizedTest
  @MethodSource("dryLaws")
  void dryFace_hasAValueFarOutsideTheRangeOfSaturationPressure(SurfaceLaw law) {
    for (double t : new double[] {1e-3, 1, 200, 268, 509, 5000, 1e6}) {
      Face face = FaceRows.alone(law, t);
      double sum = face.heatFlux() + face.slope() + face.evaporation() + face.evaporationSlope();
      assertTrue(Math.abs(sum) < Double.POSITIVE_INFINITY, () -> law + " at " + t + ": " + face);
      assertEquals(0, face.evaporation());
      assertEquals(0, face.evaporationSlope());
    }
  }

  @ParameterizedTest
  @MethodSource("allLaws")
  void slopes_areThoseOfDifferences(SurfaceLaw law) {
    double h = 1e-3;
    for (double t = COLDEST_WET + 1; t < BOILING - 2; t += 0.5) {
      Face face = FaceRows.alone(law, t);
      Face above = FaceRows.alone(law, t + h);
      Face below = FaceRows.alone(law, t - h);
      double slope = (above.heatFlux() - below.heatFlux()) / (2 * h);
      double vapour = (above.evaporation() - below.evaporation()) / (2 * h);
      assertEquals(slope, face.slope(), 1e-6 * (1 + Math.abs(slope)));
      assertEquals(vapour, face.evaporationSlope(), 1e-6 * (1e-6 + Math.abs(vapour)));
    }
  }

  /** Lengths around those of vector registers, and neighbours that have no value. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 7, 8, 9, 15, 16, 17, 63, 64, 65, 128, 131})
  void company_changesNoBit(int faces) {
    List<SurfaceLaw> laws = new ArrayList<>();
    double[] temperatures = new double[faces];
    Random random = new Random(faces);
    for (int i = 0; i < faces; i++) {
      laws.add(allLaws().get(random.nextInt(allLaws().size())));
      temperatures[i] = i % 5 == 4 ? 600 : 250 + 140 * random.nextDouble();
    }
    Face[] together = new FaceRows(laws).at(temperatures);
    for (int i = 0; i < faces; i++) {
      assertEquals(FaceRows.alone(laws.get(i), temperatures[i]), together[i]);
    }
  }

  /** Enough calls for the just-in-time compiler to take over with vector instructions. */
  @Test
  void compiledLoops_giveTheBitsOfInterpretedOnes() {
    List<SurfaceLaw> laws = new ArrayList<>();
    for (int i = 0; i < 131; i++) {
      laws.add(allLaws().get(i % allLaws().size()));
    }
    double[] temperatures = new double[131];
    for (int i = 0; i < 131; i++) {
      temperatures[i] = 260 + i;
    }
    FaceRows rows = new FaceRows(laws);
    Face[] first = rows.at(temperatures);
    for (int i = 0; i < 5000; i++) {
      assertArrayEquals(first, rows.at(temperatures));
    }
  }

  @Test
  void orderOfTheFaces_changesNoBit() {
    List<SurfaceLaw> laws = new ArrayList<>(allLaws());
    double[] temperatures = new double[laws.size()];
    java.util.Arrays.fill(temperatures, 345.6);
    Face[] before = new FaceRows(laws).at(temperatures);
    Collections.reverse(laws);
    Face[] after = new FaceRows(laws).at(temperatures);
    for (int i = 0; i < before.length; i++) {
      assertEquals(before[i], after[before.length - 1 - i]);
    }
  }

  /** A lane takes the place of another one, or its next stage. */
  @Test
  void numbersOfAFormerLaw_leaveNothingBehind() {
    LawRows rows = rows(WET);
    double[][] used = new double[rows.numbers()][1];
    double[][] fresh = new double[rows.numbers()][1];
    for (SurfaceLaw law : allLaws()) {
      rows.write(SurfaceLaw.sum(CONVECTION, CONTACT, RADIATION, UNUSUAL), used, 0);
      rows.write(law, used, 0);
      rows.write(law, fresh, 0);
      assertArrayEquals(fresh, used, law.toString());
    }
  }

  @Test
  void facesNotInUse_areNotTouched() {
    LawRows rows = rows(CONVECTION);
    double[][] numbers = new double[rows.numbers()][3];
    rows.write(CONVECTION, numbers, 0);
    double[][] scratch = new double[rows.scratchRows()][3];
    double[][] out = {{7, 7, 7}, {7, 7, 7}, {7, 7, 7}, {7, 7, 7}};
    double[] temperatures = {300, 301, 302};
    rows.evaluate(1, temperatures, numbers, scratch, out[0], out[1], out[2], out[3]);
    for (double[] row : out) {
      assertEquals(7, row[1]);
      assertEquals(7, row[2]);
    }
    assertArrayEquals(new double[] {300, 301, 302}, temperatures);
  }

  @Test
  void lawsOfTheLibrary_shareTheirRows() {
    for (SurfaceLaw law : allLaws()) {
      assertSame(rows(CONVECTION), law.rows(), law.toString());
    }
  }

  @Test
  void surroundingsThatChange_haveNoRows() {
    assertNull(new Convection(17, CHANGING).rows());
    assertNull(new Contact(17, CHANGING).rows());
    assertNull(new Radiation(0.9, CHANGING).rows());
    assertNull(evaporation(0.4, CHANGING).rows());
    assertNull(SurfaceLaw.sum(CONVECTION, new Radiation(0.9, CHANGING)).rows());
    assertNull(SurfaceLaw.sum(CONVECTION, SurfaceLaw.sum(evaporation(0.4, CHANGING))).rows());
  }

  @Test
  void lawsOfACaller_haveNoRows() {
    SurfaceLaw own = (temperature, time, flux) -> flux.addHeat(1, 0);
    assertNull(own.rows());
    assertNull(SurfaceLaw.sum(CONVECTION, own).rows());
  }

  @Test
  void twoEvaporations_haveNoRows() {
    assertNull(SurfaceLaw.sum(WET, UNUSUAL).rows());
    assertNotNull(SurfaceLaw.sum(WET, CONVECTION).rows());
  }

  @Test
  void aLawOfACaller_isRefused() {
    SurfaceLaw own = (temperature, time, flux) -> flux.addHeat(1, 0);
    LawRows rows = rows(CONVECTION);
    double[][] numbers = new double[rows.numbers()][1];
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> rows.write(own, numbers, 0));
    assertEquals("law must be one of this package, was " + own, refused.getMessage());
  }

  private static LawRows rows(SurfaceLaw law) {
    LawRows rows = law.rows();
    assertNotNull(rows);
    return rows;
  }

  /** Vapour to the bit; heat is summed in another order, so to round-off of its largest terms. */
  private static void assertScalar(SurfaceLaw law, double temperature) {
    Face rows = FaceRows.alone(law, temperature);
    Face scalar = FaceRows.scalar(law, temperature);
    double fourth = temperature * temperature * temperature * temperature;
    double terms = 1e6 + Math.abs(scalar.heatFlux()) + 1e-7 * fourth;
    assertEquals(scalar.heatFlux(), rows.heatFlux(), 4e-15 * terms);
    assertEquals(scalar.slope(), rows.slope(), 4e-15 * (1e3 + Math.abs(scalar.slope())));
    assertEquals(scalar.evaporation(), rows.evaporation());
    assertEquals(scalar.evaporationSlope(), rows.evaporationSlope());
  }

  private static void assertNoValue(SurfaceLaw law, double temperature) {
    assertTrue(Double.isNaN(FaceRows.scalar(law, temperature).heatFlux()));
    Face face = FaceRows.alone(law, temperature);
    assertTrue(Double.isNaN(face.heatFlux()), () -> law + " at " + temperature + ": " + face);
  }
}
