package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.inference.ChamberTrace;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.ObservedNumber;
import org.roastfield.core.inference.ObservedTrace;
import org.roastfield.core.inference.Series;
import org.roastfield.core.inference.SingleReading;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.Afterwards;
import org.roastfield.lab.files.BiasPrior;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.Spot;

/** Makes evidence of a log package and its cook file. */
final class CaseReader {

  /** An instant reading misses the middle and the moment by this [K]; assumed. */
  private static final double SPOT_IN_CORE = 1.5;

  /** An instant reading of the surface, which looks at more than the cut [K]; assumed. */
  private static final double SPOT_ON_SURFACE = 8;

  /** The highest core that was found [K]; assumed, as an instant reading. */
  private static final double HIGHEST = 1.5;

  /** What evaporation and drip together miss of a weighed loss, of the raw mass; assumed. */
  private static final double LOSS = 0.03;

  /**
   * What the weight by a cut's sizes misses of its own, as a share: assumed. A length is off by
   * some 5 % as well, and ends are rounded; that of the thickness is the size's own.
   */
  private static final double WEIGHT = 0.1;

  /** A bias stays within this many of its prior's spreads. */
  private static final double BIAS_BOUND = 5;

  private final LogPackage log;
  private final CookFile file;
  private final LogSpan span;
  private final CookLog readings;
  private final VariedCook cook;
  private final List<String> words = new ArrayList<>();

  CaseReader(CookFile file, LogPackage log, LogSpan span, Optional<String> probe) {
    this.file = file;
    this.log = log;
    this.span = span;
    this.readings = span.ended(log.readings());
    this.cook = VariedCook.logged(file, readings, log.events(), probe);
    words.addAll(cook.assumptions());
  }

  LoggedCase read() {
    List<ObservedTrace> traces = traces();
    List<ObservedNumber> numbers = numbers();
    Optional<ChamberTrace> chamber = LoggedChamber.of(readings, log.events(), cook, span, words);
    boolean weighed =
        file.extent().isPresent()
            && log.afterwards().map(found -> found.weightBefore().isPresent()).orElse(false);
    return new LoggedCase(
        log.facts().name(), cook, parameters(), traces, numbers, weighed, chamber, words);
  }

  private ParameterSet parameters() {
    ParameterSet set = ParameterSet.empty();
    for (Parameter parameter : cook.parameters().list()) {
      set = set.with(checked(parameter));
    }
    return set;
  }

  private Parameter checked(Parameter parameter) {
    for (String channel : cook.channels()) {
      Optional<BiasPrior> prior = log.biasPrior(channel);
      if (prior.isPresent() && parameter.id().equals(cook.biasId(channel))) {
        double mean = prior.get().mean();
        double spread = prior.get().deviation();
        words.add(
            String.format(
                Locale.ROOT,
                "bias of probe %s: %+.1f ± %.1f K by %d checks",
                channel,
                mean,
                spread,
                prior.get().checks()));
        return new Parameter(
            parameter.id(),
            parameter.unit(),
            parameter.owner(),
            parameter.scale(),
            mean,
            spread,
            mean - BIAS_BOUND * spread,
            mean + BIAS_BOUND * spread,
            "measured: checks of the probe");
      }
    }
    return parameter;
  }

  private List<ObservedTrace> traces() {
    List<ObservedTrace> traces = new ArrayList<>();
    for (LogChannel channel : readings.channels()) {
      if (cook.channels().contains(channel.name())) {
        trace(channel).ifPresent(traces::add);
      } else if (!channel.name().equals(CookLog.CHAMBER)) {
        words.add(
            "channel " + channel.name() + ": left out, since the cook file has no such probe");
      }
    }
    return traces;
  }

  private Optional<ObservedTrace> trace(LogChannel channel) {
    double last = lastPlaced();
    double[] times = new double[channel.size()];
    double[] values = new double[channel.size()];
    int count = 0;
    for (int i = 0; i < channel.size(); i++) {
      if (span.holds(channel.time(i)) && channel.time(i) < last) {
        times[count] = channel.time(i);
        values[count++] = channel.temperature(i);
      }
    }
    if (count == 0) {
      words.add("channel " + channel.name() + ": left out, without a reading in the time used");
      return Optional.empty();
    }
    Series series =
        Series.of(
            channel.name() + " of " + log.facts().name(),
            Arrays.copyOf(times, count),
            Arrays.copyOf(values, count),
            ErrorModel.CORE.withResolution(resolution(channel.name())));
    return Optional.of(new ObservedTrace(series, cook.probe(channel.name()), cook.air()));
  }

  /** Readings count until a probe is moved or comes out. */
  private double lastPlaced() {
    for (LogEvent event : log.events()) {
      if (event.kind() == LogEvent.Kind.PROBE_MOVED || event.kind() == LogEvent.Kind.PROBE_OUT) {
        words.add(
            String.format(
                Locale.ROOT,
                "readings from %.1f min on: left out, since a probe was moved or taken out",
                event.time() / 60));
        return event.time();
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private double resolution(String channel) {
    for (ChannelFormat format : log.formats()) {
      if (format.channel().equals(channel)) {
        return format.unit().kelvinPerUnit() * Math.pow(10, -format.decimals());
      }
    }
    return 0;
  }

  private List<ObservedNumber> numbers() {
    List<ObservedNumber> numbers = new ArrayList<>();
    for (Spot spot : log.spots()) {
      if (span.holds(spot.time()) && spot.time() <= readings.end()) {
        spot(spot).ifPresent(numbers::add);
      }
    }
    log.afterwards().ifPresent(found -> before(found, numbers));
    if (span.until().isEmpty()) {
      log.afterwards().ifPresent(found -> afterwards(found, numbers));
    }
    return numbers;
  }

  private Optional<ObservedNumber> spot(Spot spot) {
    boolean core = spot.place().equals(Probe.CORE.name());
    if (!core && !spot.place().equals(Probe.SURFACE.name())) {
      words.add("spot reading at " + spot.place() + ": left out, a place that is not computed");
      return Optional.empty();
    }
    SingleReading reading =
        new SingleReading(
            String.format(
                Locale.ROOT,
                "spot reading of the %s of %s at %.0f s",
                spot.place(),
                log.facts().name(),
                spot.time()),
            spot.temperature(),
            core ? SPOT_IN_CORE : SPOT_ON_SURFACE,
            0);
    return Optional.of(ObservedNumber.spot(reading, spot.place(), spot.time()));
  }

  /** What was weighed before stands, however early a log ends. */
  private void before(Afterwards found, List<ObservedNumber> numbers) {
    if (found.weightBefore().isPresent() && file.extent().isPresent()) {
      numbers.add(weight(found.weightBefore().getAsDouble(), file.extent().get()));
    }
  }

  private void afterwards(Afterwards found, List<ObservedNumber> numbers) {
    String name = log.facts().name();
    found
        .finalCore()
        .ifPresent(
            core ->
                numbers.add(
                    ObservedNumber.highestCore(
                        new SingleReading("highest core of " + name, core, HIGHEST, 0))));
    if (found.weightBefore().isEmpty() || found.weightAfter().isEmpty()) {
      return;
    }
    double lost = 1 - found.weightAfter().getAsDouble() / found.weightBefore().getAsDouble();
    SingleReading reading = new SingleReading("share lost of " + name, lost, LOSS, 0);
    numbers.add(new ObservedNumber(reading, this::lost));
  }

  /** Weight over that of the stated sizes, which tells of the size. */
  private ObservedNumber weight(double before, Extent stated) {
    double times = before / stated.massBySizes();
    return new ObservedNumber(
        new SingleReading(LoggedCase.weightName(log.facts().name()), times, WEIGHT * times, 0),
        (computed, result) ->
            stated.scaled(file.cook().cut().shape(), size(computed)).massBySizes()
                / stated.massBySizes());
  }

  /** Share of the raw mass that a computed cook loses: vapour, and juice of meat. */
  private double lost(Cook computed, SimulationResult result) {
    Moisture moisture = file.moisture();
    return file.extent()
        .map(size -> size.scaled(file.cook().cut().shape(), size(computed)))
        .map(size -> size.juice(result, moisture))
        .orElseGet(() -> Juice.of(result, moisture))
        .total();
  }

  private double size(Cook computed) {
    return computed.cut().shape().halfThickness() / file.cook().cut().shape().halfThickness();
  }
}
