package org.roastfield.core.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CompactTest {

  @Test
  void volumesAndAreas_areThoseOfThePiece() {
    Compact can = Compact.ofCylinder(0.1, 0.3);
    assertEquals(Math.PI * 0.05 * 0.05 * 0.3, can.volume(), 1e-15);
    assertEquals(2 * Math.PI * 0.05 * (0.05 + 0.3), can.area(), 1e-15);
    assertEquals(0.05, can.halfThickness());
    assertEquals(can.volume() / can.area(), can.volumePerArea());
    Compact box = Compact.ofBox(0.3, 0.06, 0.2);
    assertEquals(0.3 * 0.06 * 0.2, box.volume(), 1e-15);
    assertEquals(2 * (0.3 * 0.06 + 0.06 * 0.2 + 0.2 * 0.3), box.area(), 1e-15);
    assertEquals(0.03, box.halfThickness());
    assertEquals(0.06, box.thickness());
    assertEquals(0.01, Compact.ofCylinder(0.2, 0.02).halfThickness());
  }

  @Test
  void equivalentArea_timesVolumePerAreaOfTheBody_isTheVolume() {
    Compact cube = Compact.ofBox(0.1, 0.1, 0.1);
    double perArea = cube.equivalentRadius() / (cube.exponent() + 1);
    assertEquals(cube.volume(), cube.equivalentArea() * perArea, 1e-18);
    assertTrue(cube.equivalentArea() < cube.area());
  }

  @Test
  void longPieces_areCylindersAndFlatOnesSlabs() {
    for (double biotNumber : new double[] {0.5, 2, 5}) {
      Compact bar = Compact.ofCylinder(0.1, 5, biotNumber);
      assertEquals(1, bar.exponent(), 1e-4);
      assertEquals(0.05, bar.equivalentRadius(), 1e-6);
      Compact sheet = Compact.ofBox(0.1, 5, 5, biotNumber);
      assertEquals(0, sheet.exponent(), 1e-4);
      assertEquals(0.05, sheet.equivalentRadius(), 1e-6);
      Compact disc = Compact.ofCylinder(5, 0.1, biotNumber);
      assertEquals(0, disc.exponent(), 1e-4);
      assertEquals(0.05, disc.equivalentRadius(), 1e-6);
    }
  }

  /** What an exponent from volume and area alone would cost, and does not here. */
  @Test
  void exponentsFromVolumeAndArea_wouldBeHigherAndTheRadiusSmaller() {
    Compact can = Compact.ofCylinder(0.1, 0.15, 1.5);
    assertEquals(1.667, can.halfThickness() / can.volumePerArea() - 1, 1e-3);
    assertEquals(2.0834, can.exponent(), 1e-4);
    assertEquals(1.2414, can.equivalentRadius() / can.halfThickness(), 1e-4);
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused(
        "length must be finite and greater than 0, was NaN",
        () -> Compact.ofCylinder(0.1, Double.NaN));
    assertRefused(
        "diameter must be finite and greater than 0, was -0.1", () -> Compact.ofCylinder(-0.1, 1));
    assertRefused(
        "width must be finite and greater than 0, was 0.0", () -> Compact.ofBox(0.1, 0, 0.1));
    assertRefused(
        "biotNumber must be in [0.2, 50.0], was 0.1", () -> Compact.ofCylinder(0.1, 0.1, 0.1));
    assertRefused(
        "exponent must be in [0.0, 4.0], was 4.1",
        () -> new Compact(4.1, 0.1, 0.1, 1e-3, 0.1, 0.4));
    assertRefused(
        "factor must be finite and greater than 0, was 0.0",
        () -> Compact.ofBox(0.1, 0.1, 0.1).scaled(0));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
