package org.roastfield.lab.intake;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Optional;

/** Turns the time cells of a log's rows into seconds, one row after another. */
final class TimeReader {

  private static final double HALF_A_DAY = 43_200;

  private final TimeStyle style;
  private final Optional<ZoneRules> rules;
  private final NumberText number;
  private final ClockText clock;
  private final Ledger ledger;
  private double last = Double.NEGATIVE_INFINITY;
  private double day;
  private boolean offsets;

  TimeReader(TimeStyle style, boolean decimalComma, Optional<ZoneId> zone, Ledger ledger) {
    this.style = style;
    this.rules = zone.map(ZoneId::getRules);
    this.number = new NumberText(decimalComma);
    this.clock = new ClockText(style);
    this.ledger = ledger;
  }

  /** Seconds of a text on the log's time line, to a millisecond; NaN if it is no such time. */
  double read(String text, long line) {
    double time = style.isNumber() ? number(text) : clock(text, line);
    if (Double.isNaN(time)) {
      return time;
    }
    last = time;
    double rounded = Math.round(time * 1000) / 1000.0;
    return rounded;
  }

  private double number(String text) {
    String plain = text.strip();
    return number.read(plain, 0, plain.length()) ? number.value() * style.seconds() : Double.NaN;
  }

  private double clock(String text, long line) {
    if (!clock.read(text)) {
      return Double.NaN;
    }
    if (style == TimeStyle.CLOCK) {
      return overMidnight(line);
    }
    if (!style.isDated()) {
      return clock.local();
    }
    if (clock.hasOffset()) {
      offsets = true;
      return clock.local() - clock.offset();
    }
    return rules.isPresent() ? zoned(rules.get(), line) : clock.local();
  }

  private double overMidnight(long line) {
    if (day + clock.local() < last - HALF_A_DAY) {
      day += 86_400;
      ledger.change("midnight passed: the clock starts again, the day after", line);
    }
    return day + clock.local();
  }

  private double zoned(ZoneRules zone, long line) {
    LocalDateTime local =
        LocalDateTime.ofEpochSecond((long) Math.floor(clock.local()), 0, ZoneOffset.UTC);
    List<ZoneOffset> valid = zone.getValidOffsets(local);
    if (valid.size() == 1) {
      return clock.local() - valid.get(0).getTotalSeconds();
    }
    if (valid.isEmpty()) {
      ledger.change("a clock time that the change to daylight time leaves out", line);
      return clock.local() - zone.getTransition(local).getOffsetBefore().getTotalSeconds();
    }
    double first = clock.local() - valid.get(0).getTotalSeconds();
    if (first >= last) {
      return first;
    }
    ledger.change("second pass through the hour that the end of daylight time repeats", line);
    return clock.local() - valid.get(1).getTotalSeconds();
  }

  /** Whether the times are of the world's clock, not only of a local one or of a beginning. */
  boolean isAbsolute() {
    return style.isEpoch() || (style.isDated() && (offsets || rules.isPresent()));
  }
}
