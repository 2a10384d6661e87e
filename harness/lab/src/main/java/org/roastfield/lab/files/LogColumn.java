package org.roastfield.lab.files;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.roastfield.core.units.Temperatures;

/**
 * A column of a log: what its header says it holds.
 *
 * @param name such as "core"; "time" for the time column
 * @param unit of the numbers
 */
record LogColumn(String name, Unit unit) {

  private static final Pattern HEADER = Pattern.compile("([a-z][a-z0-9-]{0,39})_(\\w{1,4})");

  /** Units a header can name. */
  enum Unit {
    S("s", true),
    MIN("min", true),
    H("h", true),
    CELSIUS("degC", false),
    FAHRENHEIT("degF", false),
    KELVIN("K", false);

    private final String word;
    private final boolean time;

    Unit(String word, boolean time) {
      this.word = word;
      this.time = time;
    }

    /** As headers write it. */
    String word() {
      return word;
    }

    /** Value in seconds or kelvin. */
    double si(double value) {
      return switch (this) {
        case S -> value;
        case MIN -> value * 60;
        case H -> value * 3600;
        case CELSIUS -> value + Temperatures.ZERO_CELSIUS;
        case FAHRENHEIT -> (value - 32) / 1.8 + Temperatures.ZERO_CELSIUS;
        case KELVIN -> value;
      };
    }
  }

  /** Whether this is the time column. */
  boolean isTime() {
    return unit.time;
  }

  /**
   * Column of a header, if it is one: {@code time_} with a unit of time, or another name with a
   * unit of temperature.
   */
  static Optional<LogColumn> of(String header) {
    Matcher matcher = HEADER.matcher(header.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String name = matcher.group(1);
    for (Unit unit : Unit.values()) {
      if (unit.word.equals(matcher.group(2)) && unit.time == name.equals("time")) {
        return Optional.of(new LogColumn(name, unit));
      }
    }
    return Optional.empty();
  }
}
