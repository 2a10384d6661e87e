package org.roastfield.lab.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogUnit;

/**
 * Rules that say what looks wrong in a log. Their thresholds are assumed: wide enough that the
 * synthetic logs pass, narrow enough for what the tests put into them.
 */
public final class Plausibility {

  private static final double MINUTE = 60;
  private static final double GAP_INTERVALS = 5;
  private static final double SHORTEST_GAP = 10 * MINUTE;
  private static final double FROZEN = 15 * MINUTE;
  private static final double COARSE_FROZEN = 60 * MINUTE;
  private static final double FINE = 0.11;
  private static final double CHAMBER_MOVED = 5;
  private static final double SWITCH_TOLERANCE = 0.02;
  private static final double SMALLEST_SWITCH = 10;
  private static final double AIR_RATE = 5 / MINUTE;
  private static final double AIR_CHANGE = 10;

  /** Of the noise: a difference of two readings has 1.4 of them. */
  private static final double AIR_DEVIATIONS = 8;

  private static final double MOVED = 1.5;

  /** Of the noise: a difference of two medians of five has 0.76 of them. */
  private static final double MOVED_DEVIATIONS = 4.5;

  private static final double LONGEST_MOVE = 5 * MINUTE;
  private static final int AROUND = 5;
  private static final int TREND = 30;
  private static final double LID_DEPTH = 10;

  /** Of the noise, between the first reading of a fall and the lowest of some hundred after it. */
  private static final double LID_DEVIATIONS = 10;

  private static final double LID_FALL = 3 * MINUTE;
  private static final double LID_RETURN = 30 * MINUTE;
  private static final int FEWEST = 10;

  private final Series series;
  private final Optional<Series> chamber;
  private final List<Finding> findings = new ArrayList<>();
  private final Noise noise;
  private final BitSet spiked = new BitSet();
  private double resolution;
  private double[] jumps = {};

  private Plausibility(Series series, Optional<Series> chamber) {
    this.series = series;
    this.chamber = chamber;
    this.noise = new Noise(series);
  }

  /** Findings of all channels. */
  public static List<Finding> of(CookLog log) {
    Optional<Series> chamber = log.channel(CookLog.CHAMBER).map(Series::new);
    List<Finding> all = new ArrayList<>();
    log.channels()
        .forEach(channel -> all.addAll(new Plausibility(new Series(channel), chamber).findings()));
    return all;
  }

  private List<Finding> findings() {
    boolean isChamber = series.name().equals(CookLog.CHAMBER);
    if (series.size() < 2) {
      return findings;
    }
    resolution();
    gaps();
    frozen(isChamber);
    boolean switched = unitSwitches();
    spikes(isChamber);
    if (isChamber) {
      lids();
    } else if (!switched) {
      inAir();
      moves();
    }
    return findings;
  }

  private void add(Finding.Kind kind, int from, int until, double size) {
    findings.add(new Finding(kind, series.name(), series.time(from), series.time(until), size));
  }

  private void gaps() {
    double longest = Math.max(GAP_INTERVALS * series.interval(), SHORTEST_GAP);
    for (int i = 1; i < series.size(); i++) {
      double gap = series.time(i) - series.time(i - 1);
      if (gap > longest) {
        add(Finding.Kind.GAP, i - 1, i, gap);
      }
    }
  }

  /** Coarsest grid, of degrees Celsius or Fahrenheit, that every reading lies on. */
  private void resolution() {
    for (double step : new double[] {5, 2, 1, 0.5, 0.2, 0.1, 0.05, 0.01}) {
      for (LogUnit unit : List.of(LogUnit.CELSIUS, LogUnit.FAHRENHEIT)) {
        if (resolution == 0 && isGrid(unit, step)) {
          resolution = step * unit.kelvinPerUnit();
        }
      }
    }
    if (resolution > 0 && series.size() >= FEWEST) {
      add(Finding.Kind.RESOLUTION, 0, series.size() - 1, resolution);
    }
  }

  private boolean isGrid(LogUnit unit, double step) {
    // Half of the last of two decimals, and round-off: how far a converted value can be off.
    double tolerance = Math.min(0.006, step / 10) / unit.kelvinPerUnit();
    for (int i = 0; i < series.size(); i++) {
      double value = unit.fromSi(series.at(i)) / step;
      if (Math.abs(value - Math.rint(value)) * step > tolerance) {
        return false;
      }
    }
    return true;
  }

  private void frozen(boolean isChamber) {
    boolean fine = resolution <= FINE;
    double longest = fine ? FROZEN : COARSE_FROZEN;
    int start = 0;
    for (int i = 1; i <= series.size(); i++) {
      if (i < series.size() && series.at(i) == series.at(start)) {
        continue;
      }
      double lasted = series.time(i - 1) - series.time(start);
      if (lasted >= longest && i - start >= FEWEST && (isChamber || chamberMoved(start, i - 1))) {
        add(Finding.Kind.FROZEN, start, i - 1, lasted);
      }
      start = i;
    }
  }

  private boolean chamberMoved(int from, int until) {
    return chamber.isPresent()
        && chamber.get().span(series.time(from), series.time(until)) > CHAMBER_MOVED;
  }

  private boolean unitSwitches() {
    boolean found = false;
    for (int i = 1; i < series.size(); i++) {
      double before = Temperatures.toCelsius(series.at(i - 1));
      double after = Temperatures.toCelsius(series.at(i));
      boolean up = isMap(before, after);
      boolean down = isMap(after, before);
      boolean quick = series.time(i) - series.time(i - 1) <= LONGEST_MOVE;
      if (quick && Math.abs(after - before) >= SMALLEST_SWITCH && (up || down) && stays(i)) {
        add(Finding.Kind.UNIT_SWITCH, i - 1, i, after - before);
        found = true;
      }
    }
    return found;
  }

  private static boolean isMap(double celsius, double fahrenheit) {
    double mapped = 1.8 * celsius + 32;
    return Math.abs(fahrenheit - mapped) <= SWITCH_TOLERANCE * Math.abs(mapped);
  }

  /** Whether the readings before and after a step lie nearer their own than the step is high. */
  private boolean stays(int i) {
    int from = Math.max(0, i - 3);
    int to = Math.min(series.size(), i + 3);
    double step = Math.abs(series.step(i));
    return i - from >= 2
        && to - i >= 2
        && Math.abs(series.at(from) - series.at(i - 1)) < step / 2
        && Math.abs(series.at(to - 1) - series.at(i)) < step / 2;
  }

  private void spikes(boolean isChamber) {
    Spikes spikes = new Spikes(series, noise);
    for (int i = 1; i < series.size() - 1; i++) {
      double height = spikes.height(i);
      // A chamber that is opened falls and comes back.
      if (!Double.isNaN(height) && !(isChamber && height < 0)) {
        add(Finding.Kind.SPIKE, i, i, height);
        spiked.set(i);
      }
    }
  }

  private void inAir() {
    int start = 0;
    for (int i = 1; i <= series.size(); i++) {
      if (i < series.size() && isFast(i) && Math.signum(series.step(i)) == direction(start, i)) {
        continue;
      }
      double change = series.at(i - 1) - series.at(start);
      if (i - 1 - start >= 2
          && Math.abs(change) >= AIR_CHANGE
          && Math.abs(change) >= AIR_DEVIATIONS * noise.deviation(start)) {
        add(Finding.Kind.PROBE_IN_AIR, start, i - 1, change);
      }
      start = i < series.size() && isFast(i) ? i - 1 : i;
    }
  }

  /** A step to a spike and back is its own. */
  private boolean isFast(int i) {
    return !spiked.get(i)
        && !spiked.get(i - 1)
        && Math.abs(series.step(i)) > AIR_RATE * (series.time(i) - series.time(i - 1));
  }

  private double direction(int start, int i) {
    return i - 1 == start ? Math.signum(series.step(i)) : Math.signum(series.step(start + 1));
  }

  private void moves() {
    double limit = Math.max(Math.max(MOVED, 2 * resolution), MOVED_DEVIATIONS * noise.deviation());
    jumps = new double[series.size()];
    for (int j = AROUND; j + AROUND <= series.size(); j++) {
      jumps[j] = series.median(j, j + AROUND) - series.median(j - AROUND, j);
    }
    int i = AROUND;
    while (i + AROUND <= series.size()) {
      if (Math.abs(excess(i)) > limit && !isExplained(i)) {
        int best = i;
        for (int j = i; j < i + AROUND && j + AROUND <= series.size(); j++) {
          best = Math.abs(excess(j)) > Math.abs(excess(best)) ? j : best;
        }
        if (Math.abs(excess(best)) > MOVED_DEVIATIONS * noise.deviation(best)) {
          add(Finding.Kind.PROBE_MOVED, best - 1, best, excess(best));
          i = best + AROUND;
        }
      }
      i++;
    }
  }

  /** Whether a probe in air, or the end of a frozen value, makes the step. */
  private boolean isExplained(int i) {
    double time = series.time(i);
    double reach = AROUND * series.interval();
    return findings.stream()
        .anyMatch(
            one ->
                (one.kind() == Finding.Kind.PROBE_IN_AIR || one.kind() == Finding.Kind.FROZEN)
                    && time >= one.from() - reach
                    && time <= one.until() + reach);
  }

  /**
   * Step of the medians before and after reading {@code i}, beyond what is usual around it and
   * beyond what the trace rises by in as long just before and just after [K]: a rise that begins,
   * or readings that are far apart where some are missing, are no step.
   */
  private double excess(int i) {
    if (series.time(i) - series.time(i - 1) > LONGEST_MOVE) {
      return 0;
    }
    int from = Math.max(AROUND, i - TREND);
    int to = Math.min(series.size() - AROUND, i + TREND);
    if (to - from < AROUND || isLike(i, from, to)) {
      return 0;
    }
    double usual = jumps[i] - Series.median(Arrays.copyOfRange(jumps, from, to + 1));
    double nearby = beyondNeighbours(i, from, to);
    return Math.abs(nearby) < Math.abs(usual) ? nearby : usual;
  }

  /**
   * Step beyond the rates of the medians that end before it and that begin after it [K]; where the
   * trace is too short on a side, it may have stood still there.
   */
  private double beyondNeighbours(int i, int from, int to) {
    double before = i - AROUND >= from ? rate(i - AROUND) : 0;
    double after = i + AROUND <= to ? rate(i + AROUND) : 0;
    double least = Math.min(before, after) * lasted(i);
    double most = Math.max(before, after) * lasted(i);
    return jumps[i] - Math.max(least, Math.min(most, jumps[i]));
  }

  private double rate(int i) {
    return jumps[i] / lasted(i);
  }

  /** Time from the middle of the readings before to the middle of those after [s]. */
  private double lasted(int i) {
    return series.time(i + AROUND / 2) - series.time(i - 1 - AROUND / 2);
  }

  /** Whether the step is so like those at both ends that the median need not be asked. */
  private boolean isLike(int i, int from, int to) {
    return Math.abs(jumps[i] - jumps[from]) < MOVED / 2
        && Math.abs(jumps[i] - jumps[to]) < MOVED / 2;
  }

  private void lids() {
    double least = Math.max(LID_DEPTH, LID_DEVIATIONS * noise.deviation());
    int i = 1;
    while (i < series.size()) {
      int bottom = bottom(i);
      double depth = series.at(i - 1) - series.at(bottom);
      int back = depth >= least ? back(i - 1, bottom) : -1;
      if (back > 0) {
        add(Finding.Kind.LID_OPENED, top(i - 1, bottom), back, depth);
        i = back;
      }
      i++;
    }
  }

  /** Lowest reading soon after the one before {@code i}. */
  private int bottom(int i) {
    int bottom = i;
    for (int j = i; j < series.size() && series.time(j) - series.time(i - 1) <= LID_FALL; j++) {
      bottom = series.at(j) < series.at(bottom) ? j : bottom;
    }
    return bottom;
  }

  /** Last reading before the fall: it has lost no more than a tenth of it. */
  private int top(int from, int bottom) {
    int top = bottom - 1;
    while (top > from
        && series.at(from) - series.at(top) > (series.at(from) - series.at(bottom)) / 10) {
      top--;
    }
    return top;
  }

  /** Reading that has regained half of the fall, or -1. */
  private int back(int top, int bottom) {
    double half = (series.at(top) + series.at(bottom)) / 2;
    for (int j = bottom + 1;
        j < series.size() && series.time(j) - series.time(bottom) <= LID_RETURN;
        j++) {
      if (series.at(j) >= half) {
        return j;
      }
    }
    return -1;
  }
}
