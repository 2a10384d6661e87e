package org.roastfield.core.integration;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.reference.RadialMode;

/**
 * Observed order in space with smooth data. Grids are even, so that halving nests them; the plain
 * scheme is the one without fourth-order corrections.
 */
class SpatialOrderTest {

  private static final double TIGHT = 1e-6;
  private static final double HYBRID_DEPTH = 5e-3 / SmoothCooling.RADIUS;
  private static final double NO_CORRECTION = 1;
  private static final double LEAST_ORDER = 1.9;

  @ParameterizedTest
  @CsvSource({"SLAB, 20", "SLAB, 40", "CYLINDER, 20", "CYLINDER, 40", "SPHERE, 20", "SPHERE, 40"})
  void plainScheme_isOfSecondOrder(RadialMode mode, int cells) {
    double coarse = plain(mode, cells).largest();
    double fine = plain(mode, 2 * cells).largest();
    double order = log2(coarse / fine);
    assertTrue(order >= LEAST_ORDER, () -> "order " + order);
  }

  @ParameterizedTest
  @CsvSource({
    "SLAB, 20", "SLAB, 40", "SLAB, 80",
    "CYLINDER, 20", "CYLINDER, 40", "CYLINDER, 80",
    "SPHERE, 20", "SPHERE, 40", "SPHERE, 80"
  })
  void hybridScheme_hasAtMostHalfTheErrorOfThePlain(RadialMode mode, int cells) {
    SmoothCooling.Errors plain = plain(mode, cells);
    SmoothCooling.Errors hybrid = hybrid(mode, cells);
    String text = "plain " + plain + ", hybrid " + hybrid;
    assertTrue(hybrid.averages() <= 0.5 * plain.averages(), text);
    assertTrue(hybrid.centre() <= 0.5 * plain.centre(), text);
    assertTrue(hybrid.largest() <= 0.5 * plain.largest(), text);
  }

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void correctionsUpToTheSurface_leaveTheCoreOfHigherOrderThanThePlain(RadialMode mode) {
    Grid grid = Grid.symmetric(mode.exponent(), 40, 1.0 / 40, 2.0 / 40);
    double centre = SmoothCooling.errors(mode, grid, TIGHT).centre();
    assertTrue(centre < 0.1 * plain(mode, 40).centre(), () -> "centre " + centre);
  }

  @ParameterizedTest
  @CsvSource({"20", "40"})
  void plainSlabOfTwoFaces_isOfSecondOrder(int cells) {
    double order = log2(twoFaces(cells, 0.5).largest() / twoFaces(2 * cells, 0.5).largest());
    assertTrue(order >= LEAST_ORDER, () -> "order " + order);
  }

  @ParameterizedTest
  @CsvSource({"20", "40", "80"})
  void hybridSlabOfTwoFaces_hasAtMostHalfTheErrorOfThePlain(int cells) {
    double plain = twoFaces(cells, 0.5).largest();
    double hybrid = twoFaces(cells, 0.5 * HYBRID_DEPTH).largest();
    assertTrue(hybrid <= 0.5 * plain, () -> "plain " + plain + ", hybrid " + hybrid);
  }

  @Test
  void slabOfTwoFaces_hasTheErrorOfItsSymmetricHalf() {
    double half = plain(RadialMode.SLAB, 20).averages();
    double whole = twoFaces(40, 0.5).averages();
    assertTrue(Math.abs(whole - half) <= 1e-4 * half, () -> whole + " against " + half);
  }

  static SmoothCooling.Errors plain(RadialMode mode, int cells) {
    return even(mode, cells, NO_CORRECTION);
  }

  static SmoothCooling.Errors hybrid(RadialMode mode, int cells) {
    return even(mode, cells, HYBRID_DEPTH);
  }

  private static SmoothCooling.Errors even(RadialMode mode, int cells, double compactDepth) {
    Grid grid = Grid.symmetric(mode.exponent(), cells, 1.0 / cells, compactDepth);
    return SmoothCooling.errors(mode, grid, TIGHT);
  }

  static SmoothCooling.Errors twoFaces(int cells, double compactDepth) {
    Grid grid = Grid.twoSided(cells, 1.0 / cells, compactDepth);
    return SmoothCooling.errors(RadialMode.SLAB, grid, TIGHT);
  }

  private static double log2(double ratio) {
    return Math.log(ratio) / Math.log(2);
  }
}
