package org.roastfield.core.surface;

/**
 * Stage of the water of a face, eq. (45): a W + γ h ṁ(W) = E, in closed form.
 *
 * <p>Symbols: E = B + γ h (S − b) and a = 1 + γ h S/C up to the capacity C, E = B + γ h (C/τ − b)
 * and a = 1 + γ h/τ beyond; b water that boils off; P vapour flux of a wet face, condensation if
 * negative; D = γ h P.
 */
final class MoistStage {

  private MoistStage() {}

  /**
   * Solves the stage and adds the flux of what evaporates and boils, without the heat of boiling.
   *
   * @param temperature of the face, boiling at most [K]
   * @param boiled water that boils off besides [kg/(m²·s)]
   * @param boiledSlope its slope with {@code temperature} [kg/(m²·s·K)]
   */
  static void solve(
      DryingFace law,
      double temperature,
      double time,
      double boiled,
      double boiledSlope,
      FaceMemory memory,
      SurfaceFlux flux) {
    SurfaceWater water = law.water();
    SurfaceFlux vapour = memory.scratch;
    vapour.clear();
    law.wet().evaluate(temperature, time, vapour);
    double wet = vapour.evaporation();
    double weight = memory.weight;
    double base = memory.waterBase - weight * boiled;
    double supply = water.supplyAt(temperature);
    double capacity = water.capacity();
    boolean over = isOver(water, base, weight * wet);
    double refill = capacity > 0 ? supply / capacity : 0;
    double diagonal = 1 + weight * (over ? 1 / water.runOffTime() : refill);
    double right = base + weight * (over ? capacity / water.runOffTime() : supply);
    double held = held(water, diagonal, right, weight * wet);
    double share = wet > 0 ? water.wetness(held) : 1;
    double bend = wet > 0 ? wet * water.wetnessSlope(held) : 0;
    memory.water = held;
    memory.fed = over ? 0 : supply - refill * held;
    memory.dripped = over ? (held - capacity) / water.runOffTime() : 0;
    memory.evaporated = share * wet + boiled;
    double gain = memory.fed * water.logSlopeAt(temperature) - boiledSlope;
    double heldSlope =
        weight * (gain - share * vapour.evaporationSlope()) / (diagonal + weight * bend);
    double perWater = wet == 0 ? 0 : vapour.heatFlux() / wet;
    double shareSlope = bend * heldSlope;
    flux.addHeat(share * vapour.heatFlux(), share * vapour.slope() + perWater * shareSlope);
    flux.addEvaporation(
        memory.evaporated, share * vapour.evaporationSlope() + shareSlope + boiledSlope);
  }

  private static boolean isOver(SurfaceWater water, double base, double demand) {
    double capacity = water.capacity();
    double share = demand > 0 ? water.wetness(capacity) : 1;
    return base - share * demand > capacity;
  }

  /** Root of a W + D W/(W + W½) = E, or of a W + D = E where water condenses. */
  private static double held(SurfaceWater water, double a, double e, double d) {
    if (!(d > 0)) {
      return (e - d) / a;
    }
    if (e <= 0) {
      return e / a;
    }
    double half = water.halfWet();
    double b = a * half + d - e;
    double root = Math.sqrt(b * b + 4 * a * e * half);
    return b > 0 ? 2 * e * half / (b + root) : (root - b) / (2 * a);
  }
}
