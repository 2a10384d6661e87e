package org.roastfield.lab.intake;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Guesses which column is the time, and how it is written. */
final class TimeGuess {

  private static final Pattern WORDS =
      Pattern.compile(
          ".*(time|date|clock|elapsed|stamp|zeit|datum|heure|hora).*|t|t_s|s|sec.*|min.*|h|hours?|ms");
  private static final double YEAR_2000 = 946_684_800;

  private final Clues clues;

  TimeGuess(Clues clues) {
    this.clues = clues;
  }

  /**
   * Time columns with their style.
   *
   * @param hasOffset whether the texts carry offsets of their own
   */
  record Time(List<Integer> columns, TimeStyle style, boolean hasOffset) {}

  Time time(Optional<Time> stated) {
    if (stated.isPresent()) {
      return stated.get();
    }
    for (int i = 0; i < clues.names().size(); i++) {
      Optional<Time> dated = dated(List.of(i));
      if (dated.isPresent()) {
        return dated.get();
      }
    }
    for (int i = 0; i + 1 < clues.names().size(); i++) {
      Optional<Time> dated = dated(List.of(i, i + 1));
      if (dated.isPresent()) {
        return dated.get();
      }
    }
    for (int i = 0; i < clues.names().size(); i++) {
      Optional<Time> clock = clock(i);
      if (clock.isPresent()) {
        return clock.get();
      }
    }
    for (int i = 0; i < clues.names().size(); i++) {
      Optional<Time> number = number(i);
      if (number.isPresent()) {
        return number.get();
      }
    }
    throw new IntakeException(
        "found no column of times, expected one; --time states it, such as --time=#1=min");
  }

  private Optional<Time> dated(List<Integer> columns) {
    boolean year = all(columns, TimeStyle.YEAR_FIRST);
    boolean day = all(columns, TimeStyle.DAY_FIRST);
    boolean month = all(columns, TimeStyle.MONTH_FIRST);
    if (!year && !day && !month) {
      return Optional.empty();
    }
    if (day && month && !year) {
      clues.ask(
          "is the date day or month first? --time="
              + where(columns)
              + "=dmy or "
              + where(columns)
              + "=mdy");
    }
    TimeStyle style =
        year ? TimeStyle.YEAR_FIRST : day ? TimeStyle.DAY_FIRST : TimeStyle.MONTH_FIRST;
    clues.because(
        "time "
            + where(columns)
            + " as "
            + style.word()
            + ": every cell is a date and a clock time");
    ClockText clock = new ClockText(style);
    clock.read(text(clues.rows().get(0), columns));
    return Optional.of(new Time(columns, style, clock.hasOffset()));
  }

  private Optional<Time> clock(int column) {
    List<Integer> columns = List.of(column);
    if (!all(columns, TimeStyle.ELAPSED)) {
      return Optional.empty();
    }
    ClockText first = new ClockText(TimeStyle.ELAPSED);
    first.read(text(clues.rows().get(0), columns));
    boolean wholeHours =
        text(clues.rows().get(0), columns).chars().filter(c -> c == ':').count() == 2;
    boolean clock = first.local() >= 3600 && wholeHours && all(columns, TimeStyle.CLOCK);
    TimeStyle style = clock ? TimeStyle.CLOCK : TimeStyle.ELAPSED;
    if (!clock && !wholeHours && all(columns, TimeStyle.CLOCK)) {
      clues.ask(
          "is "
              + where(columns)
              + " minutes and seconds, or a clock? --time="
              + where(columns)
              + "=h:m:s or "
              + where(columns)
              + "=clock");
    }
    clues.because(
        "time "
            + where(columns)
            + " as "
            + style.word()
            + ": hours, minutes and seconds, "
            + (clock ? "which begin late enough for a clock" : "which begin near 0"));
    return Optional.of(new Time(columns, style, false));
  }

  private Optional<Time> number(int column) {
    String name = clues.heading(column).toLowerCase(Locale.ROOT);
    Optional<Integer> falls = falls(column);
    if (falls.isEmpty() || !(WORDS.matcher(name).matches() || clues.name(column).startsWith("#"))) {
      return Optional.empty();
    }
    double first = value(clues.rows().get(0), column);
    double last = value(clues.rows().get(clues.rows().size() - 1), column);
    Optional<TimeStyle> style = style(name, first, last);
    if (style.isEmpty()) {
      clues.ask(
          "which unit has the time "
              + where(List.of(column))
              + "? --time="
              + where(List.of(column))
              + "=s, =min or =h");
    }
    TimeStyle taken = style.orElse(TimeStyle.SECONDS);
    clues.because(
        "time "
            + where(List.of(column))
            + " as "
            + taken.word()
            + (falls.get() == 0 ? ": its numbers never fall" : ": its numbers seldom fall")
            + ", from "
            + first
            + " to "
            + last
            + (style.isPresent() ? "" : "; the unit is not said"));
    return Optional.of(new Time(List.of(column), taken, false));
  }

  private static Optional<TimeStyle> style(String name, double first, double last) {
    if (first >= YEAR_2000 * 1000) {
      return Optional.of(TimeStyle.EPOCH_MILLISECONDS);
    }
    if (first >= YEAR_2000 && last < 1e11) {
      return Optional.of(TimeStyle.EPOCH);
    }
    if (name.matches(".*([_(\\[ ]|^)(ms|msec|milli.*)[)\\]]?")) {
      return Optional.of(TimeStyle.MILLISECONDS);
    }
    if (name.matches(".*([_(\\[ ]|^)(s|sec|secs|seconds?)[)\\]]?")) {
      return Optional.of(TimeStyle.SECONDS);
    }
    if (name.matches(".*([_(\\[ ]|^)(min|mins|minutes?)[)\\]]?")) {
      return Optional.of(TimeStyle.MINUTES);
    }
    if (name.matches(".*([_(\\[ ]|^)(h|hr|hrs|hours?)[)\\]]?")) {
      return Optional.of(TimeStyle.HOURS);
    }
    return Optional.empty();
  }

  private boolean all(List<Integer> columns, TimeStyle style) {
    ClockText clock = new ClockText(style);
    return clues.rows().stream().allMatch(row -> clock.read(text(row, columns)));
  }

  /** In how many rows a column of numbers falls; none if it is not one that rises. */
  private Optional<Integer> falls(int column) {
    double before = Double.NEGATIVE_INFINITY;
    int falls = 0;
    for (List<String> row : clues.rows()) {
      double value = value(row, column);
      if (Double.isNaN(value)) {
        return Optional.empty();
      }
      falls += value < before ? 1 : 0;
      before = value;
    }
    // A few rows out of order are a finding, not another kind of column.
    return falls <= 1 + clues.rows().size() / 20 ? Optional.of(falls) : Optional.empty();
  }

  private double value(List<String> row, int column) {
    NumberText number = new NumberText(clues.decimalComma());
    String text = text(row, List.of(column));
    return number.read(text, 0, text.length()) ? number.value() : Double.NaN;
  }

  private static String text(List<String> row, List<Integer> columns) {
    StringBuilder text = new StringBuilder();
    for (int column : columns) {
      text.append(text.length() > 0 ? " " : "");
      text.append(Clues.cell(row, column));
    }
    return text.toString();
  }

  private String where(List<Integer> columns) {
    return String.join("+", columns.stream().map(clues::name).toList());
  }
}
