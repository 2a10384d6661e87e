package org.roastfield.lab.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Rows of a log on their way to channels. */
final class LogRows {

  /** Longest log [s]: thirty days, since loggers are left on beyond a cook. */
  static final double LONGEST = 2_592_000;

  static final double COLDEST = 173.15;
  static final double HOTTEST = 1773.15;

  private final List<LogColumn> columns;
  private final List<Double> times = new ArrayList<>();
  private final List<List<Double>> values = new ArrayList<>();

  LogRows(List<LogColumn> columns) {
    this.columns = List.copyOf(columns);
    columns.forEach(column -> values.add(new ArrayList<>()));
  }

  int size() {
    return times.size();
  }

  void add(LogRow row) {
    if (row.size() != columns.size()) {
      throw row.error(
          0,
          row.size() + (row.size() == 1 ? " cell" : " cells"),
          columns.size() + " separated by commas");
    }
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).isTime()) {
        addTime(row, i);
      } else {
        values.get(i).add(temperature(row, i));
      }
    }
  }

  private void addTime(LogRow row, int i) {
    String text = row.cell(i).strip();
    double time = number(row, i, text, "a time in " + columns.get(i).unit().word());
    if (!(time >= 0 && time <= LONGEST)) {
      throw row.error(i, SourceText.quoted(text), "a time from 0 to thirty days");
    }
    if (!times.isEmpty() && !(time > times.get(times.size() - 1))) {
      throw row.error(i, SourceText.quoted(text), "a later time than in the row before");
    }
    times.add(time);
  }

  /** Reading [K], NaN if missing. */
  private double temperature(LogRow row, int i) {
    String text = row.cell(i).strip();
    if (text.isEmpty()) {
      return Double.NaN;
    }
    double value = number(row, i, text, "a number, or nothing for a missing reading");
    if (!(value >= COLDEST && value <= HOTTEST)) {
      throw row.error(i, SourceText.quoted(text), "a temperature from -100 °C to 1500 °C");
    }
    return value;
  }

  private double number(LogRow row, int i, String text, String expected) {
    if (!text.matches("[+-]?(\\d{1,12}(\\.\\d{0,30})?|\\.\\d{1,30})([eE][+-]?\\d{1,2})?")) {
      throw row.error(i, text.isEmpty() ? "nothing" : SourceText.quoted(text), expected);
    }
    return columns.get(i).unit().si(Double.parseDouble(text));
  }

  CookLog log(String fileName, List<String> comments) {
    List<LogChannel> channels = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      if (!columns.get(i).isTime()) {
        channels.add(channel(columns.get(i).name(), values.get(i)));
      }
    }
    double end = times.get(times.size() - 1);
    return new CookLog(fileName, comments, times.size(), times.get(0), end, channels);
  }

  private LogChannel channel(String name, List<Double> column) {
    double[] allTimes = times.stream().mapToDouble(Double::doubleValue).toArray();
    double[] all = column.stream().mapToDouble(Double::doubleValue).toArray();
    int[] present = IntStream.range(0, all.length).filter(row -> !Double.isNaN(all[row])).toArray();
    int[] absent = IntStream.range(0, all.length).filter(row -> Double.isNaN(all[row])).toArray();
    return LogChannel.of(
        name, picked(allTimes, present), picked(all, present), picked(allTimes, absent));
  }

  private static double[] picked(double[] values, int[] rows) {
    return Arrays.stream(rows).mapToDouble(row -> values[row]).toArray();
  }
}
