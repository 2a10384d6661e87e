package org.roastfield.lab.files;

import java.math.BigDecimal;
import java.math.MathContext;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.surface.AirExchange;
import org.roastfield.core.surface.AirVapour;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.LoadedEvaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.VapourLaw;

/** How the air of a chamber carries heat to a face: by a stated coefficient or a correlation. */
public sealed interface HeatTransfer {

  /** What the chamber does to a face, see {@link Chamber#around}. */
  SurfaceLaw around(Chamber chamber, double emissivity, double wetness, double waterActivity);

  /**
   * The same in air that the cut makes more humid.
   *
   * @param load surface of the cut over the flow of dry air [m²·s/kg]
   */
  SurfaceLaw around(
      Chamber chamber, double emissivity, double wetness, double waterActivity, double load);

  /** Vapour of a wet face, with its heat, beside {@link #around} of a dry one. */
  VapourLaw vapour(Chamber chamber, double waterActivity);

  /** The same for a share of the face. */
  HeatTransfer times(double share);

  /** In words, such as "6 W/(m²·K)". */
  String words();

  /**
   * A coefficient as stated.
   *
   * @param coefficient convection only [W/(m²·K)]
   */
  record Stated(double coefficient) implements HeatTransfer {

    @Override
    public SurfaceLaw around(
        Chamber chamber, double emissivity, double wetness, double waterActivity) {
      return chamber.around(coefficient, emissivity, wetness, waterActivity);
    }

    @Override
    public SurfaceLaw around(
        Chamber chamber, double emissivity, double wetness, double waterActivity, double load) {
      return chamber.around(coefficient, emissivity, wetness, waterActivity, load);
    }

    @Override
    public VapourLaw vapour(Chamber chamber, double waterActivity) {
      return Evaporation.of(
          1, coefficient, waterActivity, chamber.vapourPressure(), chamber.pressure());
    }

    @Override
    public HeatTransfer times(double share) {
      return new Stated(coefficient * share);
    }

    @Override
    public String words() {
      return number(coefficient) + " W/(m²·K)";
    }
  }

  /**
   * Still or windy air past a face whose form and size follow from the cut.
   *
   * @param film coefficient by correlation
   */
  record ByCorrelation(FilmCoefficient film) implements HeatTransfer {

    @Override
    public SurfaceLaw around(
        Chamber chamber, double emissivity, double wetness, double waterActivity) {
      return chamber.around(film, emissivity, wetness, waterActivity);
    }

    @Override
    public SurfaceLaw around(
        Chamber chamber, double emissivity, double wetness, double waterActivity, double load) {
      return SurfaceLaw.sum(
          new LoadedEvaporation(
              AirExchange.of(
                  film, chamber.airTemperature(), wetness, waterActivity, chamber.vapourPressure()),
              load),
          new Radiation(emissivity, chamber.wallTemperature()));
    }

    @Override
    public VapourLaw vapour(Chamber chamber, double waterActivity) {
      return new AirVapour(
          AirExchange.of(
              film, chamber.airTemperature(), 1, waterActivity, chamber.vapourPressure()));
    }

    @Override
    public HeatTransfer times(double share) {
      return new ByCorrelation(film.times(share));
    }

    @Override
    public String words() {
      String air =
          film.windSpeed() == 0 ? "still air" : "wind of " + number(film.windSpeed()) + " m/s";
      String factor = film.multiplier() == 1 ? "" : " × " + number(film.multiplier());
      return air + factor;
    }
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
