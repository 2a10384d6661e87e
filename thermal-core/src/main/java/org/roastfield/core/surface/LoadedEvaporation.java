package org.roastfield.core.surface;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.internal.Check;
import org.roastfield.core.internal.Logarithm;

/**
 * Evaporation into a draught that the vapour itself makes more humid, eqs. (58) and (59): the
 * humidity ratio around the cut is that of the draught without it, plus the vapour of the cut over
 * the flow of dry air. All of the cut's surface is taken to evaporate as this face does.
 *
 * @param unloaded evaporation into the draught as it would be without the cut
 * @param load surface of the cut over the flow of dry air [m²·s/kg], at least 0
 */
public record LoadedEvaporation(Evaporation unloaded, double load) implements SurfaceLaw {

  private static final int MOST_ITERATIONS = 60;
  private static final double ACCURACY = 1e-15;

  /**
   * @throws IllegalArgumentException if the load is negative or not finite
   */
  public LoadedEvaporation {
    Check.notNegative("load", load);
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double strength = unloaded.massTransferStrength();
    if (strength == 0) {
      return;
    }
    double surface = unloaded.waterActivity() * SaturationPressure.orNaN(surfaceTemperature);
    double dryShare = unloaded.pressure() - surface;
    if (!(dryShare > 0)) {
      flux.addHeat(Double.NaN, Double.NaN);
      return;
    }
    double rate = rate(surfaceTemperature, time);
    double bareSlope =
        strength * surface * SaturationPressure.logSlope(surfaceTemperature) / dryShare;
    double moles = MoistAir.MOLAR_MASS_RATIO + humidityWithout(time) + load * rate;
    double slope = bareSlope / (1 + strength * load / moles);
    double latent = MoistAir.latentHeat(surfaceTemperature);
    double latentSlope = MoistAir.latentHeat(1) - MoistAir.latentHeat(0);
    flux.addHeat(-latent * rate, -latent * slope - latentSlope * rate);
    flux.addEvaporation(rate, slope);
  }

  /**
   * Humidity ratio of the loaded draught [kg/kg].
   *
   * @param surfaceTemperature [K], below boiling
   * @param time since the start of the cook [s]
   */
  public double humidityRatio(double surfaceTemperature, double time) {
    return humidityWithout(time) + load * rate(surfaceTemperature, time);
  }

  private double humidityWithout(double time) {
    double vapour = unloaded.vapourPressure().at(time);
    return MoistAir.MOLAR_MASS_RATIO * vapour / (unloaded.pressure() - vapour);
  }

  /**
   * Root of ṁ + e ln(r + w₀ + l ṁ) − e ln(r p/(p − p_s)), which rises and is concave: after one
   * step Newton's method stays below the root and climbs to it.
   */
  private double rate(double surfaceTemperature, double time) {
    double strength = unloaded.massTransferStrength();
    double surface = unloaded.waterActivity() * SaturationPressure.orNaN(surfaceTemperature);
    double ratio = MoistAir.MOLAR_MASS_RATIO;
    double base = ratio + humidityWithout(time);
    double reach = ratio * unloaded.pressure() / (unloaded.pressure() - surface);
    double rate = 0;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double moles = base + load * rate;
      double miss = strength * Logarithm.of(reach / moles) - rate;
      double step = miss / (1 + strength * load / moles);
      if (base + load * (rate + step) <= 0) {
        step = -0.5 * moles / load;
      }
      rate += step;
      if (!(Math.abs(step) > ACCURACY * Math.max(Math.abs(rate), strength))) {
        break;
      }
    }
    return rate;
  }

  @Override
  public SurfaceLaw under(Wrap wrap) {
    return new LoadedEvaporation(unloaded.under(wrap), load);
  }

  /** The load is a surface over the flow of air. */
  @Override
  public LoadedEvaporation scaled(double factor) {
    return new LoadedEvaporation(unloaded, factor * factor * load);
  }

  @Override
  public double highestTemperature() {
    return unloaded.highestTemperature();
  }

  @Override
  public double shortestPeriod() {
    return unloaded.shortestPeriod();
  }
}
