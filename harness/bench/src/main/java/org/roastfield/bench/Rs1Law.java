package org.roastfield.bench;

import org.roastfield.core.surface.LawRows;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Surface law of RS-1 through the open interface, as a caller writes it: air (and walls) at mean +
 * amplitude · sin(2πt/period).
 *
 * @param heatTransfer h [W/(m²·K)]
 * @param wetness factor on the vapour flux
 * @param vapourPressure of the air [Pa]
 * @param mean of the air [°C]
 * @param amplitude [K]
 * @param period [s]
 */
record Rs1Law(
    double heatTransfer,
    double wetness,
    double vapourPressure,
    double mean,
    double amplitude,
    double period)
    implements SurfaceLaw {

  static final double ZERO_CELSIUS = 273.15;
  static final double LATENT = 2.40e6;
  static final double WATER_ACTIVITY = 0.99;
  static final double RADIATION = 0.90 * 5.670374e-8;
  static final double TRANSFER =
      0.018015 / (8.314462 * 1.2 * 1006 * 293.15 * Math.cbrt(0.87 * 0.87));

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double ts = surfaceTemperature - 273.15;
    double air = amplitude == 0 ? mean : mean + amplitude * Math.sin(2 * Math.PI * time / period);
    flux.addHeat(heatTransfer * (air - ts), -heatTransfer);
    double wall = air + 273.15;
    double cubed = surfaceTemperature * surfaceTemperature * surfaceTemperature;
    flux.addHeat(
        RADIATION * (wall * wall * wall * wall - cubed * surfaceTemperature),
        -4 * RADIATION * cubed);
    if (wetness != 0) {
      double inverse = 1 / (ts + 243.04);
      double saturation = 610.94 * Math.exp(17.625 * ts * inverse);
      double transfer = wetness * heatTransfer * TRANSFER;
      double rate = transfer * (WATER_ACTIVITY * saturation - vapourPressure);
      double slope = transfer * WATER_ACTIVITY * saturation * 17.625 * 243.04 * inverse * inverse;
      flux.addHeat(-LATENT * rate, -LATENT * slope);
      flux.addEvaporation(rate, slope);
    }
  }

  @Override
  public LawRows rows() {
    return Rs1Rows.INSTANCE;
  }

  @Override
  public double shortestPeriod() {
    return amplitude == 0 ? Double.POSITIVE_INFINITY : period;
  }
}
