package org.roastfield.lab.synthetic;

import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * A law times a factor that changes with time.
 *
 * @param law carries nothing along
 * @param factor at least 0
 */
public record TimedLaw(SurfaceLaw law, Signal factor) implements SurfaceLaw {

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double heat = flux.heatFlux();
    double slope = flux.slope();
    double evaporation = flux.evaporation();
    double evaporationSlope = flux.evaporationSlope();
    law.evaluate(surfaceTemperature, time, flux);
    double more = factor.at(time) - 1;
    flux.addHeat(more * (flux.heatFlux() - heat), more * (flux.slope() - slope));
    flux.addEvaporation(
        more * (flux.evaporation() - evaporation),
        more * (flux.evaporationSlope() - evaporationSlope));
  }

  @Override
  public double shortestPeriod() {
    return Math.min(law.shortestPeriod(), factor.shortestPeriod());
  }
}
