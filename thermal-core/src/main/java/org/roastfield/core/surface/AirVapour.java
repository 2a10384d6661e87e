package org.roastfield.core.surface;

/**
 * What vapour adds to the exchange of a dry face with air: of {@link AirExchange} all but h (T∞ −
 * Ts), so its latent heat and what it blocks of the convected heat, eq. (36).
 *
 * <p>For the wet part of a {@link DryingFace} in air by correlation, which takes it in proportion
 * to its wetness: exact for vapour, and for blocking within ζ²/48 of the convected heat, 0.2 % at ζ
 * = 0.3.
 *
 * @param exchange of a wet face
 */
public record AirVapour(AirExchange exchange) implements VapourLaw {

  @Override
  public void evaluateIn(double vapour, double surfaceTemperature, double time, SurfaceFlux flux) {
    exchange.evaluateIn(vapour, surfaceTemperature, time, flux);
    double air = exchange.airTemperature().at(time);
    double h = exchange.film().at(surfaceTemperature, air);
    double slope = exchange.film().slope(surfaceTemperature, air);
    double difference = air - surfaceTemperature;
    flux.addHeat(-h * difference, h - slope * difference);
  }

  @Override
  public Signal vapourPressure() {
    return exchange.vapourPressure();
  }

  @Override
  public double pressure() {
    return exchange.pressure();
  }

  @Override
  public double waterActivity() {
    return exchange.waterActivity();
  }

  @Override
  public double strength(double surfaceTemperature, double time) {
    return exchange.strength(surfaceTemperature, time);
  }

  /**
   * @throws IllegalArgumentException as that of {@link AirExchange#under}
   */
  @Override
  public SurfaceLaw under(Wrap wrap) {
    return exchange.under(wrap) instanceof AirExchange wrapped
        ? new AirVapour(wrapped)
        : SurfaceLaw.insulated();
  }

  @Override
  public AirVapour scaled(double factor) {
    return new AirVapour(exchange.scaled(factor));
  }

  @Override
  public double highestTemperature() {
    return exchange.highestTemperature();
  }

  @Override
  public double shortestPeriod() {
    return exchange.shortestPeriod();
  }
}
