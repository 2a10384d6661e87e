package org.roastfield.lab.synthetic;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.StageSetup;
import org.roastfield.lab.replay.Readout;
import org.roastfield.lab.result.RunManifest.InputFile;

/**
 * A made-up log of a cook's first stage: the probe goes in with the cut and comes out at the end of
 * the gentle heat.
 *
 * <p>The cook is computed in a chamber that drifts and is opened; what the probes read of it is
 * written down.
 */
public final class SyntheticLog {

  /**
   * Far finer than a reading's last digit, so that a change of the numerical method seldom changes
   * a digit of a log.
   */
  private static final Settings FINE = Settings.withDefaults().withAccuracy(1e-6).withCells(320);

  private final CookFile file;
  private final SyntheticSettings settings;
  private final Noise noise;
  private final Signal chamber;
  private final Readout readout;

  private SyntheticLog(CookFile file, long seed, SyntheticSettings settings) {
    StageSetup stage = file.stages().get(0);
    if (stage.stageCount() != 1) {
      throw new IllegalArgumentException(
          "the first stage must be without turns and openings of the lid, was \""
              + stage.name()
              + "\"");
    }
    this.file = file;
    this.settings = settings;
    this.noise = Noise.ofSeed(seed);
    this.readout = Readout.of(file, Optional.empty());
    StageEnd end = file.cook().stages().get(0).end();
    this.chamber =
        MadeUpChamber.of(stage.upper().air(), end.longest(0), settings.fire(), noise).air();
  }

  /**
   * Text of a log, or a failed computation.
   *
   * @param id of the log, starting with "syn-"
   * @param cook entry of the cook file's bytes, for the comment lines
   * @param file the cook
   * @param seed any number
   */
  public static Made of(
      String id, InputFile cook, CookFile file, long seed, SyntheticSettings settings) {
    if (!id.matches("syn-[a-z0-9-]{1,80}")) {
      throw new IllegalArgumentException(
          "id must be syn- and then lower-case letters, digits and hyphens, was \"" + id + "\"");
    }
    SyntheticLog log = new SyntheticLog(file, seed, settings);
    Outcome outcome = Simulator.with(FINE).run(log.cook());
    if (outcome instanceof Outcome.Failed failed) {
      return new Made.Failed(failed);
    }
    return new Made.Text(log.comments(id, cook, seed) + log.rows(outcome.orElseThrow()));
  }

  /** What came of it. */
  public sealed interface Made {

    /** A log. */
    record Text(String csv) implements Made {}

    /** A cook that could not be computed. */
    record Failed(Outcome.Failed failed) implements Made {}
  }

  private Cook cook() {
    StageSetup setup = file.stages().get(0);
    SurfaceLaw upper = setup.upper().law(chamber, file.pressure());
    SurfaceLaw lower =
        setup.lower().equals(setup.upper()) ? upper : setup.lower().law(chamber, file.pressure());
    StageEnd end = file.cook().stages().get(0).end();
    return new Cook(
        file.cook().cut(),
        List.of(new Stage(setup.name(), upper, lower, end)),
        file.cook().probes());
  }

  private String comments(String id, InputFile cook, long seed) {
    return String.join(
        "\n",
        "# " + id + ": made up, no such cook took place",
        "# roastfield make-log " + cook.name() + " --seed " + seed + " --id " + id,
        "# cook file sha256 " + cook.sha256(),
        "# random numbers " + Noise.ALGORITHM + ", seed " + seed,
        String.format(
            Locale.ROOT,
            "# chamber: drift %.1f K over %.0f s, lid opened every %.0f s on average; reading +-%.1f"
                + " K",
            settings.chamberDeviation(),
            settings.chamberCorrelation(),
            settings.lidInterval(),
            settings.probeDeviation()),
        String.format(
            Locale.ROOT,
            "# core: reading +-%.1f K over %.0f s, resolution %.1f K, %.1f %% lost%s",
            settings.probeDeviation(),
            settings.probeCorrelation(),
            settings.resolution(),
            100 * settings.lost(),
            readout.isProbe() ? ", as " + readout.words() + " shows it" : ""),
        "time_s,chamber_degC,core_degC",
        "");
  }

  private String rows(SimulationResult result) {
    int count = (int) Math.floor(result.endTime() / settings.interval()) + 1;
    double[] coreError =
        noise.correlated(
            count, settings.interval(), settings.probeDeviation(), settings.probeCorrelation());
    DoubleUnaryOperator shown = readout.of(result, chamber);
    StringBuilder rows = new StringBuilder();
    for (int i = 0; i < count; i++) {
      double time = i * settings.interval();
      double chamberReading = chamber.at(time) + settings.probeDeviation() * noise.normal();
      double coreReading = shown.applyAsDouble(time) + coreError[i];
      boolean lost = noise.uniform() < settings.lost();
      rows.append(String.format(Locale.ROOT, "%.0f,%s,", time, reading(chamberReading)));
      rows.append(lost ? "" : reading(coreReading)).append('\n');
    }
    return rows.toString();
  }

  private String reading(double kelvin) {
    long steps = Math.round(Temperatures.toCelsius(kelvin) / settings.resolution());
    return String.format(Locale.ROOT, "%.1f", steps * settings.resolution());
  }
}
