package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.roastfield.core.material.WaterHolding;
import org.roastfield.core.units.Temperatures;

/** Outcomes of histories whose answer is known on paper. */
class ClosedFormsTest {

  private static TemperatureHistory hold(double celsius, double seconds) {
    double kelvin = Temperatures.celsius(celsius);
    return TemperatureHistory.through(new double[] {0, seconds}, new double[] {kelvin, kelvin});
  }

  /** T = room + (start − room) exp(−t/τ), by knots every second. */
  private static TemperatureHistory newtonsCooling(double start, double tau, int seconds) {
    double[] times = new double[seconds + 1];
    double[] temperatures = new double[seconds + 1];
    for (int i = 0; i <= seconds; i++) {
      times[i] = i;
      temperatures[i] = Temperatures.celsius(3 + (start - 3) * Math.exp(-i / tau));
    }
    return TemperatureHistory.through(times, temperatures);
  }

  private static Finding cooling(TemperatureHistory... places) {
    return cooling(Safety.of(CutKind.INTACT, List.of(places), false));
  }

  private static Finding cooling(Safety safety) {
    return safety.findings().stream()
        .filter(finding -> finding.minimum().startsWith("cooling"))
        .findFirst()
        .orElseThrow();
  }

  /** Index of a crumb at a constant temperature, by the law as published, three to eight times. */
  @Test
  void browning_ofAConstantFace_isTheClosedForm() {
    for (double celsius : new double[] {140, 180, 220, 250}) {
      for (double seconds : new double[] {30, 300, 3000}) {
        double k = 42_000 * Math.exp(-64_151 / (8.314462618 * (celsius + 273.15)));
        Browning browning = Browning.of(hold(celsius, seconds), OptionalDouble.empty());
        assertEquals(52 * (1 - Math.exp(-3 * k * seconds)), browning.low(), 1e-9);
        assertEquals(52 * (1 - Math.exp(-5 * k * seconds)), browning.middle(), 1e-9);
        assertEquals(52 * (1 - Math.exp(-8 * k * seconds)), browning.high(), 1e-9);
        assertEquals(seconds, browning.timeDry(), 1e-9);
      }
    }
  }

  /**
   * Half lives of dry crumb in minutes as a table worked out apart has them; meat is five times.
   */
  @Test
  void browning_hasThePublishedHalfLives() {
    double[][] rows = {{140, 36}, {160, 15}, {180, 6.8}, {200, 3.3}};
    for (double[] row : rows) {
      Browning half = Browning.of(hold(row[0], row[1] * 60 / 5), OptionalDouble.empty());
      assertEquals(26, half.middle(), 1.5, row[0] + " °C");
    }
  }

  @Test
  void browning_isNothingOnAWetFace_andKeepsItsRateAboveItsRange() {
    assertEquals(0, Browning.of(hold(100, 1e5), OptionalDouble.empty()).high());
    assertTrue(Browning.of(hold(100.1, 1e5), OptionalDouble.empty()).low() > 0);
    Browning edge = Browning.of(hold(250, 20), OptionalDouble.empty());
    Browning beyond = Browning.of(hold(330, 20), OptionalDouble.empty());
    assertEquals(edge.middle(), beyond.middle(), 1e-12);
    assertTrue(edge.mayChar());
    assertFalse(Browning.of(hold(229.9, 20), OptionalDouble.empty()).mayChar());
  }

  /** 0.345/(1 + 30 exp(−0.25 · 8)) = 0.0682 at 60 °C; half of 0.345 where 30 exp(…) is 1. */
  @Test
  void juice_atThePointsOfItsCurve() {
    assertEquals(
        0.345 / (1 + 30 * Math.exp(-2)),
        WaterHolding.BEEF.pressedOut(Temperatures.celsius(60)),
        1e-12);
    assertEquals(0.0682, WaterHolding.BEEF.pressedOut(Temperatures.celsius(60)), 1e-4);
    double middle = 52 + Math.log(30) / 0.25;
    assertEquals(65.6, middle, 0.01);
    assertEquals(0.1725, WaterHolding.BEEF.pressedOut(Temperatures.celsius(middle)), 1e-12);
    assertEquals(0.345, WaterHolding.BEEF.pressedOut(Temperatures.celsius(150)), 1e-9);
    assertTrue(WaterHolding.BEEF.pressedOut(Temperatures.celsius(20)) < 1e-5);
  }

  /** τ ln of the ratio of differences, once for each span. */
  @Test
  void cooling_isNewtonsLaw() {
    double tau = 4000;
    double first = tau * Math.log((54.0 + 4.0 / 9 - 3) / (26 + 2.0 / 3 - 3));
    double second = tau * Math.log((26 + 2.0 / 3 - 3) / (4 + 4.0 / 9 - 3));
    TemperatureHistory place = newtonsCooling(60, tau, 30_000);
    Finding finding = cooling(place, place);
    assertEquals(Math.min(5400 - first, 18_000 - second), finding.margin(), 0.1);
    assertTrue(finding.met());
    Finding slow = cooling(place, newtonsCooling(60, 1.8 * tau, 60_000));
    assertEquals(Math.min(5400 - 1.8 * first, 18_000 - 1.8 * second), slow.margin(), 0.1);
    assertFalse(slow.met());
  }

  @Test
  void cooling_thatWasNotComputedToItsEnd_isMetByNobody_butMayBeMissed() {
    TemperatureHistory early = newtonsCooling(60, 4000, 1000);
    assertTrue(
        Safety.of(CutKind.INTACT, List.of(early, early), false).findings().stream()
            .noneMatch(finding -> finding.minimum().startsWith("cooling")));
    TemperatureHistory late = newtonsCooling(60, 40_000, 10_000);
    assertTrue(cooling(late, early).margin() < 0);
    TemperatureHistory halfWay = newtonsCooling(60, 4000, 6000);
    assertTrue(
        Safety.of(CutKind.INTACT, List.of(halfWay, halfWay), false).findings().stream()
            .noneMatch(finding -> finding.minimum().startsWith("cooling")));
  }

  /** 50 to 130 °F is 80 °F of 100 °F; 40 to 140 °F is 70 °F up and then 0 or 10 down. */
  @Test
  void risesAndGrowth_areReadOffRamps() {
    double[] times = {0, 10_000, 12_000};
    TemperatureHistory place =
        TemperatureHistory.through(
            times,
            new double[] {
              Temperatures.fahrenheit(45),
              Temperatures.fahrenheit(145),
              Temperatures.fahrenheit(135)
            });
    Safety safety = Safety.of(CutKind.INTACT, List.of(place, place), false);
    assertEquals(8000, safety.riseTime().orElseThrow(), 1e-6);
    assertEquals(9500 + 1000, safety.growthTime(), 1e-6);
    TemperatureHistory cold = hold(50, 40_000);
    Safety never = Safety.of(CutKind.INTACT, List.of(cold, place), false);
    assertTrue(never.riseTime().isEmpty());
    assertEquals(40_000, never.growthTime(), 1e-6);
  }

  /** Two places, each half of a slab's way: the share changed straight between them. */
  @Test
  void colour_sharesAreThoseOfTheKinetics() {
    double rate = FirstOrder.MYOGLOBIN.rateAt(Temperatures.celsius(60));
    double seconds = 1200;
    double changed = 1 - Math.exp(-rate * seconds);
    CrossSection section =
        new CrossSection(
            0,
            new double[] {0, 1},
            new double[] {
              FirstOrder.MYOGLOBIN.changed(hold(20, seconds)),
              FirstOrder.MYOGLOBIN.changed(hold(60, seconds))
            });
    Colour colour = new Colour(FirstOrder.MYOGLOBIN, section);
    assertEquals(0.065 / changed, colour.rare(), 1e-6);
    assertEquals(1 - 0.065 / changed, colour.between(), 1e-6);
    assertEquals(0, colour.wellDone(), 1e-12);
    assertEquals(1, colour.rare() + colour.between() + colour.wellDone(), 1e-12);
  }

  @Test
  void chances_countMissingFindingsAsNotMet_andKeepThoseThatOnlySomeShow() {
    TemperatureHistory early = newtonsCooling(60, 4000, 1000);
    TemperatureHistory late = newtonsCooling(60, 40_000, 10_000);
    TemperatureHistory done = newtonsCooling(60, 4000, 30_000);
    Safety short1 = Safety.of(CutKind.INTACT, List.of(early, early), false);
    Safety missed = Safety.of(CutKind.INTACT, List.of(late, late), false);
    Safety met = Safety.of(CutKind.INTACT, List.of(done, done), false);
    Safety with = short1.withChances(List.of(short1, missed, met, met));
    assertEquals(0.5, cooling(with).chance().orElseThrow());
    assertFalse(cooling(with).met());
    assertEquals(
        0,
        short1.withChances(Collections.nCopies(3, short1)).findings().stream()
            .filter(finding -> finding.minimum().startsWith("cooling"))
            .count());
  }
}
