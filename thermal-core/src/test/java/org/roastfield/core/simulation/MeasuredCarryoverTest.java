package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.roastfield.core.reference.ReferenceFiles;
import org.roastfield.core.units.Temperatures;

/**
 * Measured carryover of six kinds of roast against the model's 10-90 % interval under {@link
 * CarryoverPriors}. {@code docs/carryover.md} holds the table and is written by {@link #main}.
 */
class MeasuredCarryoverTest {

  private static final Path DOCUMENT = Path.of("docs", "carryover.md");

  /**
   * @param meat as in the file
   * @param mass mean raw mass [kg]
   * @param removed reading on removal [K]
   * @param rise measured [K]
   */
  private record Roast(String meat, double mass, double removed, double rise) {}

  /**
   * @param low quantile of 10 % [K]
   * @param reached share of the draws that read the recorded temperature at all
   */
  private record Interval(double low, double median, double high, double reached) {

    boolean holds(double rise) {
      return rise >= low && rise <= high;
    }
  }

  @Test
  void atLeastFourOfSixMeans_lieInTheInterval_andTheTableIsAsComputed() throws IOException {
    List<Roast> roasts = roasts();
    assertEquals(6, roasts.size());
    List<Interval> intervals = roasts.stream().map(MeasuredCarryoverTest::interval).toList();
    int inside = 0;
    for (int i = 0; i < roasts.size(); i++) {
      inside += intervals.get(i).holds(roasts.get(i).rise()) ? 1 : 0;
    }
    int found = inside;
    assertTrue(found >= 4, () -> found + " inside");
    String document = Files.readString(DOCUMENT, StandardCharsets.UTF_8);
    String table = table(roasts, intervals);
    List<String> published = document.lines().filter(line -> line.startsWith("|")).toList();
    assertSame(published, table.lines().toList(), "must be\n" + table);
  }

  /**
   * Words alike, numbers within one of their last digit: the solver's accuracy is 0.01 K and the
   * wetness is settled to 0.02 K, which may tip a rounding over.
   */
  private static void assertSame(List<String> published, List<String> computed, String message) {
    assertEquals(computed.size(), published.size(), message);
    for (int i = 0; i < computed.size(); i++) {
      String[] cells = computed.get(i).split("\\|", -1);
      String[] printed = published.get(i).split("\\|", -1);
      assertEquals(cells.length, printed.length, message);
      for (int j = 0; j < cells.length; j++) {
        if (cells[j].strip().matches("\\d+\\.\\d")) {
          double number = Double.parseDouble(cells[j]);
          assertEquals(number, Double.parseDouble(printed[j]), 0.1 + 1e-9, message);
        } else {
          assertEquals(cells[j], printed[j], message);
        }
      }
    }
  }

  /** Writes the table. */
  public static void main(String[] arguments) {
    List<Roast> roasts = roasts();
    System.out.print(table(roasts, roasts.stream().map(MeasuredCarryoverTest::interval).toList()));
  }

  private static Interval interval(Roast roast) {
    Random random = new Random(CarryoverPriors.SEED);
    CarryoverPriors.Joint joint = CarryoverPriors.Joint.of(roast.meat());
    double[] rises = new double[CarryoverPriors.DRAWS];
    for (int i = 0; i < rises.length; i++) {
      rises[i] =
          MeasuredCarryover.rise(
              CarryoverPriors.draw(joint, roast.mass(), random), roast.removed());
    }
    double[] reached = Arrays.stream(rises).filter(rise -> !Double.isNaN(rise)).sorted().toArray();
    return new Interval(
        quantile(reached, 0.1),
        quantile(reached, 0.5),
        quantile(reached, 0.9),
        (double) reached.length / rises.length);
  }

  private static double quantile(double[] sorted, double probability) {
    double place = probability * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  private static String table(List<Roast> roasts, List<Interval> intervals) {
    StringBuilder text = new StringBuilder();
    text.append(
        "| roast | out at °C | measured rise, K | 10 % | median | 90 % | width, K | inside | draws that"
            + " got there |\n|---|---|---|---|---|---|---|---|---|\n");
    for (int i = 0; i < roasts.size(); i++) {
      Roast roast = roasts.get(i);
      Interval interval = intervals.get(i);
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %.0f | %.0f | %.1f | %.1f | %.1f | %.1f | %s | %.0f %% |%n",
              roast.meat(),
              Temperatures.toCelsius(roast.removed()),
              roast.rise(),
              interval.low(),
              interval.median(),
              interval.high(),
              interval.high() - interval.low(),
              interval.holds(roast.rise()) ? "yes" : "no",
              100 * interval.reached()));
    }
    return text.toString();
  }

  /** The roasts of the file; the boiled ham is none. */
  private static List<Roast> roasts() {
    String text =
        new String(ReferenceFiles.bytes("/reference/carryover.csv"), StandardCharsets.UTF_8);
    List<Roast> roasts = new ArrayList<>();
    for (String line : text.lines().skip(1).toList()) {
      String meat = line.substring(1, line.indexOf('"', 1));
      String[] cells = line.substring(line.indexOf('"', 1) + 2).split(",", -1);
      if (!meat.equals("Ham, boiled")) {
        roasts.add(
            new Roast(
                meat,
                Double.parseDouble(cells[10]),
                Temperatures.celsius(Double.parseDouble(cells[7])),
                Double.parseDouble(cells[9])));
      }
    }
    return roasts;
  }
}
