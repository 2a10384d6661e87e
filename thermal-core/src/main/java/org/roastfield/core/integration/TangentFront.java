package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Derivatives of what one face carries along, eqs. (43)-(49). Scratch memory of one integration.
 *
 * <p>Symbols: K what the cells add to the temperature of the front, σ = κ times the heat that
 * boiling takes below the face, W its water, δ the crust's thickness, ζ = δ/ℓ. In a stage K̇, σ̇
 * and Ẇ depend on each other and on Ṫs. Here σ̇ and Ẇ are eliminated: each is a share of Ṫs and a
 * rest that comes with the parameter.
 */
final class TangentFront {

  private final int face;
  private final FrontSlopes slopes;
  private final NearFace near;
  private final double kappa;
  private final double length;
  private boolean begun;

  /** Whether the air around has a humidity of its own. */
  private boolean humid;

  private @Nullable RememberingLaw law;

  /** Response of the cells to ζ [cells]. */
  private final double[] moved;

  /** Changes of K with φ of the face, σ and ζ. */
  private double own;

  private double bySunk;
  private double byPlace;

  /** σ and ζ themselves. */
  private double sunk;

  private double place;

  /** Matrix of σ̇ and Ẇ. */
  private double m00;

  private double m01;
  private double m10;
  private double m11;

  /** σ̇, Ẇ and K̇: shares of Ṫs, and rests. */
  private double sunkShare;

  private double waterShare;
  private double frontShare;
  private double sunkRest;
  private double waterRest;
  private double frontRest;
  private double thicknessRest;
  private double placeRest;
  private double waterBase;
  private double humidityBase;
  private double fedBase;

  /** Most that can be fed at the higher and the lower value of each parameter [parameters]. */
  private final double[] mostAbove;

  private final double[] mostBelow;

  /** Answers of the law but for Ṫs, K̇ and δ̇, of one parameter. */
  private final double[] driven = new double[FrontSlopes.NUMBERS];

  private double faceChange;

  TangentFront(
      Grid grid, int face, ScaledMaterial material, double length, int most, Counters counters) {
    this.face = face;
    this.length = length;
    this.kappa = length / material.conductivity();
    boolean upper = face == State.UPPER;
    slopes = new FrontSlopes(grid, upper, material, most, counters);
    slopes.body(length);
    near = new NearFace(grid, upper, material);
    near.body(length);
    moved = new double[grid.cells()];
    mostAbove = new double[most];
    mostBelow = new double[most];
  }

  /** Takes the law of a stage, from its beginning on. */
  void law(SurfaceLaw next) {
    law = next instanceof RememberingLaw remembering ? remembering : null;
    humid &= law != null;
  }

  /** Whether the face carries water along. */
  boolean isPresent() {
    return law != null;
  }

  private RememberingLaw law() {
    RememberingLaw present = law;
    if (present == null) {
      throw new IllegalStateException("face " + face + " carries nothing along");
    }
    return present;
  }

  /** Adds what a stage begins with: water before the first with memory, and what is put on. */
  void begin(int stage, double time, List<CookVariation> variations, Tangents t) {
    boolean fills = law().airHeld() > 0 && !humid;
    double trend = fills ? FrontSlopes.humidityTrend(law(), time) : 0;
    for (int p = 0; p < t.size(); p++) {
      CookVariation by = variations.get(p);
      double poured = by.poured(stage, face);
      double initial = begun ? 0 : by.initialWater(stage, face);
      double change = poured + initial;
      if (!begun) {
        mostAbove[p] = by.mostFedAbove(stage, face);
        mostBelow[p] = by.mostFedBelow(stage, face);
      }
      if (change != 0) {
        t.move(p);
        t.water.now[face][p] += change;
        t.poured[face][p] += poured;
        t.aside[face][p] += initial;
        t.given[face][p] += change;
      }
      if (fills) {
        t.humidity.now[face][p] = by.humidityWithout(stage, face, time) + trend * t.time[p];
      } else if (!humid) {
        t.humidity.now[face][p] = 0;
      }
    }
    begun = true;
  }

  /** Takes what the law is asked with in a stage, see {@link FrontSlopes#at}. */
  void at(
      double[] cells,
      double faceTemperature,
      double time,
      double held,
      double base,
      double humidity,
      double fed,
      double mostFed,
      double weight) {
    slopes.at(law(), cells, faceTemperature, time, held, base, humidity, fed, mostFed, weight);
    humid = slopes.value[FrontSlopes.HUMIDITY] != 0;
    double thickness = law().crustThickness(held);
    place = thickness / length;
    sunk = kappa * slopes.value[FrontSlopes.SUNK];
    near.place(thickness);
  }

  /** Adds derivatives by time. */
  void byTime() {
    slopes.byTime(law());
  }

  /**
   * Adds derivatives by one parameter.
   *
   * @param index of the stage of the cook
   * @param from when what counts from the beginning of a stage began [s]
   * @param stage of the step, 0 where a stage of the cook begins
   */
  void byParameter(
      int p, CookVariation by, int index, double from, int stage, double step, Tangents t) {
    slopes.byParameter(
        p,
        by,
        CookVariation.remembering(by.lawAbove(index, face).from(from)),
        CookVariation.remembering(by.lawBelow(index, face).from(from)),
        t.water.base(stage, step, face, p),
        mostAbove[p],
        mostBelow[p]);
  }

  /** Adds what comes with the beginning of what counts from it. */
  void byBeginning(double from, double[] change) {
    slopes.byBeginning(law(), from, change);
  }

  /** The cells stay whatever the face, as where a stage begins. */
  void fixed() {
    own = 0;
    bySunk = 0;
    byPlace = 0;
    java.util.Arrays.fill(near.sink, 0);
    java.util.Arrays.fill(moved, 0);
  }

  /** The cells respond as in a stage of weight λ. */
  void respond(double lambda, ConductionMatrix matrix) {
    near.respond(lambda, matrix);
    java.util.Arrays.fill(moved, 0);
    if (near.isInside()) {
      near.addShareSlopes(-lambda * sunk, moved);
      matrix.solve(moved);
    }
    own = near.read(face == State.UPPER ? matrix.upperResponse : matrix.lowerResponse);
    bySunk = near.read(near.sink);
    byPlace = near.read(moved);
  }

  /** K of the cells' {@code values}. */
  double read(double[] values) {
    return near.read(values);
  }

  /** Response of the cells to σ [cells]. */
  double[] sink() {
    return near.sink;
  }

  /** Response of the cells to ζ [cells]. */
  double[] moved() {
    return moved;
  }

  /** Eliminates σ̇ and Ẇ, for a slope dφ/dT of the face. */
  void eliminate(double phiSlope) {
    double thicker = slopes.thicknessByWater;
    double frontByWater = byPlace * thicker / length;
    double[] k = slopes.byFront;
    double[] d = slopes.byThickness;
    int s = FrontSlopes.SUNK;
    int w = FrontSlopes.WATER;
    m00 = 1 - kappa * k[s] * bySunk;
    m01 = -kappa * (k[s] * frontByWater + d[s] * thicker);
    m10 = -k[w] * bySunk;
    m11 = 1 - (k[w] * frontByWater + d[w] * thicker);
    double direct = own * phiSlope;
    double r0 = kappa * (slopes.byFace[s] + k[s] * direct);
    double r1 = slopes.byFace[w] + k[w] * direct;
    sunkShare = first(r0, r1);
    waterShare = second(r0, r1);
    frontShare = direct + bySunk * sunkShare + frontByWater * waterShare;
  }

  private double first(double r0, double r1) {
    return (m11 * r0 - m01 * r1) / (m00 * m11 - m01 * m10);
  }

  private double second(double r0, double r1) {
    return (m00 * r1 - m10 * r0) / (m00 * m11 - m01 * m10);
  }

  /** Slope of the heat with the face temperature, with all that follows it [W/(m²·K)]. */
  double slope() {
    return slopes.byFace[FrontSlopes.HEAT]
        + slopes.byFront[FrontSlopes.HEAT] * frontShare
        + slopes.byThickness[FrontSlopes.HEAT] * slopes.thicknessByWater * waterShare;
  }

  /** Share of σ̇ in Ṫs. */
  double sunkShare() {
    return sunkShare;
  }

  /** Share of ζ̇ in Ṫs. */
  double placeShare() {
    return slopes.thicknessByWater * waterShare / length;
  }

  /**
   * Takes what drives the front with one parameter.
   *
   * @param stage 0 where a stage of the cook begins
   * @param time change of the time
   * @param cells change of K without face and front
   * @param above change of φ of the face at a fixed temperature, over its origin
   */
  void drive(int stage, double step, int p, double time, double cells, double above, Tangents t) {
    waterBase = t.water.base(stage, step, face, p);
    humidityBase = t.humidity.base(stage, step, face, p);
    fedBase = t.fed.base(stage, step, face, p);
    double weight = Esdirk4.GAMMA * t.length[p];
    for (int i = 0; i < FrontSlopes.NUMBERS; i++) {
      driven[i] =
          slopes.byBase[i] * waterBase
              + slopes.byHumidity[i] * humidityBase
              + slopes.byFed[i] * fedBase
              + slopes.byWeight[i] * weight
              + slopes.byTime[i] * time
              + slopes.byParameter[p][i];
    }
    thicknessRest = slopes.thicknessByParameter[p];
    double placed = thicknessRest / length - place * t.logLength[p];
    double direct = cells + own * above + byPlace * placed;
    int s = FrontSlopes.SUNK;
    int w = FrontSlopes.WATER;
    double r0 =
        kappa * (driven[s] + slopes.byFront[s] * direct + slopes.byThickness[s] * thicknessRest)
            + t.logResistance[p] * sunk;
    double r1 = driven[w] + slopes.byFront[w] * direct + slopes.byThickness[w] * thicknessRest;
    sunkRest = first(r0, r1);
    waterRest = second(r0, r1);
    double thicker = slopes.thicknessByWater * waterRest;
    frontRest = direct + bySunk * sunkRest + byPlace * thicker / length;
    thicknessRest += thicker;
    placeRest = placed + thicker / length;
  }

  /** Change of the heat that does not come with the face temperature [W/m²]. */
  double change() {
    return driven[FrontSlopes.HEAT]
        + slopes.byFront[FrontSlopes.HEAT] * frontRest
        + slopes.byThickness[FrontSlopes.HEAT] * thicknessRest;
  }

  /** Part of σ̇ that does not come with the face temperature. */
  double sunkRest() {
    return sunkRest;
  }

  /** Part of ζ̇ that does not come with the face temperature. */
  double placeRest() {
    return placeRest;
  }

  /** Takes Ṫs. */
  void solved(double change) {
    faceChange = change;
  }

  private double sunkChange() {
    return sunkRest + sunkShare * faceChange;
  }

  private double placeChange() {
    return placeRest + placeShare() * faceChange;
  }

  private double water() {
    return waterRest + waterShare * faceChange;
  }

  /** Change of an answer of the law. */
  double answer(int number) {
    return driven[number]
        + slopes.byFace[number] * faceChange
        + slopes.byFront[number] * (frontRest + frontShare * faceChange)
        + slopes.byThickness[number]
            * (thicknessRest + slopes.thicknessByWater * waterShare * faceChange);
  }

  /** Adds the response of the cells. */
  void addResponse(double[] x) {
    if (near.isInside()) {
      Rows.add(x.length, sunkChange(), near.sink, x);
      Rows.add(x.length, placeChange(), moved, x);
    }
  }

  /** Adds what boiling takes from the cells now, times a factor. */
  void addSunk(double factor, double[] rate) {
    if (near.isInside()) {
      near.addShares(-factor * sunkChange(), rate);
      near.addShareSlopes(-factor * sunk * placeChange(), rate);
    }
  }

  /** Keeps the rates where a stage of the cook begins. */
  void keepRate(int p, Tangents t) {
    t.water.rate[face][p] = answer(FrontSlopes.RATE);
    t.humidity.now[face][p] = answer(FrontSlopes.HUMIDITY);
    t.humidity.rate[face][p] = answer(FrontSlopes.HUMIDITY_RATE);
    t.fed.rate[face][p] = answer(FrontSlopes.FED_RATE);
  }

  /** Keeps the water of a stage, and that of the step after the last; humidity likewise. */
  void keep(int stage, double step, int p, Tangents t) {
    double longer = t.length[p] / step;
    double held = slopes.value[FrontSlopes.WATER] - slopes.base();
    double filled = slopes.value[FrontSlopes.HUMIDITY] - slopes.humidity();
    double came = slopes.value[FrontSlopes.FED] - slopes.fed();
    double humidity = answer(FrontSlopes.HUMIDITY);
    t.water.keep(stage, step, face, p, water(), waterBase, longer, held);
    t.humidity.keep(stage, step, face, p, humidity, humidityBase, longer, filled);
    t.fed.keep(stage, step, face, p, answer(FrontSlopes.FED), fedBase, longer, came);
  }
}
