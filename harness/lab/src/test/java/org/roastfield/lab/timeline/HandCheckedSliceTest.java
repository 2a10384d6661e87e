package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.Trace;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;

/**
 * The slice of the boathouse pork loin by hand: temperatures read every few seconds at 241 radii,
 * and areas of rings added up with the bounds of the scales as the sources print them. Nothing of
 * the outcome package is used for the numbers by hand.
 *
 * <p>On paper, from the core of 61.7 °C at its warmest (the README's timetable): on the trade scale
 * it is medium, 60-65 °C, on the research scale rare, 60-62.8 °C. The ring beyond medium begins
 * 18.7 mm below the surface, at 29.3 of 48 mm, so that (29.3/48)² = 37.3 % of a slice are medium;
 * beyond rare it begins at 23.1 of 48 mm, and (23.1/48)² = 23.2 % are rare.
 */
class HandCheckedSliceTest {

  private static final int PARTS = 240;
  private static final double RADIUS = 48;
  private static final CookFile LOIN = Published.porkLoin();
  private static final SimulationResult RESULT =
      Simulator.withDefaults().run(LOIN.cook()).orElseThrow();
  private static final Inside INSIDE = Inside.of(LOIN, RESULT);

  /** Highest temperature at each radius [°C], from the middle outwards, [PARTS + 1]. */
  private static final double[] HIGHEST = highest();

  private static double[] highest() {
    double[] highest = new double[PARTS + 1];
    for (int i = 0; i <= PARTS; i++) {
      Trace trace = RESULT.place(RADIUS / 1000 * i / PARTS);
      double most = 0;
      for (double time = 0; time < RESULT.endTime(); time += time > 8000 && time < 9000 ? 1 : 20) {
        most = Math.max(most, trace.at(time));
      }
      highest[i] = most - 273.15;
    }
    return highest;
  }

  /** Radius within which all is colder than a bound [mm]; hotter outwards in this cook. */
  private static double radiusBelow(double celsius) {
    for (int i = 1; i <= PARTS; i++) {
      assertTrue(HIGHEST[i] > HIGHEST[i - 1] - 0.01, "hotter outwards at " + i);
      if (HIGHEST[i] >= celsius) {
        double share = (celsius - HIGHEST[i - 1]) / (HIGHEST[i] - HIGHEST[i - 1]);
        return RADIUS * (i - 1 + Math.max(0, share)) / PARTS;
      }
    }
    return RADIUS;
  }

  private static double areaBetween(double low, double high) {
    return (Math.pow(radiusBelow(high), 2) - Math.pow(radiusBelow(low), 2)) / (RADIUS * RADIUS);
  }

  private static Doneness doneness(String scale) {
    return INSIDE.doneness().stream()
        .filter(one -> one.scale().name().equals(scale))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void shares_areAreasOfRings() {
    double[] trade = {46, 52, 55, 60, 65, 71, 1000};
    double[] research = {55, 60, 62.8, 71.1, 76.7, 1000};
    for (int i = 0; i < trade.length - 1; i++) {
      double shown = doneness("trade").shares().get(i + 1);
      assertEquals(areaBetween(trade[i], trade[i + 1]), shown, 0.004, "trade " + trade[i]);
    }
    for (int i = 0; i < research.length - 1; i++) {
      double shown = doneness("research").shares().get(i + 1);
      assertEquals(
          areaBetween(research[i], research[i + 1]), shown, 0.004, "research " + research[i]);
    }
  }

  @Test
  void rings_areWhatLiesBeyondTheCoresBand() {
    assertEquals(61.7, HIGHEST[0], 0.05);
    assertEquals(RADIUS - radiusBelow(65), 1000 * doneness("trade").upperRing(), 0.2);
    assertEquals(RADIUS - radiusBelow(62.8), 1000 * doneness("research").upperRing(), 0.2);
  }

  /** The numbers of the class comment, to the digits that the screen shows. */
  @Test
  void paperAndScreen_agree() {
    assertEquals(18.7, 1000 * doneness("trade").upperRing(), 0.05);
    assertEquals(24.9, 1000 * doneness("research").upperRing(), 0.05);
    assertEquals(Math.pow(29.3 / 48, 2), doneness("trade").shares().get(4), 0.002);
    assertEquals(Math.pow(23.1 / 48, 2), doneness("research").shares().get(2), 0.002);
  }

  /**
   * Pressed out: 0.345/(1 + 30 exp(−0.25 (T − 52))) at each radius, by its ring's area, in
   * proportion to the loin's water. What evaporates is part of it, but for what does in the rest.
   */
  @Test
  void pressedOutJuice_isTheMeanOverRings() {
    double sum = 0;
    for (int i = 0; i < PARTS; i++) {
      double celsius = 0.5 * (HIGHEST[i] + HIGHEST[i + 1]);
      double ring = (Math.pow(i + 1, 2) - Math.pow(i, 2)) / Math.pow(PARTS, 2);
      sum += ring * 0.345 / (1 + 30 * Math.exp(-0.25 * (celsius - 52)));
    }
    assertEquals(0.225, sum, 0.001);
    double loin = Math.PI * 0.048 * 0.048 * 0.31;
    double pressed = sum / 0.72 * LOIN.moisture().content() * loin / 2.40;
    double late = INSIDE.outcomes().juice().total() - pressed;
    assertTrue(late > -0.001 && late < 0.003, () -> "after the most drip " + late);
  }

  /** First-order kinetics in the middle, by a sum over seconds. */
  @Test
  void colourOfTheMiddle_isASumOverTime() {
    Trace core = RESULT.core();
    double sum = 0;
    for (double time = 0.5; time < RESULT.endTime(); time++) {
      sum += 7.98e43 / 60 * Math.exp(-290_000 / (8.314462618 * core.at(time)));
    }
    double least = INSIDE.outcomes().colour().orElseThrow().changed().least();
    assertEquals(1 - Math.exp(-sum), least, 0.002);
    assertEquals(0.65, least, 0.005);
  }

  @Test
  void highestOfAll_isInTheSear() {
    assertEquals(Arrays.stream(HIGHEST).max().orElseThrow(), HIGHEST[PARTS]);
    assertTrue(HIGHEST[PARTS] > 100);
  }
}
