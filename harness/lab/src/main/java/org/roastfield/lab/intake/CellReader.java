package org.roastfield.lab.intake;

import java.util.Set;
import org.roastfield.lab.files.LogUnit;

/** Reads the reading in a cell: a number, perhaps with a unit of its own. */
final class CellReader {

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

  /** Digits after the point that are worth writing. */
  int decimals() {
    return decimals;
  }

  /** Whether the cell had another unit. */
  boolean isConverted() {
    return converted;
  }
}
