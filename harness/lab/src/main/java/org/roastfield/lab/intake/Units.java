package org.roastfield.lab.intake;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.roastfield.lab.files.LogUnit;

/** Units of temperature in options and headers. */
final class Units {

  private static final Pattern CELSIUS =
      Pattern.compile("(?i).*(°\\s*c|º\\s*c|deg\\s*c|celsius).*|.*[_(\\[ ]C[)\\]]?");
  private static final Pattern FAHRENHEIT =
      Pattern.compile("(?i).*(°\\s*f|º\\s*f|deg\\s*f|fahrenheit).*|.*[_(\\[ ]F[)\\]]?");
  private static final Pattern KELVIN = Pattern.compile("(?i).*kelvin.*|.*[_(\\[ ]K[)\\]]?");

  private static final Pattern SUFFIX =
      Pattern.compile("(?i)[\\s_(\\[]+(°|º|deg)?\\s*[cfk][)\\]]?$");

  private Units() {}

  /** Unit of a word of an option. */
  static LogUnit of(String word) {
    return switch (word) {
      case "degC", "°C", "C" -> LogUnit.CELSIUS;
      case "degF", "°F", "F" -> LogUnit.FAHRENHEIT;
      case "K" -> LogUnit.KELVIN;
      default ->
          throw new IntakeException(
              "the unit in --channel must be degC, degF or K, was " + IntakeException.quoted(word));
    };
  }

  /** Whether a line is of units, not of readings: no cell has a digit, and one is a unit. */
  static boolean areUnits(List<String> cells) {
    return !hasDigit(cells)
        && cells.stream().anyMatch(cell -> inHeader("(" + cell.strip() + ")").isPresent());
  }

  private static boolean hasDigit(List<String> row) {
    return row.stream().anyMatch(cell -> cell.chars().anyMatch(Character::isDigit));
  }

  /** A name without the unit behind it. */
  static String without(String header) {
    return SUFFIX.matcher(header).replaceFirst("");
  }

  /** Unit that a header names. */
  static Optional<LogUnit> inHeader(String header) {
    if (FAHRENHEIT.matcher(header).matches()) {
      return Optional.of(LogUnit.FAHRENHEIT);
    }
    if (CELSIUS.matcher(header).matches()) {
      return Optional.of(LogUnit.CELSIUS);
    }
    return KELVIN.matcher(header).matches() ? Optional.of(LogUnit.KELVIN) : Optional.empty();
  }
}
