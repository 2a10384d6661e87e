package org.roastfield.lab.files;

import java.text.Normalizer;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, as people write it: {@code 57 °C}, {@code 9.6cm}, {@code 3 3/4 in},
 * {@code 1 ½ in}, {@code 5 lb 4 oz}, {@code 1 h 30 min}.
 *
 * <p>The point is the decimal sign. Several units stand in falling order and without signs of their
 * own. {@link Dimension#pattern()} is the whole grammar.
 */
final class Quantity {

  /** Longest text [characters]. */
  static final int LONGEST = 100;

  /** Space between the parts, as patterns of JSON Schema write it. */
  static final String SPACE = "[ \\t\\r\\n\\u00a0\\u202f]*";

  private static final String SOME_SPACE = "[ \\t\\r\\n\\u00a0\\u202f]+";

  private static final String SIGN = "[½¼¾⅓⅔⅛⅜⅝⅞]";
  private static final String WHOLE = "[0-9]{1,9}";
  private static final String FRACTION = "[0-9]{1,3}[/\\u2044][1-9][0-9]{0,2}";
  private static final String DECIMAL =
      "(?:[0-9]{1,25}(?:\\.[0-9]{0,25})?|\\.[0-9]{1,25})(?:[eE][+-]?[0-9]{1,2})?";

  /** A number without its sign. */
  static final String NUMBER =
      "(?:(?:"
          + WHOLE
          + SOME_SPACE
          + ")?"
          + FRACTION
          + "|(?:"
          + WHOLE
          + SPACE
          + ")?"
          + SIGN
          + "|"
          + DECIMAL
          + ")";

  /** One of several numbers with units, which are words then. */
  private static final Pattern PART =
      Pattern.compile("(" + NUMBER + ")" + SPACE + "([a-z]+)" + SPACE);

  private static final Pattern SINGLE = Pattern.compile("(" + NUMBER + ")" + SPACE + "(.*)");

  private static final Pattern MIXED =
      Pattern.compile("(?:([0-9]+)" + SOME_SPACE + ")?([0-9]+)[/\\u2044]([0-9]+)");

  private Quantity() {}

  /** Value in SI units; empty if {@code text} is no number with a unit of this kind. */
  static OptionalDouble parse(String text, Dimension dimension) {
    if (text.length() > LONGEST || !dimension.pattern().matcher(text).matches()) {
      return OptionalDouble.empty();
    }
    String plain = text.replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    boolean negative = plain.charAt(0) == '-' || plain.charAt(0) == '\u2212';
    String bare = negative || plain.charAt(0) == '+' ? plain.substring(1) : plain;
    Matcher single = SINGLE.matcher(bare);
    double value =
        dimension.isCompound() || !single.matches()
            ? sum(bare, dimension, negative)
            : dimension.si(signed(number(single.group(1)), negative), single.group(2));
    return OptionalDouble.of(value);
  }

  private static double signed(double number, boolean negative) {
    return negative ? -number : number;
  }

  private static double sum(String text, Dimension dimension, boolean negative) {
    Matcher part = PART.matcher(text);
    double sum = 0;
    while (part.find()) {
      sum += dimension.si(number(part.group(1)), part.group(2));
    }
    return signed(sum, negative);
  }

  /** A one-sign fraction such as ½ is decomposed into 1⁄2. */
  private static double number(String text) {
    String apart = text.replaceAll("(?=" + SIGN + ")", " ").strip();
    Matcher mixed = MIXED.matcher(Normalizer.normalize(apart, Normalizer.Form.NFKD));
    if (!mixed.matches()) {
      return Double.parseDouble(text);
    }
    double whole = mixed.group(1) == null ? 0 : Double.parseDouble(mixed.group(1));
    return whole + Double.parseDouble(mixed.group(2)) / Double.parseDouble(mixed.group(3));
  }
}
