package org.roastfield.core.chamber;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.AirExchange;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FilmCoefficient;
import org.roastfield.core.surface.LoadedEvaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Air and walls around a cut.
 *
 * @param airTemperature [K]
 * @param wallTemperature what the face sees by radiation [K]
 * @param vapourPressure of the air [Pa]
 * @param pressure [Pa], greater than 0
 */
public record Chamber(
    Signal airTemperature, Signal wallTemperature, Signal vapourPressure, double pressure) {

  /**
   * @throws IllegalArgumentException if {@code pressure} is not finite and positive
   */
  public Chamber {
    Check.positive("pressure", pressure);
  }

  /**
   * Chamber whose walls are as warm as its air.
   *
   * @param temperature of air and walls [K]
   * @param humidityRatio [kg water / kg dry air], at least 0
   * @param pressure [Pa]
   */
  public static Chamber of(Signal temperature, double humidityRatio, double pressure) {
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidityRatio, pressure));
    return new Chamber(temperature, temperature, vapour, pressure);
  }

  /** Chamber at a constant temperature [K] of air and walls. */
  public static Chamber steady(double temperature, double humidityRatio, double pressure) {
    return of(Signal.constant(Check.positive("temperature", temperature)), humidityRatio, pressure);
  }

  /**
   * The same chamber with walls warmer than its air by {@code difference} [K], or cooler if
   * negative.
   */
  public Chamber withWallOffset(double difference) {
    return new Chamber(airTemperature, airTemperature.plus(difference), vapourPressure, pressure);
  }

  /**
   * The same chamber with its lid opened at times: air, walls and humidity fall towards what is
   * seen and breathed with the lid open. The convective coefficient stays.
   *
   * @param lid when it is open
   * @param airTemperature that the air falls to [K]; 20-50 K above the air outside, assumed
   * @param wallTemperature mean of what the cut then sees [K]
   * @param humidityRatio of the air outside [kg/kg]
   */
  public Chamber withLid(
      Lid lid, double airTemperature, double wallTemperature, double humidityRatio) {
    return new Chamber(
        lid.over(this.airTemperature, airTemperature),
        lid.over(this.wallTemperature, wallTemperature),
        lid.over(vapourPressure, MoistAir.vapourPressure(humidityRatio, pressure)),
        pressure);
  }

  /**
   * What the chamber does to a face whose vapour makes its air more humid, eqs. (58) and (59); the
   * chamber's own vapour pressure is that without the cut, see {@link Draught#humidityRatio}.
   *
   * @param heatTransferCoefficient convective h_c [W/(m²·K)]
   * @param emissivity of the face in [0, 1]
   * @param wetness of the face in [0, 1]
   * @param waterActivity of the face in (0, 1]
   * @param load surface of the cut over the flow of dry air [m²·s/kg], see {@link Draught#load}
   */
  public SurfaceLaw around(
      double heatTransferCoefficient,
      double emissivity,
      double wetness,
      double waterActivity,
      double load) {
    return SurfaceLaw.sum(
        new Convection(heatTransferCoefficient, airTemperature),
        new Radiation(emissivity, wallTemperature),
        new LoadedEvaporation(
            Evaporation.of(
                wetness, heatTransferCoefficient, waterActivity, vapourPressure, pressure),
            load));
  }

  /**
   * What the chamber does to a face: convection, radiation and evaporation together.
   *
   * @param heatTransferCoefficient convective h_c [W/(m²·K)]
   * @param emissivity of the face in [0, 1]
   * @param wetness of the face in [0, 1]
   * @param waterActivity of the face in (0, 1]
   */
  public SurfaceLaw around(
      double heatTransferCoefficient, double emissivity, double wetness, double waterActivity) {
    return SurfaceLaw.sum(
        new Convection(heatTransferCoefficient, airTemperature),
        new Radiation(emissivity, wallTemperature),
        Evaporation.of(wetness, heatTransferCoefficient, waterActivity, vapourPressure, pressure));
  }

  /**
   * The same with a coefficient that depends on the temperatures of face and air.
   *
   * @param film convective coefficient, at this chamber's pressure
   * @param emissivity of the face in [0, 1]
   * @param wetness of the face in [0, 1]
   * @param waterActivity of the face in (0, 1]
   * @throws IllegalArgumentException if the film has another pressure
   */
  public SurfaceLaw around(
      FilmCoefficient film, double emissivity, double wetness, double waterActivity) {
    if (film.pressure() != pressure) {
      throw new IllegalArgumentException(
          "film must be at the chamber's pressure " + pressure + ", was " + film.pressure());
    }
    return SurfaceLaw.sum(
        AirExchange.of(film, airTemperature, wetness, waterActivity, vapourPressure),
        new Radiation(emissivity, wallTemperature));
  }
}
