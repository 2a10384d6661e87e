package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.StageSetup;

/**
 * When the stages of a cook file began and ended in a logged cook. In this order, what comes first
 * counts: a remark "the NAME begins" with the name of a stage; the cut taken off, when the rest
 * begins or, without one, the last stage ends; stages of a stated length or end, from a known
 * neighbour; a core that the file waits for, when the log's core first shows it.
 *
 * <p>A stage whose end is not known lasts to the end of the log, and those after it are left out.
 */
final class StageTimes {

  /** Air below which a stage after the first is a rest [K]: 50 °C, below any hot cooking. */
  private static final double REST = 323.15;

  private final CookFile file;
  private final CookLog log;
  private final double[] bounds;
  private final String[] origins;

  private StageTimes(CookFile file, CookLog log) {
    this.file = file;
    this.log = log;
    bounds = new double[file.stages().size() + 1];
    origins = new String[bounds.length];
    Arrays.fill(bounds, Double.NaN);
    Arrays.fill(origins, "");
    bounds[0] = 0;
  }

  static StageTimes of(CookFile file, CookLog log, List<LogEvent> events) {
    StageTimes times = new StageTimes(file, log);
    times.byRemarks(events);
    times.byTakenOff(events);
    times.byStatedLengths();
    times.byCores();
    return times;
  }

  /** Whether a stage of a file is a rest: after the first, in air below 50 °C. */
  static boolean isRest(CookFile file, int stage) {
    return stage > 0 && file.stages().get(stage).upper().air() < REST;
  }

  /** How many stages, from the first on, took place in the log. */
  int count() {
    int count = 1;
    while (count < file.stages().size() && bounds[count] < log.end()) {
      count++;
    }
    return count;
  }

  double begins(int stage) {
    return bounds[stage];
  }

  /** End of a stage [s]; the last one lasts to the end of the log at least. */
  double ends(int stage) {
    double end = bounds[stage + 1];
    if (stage < count() - 1) {
      return end;
    }
    return end > log.end() ? end : log.end();
  }

  /** Where the times come from, in words. */
  List<String> words() {
    List<String> words = new ArrayList<>();
    for (int i = 1; i < count(); i++) {
      words.add(
          String.format(
              Locale.ROOT,
              "stage \"%s\" begins at %.1f min: %s",
              file.stages().get(i).name(),
              bounds[i] / 60,
              origins[i]));
    }
    for (int i = count(); i < file.stages().size(); i++) {
      words.add(
          "stage \""
              + file.stages().get(i).name()
              + "\": left out, since the log does not reach it or does not say when it began");
    }
    return words;
  }

  private void set(int bound, double time, String origin) {
    boolean after = bound > 0 && (Double.isNaN(bounds[bound - 1]) || time > bounds[bound - 1]);
    if (Double.isNaN(bounds[bound]) && after && time > 0) {
      bounds[bound] = time;
      origins[bound] = origin;
    }
  }

  private void byRemarks(List<LogEvent> events) {
    for (LogEvent event : events) {
      if (event.kind() == LogEvent.Kind.REMARK) {
        String note = event.note().strip().toLowerCase(Locale.ROOT).replaceFirst("^the ", "");
        for (int i = 1; i < file.stages().size(); i++) {
          if (note.equals(file.stages().get(i).name().toLowerCase(Locale.ROOT) + " begins")) {
            set(i, event.time(), "a remark");
          }
        }
      }
    }
  }

  private void byTakenOff(List<LogEvent> events) {
    int rest = file.stages().size();
    while (rest > 1 && isRest(file, rest - 1)) {
      rest--;
    }
    for (LogEvent event : events) {
      if (event.kind() == LogEvent.Kind.TAKEN_OFF) {
        set(rest, event.time(), "taken off");
      }
    }
  }

  private void byStatedLengths() {
    for (int i = 0; i < bounds.length - 1; i++) {
      List<Stage> parts = parts(i);
      if (parts.get(parts.size() - 1).end() instanceof StageEnd.At at) {
        set(i + 1, at.time(), "as the cook file states");
      }
      if (hasLength(parts) && !Double.isNaN(bounds[i])) {
        set(i + 1, bounds[i] + length(parts), "as long as the cook file states");
      }
    }
    for (int i = bounds.length - 2; i > 0; i--) {
      if (hasLength(parts(i)) && !Double.isNaN(bounds[i + 1])) {
        set(i, bounds[i + 1] - length(parts(i)), "as long before as the cook file states");
      }
    }
  }

  private void byCores() {
    for (int i = 0; i < bounds.length - 1; i++) {
      List<Stage> parts = parts(i);
      if (parts.get(parts.size() - 1).end() instanceof StageEnd.Rises rises
          && rises.probe().equals(Probe.CORE)
          && !Double.isNaN(bounds[i])) {
        double reached = firstAbove(rises.temperature(), bounds[i]);
        set(i + 1, reached, "the core reading that the cook file waits for");
        byStatedLengths();
      }
    }
  }

  private double firstAbove(double temperature, double from) {
    LogChannel core =
        log.channel(CookLog.CORE).orElse(LogChannel.of(CookLog.CORE, new double[0], new double[0]));
    for (int k = 0; k < core.size(); k++) {
      if (core.time(k) >= from && core.temperature(k) >= temperature) {
        return core.time(k);
      }
    }
    return Double.NaN;
  }

  private List<Stage> parts(int setup) {
    StageSetup stage = file.stages().get(setup);
    return file.cook().stages().subList(stage.firstStage(), stage.lastStage() + 1);
  }

  private static boolean hasLength(List<Stage> parts) {
    return parts.stream().allMatch(part -> part.end() instanceof StageEnd.After);
  }

  private static double length(List<Stage> parts) {
    return parts.stream().mapToDouble(part -> part.end().longest(0)).sum();
  }
}
