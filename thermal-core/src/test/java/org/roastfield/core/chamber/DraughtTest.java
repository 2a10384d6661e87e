package org.roastfield.core.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Draught.Fuel;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.LoadedEvaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.units.Temperatures;

class DraughtTest {

  private static final double HOUR = 3600;

  /** Rise of the humidity ratio in the flue gas, as calculated by others; to their last digit. */
  @ParameterizedTest
  @CsvSource({"1.5, 0.019", "3, 0.010", "6, 0.005", "10, 0.003"})
  void charcoal_makesTheKnownHumidity(double excessAir, double rise) {
    Draught draught = Draught.ofFire(Fuel.CHARCOAL, 0.25 / HOUR, excessAir, 0.008);
    assertEquals(rise, draught.humidityRatio() - 0.008, 0.0005);
  }

  @ParameterizedTest
  @CsvSource({"1.5, 0.064", "3, 0.034", "6, 0.017", "10, 0.011"})
  void wood_makesTheKnownHumidityWithinATenth(double excessAir, double rise) {
    Draught draught = Draught.ofFire(Fuel.WOOD, 0.25 / HOUR, excessAir, 0);
    assertEquals(rise, draught.humidityRatio(), 0.1 * rise);
  }

  /** 0.2 m² that lose 1.3 kg/(m²·h) into 6-13 kg/h add 0.02-0.04. */
  @Test
  void meat_addsAsMuchAsTheFire() {
    double vapour = 0.2 * 1.3 / HOUR;
    assertEquals(0.043, new Draught(6 / HOUR, 0, 0).humidityRatio(vapour), 0.0005);
    assertEquals(0.02, new Draught(13 / HOUR, 0, 0).humidityRatio(vapour), 0.0005);
  }

  /** The law's own humidity is the balance of the draught, evaluated from its vapour flux. */
  @Test
  void loadedLaw_closesTheWaterOfTheDraught() {
    Draught draught = Draught.ofFire(Fuel.CHARCOAL, 0.25 / HOUR, 4, 0.008);
    double area = 0.11;
    double pressure = MoistAir.STANDARD_PRESSURE;
    Signal vapour = Signal.constant(MoistAir.vapourPressure(draught.humidityRatio(), pressure));
    LoadedEvaporation law =
        new LoadedEvaporation(Evaporation.of(0.8, 6, 0.98, vapour, pressure), draught.load(area));
    double surface = Temperatures.celsius(55);
    SurfaceFlux flux = new SurfaceFlux();
    law.evaluate(surface, 0, flux);
    double carriedOff = draught.dryFlow() * (law.humidityRatio(surface, 0) - 0.008);
    double made = draught.fuelWater() + area * flux.evaporation();
    assertEquals(made, carriedOff, 1e-12 * made);
    double byBalance = draught.humidityRatio(area * flux.evaporation());
    assertEquals(byBalance, law.humidityRatio(surface, 0), 1e-12);
    assertTrue(byBalance > draught.humidityRatio() + 0.005);
  }

  @Test
  void wrongNumbers_areRefused() {
    assertRefused("dryFlow must", () -> new Draught(0, 0, 0));
    assertRefused("outsideHumidityRatio must", () -> new Draught(1, -1, 0));
    assertRefused("fuelWater must", () -> new Draught(1, 0, Double.NaN));
    assertRefused("excessAir must be in [1.0, 50.0], was 0.9", () -> fire(1e-4, 0.9));
    assertRefused("burnRate must", () -> fire(0, 2));
    assertRefused("surface must", () -> new Draught(1, 0, 0).load(0));
    assertRefused("lossCoefficient must be in", () -> new HoldBox(0, 293));
    assertRefused("roomTemperature must", () -> new HoldBox(1, -293));
  }

  private static Draught fire(double burnRate, double excessAir) {
    return Draught.ofFire(Fuel.CHARCOAL, burnRate, excessAir, 0);
  }

  private static void assertRefused(String start, Runnable action) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, action::run);
    assertTrue(String.valueOf(e.getMessage()).startsWith(start), e::getMessage);
  }
}
