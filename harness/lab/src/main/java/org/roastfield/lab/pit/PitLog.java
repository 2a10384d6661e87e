package org.roastfield.lab.pit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.chamber.Tending;
import org.roastfield.core.inference.Calibration;
import org.roastfield.core.inference.Evidence;
import org.roastfield.core.inference.FireTrace;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.inference.Series;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;

/**
 * A log of the gas in a pit, ready to tell of the pit. Settings are read off it: the median of the
 * readings between two changes of setting. Readings while warming up do not count there.
 */
public final class PitLog {

  /** Readings closer than this are thinned out: gas follows its fire in tens of seconds [s]. */
  static final double SPACING = 30;

  /** A first reading so much above the air outside is of a pit that has long been warm [K]. */
  static final double WARM = 30;

  private static final int FEWEST = 20;

  private final FireTrace model;
  private final Evidence evidence;
  private final ParameterSet parameters;
  private final List<Tending> tending;
  private final int used;

  private PitLog(
      FireTrace model,
      Evidence evidence,
      ParameterSet parameters,
      List<Tending> tending,
      int used) {
    this.model = model;
    this.evidence = evidence;
    this.parameters = parameters;
    this.tending = List.copyOf(tending);
    this.used = used;
  }

  /**
   * Prepares it.
   *
   * @param log with a chamber channel
   * @param events openings of the lid, which must say when it was closed, and changes of setting;
   *     others are not looked at
   * @param like pit that it is like
   * @param outside weather
   * @param glowing coals that glowed at the beginning [kg], if the log begins cold
   * @throws IllegalArgumentException if there is no chamber channel, or there are fewer than twenty
   *     readings, or an opening has no end
   */
  public static PitLog of(
      CookLog log, List<LogEvent> events, FirePit like, Outside outside, double glowing) {
    LogChannel gas =
        log.channel(CookLog.CHAMBER)
            .orElseThrow(
                () -> new IllegalArgumentException(log.fileName() + " has no chamber channel"));
    double[][] kept = thinned(gas);
    if (kept[0].length < FEWEST) {
      throw new IllegalArgumentException(
          log.fileName()
              + " must have at least "
              + FEWEST
              + " chamber readings half a minute apart, has "
              + kept[0].length);
    }
    double first = kept[1][0];
    boolean warm = first > outside.temperature() + WARM;
    List<Tending> tending = tending(kept, events, warm);
    ParameterSet parameters = ofPitAndLog();
    FireTrace.Start start = new FireTrace.Start(first, glowing, warm);
    FireTrace model = FireTrace.of(like, parameters, outside, start, tending, kept[0]);
    Series series = Series.of(CookLog.CHAMBER, kept[0], kept[1], FireTrace.ERRORS);
    Evidence evidence = new Evidence(List.of(series), List.of());
    return new PitLog(model, evidence, parameters, tending, kept[0].length);
  }

  private static ParameterSet ofPitAndLog() {
    ParameterSet all = FireParameters.ofPit();
    for (Parameter each : FireParameters.ofLog().list()) {
      all = all.with(each);
    }
    return all;
  }

  private static double[][] thinned(LogChannel gas) {
    double[] times = new double[gas.size()];
    double[] values = new double[gas.size()];
    int n = 0;
    for (int i = 0; i < gas.size(); i++) {
      if (n == 0 || gas.time(i) >= times[n - 1] + SPACING) {
        times[n] = gas.time(i);
        values[n++] = gas.temperature(i);
      }
    }
    return new double[][] {Arrays.copyOf(times, n), Arrays.copyOf(values, n)};
  }

  private static List<Tending> tending(double[][] kept, List<LogEvent> events, boolean warm) {
    double begin = kept[0][0];
    double end = kept[0][kept[0].length - 1];
    List<Double> changes = new ArrayList<>(List.of(begin));
    for (LogEvent event : of(events, LogEvent.Kind.SETTING_CHANGED)) {
      if (event.time() > changes.get(changes.size() - 1) && event.time() < end) {
        changes.add(event.time());
      }
    }
    List<Tending> deeds = new ArrayList<>();
    for (int k = 0; k < changes.size(); k++) {
      double until = k + 1 < changes.size() ? changes.get(k + 1) : end;
      double settled = k > 0 || !warm ? 0.5 * (changes.get(k) + until) : begin;
      deeds.add(Tending.hold(changes.get(k), median(kept, settled, until)));
    }
    for (LogEvent opening : of(events, LogEvent.Kind.LID_OPENED)) {
      open(deeds, opening, begin, end);
    }
    return deeds;
  }

  private static List<LogEvent> of(List<LogEvent> events, LogEvent.Kind kind) {
    return events.stream()
        .filter(event -> event.kind() == kind)
        .sorted(Comparator.comparingDouble(LogEvent::time))
        .toList();
  }

  /** Puts an opening among the deeds; changes of setting while it lasts count from its end. */
  private static void open(List<Tending> deeds, LogEvent opening, double begin, double end) {
    if (Double.isNaN(opening.end())) {
      throw new IllegalArgumentException(
          "an opening of the lid must say when it was closed, that at "
              + opening.time()
              + " s does not");
    }
    if (!(opening.time() > begin && opening.end() < end)) {
      return;
    }
    Tending before = deeds.get(0);
    Tending after = deeds.get(0);
    for (Tending deed : deeds) {
      before = deed.start() <= opening.time() ? deed : before;
      after = deed.start() <= opening.end() ? deed : after;
    }
    deeds.removeIf(deed -> deed.start() >= opening.time() && deed.start() <= opening.end());
    deeds.add(closed(before).at(opening.time()).withOpenLid());
    deeds.add(closed(after).at(opening.end()));
    deeds.sort(Comparator.comparingDouble(Tending::start));
  }

  private static Tending closed(Tending deed) {
    return Tending.hold(deed.start(), deed.setting());
  }

  private static double median(double[][] kept, double from, double until) {
    double[] among = new double[kept[0].length];
    int n = 0;
    for (int i = 0; i < kept[0].length; i++) {
      if (kept[0][i] >= from && kept[0][i] <= until) {
        among[n++] = kept[1][i];
      }
    }
    if (n == 0) {
      throw new IllegalArgumentException(
          "there must be a chamber reading between two changes of setting, none from "
              + from
              + " s to "
              + until
              + " s");
    }
    double[] sorted = Arrays.copyOf(among, n);
    Arrays.sort(sorted);
    return sorted[n / 2];
  }

  /** What was done, as far as the log says it. */
  public List<Tending> tending() {
    return tending;
  }

  /** Readings used, half a minute apart or more. */
  public int used() {
    return used;
  }

  /** Parameters of pit and log. */
  public ParameterSet parameters() {
    return parameters;
  }

  /**
   * The most probable pit and how sure it is.
   *
   * @param starts searches, at least 1: the log of a fire may have more than one explanation
   */
  public MapEstimate estimate(int starts) {
    return Calibration.of(Prior.of(parameters), evidence, model).map(starts);
  }
}
