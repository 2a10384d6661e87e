package org.roastfield.lab.intake;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogUnit;

/** Readings of one channel as they come, then in order of time. */
final class Column {

  private final ChannelRule rule;
  private double[] times = new double[1024];
  private double[] values = new double[1024];
  private int[] lines = new int[1024];
  private int size;
  private int decimals;
  private boolean ordered = true;

  Column(ChannelRule rule) {
    this.rule = rule;
  }

  ChannelRule rule() {
    return rule;
  }

  int size() {
    return size;
  }

  double time(int i) {
    return times[i];
  }

  /**
   * Adds a reading.
   *
   * @param value in the unit of the rule, NaN if missing
   * @param digits after the point
   */
  void add(double time, double value, int digits, long line) {
    if (size == times.length) {
      int larger = size + (size >> 1);
      times = Arrays.copyOf(times, larger);
      values = Arrays.copyOf(values, larger);
      lines = Arrays.copyOf(lines, larger);
    }
    ordered &= size == 0 || time > times[size - 1];
    decimals = Math.max(decimals, Math.min(digits, ChannelFormat.MOST_DECIMALS));
    times[size] = time;
    values[size] = value;
    lines[size] = (int) line;
    size++;
  }

  /** Moves the beginning of time; readings before it are set aside. */
  void startAt(double zero, Ledger ledger) {
    int kept = 0;
    for (int i = 0; i < size; i++) {
      double time = Math.round((times[i] - zero) * 1000) / 1000.0;
      if (time < 0) {
        ledger.setAside(lines[i], text(i), "before the cut went on");
      } else {
        times[kept] = time;
        values[kept] = values[i];
        lines[kept] = lines[i];
        kept++;
      }
    }
    size = kept;
  }

  /** Puts readings in order of time, the first of each time kept. */
  void order(Ledger ledger) {
    if (ordered) {
      return;
    }
    for (int i = 1; i < size; i++) {
      if (times[i] < times[i - 1]) {
        ledger.change(rule.channel() + ": readings out of order, sorted by time", lines[i]);
        ledger.finding(
            new Finding(
                Finding.Kind.OUT_OF_ORDER,
                rule.channel(),
                times[i],
                times[i],
                times[i - 1] - times[i]));
      }
    }
    int[] byTime =
        IntStream.range(0, size)
            .boxed()
            .sorted((a, b) -> Double.compare(times[a], times[b]))
            .mapToInt(Integer::intValue)
            .toArray();
    times = IntStream.of(byTime).mapToDouble(i -> times[i]).toArray();
    values = IntStream.of(byTime).mapToDouble(i -> values[i]).toArray();
    lines = IntStream.of(byTime).map(i -> lines[i]).toArray();
    mergeDuplicates(ledger);
  }

  private void mergeDuplicates(Ledger ledger) {
    int kept = 0;
    for (int i = 0; i < size; i++) {
      if (kept == 0 || times[i] > times[kept - 1]) {
        times[kept] = times[i];
        values[kept] = values[i];
        lines[kept] = lines[i];
        kept++;
        continue;
      }
      double size = Math.abs(unit().si(values[i]) - unit().si(values[kept - 1]));
      ledger.finding(
          new Finding(
              Finding.Kind.DUPLICATE_TIME,
              rule.channel(),
              times[i],
              times[i],
              Double.isNaN(size) ? 0 : size));
      if (Double.isNaN(values[kept - 1]) && !Double.isNaN(values[i])) {
        values[kept - 1] = values[i];
        lines[kept - 1] = lines[i];
        ledger.change(rule.channel() + ": a reading beside a missing one, taken", lines[i]);
      } else if (Double.isNaN(values[i]) || values[i] == values[kept - 1]) {
        ledger.change(rule.channel() + ": the same time and reading twice, merged", lines[i]);
      } else {
        ledger.setAside(
            lines[i], text(i), rule.channel() + ": another reading at the same time, first kept");
      }
    }
    size = kept;
  }

  private LogUnit unit() {
    return rule.unit();
  }

  private String text(int i) {
    return Double.isNaN(values[i]) ? "no reading" : values[i] + " " + rule.unit().word();
  }

  /** How the readings are to be written. */
  ChannelFormat format() {
    return new ChannelFormat(rule.channel(), rule.unit(), decimals);
  }

  /** The readings in kelvin. */
  LogChannel channel() {
    LogUnit unit = rule.unit();
    int present = 0;
    for (int i = 0; i < size; i++) {
      present += Double.isNaN(values[i]) ? 0 : 1;
    }
    double[] readTimes = new double[present];
    double[] kelvin = new double[present];
    double[] missing = new double[size - present];
    int next = 0;
    int nextMissing = 0;
    for (int i = 0; i < size; i++) {
      if (Double.isNaN(values[i])) {
        missing[nextMissing++] = times[i];
      } else {
        readTimes[next] = times[i];
        kelvin[next++] = unit.si(values[i]);
      }
    }
    return LogChannel.of(rule.channel(), readTimes, kelvin, missing);
  }
}
