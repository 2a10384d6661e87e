package org.roastfield.lab.replay;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.surface.Signal;
import org.roastfield.lab.files.CookFile;

/** What a log's core readings are compared with: what a probe shows, or the true core. */
public final class Readout {

  private static final Readout TRUE_CORE = new Readout(Optional.empty());

  private final Optional<Probe> probe;

  private Readout(Optional<Probe> probe) {
    this.probe = probe;
  }

  /**
   * Readout of a cook.
   *
   * @param name of a probe of the file, or "core" for the true core; if empty, the file's only
   *     probe that is meant for the core or errs, and if it has none the true core
   * @throws IllegalArgumentException if there is no probe of that name, or without a name more than
   *     one that it could be
   */
  public static Readout of(CookFile file, Optional<String> name) {
    return name.map(given -> named(file, given)).orElseGet(() -> suggested(file));
  }

  /** Readout of a probe of a computed cook; without one of that name, of the true core. */
  static Readout of(Cook cook, String name) {
    return new Readout(
        cook.probes().stream().filter(probe -> probe.name().equals(name)).findFirst());
  }

  private static Readout named(CookFile file, String name) {
    if (name.equals(Probe.CORE.name())) {
      return TRUE_CORE;
    }
    return file.cook().probes().stream()
        .filter(probe -> probe.name().equals(name))
        .findFirst()
        .map(probe -> new Readout(Optional.of(probe)))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "probe must be core or one of "
                        + file.fileName()
                        + " ("
                        + names(file.cook().probes())
                        + "), was \""
                        + name
                        + "\""));
  }

  private static Readout suggested(CookFile file) {
    Shape shape = file.cook().cut().shape();
    List<Probe> fit =
        file.cook().probes().stream()
            .filter(
                probe ->
                    !probe.instrument().isIdeal()
                        || probe.depth() == Double.POSITIVE_INFINITY
                        || probe.distanceFromMiddle(shape) == 0)
            .toList();
    if (fit.size() > 1) {
      throw new IllegalArgumentException(
          "probe must be stated where more than one could have logged the core, which "
              + names(fit)
              + " of "
              + file.fileName()
              + " could");
    }
    return fit.isEmpty() ? TRUE_CORE : new Readout(Optional.of(fit.get(0)));
  }

  private static String names(List<Probe> probes) {
    return probes.isEmpty()
        ? "which has none"
        : String.join(", ", probes.stream().map(Probe::name).toList());
  }

  /** The probe; empty for the true core. */
  public Optional<Probe> probe() {
    return probe;
  }

  /** Whether a probe shows it, not the true core. */
  public boolean isProbe() {
    return probe.isPresent();
  }

  /** In words, such as "probe leaf". */
  public String words() {
    return probe.map(p -> "probe " + p.name()).orElse("the true core");
  }

  /** The same without steps of a display, for a fit that follows slopes. */
  Readout smooth() {
    return new Readout(probe.map(p -> p.with(p.instrument().withResolution(0))));
  }

  /** The same in a cut whose lengths are multiplied, along with place and stem. */
  Readout scaled(double factor) {
    return new Readout(probe.map(p -> scaled(p, factor)));
  }

  private static Probe scaled(Probe probe, double factor) {
    Instrument instrument = probe.instrument();
    Stem stem = instrument.stem();
    Stem grown =
        new Stem(
            factor * stem.finLength(),
            stem.entryExcess(),
            stem.airShare(),
            factor * stem.inserted());
    return new Probe(
        probe.name(), factor * probe.depth(), factor * probe.offset(), instrument.withStem(grown));
  }

  /**
   * What is shown at a time since the start of a cook [s], in kelvin.
   *
   * @param air around the stem [K]
   */
  public DoubleUnaryOperator of(SimulationResult result, Signal air) {
    return probe
        .<DoubleUnaryOperator>map(p -> result.shownBy(p, air)::at)
        .orElseGet(() -> result.core()::at);
  }
}
