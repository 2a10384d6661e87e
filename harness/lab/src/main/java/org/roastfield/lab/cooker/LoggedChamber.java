package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.chamber.Lid;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;

/** A log's chamber in the gentle heat as evidence of what its air does by itself. */
final class LoggedChamber {

  /** Readings nearer than this repeat each other: a probe in still air lags by 20-90 s [s]. */
  private static final double APART = 60;

  /** After another setting the air is on its way for so long [s]; assumed. */
  private static final double ON_ITS_WAY = 1200;

  /** Air farther than this from its middle has not come to its first setting yet [K]: three σ. */
  private static final double NEAR = 24;

  private final LogChannel chamber;
  private final List<LogEvent> events;
  private final List<String> words = new ArrayList<>();

  private LoggedChamber(LogChannel chamber, List<LogEvent> events) {
    this.chamber = chamber;
    this.events = events;
  }

  /**
   * Evidence of a log; empty if it has too few readings of a gentle heat.
   *
   * @param words what was taken and left out is added to them
   */
  static Optional<ChamberTrace> of(
      CookLog log, List<LogEvent> events, VariedCook cook, LogSpan span, List<String> words) {
    Optional<LogChannel> channel = log.channel(CookLog.CHAMBER);
    if (channel.isEmpty() || channel.get().size() == 0 || !cook.beginsGently()) {
      return Optional.empty();
    }
    LoggedChamber chamber = new LoggedChamber(channel.get(), events);
    double setting = cook.file().stages().get(0).upper().air();
    double end = Math.min(cook.firstEnd(), log.end());
    Optional<ChamberTrace> trace = chamber.trace(setting, span, end);
    words.addAll(chamber.words);
    return trace;
  }

  private Optional<ChamberTrace> trace(double setting, LogSpan span, double end) {
    double[] changes =
        events.stream()
            .filter(event -> event.kind() == LogEvent.Kind.SETTING_CHANGED)
            .mapToDouble(LogEvent::time)
            .sorted()
            .toArray();
    double[] times = new double[chamber.size()];
    double[] values = new double[chamber.size()];
    int count = 0;
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < chamber.size(); i++) {
      double time = chamber.time(i);
      boolean used = span.holds(time) && time <= end && !onItsWay(changes, time);
      if (used && time - last >= APART) {
        times[count] = time;
        values[count++] = chamber.temperature(i);
        last = time;
      }
    }
    int first = firstNear(values, count);
    if (count - first < ChamberTrace.LEAST_READINGS) {
      words.add("drift of the air: not looked at, the chamber has too few readings at a setting");
      return Optional.empty();
    }
    Optional<Lid> lid = lid();
    words.add(
        String.format(
            Locale.ROOT,
            "drift of the air: from %d readings of the chamber, at least %.0f s apart, from %.0f"
                + " min on; %d openings of the lid",
            count - first,
            APART,
            times[first] / 60,
            lid.map(one -> one.openings().size()).orElse(0)));
    return Optional.of(
        ChamberTrace.of(
            Arrays.copyOfRange(times, first, count),
            Arrays.copyOfRange(values, first, count),
            setting,
            changes,
            lid));
  }

  private static boolean onItsWay(double[] changes, double time) {
    for (double change : changes) {
      if (time >= change && time < change + ON_ITS_WAY) {
        return true;
      }
    }
    return false;
  }

  /** Index of the first reading near the middle of all: before, the chamber was heating up. */
  private static int firstNear(double[] values, int count) {
    if (count == 0) {
      return 0;
    }
    double[] sorted = Arrays.copyOf(values, count);
    Arrays.sort(sorted);
    double middle = sorted[count / 2];
    int first = 0;
    while (Math.abs(values[first] - middle) > NEAR) {
      first++;
    }
    return first;
  }

  /** Openings that were noted; one without an end lasted as long as those of plans. */
  private Optional<Lid> lid() {
    List<Lid.Opening> openings = new ArrayList<>();
    double closed = 0;
    for (LogEvent event : events) {
      if (event.kind() != LogEvent.Kind.LID_OPENED) {
        continue;
      }
      double length = Double.isNaN(event.end()) ? StrayingAir.OPEN : event.end() - event.time();
      if (event.time() >= closed && length >= 5 && length <= 3600) {
        openings.add(new Lid.Opening(event.time(), length));
        closed = event.time() + length;
      } else {
        words.add(
            String.format(
                Locale.ROOT,
                "opening of the lid at %.1f min: left out of the drift of the air, not after the one"
                    + " before or not of 5 s to an hour",
                event.time() / 60));
      }
    }
    return openings.isEmpty() ? Optional.empty() : Optional.of(new Lid(openings));
  }
}
