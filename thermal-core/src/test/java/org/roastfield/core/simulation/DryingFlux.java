package org.roastfield.core.simulation;

import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceWater;

/**
 * Heat and water of a drying face by eqs. (43)-(48), from temperatures and water that were read.
 * What boils off is not read: it is what left beyond the evaporation of a moist face.
 */
final class DryingFlux {

  private static final double GAS_CONSTANT = 8.314462618;

  private final DryingFace law;
  private final double conductivity;
  private final double mostFed;
  private final SurfaceFlux flux = new SurfaceFlux();

  /** Heat from outside, less that of moist evaporation [W/m²]. */
  double heat;

  /** Heat from outside alone [W/m²]. */
  double dryHeat;

  /** Temperature of the moist face, boiling at most [K]. */
  double moistFace;

  /** Evaporation of a moist face [kg/(m²·s)]. */
  double evaporation;

  /** Water from inside less what runs off [kg/(m²·s)]. */
  double gained;

  /** Water from inside [kg/(m²·s)]. */
  double feeding;

  /** Water that came from inside so far [kg/m²]. */
  private double fed;

  private double before = Double.NaN;
  private double rate;

  /**
   * @param conductivity of the food at 100 °C [W/(m·K)]
   * @param fed water that came from inside so far [kg/m²]
   * @param mostFed most that can come in all [kg/m²]
   */
  DryingFlux(DryingFace law, double conductivity, double fed, double mostFed) {
    this.law = law;
    this.fed = fed;
    this.mostFed = mostFed;
    this.conductivity = conductivity;
  }

  void evaluate(double surface, double water, double time) {
    flux.clear();
    law.dry().evaluate(surface, time, flux);
    heat = flux.heatFlux();
    dryHeat = heat;
    double resistance = 1 / law.crust().conductivity() - 1 / conductivity;
    double face = surface - law.crustThickness(water) * resistance * heat;
    double moist = Math.min(face, law.boilingPoint());
    moistFace = moist;
    flux.clear();
    law.wet().evaluate(moist, time, flux);
    double wet = Math.max(0, water);
    double wetness = flux.evaporation() < 0 ? 1 : wet / (wet + law.water().halfWet());
    heat += wetness * flux.heatFlux();
    evaporation = wetness * flux.evaporation();
    gained = gained(law.water(), moist, water, time);
  }

  /** Takes what came from inside by a time, the end of a step or piece of one [kg/m²]. */
  void fedUpTo(double known, double time) {
    fed = known;
    before = time;
  }

  /** Inside a step, what is fed follows by the trapezoidal rule from one time to the next. */
  private double gained(SurfaceWater face, double temperature, double water, double time) {
    double full = supplied(face, temperature, water);
    double step = Double.isNaN(before) ? 0 : time - before;
    before = time;
    double ahead = full * left(fed + step * rate);
    fed += 0.5 * step * (rate + ahead);
    rate = full * left(fed);
    feeding = rate;
    return water > face.capacity() ? (face.capacity() - water) / face.runOffTime() : rate;
  }

  /** 1 − (F/F_max)⁴. */
  private double left(double drawn) {
    return 1 - StrictMath.pow(drawn / mostFed, 4);
  }

  private static double supplied(SurfaceWater face, double temperature, double water) {
    if (water > face.capacity() || face.supply() == 0) {
      return 0;
    }
    double inverse = 1 / 338.15 - 1 / temperature;
    double supply =
        face.supply() * StrictMath.exp(face.activationEnergy() / GAS_CONSTANT * inverse);
    return supply * (1 - water / face.capacity());
  }
}
