package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.intake.Plausibility;

/** What in a log looks like no cook, or like something that nobody wrote down. */
final class LogChecks {

  /** Share of missing readings worth a word, and that above which a log is in doubt: assumed. */
  private static final double SOME_MISSING = 0.05;

  private static final double MANY_MISSING = 0.25;

  /** A dip of the chamber and an event this near are one and the same [s]; assumed. */
  private static final double SAME = 300;

  /** Intervals within this of a multiple of the shortest usual one are regular. */
  private static final double REGULAR = 0.1;

  private static final Map<org.roastfield.lab.intake.Finding.Kind, String> SUSPICIOUS =
      Map.of(
          org.roastfield.lab.intake.Finding.Kind.PROBE_MOVED,
          "a step as if the probe had been moved",
          org.roastfield.lab.intake.Finding.Kind.PROBE_IN_AIR,
          "a change faster than meat allows, as if the probe were in air",
          org.roastfield.lab.intake.Finding.Kind.UNIT_SWITCH,
          "a step as if the unit had been switched",
          org.roastfield.lab.intake.Finding.Kind.FROZEN,
          "a value that does not change");

  private LogChecks() {}

  /**
   * Findings of the part of a log that is used.
   *
   * @param span nothing after it is looked at
   */
  static List<Finding> of(LogPackage log, LogSpan span) {
    List<Finding> findings = new ArrayList<>();
    String name = log.facts().name();
    CookLog readings = span.ended(log.readings());
    for (LogChannel channel : readings.channels()) {
      double share = missing(channel);
      if (share >= SOME_MISSING) {
        findings.add(
            Finding.of(
                Finding.Kind.DATA,
                share >= MANY_MISSING ? Finding.Weight.DOUBT : Finding.Weight.NOTE,
                name,
                String.format(
                    Locale.ROOT,
                    "%.0f %% of the readings of channel %s are missing; what is left was used, and"
                        + " the spreads are as wide as that makes them",
                    100 * share,
                    channel.name())));
      }
    }
    for (org.roastfield.lab.intake.Finding found : Plausibility.of(readings)) {
      suspicious(log, found, findings);
    }
    return findings;
  }

  private static void suspicious(
      LogPackage log, org.roastfield.lab.intake.Finding found, List<Finding> findings) {
    String name = log.facts().name();
    double minutes = found.from() / 60;
    String words = SUSPICIOUS.get(found.kind());
    if (found.kind() == org.roastfield.lab.intake.Finding.Kind.LID_OPENED
        && !isLogged(log, LogEvent.Kind.LID_OPENED, found)) {
      findings.add(
          Finding.of(
              Finding.Kind.DATA,
              Finding.Weight.NOTE,
              name,
              String.format(
                  Locale.ROOT,
                  "at %.0f min the chamber falls by %.0f K and comes back: a lid opening that is"
                      + " not written down; the computation follows the chamber's readings",
                  minutes,
                  found.size())));
    } else if (words != null && !isLogged(log, LogEvent.Kind.PROBE_MOVED, found)) {
      findings.add(
          Finding.of(
              Finding.Kind.DATA,
              Finding.Weight.DOUBT,
              name,
              String.format(
                  Locale.ROOT, "channel %s at %.0f min: %s", found.channel(), minutes, words)));
    }
  }

  private static boolean isLogged(
      LogPackage log, LogEvent.Kind kind, org.roastfield.lab.intake.Finding found) {
    return log.events().stream()
        .filter(event -> event.kind() == kind)
        .anyMatch(
            event -> event.time() > found.from() - SAME && event.time() < found.until() + SAME);
  }

  /**
   * Share of readings that are missing between the channel's first and last: rows without one, or
   * rows that are not there where the others come at regular times.
   */
  static double missing(LogChannel channel) {
    int n = channel.size();
    if (n < 3) {
      return 0;
    }
    int inside = 0;
    for (int i = 0; i < channel.missing(); i++) {
      boolean between =
          channel.missingTime(i) > channel.time(0) && channel.missingTime(i) < channel.time(n - 1);
      inside += between ? 1 : 0;
    }
    double[] intervals = new double[n - 1];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = channel.time(i + 1) - channel.time(i);
    }
    double usual = lowerQuartile(intervals);
    int regular = 0;
    for (double interval : intervals) {
      double multiple = interval / usual;
      regular += Math.abs(multiple - Math.rint(multiple)) < REGULAR ? 1 : 0;
    }
    boolean isRegular = regular > 0.9 * intervals.length;
    double rows =
        isRegular
            ? Math.rint((channel.time(n - 1) - channel.time(0)) / usual) + 1
            : n + (double) inside;
    return 1 - n / Math.max(rows, n + (double) inside);
  }

  private static double lowerQuartile(double[] of) {
    double[] sorted = of.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 4];
  }
}
