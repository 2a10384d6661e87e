package org.roastfield.lab.files;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its unit, as text. */
final class Quantity {

  private static final int LONGEST = 100;

  private static final Pattern PART =
      Pattern.compile(
          "([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*"
              + "([^\\d\\s+\\-.]\\S*(?:\\s+[^\\d\\s]\\S*)*)?\\s*");

  private Quantity() {}

  /** Value in SI units; empty if {@code text} is no finite number with a unit of this kind. */
  static OptionalDouble parse(String text, Dimension dimension) {
    String plain =
        text.replace('\u2212', '-').replace('\u00A0', ' ').replace('\u202F', ' ').strip();
    if (plain.length() > LONGEST) {
      return OptionalDouble.empty();
    }
    Matcher part = PART.matcher(plain);
    double sum = 0;
    int parts = 0;
    int end = 0;
    while (end < plain.length() && part.find(end) && part.start() == end) {
      OptionalDouble value = value(part, dimension);
      if (value.isEmpty()) {
        return value;
      }
      sum += value.getAsDouble();
      parts++;
      end = part.end();
    }
    boolean whole = parts > 0 && end == plain.length();
    return whole && (parts == 1 || dimension == Dimension.TIME) && Double.isFinite(sum)
        ? OptionalDouble.of(sum)
        : OptionalDouble.empty();
  }

  private static OptionalDouble value(Matcher part, Dimension dimension) {
    String unit = part.group(2);
    return dimension.si(Double.parseDouble(part.group(1)), unit == null ? "" : unit.strip());
  }
}
