package org.roastfield.lab.files;

import java.util.regex.Pattern;

/**
 * How the readings of a channel are written down. A reading keeps the unit and the digits it was
 * logged with, so that taking a log in changes no number.
 *
 * @param channel name: lower-case letters, digits and hyphens, starting with a letter, up to 40
 * @param unit of temperature
 * @param decimals digits after the point, 0 to 9
 */
public record ChannelFormat(String channel, LogUnit unit, int decimals) {

  /** Most digits after the point. */
  public static final int MOST_DECIMALS = 9;

  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");

  /** Checks name, unit and decimals. */
  public ChannelFormat {
    if (!isName(channel) || channel.equals("time")) {
      throw new IllegalArgumentException(
          "channel must be lower-case letters, digits and hyphens, at most 40 and not time, was "
              + SourceText.quoted(channel));
    }
    if (unit.isTime()) {
      throw new IllegalArgumentException("unit must be one of temperature, was " + unit.word());
    }
    if (decimals < 0 || decimals > MOST_DECIMALS) {
      throw new IllegalArgumentException(
          "decimals must be in [0, " + MOST_DECIMALS + "], was " + decimals);
    }
  }

  /** Whether {@code text} can name a channel, a place or a probe. */
  static boolean isName(String text) {
    return NAME.matcher(text).matches();
  }

  /** Header of the column, such as "core_degC". */
  public String header() {
    return channel + "_" + unit.word();
  }
}
