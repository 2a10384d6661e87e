package org.roastfield.lab.replay;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;
import org.roastfield.lab.files.LogChannel;

class FitTest {

  private static final Simulator SIMULATOR =
      Simulator.with(Settings.withDefaults().withCells(16).withAccuracy(0.02));
  private static final Map<FitParameter, Double> TRUTH =
      Map.of(FitParameter.SIZE, 1.1, FitParameter.DRIVE, 0.6, FitParameter.START, 3.0);

  private static final List<FitParameter> THREE =
      List.of(FitParameter.SIZE, FitParameter.DRIVE, FitParameter.START);
  private static final ComparisonOptions UNTIL = ComparisonOptions.DEFAULTS.withUntil(7200);
  private static final String HALFWAY = "{name: halfway, depth: 24 mm}";
  private static final String LEAF =
      "{name: leaf, off-centre: 3 mm, response: 240 s, bias: 0.5 K,"
          + " stem: {diameter: 6 mm, air-share: 0.4}}";

  /** A log without errors tells the numbers it was made with. */
  @Test
  void computedLog_givesItsNumbersBack() {
    CookFile file = Published.porkLoin();
    Fit.Fitted made = fit(file, Published.syntheticLog()).fit(List.of(), TRUTH);
    CookLog log = log(made);
    Fit.Fitted found = fit(file, log).fit(THREE, Map.of());
    assertTrue(found.errors().rms() < 0.02, "rms " + found.errors().rms());
    assertTruth(found);
  }

  private static void assertTruth(Fit.Fitted found) {
    TRUTH.forEach(
        (parameter, value) -> {
          double tolerance = 0.02 * Math.max(1, value);
          assertEquals(
              value,
              found.values().getOrDefault(parameter, Double.NaN),
              tolerance,
              parameter.word());
        });
  }

  /**
   * The same for a probe that lags by 4 min, reads high through its stem and misses the core: its
   * log tells the truth if the cook file states the probe, and something else if it does not.
   */
  @Test
  void logOfAProbeThatErrs_givesTheNumbersBackIfItIsStated() {
    CookFile file = porkLoinWith(HALFWAY, LEAF);
    Fit.Fitted made = fit(file, Published.syntheticLog()).fit(List.of(), TRUTH);
    CookLog log = log(made);
    Fit.Fitted found = fit(file, log).fit(THREE, Map.of());
    assertTrue(found.errors().rms() < 0.02, "rms " + found.errors().rms());
    assertTruth(found);
    Fit.Fitted wrong = Fit.of(file, log, UNTIL.withProbe("core"), SIMULATOR).fit(List.of(), TRUTH);
    assertTrue(wrong.errors().rms() > 1, "rms " + wrong.errors().rms());
    assertTrue(made.compared().byProbe());
    assertEquals("probe leaf", made.compared().readout());
    assertTrue(
        made.compared().core().stream().anyMatch(p -> Math.abs(p.computed() - p.trueCore()) > 1));
  }

  /**
   * Steps of a display are no slopes to follow: the fit does without them, the errors have them.
   */
  @Test
  void displayInSteps_isFittedAllTheSame() {
    CookFile smooth = porkLoinWith(HALFWAY, LEAF);
    String steps = LEAF.replace("bias: 0.5 K", "bias: 0.5 K, resolution: 1 K");
    CookFile stepped = porkLoinWith(HALFWAY, steps);
    CookLog log = log(fit(stepped, Published.syntheticLog()).fit(List.of(), TRUTH));
    Fit.Fitted found = fit(stepped, log).fit(THREE, Map.of());
    assertEquals(1.1, found.values().getOrDefault(FitParameter.SIZE, 0.0), 0.03);
    double rounding = fit(smooth, log).fit(List.of(), TRUTH).errors().rms();
    assertEquals(1 / Math.sqrt(12), rounding, 0.05);
    assertEquals(0, fit(stepped, log).fit(List.of(), TRUTH).errors().rms(), 1e-4);
  }

  /** Of a log that slopes would lead away from: half the stated size, and convection trebled. */
  @Test
  void farFromTheStatedNumbers_theFitBeginsAtTheBestOfSeveral() {
    Map<FitParameter, Double> truth = Map.of(FitParameter.SIZE, 0.55, FitParameter.CONVECTION, 2.6);
    CookFile file = Published.porkLoin();
    CookLog log = log(fit(file, Published.syntheticLog()).fit(List.of(), truth));
    Fit.Fitted found =
        fit(file, log).fit(List.of(FitParameter.SIZE, FitParameter.CONVECTION), Map.of());
    truth.forEach(
        (parameter, value) ->
            assertEquals(
                value,
                found.values().getOrDefault(parameter, 0.0),
                0.02 * value,
                parameter.word()));
  }

  @Test
  void thickestStationOfATaper_isFitted() {
    CookFile leg = CookFileReader.parse("leg.yaml", Published.lambLegBytes());
    CookLog log =
        log(fit(leg, Published.syntheticLog()).fit(List.of(), Map.of(FitParameter.SIZE, 0.9)));
    Fit.Fitted found = fit(leg, log).fit(List.of(FitParameter.SIZE), Map.of());
    assertEquals(0.9, found.values().getOrDefault(FitParameter.SIZE, 0.0), 0.01);
    assertTrue(found.compared().water().evaporated().isEmpty());
  }

  /** The area of the whole cut follows a fitted size: of a cylinder its diameter. */
  @Test
  void waterLost_isThatOfTheFittedCut() {
    ComparisonOptions weighed = UNTIL.withWeighedLoss(0.1);
    Fit fit = Fit.of(Published.porkLoin(), Published.syntheticLog(), weighed, SIMULATOR);
    WaterLoss water = fit.fit(List.of(), TRUTH).compared().water();
    double area = Math.PI * 0.096 * 1.1 * 0.31;
    assertEquals(water.evaporatedPerArea() * area, water.evaporated().orElseThrow(), 1e-12);
    assertEquals(water.drippedPerArea() * area, water.dripped().orElseThrow(), 1e-12);
    double both = water.evaporated().orElseThrow() + water.dripped().orElseThrow();
    assertEquals(both - 0.1, water.error().orElseThrow(), 1e-12);
  }

  @Test
  void fewerReadingsThanNumbers_areRefused() {
    String three = "time_s,core_degC\n0,8\n600,9\n1200,11\n";
    CookLog log = CookLogReader.parse("log.csv", three.getBytes(StandardCharsets.UTF_8));
    Fit fit = fit(Published.porkLoin(), log);
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> fit.fit(THREE, Map.of()));
    assertEquals("core readings must be more than the numbers to fit, 3, were 3", e.getMessage());
  }

  @Test
  void valuesBeyondTheirBounds_areRefused() {
    Fit fit = fit(Published.porkLoin(), Published.syntheticLog());
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> fit.fit(List.of(), Map.of(FitParameter.SIZE, 0.0)));
    assertEquals("size must be in [0.3, 3.0], was 0.0", e.getMessage());
  }

  @Test
  void sizeOfACompactPiece_scalesIt() {
    String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
    String box = text.replace("shape: cylinder", "shape: finite-cylinder");
    CookFile file = CookFileReader.parse("box.yaml", box.getBytes(StandardCharsets.UTF_8));
    Fit.Fitted made = fit(file, Published.syntheticLog()).fit(List.of(), TRUTH);
    assertEquals(Compact.ofCylinder(0.096, 0.31).scaled(1.1), made.result().cook().cut().shape());
  }

  @Test
  void search_findsThePlaceWithinBounds() {
    BoundedSearch.Residuals line = x -> new double[] {x[0] - 3, 10 * (x[1] + x[0] * x[0]), 0};
    double[] step = {1e-4, 1e-4};
    double[] wide = {-100, -100};
    double[] found = new BoundedSearch(line, 3, step, wide, new double[] {100, 100}).solve(wide);
    assertArrayEquals(new double[] {3, -9}, found, 1e-4);
    double[] high = {2, 100};
    double[] bounded = new BoundedSearch(line, 3, step, wide, high).solve(new double[] {0, 0});
    assertArrayEquals(new double[] {2, -4}, bounded, 1e-4);
    assertEquals(2, bounded[0]);
  }

  /** A straight way to the least leads along a bound of the first parameter and off it again. */
  @Test
  void search_comesBackFromABound() {
    BoundedSearch.Residuals bent =
        x -> new double[] {10 * (x[0] - x[1] * x[1] + 3 * x[1]), x[1] - 4};
    double[] low = {0, -100};
    double[] start = {0.5, 0.5};
    double[] found =
        new BoundedSearch(bent, 2, new double[] {1e-4, 1e-4}, low, new double[] {100, 100})
            .solve(start);
    assertArrayEquals(new double[] {4, 4}, found, 1e-4);
  }

  /**
   * What cannot be computed beyond some value is not entered, and slopes are taken beside it. The
   * search may stop where less than 1e-9 of half the squares is promised.
   */
  @Test
  void search_keepsAwayFromWhatCannotBeComputed() {
    BoundedSearch.Residuals half =
        x -> new double[] {x[0] > 2 ? Double.POSITIVE_INFINITY : x[0] - 1.99999, 0};
    double[] found =
        new BoundedSearch(half, 2, new double[] {1e-3}, new double[] {-9}, new double[] {9})
            .solve(new double[] {-5});
    double promised = Math.sqrt(2e-9);
    assertArrayEquals(new double[] {1.99999}, found, promised);
  }

  @Test
  void logWithoutCore_isRefused() {
    CookLog log =
        CookLogReader.parse(
            "log.csv", "time_s,chamber_degC\n0,5\n60,6\n".getBytes(StandardCharsets.UTF_8));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> fit(Published.porkLoin(), log));
    assertEquals("log.csv has no core channel to compare with", e.getMessage());
  }

  private static Fit fit(CookFile file, CookLog log) {
    return Fit.of(file, log, UNTIL, SIMULATOR);
  }

  /** What was computed at the readings, as a log in the same chamber. */
  private static CookLog log(Fit.Fitted made) {
    LogChannel chamber = Published.syntheticLog().channel(CookLog.CHAMBER).orElseThrow();
    StringBuilder text = new StringBuilder("time_s,chamber_degC,core_degC\n");
    int i = 0;
    for (Comparison pair : made.compared().core()) {
      while (chamber.time(i) < pair.time()) {
        i++;
      }
      text.append(
          String.format(
              Locale.ROOT,
              "%.1f,%.6f,%.6f%n",
              pair.time(),
              Temperatures.toCelsius(chamber.temperature(i)),
              Temperatures.toCelsius(pair.computed())));
    }
    return CookLogReader.parse("log.csv", text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static CookFile porkLoinWith(String before, String after) {
    String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
    assertTrue(text.contains(before), before);
    byte[] bytes = text.replace(before, after).getBytes(StandardCharsets.UTF_8);
    return CookFileReader.parse("cook.yaml", bytes);
  }
}
