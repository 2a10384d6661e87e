package org.roastfield.lab.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogUnit;

/**
 * A log as it would have been had the lid been open for some time and the chamber's probe seen it.
 */
final class OpenLid {

  /** How long the lid is open [s]: the unit of what is found. */
  static final double LENGTH = 600;

  /** What the chamber falls to [K]: 55 °C, of ambient and some way up; assumed. */
  private static final double OPEN_AIR = 328.15;

  /** Time constant of the chamber when the lid is on again [s]; assumed. */
  private static final double RECOVERY = 180;

  /** When the chamber has come back but for a hundredth [s]. */
  private static final double BACK = 5 * RECOVERY;

  private static final double STEP = 60;

  private OpenLid() {}

  /**
   * The cook with the lid open from a time on.
   *
   * @param opens [s]
   */
  static VariedCook cook(
      CookFile file, LogPackage log, LogSpan span, Optional<String> probe, double opens) {
    return LoggedCase.of(file, opened(file, log, opens), span, probe).cook();
  }

  private static LogPackage opened(CookFile file, LogPackage log, double opens) {
    CookLog readings = log.readings();
    List<LogChannel> channels = new ArrayList<>(readings.channels());
    List<ChannelFormat> formats = new ArrayList<>(log.formats());
    Optional<LogChannel> chamber = readings.channel(CookLog.CHAMBER).filter(one -> one.size() > 0);
    channels.removeIf(channel -> channel.name().equals(CookLog.CHAMBER));
    formats.removeIf(format -> format.channel().equals(CookLog.CHAMBER));
    channels.add(opened(chamber.orElseGet(() -> stated(file, opens)), opens));
    formats.add(new ChannelFormat(CookLog.CHAMBER, LogUnit.CELSIUS, 1));
    return new LogPackage(
        log.facts(),
        formats,
        new CookLog(
            readings.fileName(),
            readings.comments(),
            readings.rows(),
            readings.start(),
            readings.end(),
            channels),
        log.setting(),
        log.events(),
        log.spots(),
        log.checks(),
        log.afterwards(),
        log.cook(),
        log.source());
  }

  /** The stated air of the first stage until the chamber would have come back. */
  private static LogChannel stated(CookFile file, double opens) {
    int count = (int) Math.ceil((opens + LENGTH + BACK) / STEP) + 1;
    double[] times = new double[count];
    double[] air = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = STEP * i;
      air[i] = file.stages().get(0).upper().air();
    }
    return LogChannel.of(CookLog.CHAMBER, times, air);
  }

  private static LogChannel opened(LogChannel chamber, double opens) {
    double[] times = new double[chamber.size()];
    double[] air = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      times[i] = chamber.time(i);
      double closed = chamber.temperature(i);
      air[i] = closed - share(times[i] - opens) * Math.max(0, closed - OPEN_AIR);
    }
    return LogChannel.of(CookLog.CHAMBER, times, air);
  }

  private static double share(double after) {
    if (after < 0) {
      return 0;
    }
    return after <= LENGTH ? 1 : StrictMath.exp((LENGTH - after) / RECOVERY);
  }
}
