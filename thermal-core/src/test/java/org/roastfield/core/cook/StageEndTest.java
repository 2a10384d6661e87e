package org.roastfield.core.cook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.units.Temperatures;

class StageEndTest {

  private static final String LONGEST_RANGE =
      " must be in [" + Double.MIN_NORMAL + ", 864000.0], was ";

  @Test
  void everyRule_hasABoundInTime() {
    assertEquals(60, StageEnd.after(60).longest(1000));
    assertEquals(500, StageEnd.at(1500).longest(1000));
    assertEquals(0, StageEnd.at(900).longest(1000));
    assertEquals(7200, StageEnd.coreRisesTo(330, 7200).longest(1000));
    assertEquals(600, new StageEnd.Falls(Probe.CORE, 330, 600).longest(1000));
  }

  @Test
  void rules_areDescribedInWords() {
    assertEquals("after 60.0 s", StageEnd.after(60).description());
    assertEquals("at 1500.0 s", StageEnd.at(1500).description());
    assertEquals(
        "core rises to 57.0 °C",
        StageEnd.coreRisesTo(Temperatures.celsius(57), 7200).description());
    assertEquals(
        "tip falls to 30.0 °C",
        new StageEnd.Falls(Probe.atDepth("tip", 0.01), Temperatures.celsius(30), 60).description());
  }

  @Test
  void boundsAreRefusedOutsideTenDays() {
    assertRefused("duration" + LONGEST_RANGE + "0.0", () -> StageEnd.after(0));
    assertRefused("duration" + LONGEST_RANGE + "864001.0", () -> StageEnd.after(864_001));
    assertRefused("duration" + LONGEST_RANGE + "NaN", () -> StageEnd.after(Double.NaN));
    assertRefused("time must be in [0.0, 864000.0], was -1.0", () -> StageEnd.at(-1));
    assertRefused(
        "longest" + LONGEST_RANGE + "Infinity",
        () -> StageEnd.coreRisesTo(330, Double.POSITIVE_INFINITY));
    assertRefused(
        "longest" + LONGEST_RANGE + "-5.0", () -> new StageEnd.Falls(Probe.CORE, 330, -5));
  }

  @Test
  void targets_arePositiveTemperatures() {
    assertRefused(
        "temperature must be finite and greater than 0, was NaN",
        () -> StageEnd.coreRisesTo(Double.NaN, 60));
    assertRefused(
        "temperature must be finite and greater than 0, was 0.0",
        () -> new StageEnd.Falls(Probe.CORE, 0, 60));
  }

  @Test
  void probes_areMeasuredFromTheUpperFace() {
    Shape slab = Slab.ofThickness(0.05);
    assertEquals(0.025, Probe.SURFACE.distanceFromMiddle(slab));
    assertEquals(0, Probe.CORE.distanceFromMiddle(slab));
    assertEquals(-0.015, Probe.atDepth("low", 0.04).distanceFromMiddle(slab), 1e-15);
    assertEquals(0.04, Probe.atDepth("p", 0.01).distanceFromMiddle(Cylinder.ofRadius(0.05)), 1e-15);
  }

  @Test
  void probeArguments_areChecked() {
    assertRefused("name must not be blank, was \" \"", () -> Probe.atDepth(" ", 0.01));
    assertRefused("depth must be at least 0, was NaN", () -> new Probe("p", Double.NaN));
    assertRefused(
        "depth must be finite and at least 0, was Infinity",
        () -> Probe.atDepth("p", Double.POSITIVE_INFINITY));
  }

  private static void assertRefused(String message, Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
