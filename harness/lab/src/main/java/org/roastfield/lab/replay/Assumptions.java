package org.roastfield.lab.replay;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.StageSetup;

/** What a replay takes from the cook file, since a log does not hold it. */
final class Assumptions {

  private Assumptions() {}

  static List<String> of(LoggedCook logged, boolean startLogged, Cut cut) {
    CookFile file = logged.file();
    boolean chamberLogged = logged.hasChamber();
    List<String> assumptions = new ArrayList<>();
    StageSetup first = file.stages().get(0);
    assumptions.add(chamber(first.upper(), chamberLogged));
    assumptions.add(
        String.format(
            Locale.ROOT,
            "start temperature: %.1f °C, %s",
            Temperatures.toCelsius(cut.startTemperature()),
            startLogged ? "the log's first core reading" : "the cook file's statement"));
    assumptions.add(
        String.format(
            Locale.ROOT,
            "cut: %.0f mm through the middle, as the cook file states it",
            cut.shape().thickness() * 1000));
    assumptions.add(surface(first));
    assumptions.add("core readings: compared with " + logged.readout().words());
    if (file.stages().size() > 1) {
      assumptions.add(
          "stages after \"" + first.name() + "\": not part of a replay, which runs as one stage");
    }
    return assumptions;
  }

  /** Those of a fit, whose face dries whatever the file states. */
  static List<String> ofFit(LoggedCook logged, Cut stated) {
    List<String> assumptions = new ArrayList<>(of(logged, false, stated));
    FaceSetup face = logged.file().stages().get(0).upper();
    if (!face.drying()) {
      assumptions.add(
          "wetness: as the face dries and is fed, in place of the cook file's "
              + number(face.wetness()));
    }
    return assumptions;
  }

  private static String chamber(FaceSetup face, boolean logged) {
    double offset = face.walls() - face.air();
    String walls =
        offset == 0
            ? "walls as warm as the air"
            : String.format(Locale.ROOT, "walls %+.1f K from the air", offset);
    return logged
        ? "chamber: the log's readings, " + walls
        : String.format(
            Locale.ROOT,
            "chamber: the log has none, so the cook file's %.1f °C throughout, %s",
            Temperatures.toCelsius(face.air()),
            walls);
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }

  private static String surface(StageSetup stage) {
    FaceSetup face = stage.upper();
    return String.format(
        Locale.ROOT,
        "surface: that of stage \"%s\", convection %s, emissivity %s, wetness %s, humidity"
            + " ratio %s",
        stage.name(),
        face.heatTransfer().words(),
        number(face.emissivity()),
        face.drying() ? face.wetnessWords() : number(face.wetness()),
        humidity(face));
  }

  private static String humidity(FaceSetup face) {
    AirLoad load = face.cover().load();
    String without = number(face.humidityRatio());
    if (!load.isLoaded()) {
      return without;
    }
    return without
        + " without the cut, by the balance of the draught with it"
        + (load.exchangeTime() > 0
            ? ", air exchanged in " + number(load.exchangeTime()) + " s"
            : "");
  }
}
