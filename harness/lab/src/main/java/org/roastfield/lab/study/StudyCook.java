package org.roastfield.lab.study;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.cooker.CookerLogs;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogFacts;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogUnit;

/**
 * The cook that studies calibrate, by the same path as every log: a loin of 80 mm under a cap of
 * fat, slowly over gentle heat, in a chamber that was logged. Its numbers are made up, but for
 * those of the literature.
 */
final class StudyCook {

  /** Its cook file. */
  static final CookFile FILE =
      CookFileReader.parse(
          "study.yaml",
          """
          roastfield: cook/1
          name: Loin of the studies
          made-up: true
          starts: 2026-06-13T12:00
          cut:
            food: pork
            shape: cylinder
            diameter: 80 mm
            start-temperature: 5 °C
            material: pork loin
            emissivity: 0.92
            water-activity: 0.98
          stages:
            - name: gentle heat
              chamber: {air: 100 °C, humidity-ratio: 0.035, heat-transfer: 6 W/(m²·K)}
              wetness: 0.15
              end: {core: 60 °C, at-latest: 12 h}
          """
              .getBytes(StandardCharsets.UTF_8));

  /** At which core it is done [K]. */
  static final double TARGET = Temperatures.celsius(60);

  /** Setting of the chamber [K]. */
  static final double SETTING = Temperatures.celsius(100);

  /** After which nobody waits any more [s]. */
  static final double HORIZON = 12 * 3600.0;

  /** Between readings of core and chamber [s]. */
  static final double INTERVAL = 60;

  private static final String NAME = "loin";

  /** Readings with so many digits that no step of a display is left. */
  static final ChannelFormat EXACT = new ChannelFormat(CookLog.CORE, LogUnit.CELSIUS, 9);

  /** Readings of a display that shows whole degrees. */
  static final ChannelFormat WHOLE_DEGREES = new ChannelFormat(CookLog.CORE, LogUnit.CELSIUS, 0);

  private static final Set<String> FREE =
      Set.of(
          CookParameters.CONVECTION.id(),
          CookParameters.WALLS.id(),
          CookParameters.AIR_BIAS.id(),
          CookParameters.CONVECTION_OF_COOK.id(),
          CookParameters.SIZE.id(),
          CookParameters.DIFFUSIVITY.id(),
          CookParameters.WETNESS.id(),
          CookParameters.PROBE_OFFSET.id(),
          CookParameters.PROBE_BIAS.id());

  /** What is free in a study: of the cooker the first three. */
  static final ParameterSet PARAMETERS =
      logs(new double[] {SETTING, SETTING}, new double[] {SETTING, SETTING}, EXACT, List.of())
          .parameters();

  /** How many of them, from the first on, are the cooker's. */
  static final int OF_COOKER = PARAMETERS.of(Owner.COOKER).size();

  /** What they are called in a table: without the log that they are of. */
  static final List<String> IDS =
      PARAMETERS.list().stream().map(one -> one.id().replaceFirst("/.*", "")).toList();

  private StudyCook() {}

  /** Place among {@link #PARAMETERS} of one of the parameters of cooks. */
  static int index(Parameter parameter) {
    return IDS.indexOf(parameter.id());
  }

  /**
   * What a calibration takes of a log with a reading every {@link #INTERVAL}.
   *
   * @param chamber as its probe showed it [K]
   * @param core as its probe showed it [K], as many
   * @param display how that was written down
   * @param events what the cook wrote down
   */
  static CookerLogs logs(
      double[] chamber, double[] core, ChannelFormat display, List<LogEvent> events) {
    double[] times = new double[core.length];
    for (int k = 0; k < times.length; k++) {
      times[k] = k * INTERVAL;
    }
    CookLog readings =
        new CookLog(
            "readings.csv",
            List.of(),
            times.length,
            0,
            times[times.length - 1],
            List.of(
                LogChannel.of(CookLog.CORE, times, core),
                LogChannel.of(CookLog.CHAMBER, times, chamber)));
    LoggedCase one =
        LoggedCase.of(FILE, written(readings, display, events), LogSpan.ALL, Optional.empty());
    return CookerLogs.of(List.of(one), parameter -> isFree(parameter));
  }

  private static boolean isFree(Parameter parameter) {
    return FREE.contains(parameter.id());
  }

  private static LogPackage written(
      CookLog readings, ChannelFormat display, List<LogEvent> events) {
    LogFacts.Source source = new LogFacts.Source("drawn by a study", Optional.empty());
    return new LogPackage(
        new LogFacts(NAME, "", true, Optional.empty(), Optional.empty(), List.of(source)),
        List.of(display, new ChannelFormat(CookLog.CHAMBER, LogUnit.CELSIUS, EXACT.decimals())),
        readings,
        Optional.empty(),
        events,
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        "");
  }
}
