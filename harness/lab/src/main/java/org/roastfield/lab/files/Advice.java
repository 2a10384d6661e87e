package org.roastfield.lab.files;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What to write instead of a quantity that could mean several things. */
final class Advice {

  private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d+)(.*)", Pattern.DOTALL);
  private static final Pattern BARE = Pattern.compile("[+-]?\\d+(?:\\.\\d*)?");
  private static final Pattern CLOCK = Pattern.compile("\\d{1,3}:\\d\\d(?::\\d\\d)?");

  private Advice() {}

  /** Advice to add to what is expected; empty if there is none. */
  static String on(String text, Dimension dimension) {
    String plain = text.strip();
    Matcher comma = COMMA.matcher(plain);
    if (plain.length() > Quantity.LONGEST) {
      return "; this is longer than any quantity";
    }
    if (comma.matches()) {
      return comma(comma);
    }
    return switch (dimension) {
      case TEMPERATURE -> temperature(plain);
      case TIME -> time(plain);
      case LENGTH -> length(plain);
      case TEMPERATURE_DIFFERENCE -> difference(plain);
      case MASS -> BARE.matcher(plain).matches() ? "; " + plain + " of kg, g, lb or oz?" : "";
      default -> "";
    };
  }

  /** Three digits after a comma may be thousands. */
  private static String comma(Matcher comma) {
    String point = comma.group(1) + "." + comma.group(2) + comma.group(3);
    return comma.group(2).length() == 3
        ? "; a comma may mean thousands or decimals: write "
            + comma.group(1)
            + comma.group(2)
            + comma.group(3)
            + " or "
            + point
        : "; decimals stand after a point: " + point;
  }

  private static String temperature(String text) {
    String number = text.replaceAll("\\s*(°|º|deg|degrees?)$", "");
    return BARE.matcher(number).matches() ? "; " + number + " of °C or °F?" : "";
  }

  private static String difference(String text) {
    return text.matches(".*[CF]$") ? "; differences are in K: 1 K is 1 °C or 1.8 °F apart" : "";
  }

  private static String time(String text) {
    if (CLOCK.matcher(text).matches()) {
      return "; " + text + " may be hours or minutes: write 1 h 30 min or 1 min 30 s";
    }
    return text.matches("[\\d.]+\\s*m") ? "; m is metres, minutes are min" : "";
  }

  private static String length(String text) {
    if (text.matches(".*[\"″”']$")) {
      return "; inches are in: 3 3/4 in";
    }
    return BARE.matcher(text).matches() ? "; " + text + " of mm, cm or in?" : "";
  }
}
