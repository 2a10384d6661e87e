package org.roastfield.core.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShapeTest {

  @Test
  void exponents_areThoseOfTheAreas() {
    assertEquals(0, Slab.ofThickness(0.05).exponent());
    assertEquals(1, Cylinder.ofRadius(0.05).exponent());
    assertEquals(2, Sphere.ofRadius(0.05).exponent());
  }

  @Test
  void volumePerArea_isThatOfTheSolid() {
    double r = 0.048;
    assertEquals(r, Slab.ofHalfThickness(r).volumePerArea(), 1e-15);
    assertEquals(Math.PI * r * r / (2 * Math.PI * r), Cylinder.ofRadius(r).volumePerArea(), 1e-15);
    assertEquals(
        4 * Math.PI / 3 * r * r * r / (4 * Math.PI * r * r),
        Sphere.ofRadius(r).volumePerArea(),
        1e-15);
  }

  @Test
  void factories_agree() {
    assertEquals(Slab.ofThickness(0.1), Slab.ofHalfThickness(0.05));
    assertEquals(Cylinder.ofDiameter(0.096), Cylinder.ofRadius(0.048));
    assertEquals(Sphere.ofDiameter(0.096), Sphere.ofRadius(0.048));
  }

  @Test
  void thickness_isTwiceTheHalf() {
    assertEquals(0.055, Slab.ofThickness(0.055).thickness());
    assertEquals(0.096, Cylinder.ofRadius(0.048).thickness());
    assertEquals(0.096, Sphere.ofRadius(0.048).thickness());
    assertEquals(0.048, Sphere.ofRadius(0.048).halfThickness());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
  void sizes_mustBePositiveAndFinite(double size) {
    String rule = " must be finite and greater than 0, was " + size;
    assertRefused("thickness" + rule, () -> Slab.ofThickness(size));
    assertRefused("radius" + rule, () -> Cylinder.ofRadius(size));
    assertRefused("radius" + rule, () -> Sphere.ofRadius(size));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
