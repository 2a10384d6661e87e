package org.roastfield.lab.intake;

import java.time.LocalDate;

/**
 * Reads clock times: groups of digits in a stated order, a fraction of a second, AM or PM, an
 * offset. One is made for a log and used for each of its cells.
 */
final class ClockText {

  private static final int MOST_GROUPS = 7;

  private final TimeStyle style;
  private final long[] groups = new long[MOST_GROUPS];
  private final int[] lengths = new int[MOST_GROUPS];
  private int count;
  private boolean hasOffset;
  private double offset;
  private double local;
  private long lastDate = Long.MIN_VALUE;
  private long lastDay;

  ClockText(TimeStyle style) {
    this.style = style;
  }

  /** Reads a text; whether it is a time in this style. */
  boolean read(String text) {
    hasOffset = false;
    offset = 0;
    String rest = withoutOffset(text.strip());
    int half = half(rest);
    String plain = half == 0 ? rest : rest.substring(0, rest.length() - 2).strip();
    if (!split(plain)) {
      return false;
    }
    int dateGroups = style.isDated() ? 3 : 0;
    if (!hasMarks(plain) || !readClock(dateGroups, half)) {
      return false;
    }
    if (style.isDated()) {
      return readDate();
    }
    return true;
  }

  private boolean hasMarks(String text) {
    if (style.isDated()) {
      return true;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != ':' && c != '.' && c != ',' && !(c >= '0' && c <= '9')) {
        return false;
      }
    }
    return text.indexOf(':') > 0;
  }

  /** 1 for AM, 2 for PM, 0 for neither. */
  private static int half(String text) {
    int n = text.length();
    if (n < 3 || (text.charAt(n - 1) | 32) != 'm') {
      return 0;
    }
    int letter = text.charAt(n - 2) | 32;
    return letter == 'a' ? 1 : letter == 'p' ? 2 : 0;
  }

  private String withoutOffset(String text) {
    int n = text.length();
    if (!style.isDated() || n == 0) {
      return text;
    }
    if (text.charAt(n - 1) == 'Z' || text.charAt(n - 1) == 'z') {
      hasOffset = true;
      return text.substring(0, n - 1);
    }
    for (int i = n - 1; i > 10 && i >= n - 6; i--) {
      char c = text.charAt(i);
      if (c == '+' || c == '-') {
        String digits = text.substring(i + 1).replace(":", "");
        if (digits.length() != 4 || !digits.chars().allMatch(Character::isDigit)) {
          return text;
        }
        int number = Integer.parseInt(digits);
        offset = (c == '-' ? -1 : 1) * (3600 * (number / 100) + 60 * (number % 100));
        hasOffset = true;
        return text.substring(0, i);
      }
    }
    return text;
  }

  /** Splits into groups of digits. */
  private boolean split(String text) {
    count = 0;
    boolean inside = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= '0' && c <= '9') {
        if (!inside) {
          if (count == MOST_GROUPS) {
            return false;
          }
          groups[count] = 0;
          lengths[count] = 0;
          count++;
          inside = true;
        }
        if (++lengths[count - 1] > 9) {
          return false;
        }
        groups[count - 1] = 10 * groups[count - 1] + (c - '0');
      } else if ("-/.:, T_".indexOf(c) >= 0) {
        inside = false;
      } else {
        return false;
      }
    }
    return count > 0;
  }

  private boolean readClock(int from, int half) {
    int n = count - from;
    if (n < 2 || n > 4) {
      return false;
    }
    double hours = groups[from];
    double minutes = groups[from + 1];
    double seconds = n > 2 ? groups[from + 2] : 0;
    if (style == TimeStyle.ELAPSED && n == 2) {
      // Without hours: minutes and seconds.
      seconds = minutes;
      minutes = hours;
      hours = 0;
    }
    if (n == 4) {
      seconds += groups[from + 3] / Math.pow(10, lengths[from + 3]);
    }
    boolean elapsed = style == TimeStyle.ELAPSED;
    if ((!elapsed && hours > 24) || (minutes > 59 && !(elapsed && n == 2)) || seconds >= 61) {
      return false;
    }
    if (half != 0) {
      if (hours < 1 || hours > 12) {
        return false;
      }
      hours = hours % 12 + (half == 2 ? 12 : 0);
    }
    local = hours * 3600 + minutes * 60 + seconds;
    return true;
  }

  private boolean readDate() {
    int year = style == TimeStyle.YEAR_FIRST ? 0 : 2;
    int month = style == TimeStyle.YEAR_FIRST ? 1 : style == TimeStyle.DAY_FIRST ? 1 : 0;
    int day = style == TimeStyle.YEAR_FIRST ? 2 : style == TimeStyle.DAY_FIRST ? 0 : 1;
    long y = lengths[year] == 2 ? 2000 + groups[year] : groups[year];
    if (lengths[year] != 4 && (lengths[year] != 2 || style == TimeStyle.YEAR_FIRST)) {
      return false;
    }
    long m = groups[month];
    long d = groups[day];
    if (m < 1 || m > 12 || d < 1 || d > LocalDate.of((int) y, (int) m, 1).lengthOfMonth()) {
      return false;
    }
    long date = y * 10_000 + m * 100 + d;
    if (date != lastDate) {
      lastDate = date;
      lastDay = LocalDate.of((int) y, (int) m, (int) d).toEpochDay();
    }
    local += lastDay * 86_400.0;
    return true;
  }

  /** Seconds of the local clock: since 1970 with a date, else since midnight or the beginning. */
  double local() {
    return local;
  }

  /** Whether the text had an offset of its own. */
  boolean hasOffset() {
    return hasOffset;
  }

  /** The offset from UTC [s]. */
  double offset() {
    return offset;
  }
}
