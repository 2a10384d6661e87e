package org.roastfield.core.surface;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;

/**
 * Stage of the water of a face, eq. (45): a W + γ h ṁ(W) = E, in closed form, and of the humidity
 * of the air that its vapour makes more humid, eq. (94), while what the inside feeds comes to an
 * end, eq. (97).
 *
 * <p>Symbols: E = B + γ h (S − b) and a = 1 + γ h S/C up to the capacity C, E = B + γ h (C/τ − b)
 * and a = 1 + γ h/τ beyond; b water that boils off; P vapour flux of a wet face, condensation if
 * negative; D = γ h P; S with what is left of it; w = w_B + l (ṁ + b) humidity of the air.
 */
final class MoistStage {

  private static final int MOST_ITERATIONS = 100;
  private static final double ACCURACY = 4e-16;

  /** Correction of a share after which the next is round-off, by its square. */
  private static final double SUPPLY_ACCURACY = 1e-7;

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
    SurfaceFlux vapour = memory.scratch;
    if (law.air().isLoaded()) {
      solveLoaded(law, temperature, time, boiled, boiledSlope, memory, flux);
      return;
    }
    vapour.clear();
    law.wet().evaluate(temperature, time, vapour);
    memory.humidity = 0;
    memory.humidityRate = 0;
    hold(law.water(), temperature, boiled, memory, vapour.evaporation());
    add(law.water(), temperature, boiledSlope, memory, vapour, flux);
  }

  /** Humidity ratio of the air without the face's vapour [kg/kg]. */
  static double humidityWithout(VapourLaw wet, double time) {
    double vapour = wet.vapourPressure().at(time);
    return MoistAir.MOLAR_MASS_RATIO * vapour / (wet.pressure() - vapour);
  }

  /** The same where w depends on ṁ: what the balance misses falls with w, so it has one root. */
  private static void solveLoaded(
      DryingFace law,
      double temperature,
      double time,
      double boiled,
      double boiledSlope,
      FaceMemory memory,
      SurfaceFlux flux) {
    VapourLaw wet = (VapourLaw) law.wet();
    SurfaceWater water = law.water();
    SurfaceFlux vapour = memory.scratch;
    double without = humidityWithout(wet, time);
    double weight = memory.weight;
    double held = law.air().held();
    double through = law.air().load();
    double filled = held + weight / through;
    double load = held == 0 ? through : weight / filled;
    double base =
        held == 0 ? without : (held * memory.humidityBase + weight * without / through) / filled;
    double strength = wet.strength(temperature, time);
    double low = 0;
    double high = Math.max(base + load * boiled, saturated(wet, temperature));
    double humidity = base;
    double drag = 0;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      vapour.clear();
      wet.evaluateIn(vapourPressure(wet, humidity), temperature, time, vapour);
      double share = hold(water, temperature, boiled, memory, vapour.evaporation());
      drag = share * strength / (MoistAir.MOLAR_MASS_RATIO + humidity);
      double miss = base + load * memory.evaporated - humidity;
      low = miss > 0 ? humidity : low;
      high = miss < 0 ? humidity : high;
      double next = humidity + miss / (1 + load * drag);
      if (!(Math.abs(next - humidity) > ACCURACY * (MoistAir.MOLAR_MASS_RATIO + humidity))) {
        break;
      }
      humidity = next > low && next < high ? next : 0.5 * (low + high);
    }
    memory.humidity = humidity;
    memory.humidityRate =
        held == 0 ? 0 : (memory.evaporated - (humidity - without) / through) / held;
    double slopeBefore = flux.evaporationSlope();
    add(water, temperature, boiledSlope, memory, vapour, flux);
    double slope = flux.evaporationSlope() - slopeBefore;
    double lost = slope * (load * drag / (1 + load * drag));
    double perWater = vapour.evaporation() == 0 ? 0 : vapour.heatFlux() / vapour.evaporation();
    flux.addHeat(0, -perWater * lost);
    flux.addEvaporation(0, -lost);
  }

  private static double saturated(VapourLaw wet, double temperature) {
    double surface = wet.waterActivity() * SaturationPressure.orNaN(temperature);
    return surface < wet.pressure()
        ? MoistAir.MOLAR_MASS_RATIO * surface / (wet.pressure() - surface)
        : Double.NaN;
  }

  private static double vapourPressure(VapourLaw wet, double humidity) {
    return humidity * wet.pressure() / (MoistAir.MOLAR_MASS_RATIO + humidity);
  }

  /**
   * Leaves in the memory what the face holds, gets and gives off.
   *
   * @param wet vapour flux of a wet face [kg/(m²·s)]
   * @return change of the vapour flux with that of a wet face
   */
  private static double hold(
      SurfaceWater water, double temperature, double boiled, FaceMemory memory, double wet) {
    double weight = memory.weight;
    double base = memory.waterBase - weight * boiled;
    double capacity = water.capacity();
    boolean over = isOver(water, base, weight * wet);
    double full = over ? 0 : water.supplyAt(temperature);
    double supply = full * SurfaceWater.shareOfSupply(drawn(water, full, base, wet, memory));
    double refill = capacity > 0 ? supply / capacity : 0;
    double diagonal = 1 + weight * (over ? 1 / water.runOffTime() : refill);
    double right = base + weight * (over ? capacity / water.runOffTime() : supply);
    double held = held(water, diagonal, right, weight * wet);
    double perSum = held > 0 ? 1 / (held + water.halfWet()) : 0;
    double share = wet > 0 ? held * perSum : 1;
    double bend = wet > 0 ? wet * water.halfWet() * perSum * perSum : 0;
    memory.share = share;
    memory.bend = bend;
    memory.water = held;
    memory.fed = over ? 0 : supply - refill * held;
    memory.dripped = over ? (held - capacity) / water.runOffTime() : 0;
    memory.evaporated = share * wet + boiled;
    memory.lasting = lasting(full, memory, over ? 0 : 1 - held / capacity);
    memory.diagonal = 1 + memory.lasting * (diagonal - 1);
    return share * memory.diagonal / (memory.diagonal + weight * bend);
  }

  /**
   * Share x of all that can be fed which has been fed by the end of the stage, eq. (97): the root
   * of F = F_B + γ h S g(F/F_max) (1 − W/C), whose sides are apart by a rising function of F.
   *
   * @param full S of a fresh cut [kg/(m²·s)]; 0 where the face gets none
   */
  private static double drawn(
      SurfaceWater water, double full, double base, double wet, FaceMemory memory) {
    double most = memory.mostFed;
    double begun = memory.fedBase;
    if (full == 0 || most == Double.POSITIVE_INFINITY) {
      return 0;
    }
    if (most <= 0) {
      return 1;
    }
    double weight = memory.weight;
    double perCapacity = 1 / water.capacity();
    double perMost = 1 / most;
    double low = Math.min(begun, most);
    double high = Math.max(begun, most);
    double total = memory.fedAbout > low && memory.fedAbout < high ? memory.fedAbout : begun;
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double supply = weight * full * SurfaceWater.shareOfSupply(total * perMost);
      double diagonal = 1 + supply * perCapacity;
      double held = held(water, diagonal, base + supply, weight * wet);
      double bend = wet > 0 ? weight * wet * water.wetnessSlope(held) : 0;
      double room = 1 - held * perCapacity;
      double miss = begun + supply * room - total;
      double inner = diagonal + bend;
      double bySupply = weight * full * room * (1 + bend) * perMost;
      double slope = inner - bySupply * SurfaceWater.shareSlope(total * perMost);
      low = miss > 0 ? total : low;
      high = miss < 0 ? total : high;
      double next = total + miss * inner / slope;
      if (!(Math.abs(next - total) > SUPPLY_ACCURACY * most)) {
        memory.fedAbout = next;
        return next * perMost;
      }
      total = next >= low && next <= high ? next : 0.5 * (low + high);
    }
    return Double.NaN;
  }

  /** Share of a change of the supply that is left by the change of its end that it brings. */
  private static double lasting(double full, FaceMemory memory, double room) {
    double most = memory.mostFed;
    if (full == 0 || most <= 0 || most == Double.POSITIVE_INFINITY) {
      return 1;
    }
    double share = (memory.fedBase + memory.weight * memory.fed) / most;
    double bent = memory.weight * room * full * SurfaceWater.shareSlope(share) / most;
    return 1 / (1 - bent);
  }

  /** Adds flux and slopes in air of a given humidity. */
  private static void add(
      SurfaceWater water,
      double temperature,
      double boiledSlope,
      FaceMemory memory,
      SurfaceFlux vapour,
      SurfaceFlux flux) {
    double wet = vapour.evaporation();
    double weight = memory.weight;
    double share = memory.share;
    double bend = memory.bend;
    double fedAtOnce = memory.lasting * memory.fed * water.logSlopeAt(temperature);
    double gain = fedAtOnce - boiledSlope - share * vapour.evaporationSlope();
    double heldSlope = weight * gain / (memory.diagonal + weight * bend);
    double perWater = wet == 0 ? 0 : vapour.heatFlux() / wet;
    double shareSlope = bend * heldSlope;
    double evaporatedSlope = share * vapour.evaporationSlope() + shareSlope + boiledSlope;
    boolean over = memory.dripped > 0;
    memory.waterSlope = heldSlope;
    memory.evaporatedSlope = evaporatedSlope;
    memory.drippedSlope = over ? heldSlope / water.runOffTime() : 0;
    double refill = weight > 0 ? (memory.diagonal - 1) / weight : 0;
    memory.fedSlope = over ? 0 : fedAtOnce - refill * heldSlope;
    flux.addHeat(share * vapour.heatFlux(), share * vapour.slope() + perWater * shareSlope);
    flux.addEvaporation(memory.evaporated, evaporatedSlope);
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
