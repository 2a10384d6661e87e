package org.roastfield.lab.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class TicksTest {

  @Test
  void decimal_takesTheFinestStepOfOneTwoFive() {
    assertEquals(List.of(0.0, 20.0, 40.0, 60.0, 80.0, 100.0), Ticks.decimal(0, 100, 6));
    assertEquals(List.of(0.0, 50.0, 100.0), Ticks.decimal(0, 100, 5));
    assertEquals(List.of(-5.0, 0.0, 5.0), Ticks.decimal(-7, 8, 4));
  }

  @Test
  void decimal_keepsBothEndsOfTheAxis() {
    List<Double> ticks = Ticks.decimal(0.1, 0.7, 7);
    assertEquals(7, ticks.size());
    assertEquals(0.1, ticks.get(0), 1e-12);
    assertEquals(0.7, ticks.get(6), 1e-12);
  }

  @Test
  void decimal_refusesAnEmptyAxis() {
    IllegalArgumentException thrown =
        assertThrows(IllegalArgumentException.class, () -> Ticks.decimal(3, 3, 5));
    assertEquals("high must be above low, was [3.0, 3.0]", thrown.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Ticks.decimal(0, Double.NaN, 5));
  }

  @Test
  void tick_labelsHaveTheDigitsTheyNeed() {
    List<String> labels = Tick.decimal(0, 1, 6).stream().map(Tick::label).toList();
    assertEquals(List.of("0.0", "0.2", "0.4", "0.6", "0.8", "1.0"), labels);
  }

  @Test
  void clock_ticksFallOnRoundTimesOfTheClock() {
    TimeBase base = TimeBase.clock(LocalDateTime.of(2026, 6, 13, 14, 5));
    List<Tick> ticks = base.ticks(0, 2 * 3600, 4);
    assertEquals(List.of("14:30", "15:00", "15:30", "16:00"), labels(ticks));
    assertEquals(25 * 60, ticks.get(0).value(), 1e-9);
  }

  @Test
  void clock_ticksGoOnAfterMidnight() {
    TimeBase base = TimeBase.clock(LocalDateTime.of(2026, 6, 13, 22, 30));
    assertEquals(List.of("23:00", "00:00", "01:00", "02:00"), labels(base.ticks(0, 4 * 3600, 4)));
  }

  @Test
  void elapsed_ticksCountFromTheStart() {
    assertEquals(
        List.of("0:00", "3:00", "6:00", "9:00"), labels(TimeBase.elapsed().ticks(0, 10 * 3600, 4)));
  }

  @Test
  void text_roundsToTheNearestMinute() {
    TimeBase base = TimeBase.clock(LocalDateTime.of(2026, 6, 13, 14, 5, 40));
    assertEquals("14:06", base.text(0));
    assertEquals("14:05:40", base.exactText(0.4));
  }

  private static List<String> labels(List<Tick> ticks) {
    return ticks.stream().map(Tick::label).toList();
  }
}
