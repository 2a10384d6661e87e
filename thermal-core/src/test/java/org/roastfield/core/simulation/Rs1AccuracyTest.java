package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.units.Temperatures;

/** The model problem RS-1 through the open interface for laws, with default settings: 40 cells. */
class Rs1AccuracyTest {

  private static final double CORE_ALLOWED = 0.05;
  private static final double SEAR_ALLOWED = 0.5;
  private static final double EVENT_ALLOWED = 1.5;
  private static final double PEAK_TIME_ALLOWED = 10;

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void defaults_meetTheReferenceAtCoreAndSurfaceAndPull(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    Rs1Errors errors = Rs1Errors.of(reference, run(Rs1Cook.of(reference)));
    assertAll(
        name + ": " + errors,
        () -> assertTrue(errors.core() <= CORE_ALLOWED, "core"),
        () -> assertTrue(errors.middle() <= CORE_ALLOWED, "middle"),
        () -> assertTrue(errors.searSurface() <= SEAR_ALLOWED, "surface in the sear"),
        () -> assertTrue(errors.surface() <= SEAR_ALLOWED, "surface in roast and rest"),
        () -> assertTrue(Math.abs(errors.event()) <= EVENT_ALLOWED, "pull"));
  }

  /**
   * The reference has no rows before 10 s; a converged run of the same code, which meets the
   * reference, has.
   */
  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void surfaceInTheSear_isRightFromThreeSecondsAfterEachSwitch(String name) {
    Cook cook = Rs1Cook.of(Rs1Reference.load(name));
    SimulationResult found = run(cook);
    SimulationResult converged =
        Simulator.with(new Settings(1e-5, 320, 0.05e-3, 200_000)).run(cook).orElseThrow();
    for (int i = 0; i < cook.stages().size(); i++) {
      if (cook.stages().get(i).name().equals("sear")) {
        for (double since = 3; since <= 30; since += 1) {
          double exact = converged.upperSurface().at(converged.stages().get(i).start() + since);
          double value = found.upperSurface().at(found.stages().get(i).start() + since);
          assertEquals(exact, value, SEAR_ALLOWED, name + " " + since + " s into stage " + i);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void stageEnds_meetTheReference(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    SimulationResult result = run(Rs1Cook.of(reference));
    for (Rs1Reference.StageEndState state : reference.stageEnds()) {
      StageResult stage = last(result, state.stage());
      assertEquals(state.seconds(), stage.end(), EVENT_ALLOWED);
      assertEquals(state.centreCelsius(), Temperatures.toCelsius(stage.coreAtEnd()), CORE_ALLOWED);
      assertEquals(
          state.surfaceCelsius(), Temperatures.toCelsius(stage.upperSurfaceAtEnd()), SEAR_ALLOWED);
    }
  }

  @Test
  void slab_peaksInsideTheRest() {
    Rs1Reference reference = Rs1Reference.load("S1");
    SimulationResult result = run(Rs1Cook.of(reference));
    StageResult rest = result.stage("rest");
    Peak peak = result.corePeak(rest);
    Rs1Reference.Peak expected = reference.restPeak().withinRest();
    assertTrue(peak.interior());
    assertTrue(reference.restPeak().interior());
    assertEquals(expected.centreCelsius(), Temperatures.toCelsius(peak.temperature()), 0.05);
    assertEquals(expected.secondsInRest(), peak.time() - rest.start(), PEAK_TIME_ALLOWED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "P1"})
  void coreThatStillRises_peaksAtTheEndOfTheRest(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    SimulationResult result = run(Rs1Cook.of(reference));
    StageResult rest = result.stage("rest");
    Peak peak = result.corePeak(rest);
    assertFalse(peak.interior());
    assertEquals(rest.end(), peak.time());
    assertEquals(rest.coreAtEnd(), peak.temperature(), 1e-12);
    assertEquals(
        reference.restPeak().withinRest().centreCelsius(),
        Temperatures.toCelsius(peak.temperature()),
        CORE_ALLOWED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"C1", "P1"})
  void longerRest_findsTheTruePeak(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    SimulationResult result = run(Rs1Cook.of(reference, 7200));
    StageResult rest = result.stage("rest");
    Peak peak = result.corePeak(rest);
    Rs1Reference.Peak expected = reference.restPeak().ifRestGoesOn().orElseThrow();
    assertTrue(peak.interior());
    assertEquals(
        expected.centreCelsius(), Temperatures.toCelsius(peak.temperature()), CORE_ALLOWED);
    assertEquals(expected.secondsInRest(), peak.time() - rest.start(), PEAK_TIME_ALLOWED);
  }

  private static StageResult last(SimulationResult result, String name) {
    return result.stages().stream()
        .filter(stage -> stage.name().equals(name))
        .reduce((first, second) -> second)
        .orElseThrow();
  }

  private static SimulationResult run(org.roastfield.core.cook.Cook cook) {
    return Bodies.run(Settings.withDefaults(), cook);
  }
}
