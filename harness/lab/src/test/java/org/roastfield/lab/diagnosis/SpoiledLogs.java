package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.ScenarioCut;
import org.roastfield.lab.synthetic.SyntheticCook;
import org.roastfield.lab.synthetic.SyntheticCooker;

/** Made-up logs with one thing wrong on purpose. */
final class SpoiledLogs {

  private SpoiledLogs() {}

  /** A good log and its cook file. */
  record Written(MadeCook made, LogPackage log, String yaml) {

    CookFile file() {
      return CookFileReader.parse("cook.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    }

    Written with(LogPackage other) {
      return new Written(made, other, yaml);
    }
  }

  static Written good(ScenarioCut cut, long seed) {
    SyntheticCook recipe =
        new SyntheticCook(
            "syn-" + cut.word() + "-" + seed,
            cut,
            SyntheticCooker.boathouse().get(0),
            cut.setting(),
            seed,
            SyntheticCook.Split.FIT,
            Set.of());
    MadeCook made = assertInstanceOf(MadeCook.class, recipe.make());
    return new Written(made, made.log(), made.log().cook().orElseThrow());
  }

  /** The cook file states the true thickness times a factor. */
  static Written statedSize(Written good, double factor) {
    double stated = 2000 * good.made().recipe().cut().shape().halfThickness();
    String old = String.format(Locale.ROOT, "%.0f mm", stated);
    String now =
        String.format(Locale.ROOT, "%.1f mm", factor * good.made().values().size() * stated);
    if (!good.yaml().contains(old)) {
      throw new IllegalStateException("no " + old + " in " + good.yaml());
    }
    return new Written(good.made(), good.log(), good.yaml().replaceFirst(old, now));
  }

  /** The probe sits elsewhere from a time on [s]. */
  static Written probeAt(Written good, double offset, double from) {
    ProbeTrace was = shown(good, good.made().values().probeOffset());
    ProbeTrace is = shown(good, offset);
    return good.with(withCore(good.log(), time -> time >= from ? is.at(time) - was.at(time) : 0));
  }

  private static ProbeTrace shown(Written good, double offset) {
    Instrument instrument = new Instrument(good.made().values().probeResponse(), Stem.NONE, 0, 0);
    return good.made()
        .result()
        .shownBy(new Probe("core probe", Double.POSITIVE_INFINITY, offset, instrument));
  }

  /** The lid is off for some minutes, which neither an event nor the chamber's probe shows. */
  static Written lidOpen(Written good, double from, double length) {
    ParameterPoint stated = ParameterPoint.empty();
    LogPackage dipped =
        with(
            good.log(),
            CookLog.CHAMBER,
            (time, reading) -> time < from || time > from + length ? reading : reading - 70);
    ProbeTrace closed = core(good.file(), good.log(), stated);
    ProbeTrace open = core(good.file(), dipped, stated);
    return good.with(withCore(good.log(), time -> open.at(time) - closed.at(time)));
  }

  private static ProbeTrace core(CookFile file, LogPackage log, ParameterPoint point) {
    LoggedCase logged = LoggedCase.of(file, log, LogSpan.ALL, Optional.empty());
    return Simulator.withDefaults()
        .run(logged.cook().apply(point))
        .orElseThrow()
        .shownBy(Probe.CORE);
  }

  /** Nobody weighed the cut. */
  static Written unweighed(Written good) {
    LogPackage of = good.log();
    return good.with(
        new LogPackage(
            of.facts(),
            of.formats(),
            of.readings(),
            of.setting(),
            of.events(),
            of.spots(),
            of.checks(),
            Optional.empty(),
            of.cook(),
            of.source()));
  }

  /** Events of one kind are not written down. */
  static Written unlogged(Written good, LogEvent.Kind kind) {
    LogPackage old = good.log();
    List<LogEvent> events = old.events().stream().filter(one -> one.kind() != kind).toList();
    return good.with(copy(old, old.readings(), events));
  }

  /** A share of the core's readings is missing. */
  static Written missing(Written good, double share, long seed) {
    return missing(good, share, 0, seed);
  }

  /** The same from a time on [s]. */
  static Written missing(Written good, double share, double from, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return good.with(
        with(
            good.log(),
            CookLog.CORE,
            (time, reading) -> random.nextDouble() < share && time >= from ? Double.NaN : reading));
  }

  private static LogPackage withCore(LogPackage log, DoubleUnaryOperator more) {
    return with(log, CookLog.CORE, (time, reading) -> reading + more.applyAsDouble(time));
  }

  /** What becomes of a reading; NaN if it is lost. */
  private interface Change {
    double of(double time, double reading);
  }

  private static LogPackage with(LogPackage log, String name, Change change) {
    List<LogChannel> channels = new ArrayList<>();
    for (LogChannel channel : log.readings().channels()) {
      channels.add(channel.name().equals(name) ? changed(channel, change) : channel);
    }
    CookLog old = log.readings();
    CookLog readings =
        new CookLog(old.fileName(), old.comments(), old.rows(), old.start(), old.end(), channels);
    return copy(log, readings, log.events());
  }

  private static LogChannel changed(LogChannel channel, Change change) {
    double[] times = new double[channel.size()];
    double[] values = new double[times.length];
    double[] missing = new double[times.length + channel.missing()];
    int kept = 0;
    int lost = 0;
    for (int i = 0; i < times.length; i++) {
      double value = change.of(channel.time(i), channel.temperature(i));
      if (Double.isNaN(value)) {
        missing[lost++] = channel.time(i);
      } else {
        times[kept] = channel.time(i);
        values[kept++] = value;
      }
    }
    for (int i = 0; i < channel.missing(); i++) {
      missing[lost++] = channel.missingTime(i);
    }
    double[] sorted = Arrays.copyOf(missing, lost);
    Arrays.sort(sorted);
    return LogChannel.of(
        channel.name(), Arrays.copyOf(times, kept), Arrays.copyOf(values, kept), sorted);
  }

  private static LogPackage copy(LogPackage of, CookLog readings, List<LogEvent> events) {
    return new LogPackage(
        of.facts(),
        of.formats(),
        readings,
        of.setting(),
        events,
        of.spots(),
        of.checks(),
        of.afterwards(),
        of.cook(),
        of.source());
  }
}
