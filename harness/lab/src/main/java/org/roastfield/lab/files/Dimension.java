package org.roastfield.lab.files;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Kinds of quantity in files, with their units: how they are read and how they are written. */
public enum Dimension {
  LENGTH(
      "a length, such as 96 mm (mm, cm, m, in)",
      new Unit("mm", 1e-3),
      new Unit("cm", 1e-2),
      new Unit("m", 1),
      new Unit("in", 0.0254)),
  ALTITUDE("an altitude, such as 12 m (m, ft)", new Unit("m", 1), new Unit("ft", 0.3048)),
  MASS(
      "a weight, such as 2.4 kg or 5 lb 4 oz (kg, g, lb, oz)",
      List.of(List.of("kg", "g"), List.of("lb", "oz")),
      new Unit("kg", 1),
      new Unit("g", 1e-3),
      new Unit("lb", 0.45359237),
      new Unit("oz", 0.45359237 / 16)),
  TIME(
      "a time, such as 20 min or 1 h 30 min (s, min, h)",
      List.of(List.of("h", "min", "s")),
      new Unit("s", 1),
      new Unit("min", 60),
      new Unit("h", 3600)),
  TEMPERATURE(
      "a temperature, such as 57 °C (°C, °F, K)",
      new Unit("°C", 1),
      new Unit("degC", 1),
      new Unit("C", 1),
      new Unit("°F", 1 / 1.8),
      new Unit("degF", 1 / 1.8),
      new Unit("F", 1 / 1.8),
      new Unit("K", 1)),
  RATIO("a plain number, such as 2", new Unit("", 1)),
  SHARE("a share, such as 0.3 or 30 %", new Unit("", 1), new Unit("%", 0.01)),
  HUMIDITY_RATIO(
      "a humidity ratio in kg water per kg dry air, such as 0.035 (kg/kg, g/kg)",
      new Unit("", 1),
      new Unit("kg/kg", 1),
      new Unit("g/kg", 1e-3)),
  HEAT_TRANSFER("a coefficient, such as 7 W/(m²·K)", new Unit("W/(m²·K)", 1)),
  SPEED("a speed, such as 0.3 m/s (m/s, km/h)", new Unit("m/s", 1), new Unit("km/h", 1 / 3.6)),
  WATER_PER_AREA(
      "an amount of water, such as 100 g/m² (g/m², kg/m²)",
      new Unit("g/m²", 1e-3),
      new Unit("kg/m²", 1)),
  VOLUME("a volume, such as 60 L (L, m³)", new Unit("L", 1e-3), new Unit("m³", 1)),
  MASS_FLOW(
      "a flow, such as 0.3 kg/h (kg/h, g/h, g/s)",
      new Unit("kg/h", 1.0 / 3600),
      new Unit("g/h", 1e-3 / 3600),
      new Unit("g/s", 1e-3)),
  TEMPERATURE_DIFFERENCE("a temperature difference in K, such as 0.5 K", new Unit("K", 1)),
  CONDUCTIVITY("a conductivity, such as 0.48 W/(m·K)", new Unit("W/(m·K)", 1)),
  DENSITY(
      "a density, such as 1060 kg/m³ (kg/m³, g/cm³)",
      new Unit("kg/m³", 1),
      new Unit("g/cm³", 1000)),
  HEAT_CAPACITY(
      "a heat capacity, such as 3450 J/(kg·K) (J/(kg·K), kJ/(kg·K))",
      new Unit("J/(kg·K)", 1),
      new Unit("kJ/(kg·K)", 1000));

  /**
   * A unit.
   *
   * @param word as files write it; other ways of writing it are read too
   * @param factor SI units in one of it
   */
  record Unit(String word, double factor) {

    /** W/(m²·K) is also W/(m2*K) and W/m2K. */
    String pattern() {
      return word.replace("(", "[(]?")
          .replace(")", "[)]?")
          .replace("²", "\\^?[²2]")
          .replace("³", "\\^?[³3]")
          .replace("·", "[·* ]?");
    }

    /** The bare letters. */
    static String bare(String word) {
      return word.replace('²', '2').replace('³', '3').replaceAll("[\\s·*()^]", "");
    }
  }

  private final String description;

  // List.of cannot be changed.
  @SuppressWarnings("ImmutableEnumChecker")
  private final List<Unit> units;

  private final boolean compound;
  private final Pattern pattern;

  Dimension(String description, Unit... units) {
    this(description, List.of(), units);
  }

  /**
   * @param falling rows of units that may follow each other in one quantity
   */
  Dimension(String description, List<List<String>> falling, Unit... units) {
    this.description = description;
    this.units = List.of(units);
    this.compound = !falling.isEmpty();
    this.pattern = Pattern.compile(whole(this.units, falling));
  }

  private static String whole(List<Unit> units, List<List<String>> falling) {
    String single =
        units.stream()
            .map(Unit::pattern)
            .collect(Collectors.joining("|", Quantity.NUMBER + Quantity.SPACE + "(?:", ")"));
    String several = falling.stream().map(row -> "|" + falling(row)).collect(Collectors.joining());
    return "^" + Quantity.SPACE + "[+\\u2212-]?(?:" + single + several + ")" + Quantity.SPACE + "$";
  }

  /** Two or more units of a row: one of them, then any of the smaller ones. */
  private static String falling(List<String> row) {
    String part = Quantity.NUMBER + Quantity.SPACE;
    return IntStream.range(0, row.size() - 1)
        .mapToObj(
            i ->
                part
                    + row.get(i)
                    + row.subList(i + 1, row.size()).stream()
                        .map(unit -> "(?:" + Quantity.SPACE + part + unit + ")?")
                        .collect(Collectors.joining()))
        .collect(Collectors.joining("|"));
  }

  /** What to write, for messages. */
  String description() {
    return description;
  }

  /** The grammar of the whole text; the JSON Schema of cook files has the same. */
  Pattern pattern() {
    return pattern;
  }

  List<Unit> units() {
    return units;
  }

  /** Whether several units may follow each other. */
  boolean isCompound() {
    return compound;
  }

  /**
   * Value in SI units of a number with one of the units.
   *
   * @throws IllegalArgumentException if the unit is none
   */
  double si(double number, String unit) {
    String bare = Unit.bare(unit);
    for (Unit each : units) {
      if (Unit.bare(each.word).equals(bare)) {
        return this == TEMPERATURE ? kelvin(number, bare) : number * each.factor;
      }
    }
    throw new IllegalArgumentException("unit must be one of " + units + ", was " + unit);
  }

  private static double kelvin(double number, String unit) {
    return switch (unit) {
      case "K" -> number;
      case "°F", "degF", "F" -> (number - 32) / 1.8 + 273.15;
      default -> number + 273.15;
    };
  }

  /** Number to four decimals, without trailing zeros, in the unit that messages use. */
  String text(double si) {
    String number = String.format(Locale.ROOT, "%.4f", inWritten(si));
    return withUnit(number.replaceAll("\\.?0+$", ""));
  }

  /**
   * Quantity as files write it: the fewest digits, in the unit that messages use, that are read
   * back as the same number; where none are, 17 digits, read back within its last digits.
   *
   * @param si finite value in SI units, for a temperature [K]
   * @throws IllegalArgumentException if it is not finite
   */
  public String exactText(double si) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException("si must be finite, was " + si);
    }
    String text = "";
    for (int digits = 1; digits <= 17; digits++) {
      BigDecimal rounded =
          BigDecimal.valueOf(inWritten(si)).round(new MathContext(digits, RoundingMode.HALF_EVEN));
      text = withUnit(digitsOf(rounded));
      if (Quantity.parse(text, this).orElseThrow() == si) {
        return text;
      }
    }
    return text;
  }

  private static String digitsOf(BigDecimal number) {
    BigDecimal bare = number.stripTrailingZeros();
    boolean plain = bare.signum() == 0 || Math.abs(bare.precision() - bare.scale()) < 9;
    return plain ? bare.toPlainString() : bare.toString();
  }

  private String withUnit(String number) {
    String unit = written();
    return unit.isEmpty() ? number : number + " " + unit;
  }

  private String written() {
    return switch (this) {
      case TEMPERATURE -> "°C";
      case LENGTH -> "mm";
      case WATER_PER_AREA -> "kg/m²";
      case MASS_FLOW -> "kg/h";
      case MASS -> "kg";
      case TIME -> "s";
      default -> units.get(0).word;
    };
  }

  private double inWritten(double si) {
    return switch (this) {
      case LENGTH, VOLUME -> si * 1000;
      case TEMPERATURE -> si - 273.15;
      case MASS_FLOW -> si * 3600;
      default -> si;
    };
  }
}
