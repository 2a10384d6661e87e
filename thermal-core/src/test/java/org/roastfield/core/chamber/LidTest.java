package org.roastfield.core.chamber;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.chamber.Lid.Opening;
import org.roastfield.core.surface.Signal;

class LidTest {

  private static final double CLOSED = 390;
  private static final double OPEN = 330;

  @ParameterizedTest
  @ValueSource(doubles = {30, 90, 300})
  void air_fallsInFifteenSecondsAndRecoversInTwoToFourTimesAsLong(double duration) {
    Signal air = Lid.openedAt(600, duration).over(Signal.constant(CLOSED), OPEN);
    assertEquals(CLOSED, air.at(600), 1e-12);
    assertTrue(CLOSED - air.at(615) >= 0.95 * (CLOSED - OPEN));
    double closes = 600 + duration;
    assertEquals(OPEN, air.at(closes), 0.003 * (CLOSED - OPEN));
    assertTrue(CLOSED - air.at(closes + 2 * duration) > 0.05 * (CLOSED - OPEN));
    assertTrue(CLOSED - air.at(closes + 4 * duration) < 0.05 * (CLOSED - OPEN));
  }

  @Test
  void openingsBeforeRecovery_goOnFromWhereTheAirIs() {
    Lid lid = new Lid(List.of(new Opening(100, 60), new Opening(190, 30)));
    double before = lid.fallen(190);
    assertTrue(before > 0.5 && before < 0.7, () -> "fallen " + before);
    for (double edge : new double[] {100, 160, 190, 220}) {
      assertEquals(lid.fallen(edge), lid.fallen(edge + 1e-9), 1e-8);
    }
    assertTrue(lid.fallen(219) > 0.99);
    assertEquals(0, lid.fallen(50), 0);
  }

  @Test
  void steps_areShorterThanHalfAnOpening() {
    Signal air = Lid.openedAt(600, 40).over(Signal.constant(CLOSED), OPEN);
    assertEquals(80, air.shortestPeriod(), 0);
  }

  @Test
  void edges_areWhereTheLidMoves() {
    Lid lid = new Lid(List.of(new Opening(0, 60), new Opening(190, 30), new Opening(220, 10)));
    assertArrayEquals(new double[] {60, 190, 220, 230}, lid.edges());
  }

  @Test
  void chamber_losesHeatAndVapour() {
    Chamber pit = Chamber.steady(CLOSED, 0.05, 101_325).withWallOffset(10);
    Chamber opened = pit.withLid(Lid.openedAt(0, 200), OPEN, 350, 0.01);
    assertEquals(OPEN, opened.airTemperature().at(190), 1e-9);
    assertEquals(350, opened.wallTemperature().at(190), 1e-9);
    double dry = Chamber.steady(CLOSED, 0.01, 101_325).vapourPressure().at(0);
    assertEquals(dry, opened.vapourPressure().at(190), 1e-6);
    assertEquals(pit.vapourPressure().at(0), opened.vapourPressure().at(0), 1e-9);
  }

  @Test
  void wrongOpenings_areRefused() {
    assertRefused("duration must be in [5.0, 3600.0], was 4.0", () -> new Opening(0, 4));
    assertRefused("opens must", () -> new Opening(-1, 60));
    assertRefused("number of openings must", () -> new Lid(List.of()));
    assertRefused(
        "opens of openings[1] must be at least 160.0 s",
        () -> new Lid(List.of(new Opening(100, 60), new Opening(159, 30))));
    assertRefused(
        "open must be finite", () -> Lid.openedAt(0, 9).over(Signal.constant(1), Double.NaN));
  }

  private static void assertRefused(String start, Runnable action) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, action::run);
    assertTrue(String.valueOf(e.getMessage()).startsWith(start), e::getMessage);
  }
}
