package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.NafemsT3;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;

/** NAFEMS T3, a bar as a slab of two faces held at their temperatures by perfect contact. */
class NafemsT3SimulationTest {

  private static final double PERFECT_CONTACT = 1e8;

  @Test
  void defaults_giveTheTargetTemperature() {
    assertEquals(NafemsT3.TARGET_CELSIUS, celsiusAtTarget(Settings.withDefaults()), 0.05);
  }

  @Test
  void tighterSettings_giveTheExactTemperature() {
    double exact = NafemsT3.celsius(NafemsT3.TARGET_DISTANCE_METRES, NafemsT3.TARGET_TIME_SECONDS);
    Settings tight = new Settings(1e-5, 200, 0.5e-3, 200_000);
    assertEquals(exact, celsiusAtTarget(tight), 2e-3);
  }

  static double celsiusAtTarget(Settings settings) {
    Material bar =
        Material.constant(
            "bar", NafemsT3.CONDUCTIVITY, NafemsT3.DENSITY, NafemsT3.SPECIFIC_HEAT_CAPACITY);
    Contact driven =
        new Contact(PERFECT_CONTACT, time -> Temperatures.celsius(NafemsT3.drivenEndCelsius(time)));
    Contact cold =
        new Contact(
            PERFECT_CONTACT, Signal.constant(Temperatures.celsius(NafemsT3.COLD_END_CELSIUS)));
    Cut cut =
        new Cut(
            Slab.ofThickness(NafemsT3.LENGTH_METRES),
            bar,
            Temperatures.celsius(NafemsT3.START_CELSIUS));
    Stage stage = Stage.ofFaces("heat", driven, cold, StageEnd.after(NafemsT3.TARGET_TIME_SECONDS));
    SimulationResult result = Bodies.run(settings, Cook.of(cut, stage));
    double depth = NafemsT3.LENGTH_METRES - NafemsT3.TARGET_DISTANCE_METRES;
    Trace target = result.probe(Probe.atDepth("target", depth));
    return Temperatures.toCelsius(target.at(result.endTime()));
  }
}
