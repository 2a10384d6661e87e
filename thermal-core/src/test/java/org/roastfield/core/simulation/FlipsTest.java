package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.ReferenceFiles;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * A slab between a hot plate and air with turns, against the totals of {@code flips.json}: it is
 * cooked when every depth has once exceeded the target. Turns after equal times stand in the file
 * at the best such time.
 */
class FlipsTest {

  private static final double TOLERANCE = 0.005;
  private static final double THICKNESS = 0.01;
  private static final double CONDUCTIVITY = 0.4167;
  private static final double TIME_UNIT = 826;
  private static final double COLD = 298.15;
  private static final double HOTTER = 175;
  private static final double TARGET = 0.257;
  private static final int PLACES = 40;
  private static final int LOOKS = 2000;
  private static final double LATEST = 0.5;

  @ParameterizedTest
  @CsvSource({
    "one_flip_best_total, 0.045",
    "one_flip_total_at_0.045625, 0.045625",
    "no_flip_total, 0.5"
  })
  void oneTurnAtAGivenTime_takesThePublishedTotal(String key, double interval) {
    assertTotal(key, total(List.of(interval), 21.6, 1.44));
  }

  @ParameterizedTest
  @CsvSource({
    "two_equal_flips, 2",
    "four_equal_flips, 4",
    "ten_equal_flips, 10",
    "twenty_equal_flips, 20"
  })
  void turnsAfterEqualTimes_takeThePublishedTotalAtTheirBest(String key, int turns) {
    assertTotal(key, leastOfEqual(turns));
  }

  @ParameterizedTest
  @CsvSource({
    "flip_every_0.0005, 21.6, 1.44",
    "many flips h0=h1=2, 2, 2",
    "many flips h0=h1=1e5, 1e5, 1e5"
  })
  void veryManyTurns_takeThePublishedTotal(String key, double plate, double air) {
    int turns = plate == 2 ? 600 : 220;
    assertTotal(key, total(Collections.nCopies(turns, 0.0005), plate, air));
  }

  private static void assertTotal(String key, double total) {
    JsonNode totals = ReferenceFiles.json("/reference/flips.json").path("computed_by_us");
    double published = totals.path(key).asDouble(Double.NaN);
    assertEquals(published, total, TOLERANCE * published, key);
  }

  /** Least total of equal times between turns, the last of which may be longer. */
  private static double leastOfEqual(int turns) {
    double least = Double.POSITIVE_INFINITY;
    for (double lastTurn = 0.054; lastTurn < 0.07; lastTurn += 0.002) {
      least = Math.min(least, total(Collections.nCopies(turns, lastTurn / turns), 21.6, 1.44));
    }
    return least;
  }

  /** When the last depth exceeds the target, with turns after the given intervals. */
  private static double total(List<Double> intervals, double plateBiot, double airBiot) {
    double perBiot = CONDUCTIVITY / THICKNESS;
    SurfaceLaw plate = new Contact(plateBiot * perBiot, Signal.constant(COLD + HOTTER));
    SurfaceLaw air = new Convection(airBiot * perBiot, Signal.constant(COLD));
    List<Stage> stages = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i <= intervals.size(); i++) {
      double interval = i < intervals.size() ? intervals.get(i) : LATEST - sum;
      sum += interval;
      if (interval > 0) {
        SurfaceLaw upper = i % 2 == 0 ? air : plate;
        SurfaceLaw lower = i % 2 == 0 ? plate : air;
        StageEnd end = StageEnd.after(interval * TIME_UNIT);
        stages.add(Stage.ofFaces("leg " + i, upper, lower, end));
      }
    }
    double capacity = CONDUCTIVITY * TIME_UNIT / (THICKNESS * THICKNESS) / 1000;
    Cut cut =
        new Cut(
            Slab.ofThickness(THICKNESS),
            Material.constant("food", CONDUCTIVITY, 1000, capacity),
            COLD);
    return cooked(Bodies.run(Settings.withDefaults(), new Cook(cut, stages, List.of())));
  }

  private static double cooked(SimulationResult result) {
    boolean[] done = new boolean[PLACES + 1];
    int left = done.length;
    for (int look = 1; look <= LOOKS; look++) {
      double time = result.endTime() * look / LOOKS;
      TemperatureProfile profile = result.profile(time);
      for (int i = 0; i <= PLACES; i++) {
        double position = THICKNESS * (i / (double) PLACES - 0.5);
        if (!done[i] && profile.at(position) >= COLD + TARGET * HOTTER) {
          done[i] = true;
          left--;
        }
      }
      if (left == 0) {
        return time / TIME_UNIT;
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
