package org.roastfield.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.support.UniformDraws;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class MoistAirPropertiesTest {

  private static final int TRIES = 500;

  /** Bisection over at most 105 K, sixty times, and the scatter of the saturation pressure. */
  private static final double SOLVED = 1e-9;

  @Property(tries = TRIES)
  void wetBulb_liesBetweenDewPointAndAir(
      @ForAll @DoubleRange(min = 280, max = 570) double air,
      @ForAll @DoubleRange(min = 0.006, max = 0.5) @Scale(4) double ratio,
      @ForAll @DoubleRange(min = 5e4, max = 1.1e5) double pressure) {
    double vapour = MoistAir.vapourPressure(ratio, pressure);
    double dewPoint = MoistAir.dewPoint(vapour);
    Assume.that(dewPoint <= air);
    double wetBulb = MoistAir.wetBulb(air, ratio, pressure);
    assertTrue(wetBulb <= air + SOLVED, () -> wetBulb + " K above the air");
    assertTrue(wetBulb >= dewPoint - SOLVED, () -> wetBulb + " K below the dew point");
    assertTrue(wetBulb <= SaturationPressure.boilingPoint(pressure) + SOLVED);
  }

  @Property(tries = TRIES)
  void wetBulb_ofSaturatedAirIsTheAir(
      @ForAll @DoubleRange(min = 275, max = 350) double air,
      @ForAll @DoubleRange(min = 5e4, max = 1.1e5) double pressure) {
    double ratio = MoistAir.humidityRatio(SaturationPressure.at(air), pressure);
    assertEquals(air, MoistAir.wetBulb(air, ratio, pressure), 1e-6);
  }

  @Property(tries = TRIES)
  void wetBulb_risesWithHumidityAndWithTheAir(
      @ForAll @DoubleRange(min = 320, max = 560) double air,
      @ForAll @DoubleRange(min = 0.005, max = 0.05) @Scale(5) double ratio) {
    double pressure = MoistAir.STANDARD_PRESSURE;
    double wetBulb = MoistAir.wetBulb(air, ratio, pressure);
    assertTrue(MoistAir.wetBulb(air, ratio + 0.001, pressure) > wetBulb);
    assertTrue(MoistAir.wetBulb(air + 1, ratio, pressure) > wetBulb);
  }

  @Property(tries = TRIES)
  void dewPoint_undoesTheSaturationPressure(
      @ForAll @DoubleRange(min = 269, max = 507) double temperature) {
    double vapour = SaturationPressure.at(temperature);
    assertEquals(temperature, MoistAir.dewPoint(vapour), 1e-8);
  }

  @Property(tries = TRIES)
  void humidities_undoOneAnother(
      @ForAll @DoubleRange(min = 0, max = 0.9) @Scale(6) double humidity,
      @ForAll @DoubleRange(min = 270, max = 370) double temperature) {
    double pressure = MoistAir.STANDARD_PRESSURE;
    double vapour = MoistAir.vapourPressureAtHumidity(humidity, temperature);
    double ratio = MoistAir.humidityRatio(vapour, pressure);
    assertEquals(vapour, MoistAir.vapourPressure(ratio, pressure), 1e-10 * (1 + vapour));
    assertEquals(humidity, MoistAir.relativeHumidity(vapour, temperature), 1e-14);
  }

  @Property(tries = TRIES)
  void altitude_lowersTheBoilingPoint(
      @ForAll @DoubleRange(min = -400, max = 8900) double altitude) {
    assertTrue(boilingAt(altitude + 50) < boilingAt(altitude) - 0.1);
  }

  private static double boilingAt(double altitude) {
    return SaturationPressure.boilingPoint(MoistAir.pressureAtAltitude(altitude));
  }
}
