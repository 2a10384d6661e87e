package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CompositionTest {

  @Test
  void statedFractions_areScaledToASumOfOne() {
    Composition stated = Composition.ofMeat(0.717, 0.212, 0.044, 0.011);
    double sum =
        stated.water()
            + stated.protein()
            + stated.fat()
            + stated.carbohydrate()
            + stated.fibre()
            + stated.ash();
    assertEquals(1, sum, 1e-12);
    assertEquals(0.717 / 0.984, stated.water(), 1e-12);
    assertEquals(0, stated.fibre());
  }

  @Test
  void fractions_mustBeShares() {
    assertRefused(
        "water must be in [0.0, 1.0], was 1.01", () -> new Composition(1.01, 0, 0, 0, 0, 0));
    assertRefused(
        "fat must be in [0.0, 1.0], was -0.1", () -> new Composition(1, 0, -0.1, 0, 0, 0.1));
    assertRefused(
        "ash must be in [0.0, 1.0], was NaN", () -> new Composition(1, 0, 0, 0, 0, Double.NaN));
  }

  @Test
  void sums_mustBeOne() {
    assertRefused(
        "sum of the mass fractions must be in [0.999999999, 1.000000001], was 0.75",
        () -> new Composition(0.5, 0.25, 0, 0, 0, 0));
    assertRefused(
        "sum of the mass fractions must be in [0.95, 1.05], was 0.75",
        () -> Composition.ofMeat(0.5, 0.25, 0, 0));
  }

  @Test
  void statedSum_mayDifferByFivePercent() {
    assertTrue(Composition.ofMeat(0.7, 0.2, 0.05, 0.01).water() > 0.7);
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
