package org.roastfield.core.surface;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.internal.Check;
import org.roastfield.core.internal.Logarithm;

/**
 * Heat and water between a face and the air, with one coefficient by correlation for both: q = h b
 * (T∞ − Ts) − L(Ts) ṁ, ṁ = f h 0.622/(c_a Le^⅔) ln[(p − p_v)/(p − a_w p_sat(Ts))], b the blocking
 * by the vapour that leaves, eqs. (9), (36). Negative ṁ is condensation; at or above boiling a wet
 * face has no value (NaN), and so has a film outside the range of {@link FilmCoefficient}.
 *
 * @param film h(Ts, T∞), convection only, and the pressure p
 * @param airTemperature T∞ [K]
 * @param wetness f in [0, 1]: share of the vapour flux of a fully wet face
 * @param waterActivity a_w of the face in (0, 1]
 * @param vapourPressure p_v of the air [Pa]
 * @param lewisNumber Le = α/D of moist air, 0.85-0.90
 */
public record AirExchange(
    FilmCoefficient film,
    Signal airTemperature,
    double wetness,
    double waterActivity,
    Signal vapourPressure,
    double lewisNumber)
    implements VapourLaw {

  /**
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public AirExchange {
    Check.inRange("wetness", wetness, 0, 1);
    Check.inRange("waterActivity", waterActivity, Double.MIN_NORMAL, 1);
    Check.inRange("lewisNumber", lewisNumber, 0.5, 2);
  }

  /** Exchange with {@link Evaporation#LEWIS_NUMBER}. */
  public static AirExchange of(
      FilmCoefficient film,
      Signal airTemperature,
      double wetness,
      double waterActivity,
      Signal vapourPressure) {
    return new AirExchange(
        film, airTemperature, wetness, waterActivity, vapourPressure, Evaporation.LEWIS_NUMBER);
  }

  /** Exchange of heat with a face that is dry. */
  public static AirExchange dry(FilmCoefficient film, Signal airTemperature) {
    return of(film, airTemperature, 0, 1, Signal.constant(0));
  }

  @Override
  public void evaluateIn(double vapour, double surfaceTemperature, double time, SurfaceFlux flux) {
    double air = airTemperature.at(time);
    double h = film.at(surfaceTemperature, air);
    double hSlope = film.slope(surfaceTemperature, air);
    double difference = air - surfaceTemperature;
    if (wetness == 0) {
      flux.addHeat(h * difference, hSlope * difference - h);
      return;
    }
    double pressure = film.pressure();
    double surfacePressure = waterActivity * SaturationPressure.orNaN(surfaceTemperature);
    double dryShare = pressure - surfacePressure;
    if (!(dryShare > 0)) {
      flux.addHeat(Double.NaN, Double.NaN);
      return;
    }
    double share = wetness * Evaporation.vapourPerHeat(lewisNumber);
    double drive = share * Logarithm.of((pressure - vapour) / dryShare);
    double driveSlope =
        share * surfacePressure * SaturationPressure.logSlope(surfaceTemperature) / dryShare;
    double rate = h * drive;
    double rateSlope = hSlope * drive + h * driveSlope;
    double thickness = MoistAir.VAPOUR_HEAT_CAPACITY * drive;
    double blocking = blocking(thickness);
    double blockingSlope =
        blockingSlope(thickness, blocking) * MoistAir.VAPOUR_HEAT_CAPACITY * driveSlope;
    double latent = MoistAir.latentHeat(surfaceTemperature);
    double latentSlope = MoistAir.latentHeat(1) - MoistAir.latentHeat(0);
    flux.addHeat(
        h * blocking * difference - latent * rate,
        (hSlope * blocking + h * blockingSlope) * difference
            - h * blocking
            - latent * rateSlope
            - latentSlope * rate);
    flux.addEvaporation(rate, rateSlope);
  }

  /**
   * The vapour flux is the wrap's leak times that of the bare face; a wrap that stops convection
   * altogether stops vapour too.
   *
   * @throws IllegalArgumentException if vapour leaks more freely than heat, in proportion to the
   *     bare face, or through a wrap that lets no heat by convection through
   */
  @Override
  public SurfaceLaw under(Wrap wrap) {
    if (wrap.convection() == 0) {
      Check.inRange("leak of a wrap without convection", wrap.leak(), 0, 0);
      return SurfaceLaw.insulated();
    }
    double wet = Check.inRange("wetness", wetness * wrap.leak() / wrap.convection(), 0, 1);
    return new AirExchange(
        film.times(wrap.convection()),
        airTemperature,
        wet,
        waterActivity,
        vapourPressure,
        lewisNumber);
  }

  @Override
  public double pressure() {
    return film.pressure();
  }

  @Override
  public double strength(double surfaceTemperature, double time) {
    return film.at(surfaceTemperature, airTemperature.at(time))
        * wetness
        * Evaporation.vapourPerHeat(lewisNumber);
  }

  /** b = ζ/(e^ζ − 1), with its series near 0. */
  static double blocking(double zeta) {
    return Math.abs(zeta) < 1e-3
        ? 1 - zeta * (0.5 - zeta * (1.0 / 12))
        : zeta / StrictMath.expm1(zeta);
  }

  /** db/dζ = b (1 − ζ − b)/ζ. */
  static double blockingSlope(double zeta, double blocking) {
    return Math.abs(zeta) < 1e-3
        ? -0.5 + zeta * (1.0 / 6)
        : blocking * (1 - zeta - blocking) / zeta;
  }

  /**
   * @throws IllegalArgumentException if the correlation does not reach so far
   */
  @Override
  public AirExchange scaled(double factor) {
    return new AirExchange(
        film.scaled(factor), airTemperature, wetness, waterActivity, vapourPressure, lewisNumber);
  }

  @Override
  public double highestTemperature() {
    return wetness == 0
        ? Double.POSITIVE_INFINITY
        : SaturationPressure.boilingPoint(film.pressure(), waterActivity);
  }

  @Override
  public double shortestPeriod() {
    return Math.min(airTemperature.shortestPeriod(), vapourPressure.shortestPeriod());
  }
}
