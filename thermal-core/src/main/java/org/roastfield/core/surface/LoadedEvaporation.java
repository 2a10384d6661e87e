package org.roastfield.core.surface;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.internal.Check;
import org.roastfield.core.internal.Logarithm;

/**
 * Vapour of a face of constant wetness into a draught that it makes more humid, eqs. (58) and (59):
 * the humidity ratio around the cut is that of the draught without it, plus the vapour of the cut
 * over the flow of dry air, in balance at each moment. All of the cut's surface is taken to
 * evaporate as this face does.
 *
 * @param unloaded vapour into the draught as it would be without the cut
 * @param load surface of the cut over the flow of dry air [m²·s/kg], at least 0
 */
public record LoadedEvaporation(VapourLaw unloaded, double load) implements SurfaceLaw {

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
    double strength = unloaded.strength(surfaceTemperature, time);
    double surface = unloaded.waterActivity() * SaturationPressure.orNaN(surfaceTemperature);
    if (strength == 0 || !(surface < unloaded.pressure())) {
      unloaded.evaluate(surfaceTemperature, time, flux);
      return;
    }
    double humidity = humidityWithout(time) + load * rate(surfaceTemperature, time);
    double slopeBefore = flux.evaporationSlope();
    unloaded.evaluateIn(vapourPressure(humidity), surfaceTemperature, time, flux);
    double perHumidity = strength / (MoistAir.MOLAR_MASS_RATIO + humidity);
    double slope = flux.evaporationSlope() - slopeBefore;
    double lost = slope * (load * perHumidity / (1 + load * perHumidity));
    flux.addHeat(0, MoistAir.latentHeat(surfaceTemperature) * lost);
    flux.addEvaporation(0, -lost);
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

  private double vapourPressure(double humidity) {
    return humidity * unloaded.pressure() / (MoistAir.MOLAR_MASS_RATIO + humidity);
  }

  /**
   * Root of ṁ + e ln(r + w₀ + l ṁ) − e ln(r p/(p − p_s)), which rises and is concave: after one
   * step Newton's method stays below the root and climbs to it.
   */
  private double rate(double surfaceTemperature, double time) {
    double strength = unloaded.strength(surfaceTemperature, time);
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
    SurfaceLaw wrapped = unloaded.under(wrap);
    return wrapped instanceof VapourLaw vapour ? new LoadedEvaporation(vapour, load) : wrapped;
  }

  /** The load is a surface over the flow of air. */
  @Override
  public LoadedEvaporation scaled(double factor) {
    return new LoadedEvaporation(unloaded.scaled(factor), factor * factor * load);
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
