package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class LatentHeatTest {

  private static final LatentHeat FAT = new LatentHeat("fat", 30e3, 283.15, 323.15);

  @Test
  void allOfIt_isTakenUpBetweenTheEnds() {
    assertEquals(0, FAT.takenUp(283.15));
    assertEquals(30e3, FAT.takenUp(323.15));
    assertEquals(15e3, FAT.takenUp(303.15), 1e-9);
    for (double beyond = 0.1; beyond < 500; beyond *= 1.7) {
      assertEquals(0, FAT.takenUp(283.15 - beyond), 1e-15 * FAT.heat());
      assertEquals(30e3, FAT.takenUp(323.15 + beyond), 1e-15 * FAT.heat());
      assertEquals(0, FAT.heatCapacity(283.15 - beyond), 1e-15);
      assertEquals(0, FAT.heatCapacity(323.15 + beyond), 1e-15);
    }
  }

  @Test
  void heatCapacity_beginsAndEndsWithoutSlopeOrCurvature() {
    double h = 1e-3;
    for (double end : new double[] {FAT.lowest(), FAT.highest()}) {
      double slope = (FAT.heatCapacity(end + h) - FAT.heatCapacity(end - h)) / (2 * h);
      double curvature = (FAT.heatCapacity(end + h) + FAT.heatCapacity(end - h)) / (h * h);
      assertEquals(0, slope, 1e-2);
      assertEquals(0, curvature, 1e-2);
    }
    assertTrue(FAT.heatCapacity(303.15) > 1000);
  }

  @Test
  void manyTemperatures_haveTheValuesOfEach() {
    double[] temperatures = {200, 273.15, 283.15, 290, 310, 323.15, 400};
    double[] heats = {1, 2, 3, 4, 5, 6, 7};
    double[] capacities = heats.clone();
    FAT.addTakenUp(temperatures, 0.5, heats);
    FAT.addHeatCapacities(temperatures, 0.5, capacities);
    for (int i = 0; i < temperatures.length; i++) {
      assertEquals(i + 1 + 0.5 * FAT.takenUp(temperatures[i]), heats[i], 1e-11);
      assertEquals(i + 1 + 0.5 * FAT.heatCapacity(temperatures[i]), capacities[i], 1e-12);
    }
  }

  @Test
  void manyTemperatures_countFromZeroCelsius() {
    LatentHeat across = new LatentHeat("across", 30e3, 263.15, 283.15);
    double[] heats = {0, 0};
    across.addTakenUp(new double[] {273.15, 300}, 1, heats);
    assertEquals(0, heats[0], 1e-11);
    assertEquals(15e3, heats[1], 1e-11);
  }

  @Test
  void wrongArguments_areRefused() {
    assertRefused("name must not be blank, was \" \"", () -> new LatentHeat(" ", 1, 280, 290));
    assertRefused(
        "heat must be finite and greater than 0, was 0.0", () -> new LatentHeat("a", 0, 280, 290));
    assertRefused(
        "lowest must be finite and greater than 0, was NaN",
        () -> new LatentHeat("a", 1, Double.NaN, 290));
    assertRefused(
        "highest must be in [290.00000000000006, 1.7976931348623157E308], was 290.0",
        () -> new LatentHeat("a", 1, 290, 290));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
