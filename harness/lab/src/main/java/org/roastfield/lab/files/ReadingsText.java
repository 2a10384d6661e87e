package org.roastfield.lab.files;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes readings as {@link CookLogReader} reads them, row by row, without holding the text. */
final class ReadingsText {

  private static final int TIME_DECIMALS = 6;
  private static final long[] POWERS = powers();
  private static final double EXACT = 1L << 53;

  private final List<ChannelFormat> formats;
  private final List<LogChannel> channels;
  private final int[] next;
  private final int[] nextMissing;
  private final StringBuilder line = new StringBuilder();

  private ReadingsText(List<ChannelFormat> formats, CookLog log) {
    this.formats = formats;
    this.channels = log.channels();
    this.next = new int[channels.size()];
    this.nextMissing = new int[channels.size()];
  }

  /**
   * Writes a log.
   *
   * @param formats of its channels, in their order
   */
  static void write(Writer out, List<ChannelFormat> formats, CookLog log) throws IOException {
    for (String comment : log.comments()) {
      out.write("# " + comment + "\n");
    }
    out.write("time_s");
    for (ChannelFormat format : formats) {
      out.write("," + format.header());
    }
    out.write("\n");
    new ReadingsText(formats, log).rows(out);
  }

  private void rows(Writer out) throws IOException {
    for (double time = earliest(); time < Double.POSITIVE_INFINITY; time = earliest()) {
      line.setLength(0);
      appendStripped(line, time, TIME_DECIMALS);
      for (int i = 0; i < channels.size(); i++) {
        line.append(',');
        cell(i, time);
      }
      out.append(line.append('\n'));
    }
  }

  private double earliest() {
    double time = Double.POSITIVE_INFINITY;
    for (int i = 0; i < channels.size(); i++) {
      LogChannel channel = channels.get(i);
      if (next[i] < channel.size()) {
        time = Math.min(time, channel.time(next[i]));
      }
      if (nextMissing[i] < channel.missing()) {
        time = Math.min(time, channel.missingTime(nextMissing[i]));
      }
    }
    return time;
  }

  private void cell(int i, double time) {
    LogChannel channel = channels.get(i);
    if (next[i] < channel.size() && channel.time(next[i]) == time) {
      ChannelFormat format = formats.get(i);
      append(line, format.unit().fromSi(channel.temperature(next[i])), format.decimals());
      next[i]++;
    } else if (nextMissing[i] < channel.missing() && channel.missingTime(nextMissing[i]) == time) {
      nextMissing[i]++;
    }
  }

  /** Appends a number with so many decimals; much faster than a format string. */
  static void append(StringBuilder text, double value, int decimals) {
    double scaled = Math.abs(value) * POWERS[decimals];
    if (!(scaled < EXACT)) {
      text.append(new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString());
      return;
    }
    long digits = Math.round(scaled);
    if (value < 0 && digits > 0) {
      text.append('-');
    }
    text.append(digits / POWERS[decimals]);
    if (decimals > 0) {
      text.append('.');
      String fraction = Long.toString(digits % POWERS[decimals]);
      text.append("0".repeat(decimals - fraction.length())).append(fraction);
    }
  }

  private static void appendStripped(StringBuilder text, double value, int decimals) {
    append(text, value, decimals);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    text.setLength(text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  private static long[] powers() {
    long[] powers = new long[ChannelFormat.MOST_DECIMALS + 1];
    powers[0] = 1;
    for (int i = 1; i < powers.length; i++) {
      powers[i] = 10 * powers[i - 1];
    }
    return powers;
  }
}
