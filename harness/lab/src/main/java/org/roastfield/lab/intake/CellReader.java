package org.roastfield.lab.intake;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.roastfield.lab.files.LogUnit;

/** Reads the reading in a cell: a number, perhaps with a unit of its own. */
final class CellReader {

  private static final Pattern STATED = Pattern.compile(".*\\d[°º \u00A0]*([CFK])");

  private final NumberText number;
  private final Set<String> noProbe;
  private boolean missing;
  private double value;
  private int decimals;
  private boolean converted;

  CellReader(boolean decimalComma, Set<String> noProbe) {
    this.number = new NumberText(decimalComma);
    this.noProbe = noProbe;
  }

  /** Reads a cell; whether it is a number or a sign that there is none. */
  boolean read(String cell, LogUnit unit) {
    String text = cell.strip();
    converted = false;
    missing = text.isEmpty() || noProbe.contains(text);
    value = Double.NaN;
    decimals = 0;
    if (missing) {
      return true;
    }
    int end = text.length();
    LogUnit own = unit;
    char last = text.charAt(end - 1);
    if (last == 'C' || last == 'F' || last == 'K') {
      own = last == 'C' ? LogUnit.CELSIUS : last == 'F' ? LogUnit.FAHRENHEIT : LogUnit.KELVIN;
      end--;
      while (end > 0 && "°º \u00A0".indexOf(text.charAt(end - 1)) >= 0) {
        end--;
      }
    }
    if (!number.read(text, 0, end)) {
      return false;
    }
    value = number.value();
    decimals = number.decimals();
    if (own != unit) {
      converted = true;
      value = unit.fromSi(own.si(value));
      decimals += 3;
    }
    return true;
  }

  /** Whether the cell has no reading. */
  boolean isMissing() {
    return missing;
  }

  /** Reading in the unit asked for, NaN if missing. */
  double value() {
    return value;
  }

  /** The number as it stands in the cell, in whatever unit; NaN if missing. */
  double written() {
    return missing ? Double.NaN : number.value();
  }

  /** Unit that the cell states, if it does. */
  static Optional<LogUnit> stated(String cell) {
    Matcher matcher = STATED.matcher(cell.strip());
    return matcher.matches() ? Optional.of(Units.of(matcher.group(1))) : Optional.empty();
  }

  /** Digits after the point that are worth writing. */
  int decimals() {
    return decimals;
  }

  /** Whether the cell had another unit. */
  boolean isConverted() {
    return converted;
  }
}
