package org.roastfield.lab.plan;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times, chances and shares in words, the same in every locale. */
public final class Words {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu", Locale.ENGLISH);

  private Words() {}

  /** Such as 18:30. */
  static String clock(LocalDateTime time) {
    return CLOCK.format(time);
  }

  /** Such as Saturday 13 June 2026. */
  public static String day(LocalDateTime time) {
    return DAY.format(time);
  }

  /** Minutes, from two hours on hours and minutes: 95 min, 2 h 05 min; with a sign below 0. */
  public static String duration(double seconds) {
    if (!Double.isFinite(seconds)) {
      return "never";
    }
    long minutes = Math.round(Math.abs(seconds) / 60);
    String text =
        minutes < 120
            ? minutes + " min"
            : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    return seconds < 0 && minutes > 0 ? "−" + text : text;
  }

  /** A chance as a whole percentage; ends that no number of draws can tell are not claimed. */
  public static String chance(double chance, int draws) {
    double finest = 1.0 / draws;
    if (chance < finest / 2) {
      return "< " + percent(Math.max(finest, 0.001));
    }
    return chance > 1 - finest / 2 ? "> " + percent(1 - Math.max(finest, 0.001)) : percent(chance);
  }

  private static String percent(double share) {
    boolean fine = share < 0.0095 || share > 0.9905;
    return String.format(Locale.ROOT, fine ? "%.1f %%" : "%.0f %%", 100 * share);
  }
}
