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
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;

class FitTest {

  private static final Simulator SIMULATOR =
      Simulator.with(Settings.withDefaults().withCells(16).withAccuracy(0.02));
  private static final Map<FitParameter, Double> TRUTH =
      Map.of(FitParameter.SIZE, 1.1, FitParameter.DRIVE, 0.6, FitParameter.START, 3.0);

  /** A log without errors tells the numbers it was made with. */
  @Test
  void computedLog_givesItsNumbersBack() {
    CookFile file = Published.porkLoin();
    Fit.Fitted made = fit(file, Published.syntheticLog()).fit(List.of(), TRUTH);
    CookLog log = log(made.result());
    Fit.Fitted found =
        fit(file, log)
            .fit(List.of(FitParameter.SIZE, FitParameter.DRIVE, FitParameter.START), Map.of());
    assertTrue(found.errors().rms() < 0.02, "rms " + found.errors().rms());
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

  @Test
  void sizeOfACompactPiece_scalesIt() {
    String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
    String box = text.replace("shape: cylinder", "shape: finite-cylinder");
    CookFile file = CookFileReader.parse("box.yaml", box.getBytes(StandardCharsets.UTF_8));
    Fit.Fitted made = fit(file, Published.syntheticLog()).fit(List.of(), TRUTH);
    assertEquals(Compact.ofCylinder(0.096, 0.31).scaled(1.1), made.result().cook().cut().shape());
  }

  @Test
  void leastSquares_findsThePlaceWithinBounds() {
    LeastSquares.Residuals line = x -> new double[] {x[0] - 3, 10 * (x[1] + x[0] * x[0]), 0};
    double[] step = {1e-4, 1e-4};
    double[] wide = {-100, -100};
    double[] found = new LeastSquares(line, step, wide, new double[] {100, 100}).solve(wide);
    assertArrayEquals(new double[] {3, -9}, found, 1e-4);
    double[] high = {2, 100};
    double[] bounded = new LeastSquares(line, step, wide, high).solve(new double[] {0, 0});
    assertArrayEquals(new double[] {2, -4}, bounded, 1e-3);
  }

  @Test
  void logWithoutCore_isRefused() {
    CookLog log =
        CookLogReader.parse(
            "log.csv", "time_s,chamber_degC\n0,5\n60,6\n".getBytes(StandardCharsets.UTF_8));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> fit(Published.porkLoin(), log));
    assertEquals("log.csv has no core channel to fit", e.getMessage());
  }

  private static Fit fit(CookFile file, CookLog log) {
    return Fit.of(file, log, 0, Math.min(log.end(), 7200), SIMULATOR);
  }

  /** Core of a computed cook every five minutes, in the chamber of its cook file. */
  private static CookLog log(SimulationResult result) {
    StringBuilder text = new StringBuilder("time_s,chamber_degC,core_degC\n");
    for (int i = 0; i < Published.syntheticLog().rows(); i++) {
      double time = Published.syntheticLog().channel(CookLog.CHAMBER).orElseThrow().time(i);
      if (time > result.endTime()) {
        break;
      }
      double chamber =
          Published.syntheticLog().channel(CookLog.CHAMBER).orElseThrow().temperature(i);
      text.append(
          String.format(
              Locale.ROOT,
              "%.1f,%.6f,%.6f%n",
              time,
              Temperatures.toCelsius(chamber),
              Temperatures.toCelsius(result.core().at(time))));
    }
    return CookLogReader.parse("log.csv", text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
