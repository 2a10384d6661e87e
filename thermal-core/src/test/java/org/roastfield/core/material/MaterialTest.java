package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class MaterialTest {

  private static final PropertyCurve BENT = PropertyCurve.polynomial(280, 400, 0.5, 0.001);
  private static final PropertyCurve OTHER = PropertyCurve.polynomial(270, 390, 3500, 1);

  @Test
  void range_isWhereBothCurvesAreKnown() {
    Material material = new Material("m", 1000, BENT, OTHER);
    assertEquals(280, material.lowest());
    assertEquals(390, material.highest());
    assertFalse(material.isConstant());
  }

  @Test
  void constantMaterial_isKnownEverywhere() {
    Material material = Material.constant("m", 0.5, 1000, 3600);
    assertTrue(material.isConstant());
    assertEquals(0, material.lowest());
    assertEquals(Double.MAX_VALUE, material.highest());
    assertEquals(0.5 / 3.6e6, material.diffusivity(300), 1e-20);
  }

  @Test
  void oneBentCurve_makesTheMaterialDependOnTemperature() {
    assertFalse(new Material("m", 1000, BENT, PropertyCurve.constant(3600)).isConstant());
    assertFalse(new Material("m", 1000, PropertyCurve.constant(0.5), OTHER).isConstant());
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused("name must not be blank, was \"\"", () -> new Material("", 1000, BENT, OTHER));
    assertRefused(
        "density must be finite and greater than 0, was NaN",
        () -> new Material("m", Double.NaN, BENT, OTHER));
    assertRefused(
        "value must be finite and greater than 0, was -0.5",
        () -> Material.constant("m", -0.5, 1000, 3600));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
