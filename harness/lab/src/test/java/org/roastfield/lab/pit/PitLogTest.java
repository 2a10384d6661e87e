package org.roastfield.lab.pit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.chamber.FireCourse;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.chamber.Tending;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;

class PitLogTest {

  private static final Outside OUTSIDE = new Outside(288, 0, 0.007, 101_325);

  private static final List<LogEvent> EVENTS =
      List.of(
          new LogEvent(4000, 4090, LogEvent.Kind.LID_OPENED, LogEvent.Origin.COOK, ""),
          new LogEvent(7200, Double.NaN, LogEvent.Kind.SETTING_CHANGED, LogEvent.Origin.COOK, ""));

  /** A pit whose walls hold twice what is assumed, its noise a tooth of 0.4 K. */
  private static CookLog log(FirePit pit) {
    Tending hold = Tending.hold(0, 385);
    List<Tending> deeds =
        List.of(hold, hold.at(4000).withOpenLid(), hold.at(4090), Tending.hold(7200, 430));
    FireCourse course = pit.run(OUTSIDE, pit.cold(OUTSIDE, 0.4), deeds, 10_800);
    double[] times = new double[1081];
    double[] values = new double[times.length];
    for (int k = 0; k < times.length; k++) {
      times[k] = 10 * k;
      values[k] = course.airTemperature(times[k]) + 0.4 * (k % 3 - 1);
    }
    LogChannel gas = LogChannel.of(CookLog.CHAMBER, times, values);
    return new CookLog("made-up.csv", List.of(), times.length, 0, 10_800, List.of(gas));
  }

  @Test
  void deeds_areReadOffTheLog() {
    PitLog log = PitLog.of(log(FirePit.thinSteel()), EVENTS, FirePit.thinSteel(), OUTSIDE, 0.4);
    assertEquals(361, log.used(), "one reading in three");
    assertEquals(4, log.tending().size());
    assertEquals(385, log.tending().get(0).setting(), 0.5);
    assertTrue(log.tending().get(1).open());
    assertEquals(4090, log.tending().get(2).start());
    assertEquals(430, log.tending().get(3).setting(), 0.5);
  }

  @Test
  void heavyWalls_areFound() {
    FirePit like = FirePit.thinSteel();
    FirePit.Walls w = like.walls();
    FirePit.Walls heavy =
        new FirePit.Walls(
            1.6 * w.capacity(), w.area(), w.inner(), w.exchange(), w.loss(), w.openLoss());
    FirePit truth = new FirePit(heavy, like.vents(), like.bed());
    PitLog log = PitLog.of(log(truth), EVENTS, like, OUTSIDE, 0.4);
    MapEstimate found = log.estimate(1);
    assertTrue(found.isFound());
    int walls = log.parameters().index("fire-wall-capacity");
    assertTrue(found.value(walls) > 1.2, "1 is the prior, was " + found.value(walls));
    assertTrue(found.contraction(walls) > MapEstimate.LEAST_CONTRACTION);
  }

  @Test
  void openingWithoutEnd_isRefused() {
    List<LogEvent> open =
        List.of(new LogEvent(4000, Double.NaN, LogEvent.Kind.LID_OPENED, LogEvent.Origin.COOK, ""));
    FirePit pit = FirePit.thinSteel();
    CookLog log = log(pit);
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> PitLog.of(log, open, pit, OUTSIDE, 0.4));
    assertEquals(
        "an opening of the lid must say when it was closed, that at 4000.0 s does not",
        refusal.getMessage());
  }
}
