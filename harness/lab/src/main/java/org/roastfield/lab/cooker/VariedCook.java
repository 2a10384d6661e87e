package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.material.Material;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.replay.Readout;

/**
 * A cook as a function of its unknown numbers, see {@link CookParameters}: all stages of a cook
 * file, timed by its end rules or by a log. Numbers that a point does not have are as the file
 * states them. Immutable.
 *
 * <p>Convection, walls, humidity and contact heat are varied while the cut is on the cooker; in a
 * rest, a stage after the first in air below 50 °C, only heat transfer is, by a number of its own.
 */
public final class VariedCook implements Function<ParameterPoint, Cook> {

  /** A cut starts at least this far above its freezing point [K]. */
  private static final double ABOVE_FREEZING = 0.1;

  /** Stated start above which a cut has stood in a room [K]: 8 °C. */
  private static final double TEMPERED = 281.15;

  private static final double TEMPERED_SPREAD = 3;

  private final CookFile file;
  private final CookParts parts;
  private final Map<String, VariedProbe> probes;
  private final Optional<Straying> straying;

  private VariedCook(
      CookFile file,
      CookParts parts,
      Map<String, VariedProbe> probes,
      Optional<Straying> straying) {
    this.file = file;
    this.parts = parts;
    this.probes = probes;
    this.straying = straying;
  }

  /** What the air of gentle stages does beside what is stated or logged. */
  private interface Straying {

    /** Air [K] of a setting [K]. */
    Signal of(double setting, ParameterPoint point);
  }

  /** A cook as its file plans it, without a log. */
  public static VariedCook planned(CookFile file) {
    return new VariedCook(file, CookParts.planned(file), Map.of(), Optional.empty());
  }

  /**
   * A cook to come, with one probe for the core, whose place and bias are unknown. Its gentle heat
   * is kept at the stated air as the chamber's probe shows it, and strays ({@link StrayingAir}).
   */
  public static VariedCook planned(CookFile file, Probe probe) {
    VariedProbe display = VariedProbe.of(CookLog.CORE, probe, file.cook().cut().shape());
    return new VariedCook(
            file, CookParts.planned(file), Map.of(CookLog.CORE, display), Optional.empty())
        .withStrayingAir();
  }

  /** The same cook in gentle air that strays ({@link StrayingAir}), where it is stated. */
  public VariedCook withStrayingAir() {
    return new VariedCook(file, parts, probes, Optional.of(StrayingAir::smooth));
  }

  /**
   * The same cook in air as it is, as truths take it: openings of the lid are not spread over time,
   * and the drift is rough. Finer, and slower.
   *
   * @param seed of what the air does between the knots of a point
   */
  public VariedCook withRoughAir(long seed) {
    return new VariedCook(
        file,
        parts,
        probes,
        Optional.of((setting, point) -> StrayingAir.rough(setting, point, seed)));
  }

  /**
   * A cook as its log says that it went.
   *
   * @param probe of the core readings, see {@link Readout#of}; other channels are of the probes of
   *     their names
   * @throws IllegalArgumentException if it is not clear which probe logged the core
   */
  public static VariedCook logged(
      CookFile file, CookLog log, List<LogEvent> events, Optional<String> probe) {
    Map<String, VariedProbe> probes = new LinkedHashMap<>();
    Shape shape = file.cook().cut().shape();
    for (LogChannel channel : log.channels()) {
      if (channel.size() > 0) {
        stated(file, channel.name(), probe)
            .ifPresent(
                found -> probes.put(channel.name(), VariedProbe.of(channel.name(), found, shape)));
      }
    }
    return new VariedCook(file, CookParts.logged(file, log, events), probes, Optional.empty());
  }

  private static Optional<Probe> stated(CookFile file, String channel, Optional<String> core) {
    if (channel.equals(CookLog.CORE)) {
      return Optional.of(Readout.of(file, core).probe().orElse(Probe.CORE));
    }
    return file.cook().probes().stream().filter(one -> one.name().equals(channel)).findFirst();
  }

  /** The cook file. */
  public CookFile file() {
    return file;
  }

  /** Channels of the log whose probe is known; none of a planned cook. */
  public List<String> channels() {
    return List.copyOf(probes.keySet());
  }

  /** Name in the cooks of the probe of a channel. */
  public String probe(String channel) {
    return probe0(channel).name();
  }

  private VariedProbe probe0(String channel) {
    VariedProbe probe = probes.get(channel);
    if (probe == null) {
      throw new IllegalArgumentException(
          "channel must be one of " + probes.keySet() + ", was \"" + channel + "\"");
    }
    return probe;
  }

  /** Id of the bias of the probe of a channel. */
  public String biasId(String channel) {
    return probe0(channel).biasId();
  }

  /** Air around the cut as logged in its first stage, or else as its file states it [K]. */
  public Signal air() {
    CookPart first = parts.parts().get(0);
    return first.loggedAir().orElseGet(() -> Signal.constant(first.upper().air()));
  }

  /** True air of the first stage at a point [K]. */
  public Signal airAt(ParameterPoint point) {
    double bias = new Numbers(point).get(CookParameters.AIR_BIAS);
    return straying(parts.parts().get(0), point)
        .map(air -> air.apply(parts.parts().get(0).upper().air() - bias))
        .orElseGet(() -> air().plus(-bias));
  }

  /** Whether it begins in air that strays by itself, away from metal and coals. */
  boolean beginsGently() {
    return parts.parts().get(0).strays();
  }

  /** End of the first part that the log times [s]; of a plan, the most that it may last. */
  double firstEnd() {
    return parts.parts().get(0).end().longest(0);
  }

  /** What the computation takes from where, in words. */
  public List<String> assumptions() {
    return parts.words();
  }

  /** Whether its gentle heat can be kept hotter or cooler than stated. */
  public boolean hasFire() {
    return strays();
  }

  /**
   * Numbers of the same cook on a fire so much hotter, as the chamber's probe shows it.
   *
   * @param point of a cook that {@link #hasFire}
   * @param kelvin hotter than stated, negative for cooler [K]
   */
  public ParameterPoint hotter(ParameterPoint point, double kelvin) {
    Parameter bias = CookParameters.AIR_BIAS;
    if (!point.has(bias.id())) {
      return point.with(bias.id(), -kelvin, bias.spread());
    }
    return point.moved(point.index(bias.id()), point.value(bias.id()) - kelvin);
  }

  /** All numbers of this cook that can make a difference to it, with their priors. */
  public ParameterSet parameters() {
    ParameterSet set = ParameterSet.empty();
    for (Parameter parameter : CookParameters.all().list()) {
      Optional<Parameter> own = own(parameter);
      if (own.isPresent()) {
        set = set.with(own.get());
      }
    }
    for (VariedProbe probe : probes.values()) {
      for (Parameter parameter : probe.parameters(file.cook().cut().shape()).list()) {
        set = set.with(parameter);
      }
    }
    if (strays()) {
      for (Parameter parameter : StrayingAir.parameters().list()) {
        set = set.with(parameter);
      }
    }
    return set;
  }

  /** Whether air that strays by itself is drawn with it. */
  public boolean strays() {
    return straying.isPresent() && any(CookPart::strays);
  }

  private Optional<Parameter> own(Parameter parameter) {
    return switch (parameter.id()) {
      case "probe-offset", "probe-bias" -> Optional.empty();
      case "air-bias" -> when(parameter, strays() || any(part -> part.loggedAir().isPresent()));
      case "contact" ->
          when(
              parameter,
              any(
                  part ->
                      part.upper().contact().isPresent() || part.lower().contact().isPresent()));
      case "humidity" ->
          when(parameter, any(part -> part.upper().wetness() > 0 || part.lower().wetness() > 0));
      case "rest" -> when(parameter, any(CookPart::rest));
      case "wetness" -> wetness(parameter);
      case "start" -> Optional.of(start(parameter));
      default -> Optional.of(parameter);
    };
  }

  private static Optional<Parameter> when(Parameter parameter, boolean matters) {
    return matters ? Optional.of(parameter) : Optional.empty();
  }

  private boolean any(java.util.function.Predicate<CookPart> what) {
    return parts.parts().stream().anyMatch(what);
  }

  /** A face of constant wetness cannot become wetter than wet. */
  private Optional<Parameter> wetness(Parameter parameter) {
    double most = 0;
    boolean dries = false;
    for (CookPart part : parts.parts()) {
      dries |= part.upper().drying() || part.lower().drying();
      most = Math.max(most, part.upper().drying() ? 0 : part.upper().wetness());
      most = Math.max(most, part.lower().drying() ? 0 : part.lower().wetness());
    }
    if (most == 0) {
      return when(parameter, dries);
    }
    double high = Math.min(parameter.high(), 1 / most);
    return high > parameter.median()
        ? Optional.of(bounded(parameter, parameter.spread(), parameter.low(), high))
        : Optional.empty();
  }

  private Parameter start(Parameter parameter) {
    Cut cut = file.cook().cut();
    double spread = cut.startTemperature() > TEMPERED ? TEMPERED_SPREAD : parameter.spread();
    double frozen = cut.material().freezingPoint() + ABOVE_FREEZING - cut.startTemperature();
    double low = Math.max(parameter.low(), frozen);
    return bounded(parameter, spread, Math.min(low, -0.1), parameter.high());
  }

  private static Parameter bounded(Parameter of, double spread, double low, double high) {
    return new Parameter(
        of.id(), of.unit(), of.owner(), of.scale(), of.median(), spread, low, high, of.source());
  }

  /**
   * The cook at a point.
   *
   * @throws IllegalArgumentException if it cannot be built there
   */
  @Override
  public Cook apply(ParameterPoint point) {
    Numbers numbers = new Numbers(point);
    Cut stated = file.cook().cut();
    Shape shape = stated.shape().scaled(numbers.get(CookParameters.SIZE));
    Cut cut =
        new Cut(
            shape,
            material(stated.material(), numbers.get(CookParameters.DIFFUSIVITY)),
            stated.startTemperature() + numbers.get(CookParameters.START));
    List<Stage> stages = new ArrayList<>();
    for (CookPart part : parts.parts()) {
      stages.add(part.at(numbers, file.pressure(), straying(part, point)));
    }
    List<Probe> placed = new ArrayList<>();
    for (VariedProbe probe : probes.values()) {
      placed.add(probe.at(numbers, shape));
    }
    return new Cook(cut, stages, probes.isEmpty() ? file.cook().probes() : placed);
  }

  private Optional<DoubleFunction<Signal>> straying(CookPart part, ParameterPoint point) {
    return part.strays()
        ? straying.map(air -> setting -> air.of(setting, point))
        : Optional.empty();
  }

  private static Material material(Material stated, double diffusivity) {
    return diffusivity == 1 ? stated : stated.withDensity(stated.density() / diffusivity);
  }
}
