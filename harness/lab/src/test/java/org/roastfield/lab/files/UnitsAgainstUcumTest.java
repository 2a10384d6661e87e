package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import systems.uom.ucum.format.UCUMFormat;

/** Factors of the reader's units, against a units library that knows them by their UCUM codes. */
class UnitsAgainstUcumTest {

  private static final UnitFormat UCUM = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

  /** Codes of the words that are not their own code. */
  private static final Map<String, String> CODES =
      new HashMap<>(
          Map.ofEntries(
              Map.entry("", "1"),
              Map.entry("in", "[in_i]"),
              Map.entry("ft", "[ft_i]"),
              Map.entry("lb", "[lb_av]"),
              Map.entry("oz", "[oz_av]"),
              Map.entry("°C", "Cel"),
              Map.entry("degC", "Cel"),
              Map.entry("C", "Cel"),
              Map.entry("°F", "[degF]"),
              Map.entry("degF", "[degF]"),
              Map.entry("F", "[degF]")));

  /** SI units that values are read in. */
  private static String si(Dimension dimension) {
    return switch (dimension) {
      case LENGTH, ALTITUDE -> "m";
      case MASS -> "kg";
      case TIME -> "s";
      case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "K";
      case RATIO, SHARE, HUMIDITY_RATIO -> "1";
      case HEAT_TRANSFER -> "W/(m2.K)";
      case SPEED -> "m/s";
      case WATER_PER_AREA -> "kg/m2";
      case VOLUME -> "m3";
      case MASS_FLOW -> "kg/s";
      case CONDUCTIVITY -> "W/(m.K)";
      case DENSITY -> "kg/m3";
      case HEAT_CAPACITY -> "J/(kg.K)";
    };
  }

  private static String code(String word) {
    String plain = word.replace("²", "2").replace("³", "3").replace("·", ".");
    return Objects.requireNonNullElse(CODES.get(word), plain);
  }

  private static double converted(String from, String to, double value)
      throws IncommensurableException {
    Unit<?> unit = UCUM.parse(from);
    return unit.getConverterToAny(UCUM.parse(to)).convert(value);
  }

  @Test
  void everyUnit_isWorthWhatItsCodeSays() throws IncommensurableException {
    for (Dimension dimension : Dimension.values()) {
      for (Dimension.Unit unit : dimension.units()) {
        for (double value : new double[] {1, 57, 135.5}) {
          double expected = converted(code(unit.word()), si(dimension), value);
          String text = String.format(Locale.ROOT, "%s %s", value, unit.word());
          double read = Quantity.parse(text, dimension).orElseThrow();
          assertEquals(expected, read, 1e-12 * Math.abs(expected), dimension + " " + text);
        }
      }
    }
  }
}
