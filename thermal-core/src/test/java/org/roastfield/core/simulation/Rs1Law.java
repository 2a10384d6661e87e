package org.roastfield.core.simulation;

import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Surface law of the model problem RS-1 as a caller would write it ({@code reference/rs1/spec.md}):
 * convection, radiation and evaporation with the formula of Magnus; film temperature cancels. The
 * same bits on every machine.
 */
public record Rs1Law(Rs1Reference.Leg leg, Rs1Reference.Material material) implements SurfaceLaw {

  private static final double LATENT = 2.40e6;
  private static final double STEFAN_BOLTZMANN = 5.670374e-8;
  private static final double TRANSFER =
      0.018015 / (8.314462 * 1.2 * 1006 * 293.15 * StrictMath.cbrt(0.87 * 0.87));

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double h = leg.heatTransferCoefficient();
    double ts = surfaceTemperature - 273.15;
    double air = leg.air().celsiusAt(time);
    flux.addHeat(h * (air - ts), -h);

    double wall = leg.wall().celsiusAt(time) + 273.15;
    double strength = material.emissivity() * STEFAN_BOLTZMANN;
    double cubed = surfaceTemperature * surfaceTemperature * surfaceTemperature;
    flux.addHeat(
        strength * (wall * wall * wall * wall - cubed * surfaceTemperature), -4 * strength * cubed);

    if (leg.wetness() != 0) {
      double saturation = 610.94 * StrictMath.exp(17.625 * ts / (ts + 243.04));
      double slope = saturation * 17.625 * 243.04 / ((ts + 243.04) * (ts + 243.04));
      double transfer = leg.wetness() * h * TRANSFER;
      double rate =
          transfer * (material.waterActivity() * saturation - leg.vapourPressurePascals());
      flux.addHeat(-LATENT * rate, -LATENT * transfer * material.waterActivity() * slope);
      flux.addEvaporation(rate, transfer * material.waterActivity() * slope);
    }
  }

  @Override
  public double shortestPeriod() {
    return leg.air().amplitudeKelvin() == 0 ? Double.POSITIVE_INFINITY : leg.air().periodSeconds();
  }
}
