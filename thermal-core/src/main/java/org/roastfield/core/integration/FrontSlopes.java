package org.roastfield.core.integration;

import org.roastfield.core.grid.Grid;
import org.roastfield.core.surface.FaceMemory;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceFlux;

/**
 * Partial derivatives of a law that remembers, at one face in one stage, by all that it is asked
 * with. Scratch memory of one integration.
 *
 * <p>They are difference quotients over steps that are small beside the superheat of a face that
 * boils, so that both sides of a quotient lie on the same side of its kinks. A front that has all
 * but ceased to boil has one within a step: there the side without it counts.
 */
final class FrontSlopes {

  /** Heat that enters the face [W/m²]. */
  static final int HEAT = 0;

  /** Heat that boiling takes below it [W/m²]. */
  static final int SUNK = 1;

  /** Water of the face at the end of the stage [kg/m²]. */
  static final int WATER = 2;

  /** Its rate [kg/(m²·s)]. */
  static final int RATE = 3;

  /** Water that leaves as vapour [kg/(m²·s)]. */
  static final int VAPOUR = 4;

  /** Temperature of the surface [K]. */
  static final int OUTER = 5;

  /** Humidity ratio of the air around [kg/kg]. */
  static final int HUMIDITY = 6;

  /** Its rate, of air that fills [1/s]. */
  static final int HUMIDITY_RATE = 7;

  /** Water that came from inside by the end of the stage [kg/m²]. */
  static final int FED = 8;

  /** Its rate [kg/(m²·s)]. */
  static final int FED_RATE = 9;

  /** How many numbers a law answers with. */
  static final int NUMBERS = 10;

  private static final double LEAST_FACE_STEP = 1e-6;
  private static final double LARGEST_FACE_STEP = 1e-4;

  /** Share of the distance from boiling that a face temperature is moved by. */
  private static final double SHARE_OF_DISTANCE = 0.1;

  private static final double FRONT_STEP = 1e-5;
  private static final double LEAST_THICKNESS_STEP = 1e-12;
  private static final double THICKNESS_STEP = 1e-9;
  private static final double WATER_STEP = 1e-8;
  private static final double HUMIDITY_STEP = 1e-6;

  /** Share of the weight that it is moved by. */
  private static final double WEIGHT_STEP = 1e-6;

  private static final double TIME_STEP = 1e-2;

  private final NearFace near;
  private final ScaledMaterial material;
  private final Counters counters;
  private final FaceMemory memory = new FaceMemory();
  private final SurfaceFlux flux = new SurfaceFlux();
  private final double[] high = new double[NUMBERS];
  private final double[] low = new double[NUMBERS];
  private final KinkedQuotient kinked = new KinkedQuotient(NUMBERS);

  /** What the law answers. */
  final double[] value = new double[NUMBERS];

  /** By the temperature of the face of the cells [K]. */
  final double[] byFace = new double[NUMBERS];

  /** By what the cells add to the temperature of the front [K]. */
  final double[] byFront = new double[NUMBERS];

  /** By the thickness of the crust [m]. */
  final double[] byThickness = new double[NUMBERS];

  /** By the water before the stage's own rate [kg/m²]. */
  final double[] byBase = new double[NUMBERS];

  /** By the humidity ratio before the stage's own rate [kg/kg]. */
  final double[] byHumidity = new double[NUMBERS];

  /** By the water that came from inside before the stage's own rate [kg/m²]. */
  final double[] byFed = new double[NUMBERS];

  /** By the weight of the rates [s]. */
  final double[] byWeight = new double[NUMBERS];

  /** By the time [s]. */
  final double[] byTime = new double[NUMBERS];

  /** By each parameter, with body and law. */
  final double[][] byParameter;

  /** Change of the crust's thickness with the water [m³/kg]. */
  double thicknessByWater;

  /** Change of the crust's thickness with each parameter at the same water. */
  final double[] thicknessByParameter;

  private double length;
  private double[] cells = new double[0];
  private double face;
  private double time;
  private double thickness;
  private double water;
  private double base;
  private double humidity;
  private double fed;
  private double mostFed;
  private double weight;

  FrontSlopes(
      Grid grid, boolean upper, ScaledMaterial material, int parameters, Counters counters) {
    this.near = new NearFace(grid, upper, material);
    this.material = material;
    this.counters = counters;
    byParameter = new double[parameters][NUMBERS];
    thicknessByParameter = new double[parameters];
  }

  /** Trend of the humidity of air before it fills with vapour [1/s]. */
  static double humidityTrend(RememberingLaw law, double time) {
    return (law.humidityWithout(time + TIME_STEP) - law.humidityWithout(time - TIME_STEP))
        / (2 * TIME_STEP);
  }

  /** Takes the body: ξ = 1 stands for {@code length} [m]. */
  void body(double length) {
    this.length = length;
    near.body(length);
  }

  /**
   * Sets all derivatives but those by time and parameters, which become 0.
   *
   * @param cells temperatures of the cells, kept and read [K]
   * @param face temperature of the face of the cells [K]
   * @param water of the face [kg/m²]
   * @param base water before the stage's own rate [kg/m²]
   * @param humidity ratio of the air before the stage's own rate [kg/kg]
   * @param fed water that came from inside before the stage's own rate [kg/m²]
   * @param mostFed most that can come in all [kg/m²]
   * @param weight of the rates [s]
   */
  void at(
      RememberingLaw law,
      double[] cells,
      double face,
      double time,
      double water,
      double base,
      double humidity,
      double fed,
      double mostFed,
      double weight) {
    this.humidity = humidity;
    this.fed = fed;
    this.mostFed = mostFed;
    this.cells = cells;
    this.face = face;
    this.time = time;
    this.water = water;
    this.base = base;
    this.weight = weight;
    thickness = law.crustThickness(water);
    ask(law, face, 0, thickness, base, weight, time, value);
    byPlaceAndFace(law);
    byMemory(law);
    java.util.Arrays.fill(byTime, 0);
    for (double[] numbers : byParameter) {
      java.util.Arrays.fill(numbers, 0);
    }
    java.util.Arrays.fill(thicknessByParameter, 0);
  }

  private void byPlaceAndFace(RememberingLaw law) {
    double distance = SHARE_OF_DISTANCE * Math.abs(face - law.highestTemperature());
    double step = Math.max(LEAST_FACE_STEP, Math.min(LARGEST_FACE_STEP, distance));
    ask(law, face + step, 0, thickness, base, weight, time, high);
    ask(law, face - step, 0, thickness, base, weight, time, low);
    quotient(2 * step, byFace);
    if (thickness == 0) {
      java.util.Arrays.fill(byFront, 0);
      java.util.Arrays.fill(byThickness, 0);
      thicknessByWater = 0;
      return;
    }
    ask(law, face, FRONT_STEP, thickness, base, weight, time, high);
    ask(law, face, -FRONT_STEP, thickness, base, weight, time, low);
    quotient(2 * FRONT_STEP, byFront);
    if (kinked.isBent(value, high, low)) {
      ask(law, face, KinkedQuotient.NEAR * FRONT_STEP, thickness, base, weight, time, kinked.high);
      ask(law, face, -KinkedQuotient.NEAR * FRONT_STEP, thickness, base, weight, time, kinked.low);
      kinked.aside(value, high, low, FRONT_STEP, byFront);
    }
    double clear = 0.5 * near.clearance();
    double moved = Math.max(LEAST_THICKNESS_STEP, Math.min(THICKNESS_STEP, clear));
    double thinner = Math.min(moved, thickness);
    ask(law, face, 0, thickness + moved, base, weight, time, high);
    ask(law, face, 0, thickness - thinner, base, weight, time, low);
    quotient(moved + thinner, byThickness);
    thicknessByWater =
        (law.crustThickness(water + WATER_STEP) - law.crustThickness(water - WATER_STEP))
            / (2 * WATER_STEP);
  }

  private void byMemory(RememberingLaw law) {
    ask(law, face, 0, thickness, base + WATER_STEP, weight, time, high);
    ask(law, face, 0, thickness, base - WATER_STEP, weight, time, low);
    quotient(2 * WATER_STEP, byBase);
    java.util.Arrays.fill(byHumidity, 0);
    if (law.airHeld() > 0) {
      double before = humidity;
      humidity = before + HUMIDITY_STEP;
      ask(law, face, 0, thickness, base, weight, time, high);
      humidity = before - HUMIDITY_STEP;
      ask(law, face, 0, thickness, base, weight, time, low);
      humidity = before;
      quotient(2 * HUMIDITY_STEP, byHumidity);
    }
    java.util.Arrays.fill(byFed, 0);
    byFed[FED] = 1;
    if (mostFed < Double.POSITIVE_INFINITY) {
      double before = fed;
      fed = before + WATER_STEP;
      ask(law, face, 0, thickness, base, weight, time, high);
      fed = before - WATER_STEP;
      ask(law, face, 0, thickness, base, weight, time, low);
      fed = before;
      quotient(2 * WATER_STEP, byFed);
    }
    if (weight == 0) {
      java.util.Arrays.fill(byWeight, 0);
      return;
    }
    double step = WEIGHT_STEP * weight;
    ask(law, face, 0, thickness, base, weight + step, time, high);
    ask(law, face, 0, thickness, base, weight - step, time, low);
    quotient(2 * step, byWeight);
  }

  /** Water before the stage's own rate [kg/m²]. */
  double base() {
    return base;
  }

  /** Humidity ratio of the air before the stage's own rate [kg/kg]. */
  double humidity() {
    return humidity;
  }

  /** Water that came from inside before the stage's own rate [kg/m²]. */
  double fed() {
    return fed;
  }

  /** Sets the derivatives by time. */
  void byTime(RememberingLaw law) {
    ask(law, face, 0, thickness, base, weight, time + TIME_STEP, high);
    ask(law, face, 0, thickness, base, weight, time - TIME_STEP, low);
    quotient(2 * TIME_STEP, byTime);
  }

  /**
   * Sets the derivatives by a parameter. The quotient is taken along with the water before the
   * stage: a face that holds all it can stays at that kink while its capacity moves.
   *
   * @param above law at a higher value
   * @param below law at a lower value
   * @param baseChange change of the water before the stage's own rate
   * @param mostAbove most that can be fed at the higher value [kg/m²]
   * @param mostBelow most that can be fed at the lower value [kg/m²]
   */
  void byParameter(
      int parameter,
      CookVariation by,
      RememberingLaw above,
      RememberingLaw below,
      double baseChange,
      double mostAbove,
      double mostBelow) {
    double most = mostFed;
    mostFed = mostAbove;
    near.body(by.lengthAbove(), by.materialAbove());
    ask(above, face, 0, thickness, base + by.riseAbove() * baseChange, weight, time, high);
    mostFed = mostBelow;
    near.body(by.lengthBelow(), by.materialBelow());
    ask(below, face, 0, thickness, base - by.fallBelow() * baseChange, weight, time, low);
    near.body(length, material);
    mostFed = most;
    double[] slopes = byParameter[parameter];
    quotient(1 / by.perWidth(), slopes);
    if (boils(high) != boils(low)) {
      aside(by, slopes);
    }
    for (int i = 0; i < NUMBERS; i++) {
      slopes[i] -= byBase[i] * baseChange;
    }
    thicknessByParameter[parameter] =
        (above.crustThickness(water) - below.crustThickness(water)) * by.perWidth();
  }

  private static boolean boils(double[] numbers) {
    return numbers[SUNK] != 0;
  }

  /** Takes the side of a parameter on which the front boils, or does not, as it does between. */
  private void aside(CookVariation by, double[] slopes) {
    boolean up = boils(high) == boils(value);
    double width = up ? by.riseAbove() : by.fallBelow();
    for (int i = 0; width > 0 && i < NUMBERS; i++) {
      slopes[i] = (up ? high[i] - value[i] : value[i] - low[i]) / width;
    }
  }

  /**
   * Adds what comes with the beginning of what counts from it.
   *
   * @param begunChange change of the beginning with each parameter [s per unit of it]
   */
  void byBeginning(RememberingLaw law, double begun, double[] begunChange) {
    RememberingLaw later = CookVariation.remembering(law.from(begun + TIME_STEP));
    RememberingLaw sooner = CookVariation.remembering(law.from(begun - TIME_STEP));
    if (later.equals(sooner)) {
      return;
    }
    ask(later, face, 0, thickness, base, weight, time, high);
    ask(sooner, face, 0, thickness, base, weight, time, low);
    for (int p = 0; p < begunChange.length; p++) {
      double share = begunChange[p] / (2 * TIME_STEP);
      for (int i = 0; i < NUMBERS; i++) {
        byParameter[p][i] += share * (high[i] - low[i]);
      }
    }
  }

  private void ask(
      RememberingLaw law,
      double faceTemperature,
      double warmer,
      double crust,
      double waterBase,
      double rateWeight,
      double at,
      double[] numbers) {
    near.place(crust);
    near.fixed(cells);
    near.warm(warmer);
    memory.weight = rateWeight;
    memory.waterBase = waterBase;
    memory.humidityBase = humidity;
    memory.fedBase = fed;
    memory.fedAbout = 0;
    memory.mostFed = mostFed;
    memory.outerTemperature = 0;
    flux.clear();
    law.evaluate(faceTemperature, at, memory, near, flux);
    counters.fluxEvaluations++;
    numbers[HEAT] = flux.heatFlux();
    numbers[SUNK] = memory.sunk;
    numbers[WATER] = memory.water;
    numbers[RATE] = memory.waterRate();
    numbers[VAPOUR] = flux.evaporation();
    numbers[OUTER] = memory.outerTemperature;
    numbers[HUMIDITY] = memory.humidity;
    numbers[HUMIDITY_RATE] = memory.humidityRate;
    numbers[FED] = memory.fedBase + memory.weight * memory.fed;
    numbers[FED_RATE] = memory.fed;
  }

  private void quotient(double width, double[] slopes) {
    for (int i = 0; i < NUMBERS; i++) {
      slopes[i] = (high[i] - low[i]) / width;
    }
  }
}
