package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.units.Temperatures;

class HoldTableTest {

  private static final List<HoldTable> TABLES = List.of(HoldTable.LOG_6_5, HoldTable.LOG_7);

  private static TemperatureHistory hold(double temperature, double seconds) {
    return TemperatureHistory.through(
        new double[] {0, seconds}, new double[] {temperature, temperature});
  }

  @Test
  void rows_areThoseOfTheReferenceFile() throws IOException {
    List<String> lines = Files.readAllLines(Path.of("../datasets/reference/lethality_beef.csv"));
    List<String> rows = lines.stream().filter(line -> line.matches("\\d.*")).toList();
    assertTrue(rows.size() >= HoldTable.LOG_6_5.rows());
    for (int i = 0; i < HoldTable.LOG_6_5.rows(); i++) {
      String[] cells = rows.get(i).split(",", -1);
      double highest =
          Math.max(
              Temperatures.fahrenheit(Double.parseDouble(cells[0])),
              Temperatures.celsius(Double.parseDouble(cells[1])));
      assertEquals(highest, HoldTable.LOG_6_5.temperature(i), 1e-9);
      assertEquals(Double.parseDouble(cells[2]), HoldTable.LOG_6_5.seconds(i), 0);
      assertEquals(Double.parseDouble(cells[3]), HoldTable.LOG_7.seconds(i), 0);
    }
  }

  /** The time that a constant hold needs is the printed one or up to a tenth longer. */
  @Test
  void constantHolds_meetTheTableNoSoonerThanPrinted_andWithinTenPercent() {
    for (HoldTable table : TABLES) {
      for (int i = 0; i < table.rows() - 1; i++) {
        double needed = table.logs() / table.rate(table.temperature(i));
        assertTrue(needed >= table.seconds(i) * (1 - 1e-12), "row " + i + ": " + needed);
        assertTrue(needed <= table.seconds(i) * 1.1, "row " + i + ": " + needed);
        assertFalse(table.isMetBy(hold(table.temperature(i), table.seconds(i) * 0.999)));
        assertTrue(table.isMetBy(hold(table.temperature(i), table.seconds(i) * 1.1)));
      }
    }
  }

  @Test
  void seventyDegrees_holdByLookUp_withTheFitsLethality() {
    TemperatureHistory instant = hold(Temperatures.celsius(70), 1);
    assertTrue(HoldTable.LOG_6_5.isMetBy(instant));
    assertTrue(HoldTable.LOG_6_5.lethality(instant) < 1);
    assertFalse(HoldTable.LOG_6_5.isMetBy(hold(Temperatures.celsius(69.99), 1)));
  }

  @Test
  void belowTheFirstRow_nothingCounts() {
    assertEquals(0, HoldTable.LOG_6_5.lethality(hold(Temperatures.fahrenheit(129.9), 1e6)), 0);
  }

  /** Sum of closed forms over the rows, each split where fit and row cross, by 4000 mean values. */
  @Test
  void linearRamps_agreeWithTheIntegral() {
    for (HoldTable table : TABLES) {
      double from = Temperatures.celsius(40);
      double to = Temperatures.celsius(75);
      int parts = 4_000_000;
      double sum = 0;
      for (int i = 0; i < parts; i++) {
        sum += table.rate(from + (to - from) * (i + 0.5) / parts) * 3600 / parts;
      }
      TemperatureHistory ramp =
          TemperatureHistory.through(new double[] {0, 3600}, new double[] {from, to});
      assertEquals(sum, table.lethality(ramp), 1e-5 * sum);
      TemperatureHistory there =
          TemperatureHistory.through(new double[] {0, 3600}, new double[] {to, from});
      assertEquals(table.lethality(ramp), table.lethality(there), 1e-12 * sum);
    }
  }

  /** Where the fit is below the row, the integral is an exponential's. */
  @Test
  void linearRamp_withinOneRow_isTheAnalyticIntegral() {
    HoldTable table = HoldTable.LOG_6_5;
    int row = 0;
    while (table.fittedRate(table.temperature(row) + 0.01) >= table.logs() / table.seconds(row)) {
      row++;
    }
    double from = table.temperature(row);
    double most = table.logs() / table.seconds(row);
    assertTrue(table.fittedRate(from) < most);
    double to = from + 0.01;
    assertTrue(table.fittedRate(to) < most);
    double seconds = 600;
    double slope = StrictMath.log(10) / 5.56;
    double analytic =
        seconds * (table.fittedRate(to) - table.fittedRate(from)) / (slope * (to - from));
    TemperatureHistory ramp =
        TemperatureHistory.through(new double[] {0, seconds}, new double[] {from, to});
    assertEquals(analytic, table.lethality(ramp), 1e-9 * analytic);
  }
}
