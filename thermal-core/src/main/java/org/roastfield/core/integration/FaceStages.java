package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.surface.FaceMemory;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * What faces carry along through the stages of an attempt, by the same scheme as the cells: W = B +
 * γ h dW/dt. Does nothing for faces whose laws remember nothing. Scratch memory of one integration.
 */
final class FaceStages {

  private static final int LAST = Esdirk4.STAGES - 1;

  /** Temperature at which an error of a face's water is worth heat [K]. */
  private static final double WATER_AT = 350;

  /** Share of the most that a face can be fed by which round-off may pass it. */
  private static final double ROUND_OFF = 1e-13;

  /** Largest distance of a front from where a stage had it [m]. */
  private static final double FRONT_ACCURACY = 2e-7;

  /** The same for each kelvin of accuracy [m/K]; the former at 0.01 K. */
  private static final double FRONT_ACCURACY_SHARE = 2e-5;

  /** Memory of each face. */
  final FaceMemory[] memory = {new FaceMemory(), new FaceMemory()};

  private final @Nullable RememberingLaw[] laws = new @Nullable RememberingLaw[2];
  private final double[][] water = new double[Esdirk4.STAGES][2];
  private final double[][] humidity = new double[Esdirk4.STAGES][2];
  private final double[][] held = new double[Esdirk4.STAGES][2];
  private final double[][] fed = new double[Esdirk4.STAGES][2];
  private final double[][] dripped = new double[Esdirk4.STAGES][2];

  /** How much warmer the surface is than the face of the cells, in each stage [stages][2] [K]. */
  final double[][] lift = new double[Esdirk4.STAGES][2];

  private final NearFace[] near;
  private final double totalVolume;
  private final double frontAccuracy;
  private double heatUnit = 1;
  private double kappa = 1;
  private final CutWater cutWater = new CutWater();
  private boolean active;

  /** For faces whose laws remember nothing. */
  FaceStages() {
    near = new NearFace[0];
    totalVolume = 1;
    frontAccuracy = FRONT_ACCURACY;
  }

  /** For the faces of a grid. */
  FaceStages(Grid grid, ScaledMaterial material, double accuracy) {
    NearFace upper = new NearFace(grid, true, material);
    near =
        grid.isTwoSided()
            ? new NearFace[] {upper, new NearFace(grid, false, material)}
            : new NearFace[] {upper};
    totalVolume = grid.totalVolume();
    frontAccuracy = Math.min(FRONT_ACCURACY, FRONT_ACCURACY_SHARE * accuracy);
  }

  /** Takes the body: ξ = 1 stands for {@code length} [m], {@code depth} is behind its faces [m]. */
  void body(ScaledMaterial material, double length, double depth) {
    cutWater.set(material.material().moisture(), depth);
    heatUnit = material.volumetricHeatCapacity() * length;
    kappa = length / material.conductivity();
    for (NearFace face : near) {
      face.body(length);
    }
  }

  /** Takes the laws of a stage; the lower one is ignored where there is one face only. */
  void laws(SurfaceLaw upper, SurfaceLaw lower, int faces) {
    laws[State.UPPER] = upper instanceof RememberingLaw law ? law : null;
    laws[State.LOWER] = faces == 2 && lower instanceof RememberingLaw law ? law : null;
    boolean lifted = active;
    active = laws[State.UPPER] != null || laws[State.LOWER] != null;
    for (int s = 0; lifted && s < lift.length; s++) {
      java.util.Arrays.fill(lift[s], 0);
    }
  }

  /** Whether a face's law remembers. */
  boolean isActive() {
    return active;
  }

  /** Law of a face if it remembers, or else null. */
  @Nullable RememberingLaw law(int face) {
    return laws[face];
  }

  /** κ = ℓ/k₀ [m²·K/W]. */
  double kappa() {
    return kappa;
  }

  /** The front of boiling under a face. */
  NearFace near(int face) {
    return near[face];
  }

  /** Whether boiling takes heat from the cells below a face. */
  boolean boilsInside(int face) {
    return laws[face] != null && near[face].isInside();
  }

  /** Before the faces are balanced where conditions jump. */
  void beginRestart(State state) {
    CarriedFaces carried = state.carried;
    for (int f = 0; f < near.length; f++) {
      RememberingLaw law = laws[f];
      if (law != null) {
        if (!carried.begun[f]) {
          carried.begun[f] = true;
          double initial = cutWater.initial(law);
          carried.initial[f] = initial;
          carried.water[f] = initial;
          carried.mostFed[f] = cutWater.mostFed(initial);
        }
        carried.pour(f);
        if (carried.humidity[f] == 0 && law.airHeld() > 0) {
          carried.humidity[f] = law.humidityWithout(state.time);
        }
        memory[f].weight = 0;
        memory[f].waterBase = carried.water[f];
        memory[f].humidityBase = carried.humidity[f];
        memory[f].fedBase = carried.fed[f];
        memory[f].fedAbout = 0;
        memory[f].mostFed = carried.mostFed[f];
        memory[f].outerTemperature = state.surface(f);
        near[f].place(law.crustThickness(carried.water[f]));
        near[f].fixed(state.temperature);
      }
    }
  }

  /** After the faces were balanced where conditions jump. */
  void endRestart(State state) {
    CarriedFaces carried = state.carried;
    for (int f = 0; f < 2; f++) {
      boolean remembers = laws[f] != null;
      carried.waterRate[f] = remembers ? memory[f].waterRate() : 0;
      carried.humidity[f] = remembers ? memory[f].humidity : 0;
      carried.humidityRate[f] = remembers ? memory[f].humidityRate : 0;
      carried.sunk[f] = remembers ? kappa * memory[f].sunk : 0;
      carried.feeding[f] = remembers ? memory[f].fed : 0;
      carried.dripping[f] = remembers ? memory[f].dripped : 0;
      carried.lift[f] = remembers ? memory[f].outerTemperature - state.face[f] : 0;
    }
  }

  /** The explicit first stage of a step. */
  void firstStage(State from, double step) {
    if (!active) {
      return;
    }
    CarriedFaces carried = from.carried;
    for (int f = 0; f < 2; f++) {
      water[0][f] = Esdirk4.GAMMA * step * carried.waterRate[f];
      humidity[0][f] = Esdirk4.GAMMA * step * carried.humidityRate[f];
      held[0][f] = carried.water[f];
      fed[0][f] = Esdirk4.GAMMA * step * carried.feeding[f];
      dripped[0][f] = carried.dripping[f];
      lift[0][f] = carried.lift[f];
    }
  }

  /** Bases of a stage and first places of the fronts. */
  void beginStage(State from, int stage, double step) {
    if (!active) {
      return;
    }
    double[] base = Esdirk4.baseWeights(stage);
    double[] guess = Esdirk4.guessWeights(stage);
    for (int f = 0; f < near.length; f++) {
      RememberingLaw law = laws[f];
      if (law == null) {
        continue;
      }
      double waterBase = from.carried.water[f];
      double humidityBase = from.carried.humidity[f];
      double fedBase = from.carried.fed[f];
      double expected = 0;
      double feeding = 0;
      for (int j = 0; j < stage; j++) {
        waterBase += base[j] * water[j][f];
        humidityBase += base[j] * humidity[j][f];
        fedBase += base[j] * fed[j][f];
        expected += guess[j] * held[j][f];
        feeding += guess[j] * fed[j][f];
      }
      memory[f].weight = Esdirk4.GAMMA * step;
      memory[f].waterBase = waterBase;
      memory[f].humidityBase = humidityBase;
      memory[f].fedBase = fedBase;
      memory[f].fedAbout = fedBase + feeding;
      memory[f].mostFed = from.carried.mostFed[f];
      near[f].place(law.crustThickness(expected));
    }
  }

  /** Responses of the cells to boiling below the faces, in a stage of weight λ. */
  void respond(double lambda, ConductionMatrix matrix) {
    for (int f = 0; f < near.length; f++) {
      if (laws[f] != null) {
        near[f].respond(lambda, matrix);
      }
    }
  }

  /** Takes the cells of a stage; arrays are kept, not copied. */
  void over(double[] known, double[] change, double[] origin, ConductionMatrix matrix) {
    for (int f = 0; f < near.length; f++) {
      if (laws[f] != null) {
        near[f].moving(known, change, origin[f], matrix);
      }
    }
  }

  /**
   * Whether the fronts are where the stage had them, and faces that hold water bare; those that are
   * not are placed anew.
   */
  boolean isSettled() {
    boolean settled = true;
    for (int f = 0; f < near.length; f++) {
      RememberingLaw law = laws[f];
      if (law != null) {
        double thickness = law.crustThickness(memory[f].water);
        boolean bare = thickness == 0 && near[f].isInside();
        if (bare || Math.abs(thickness - near[f].thickness()) > frontAccuracy) {
          settled = false;
          near[f].place(thickness);
        }
      }
    }
    return settled;
  }

  /** Keeps what the balance of a stage's faces left in the memory. */
  void endStage(int stage, double[] face) {
    if (!active) {
      return;
    }
    for (int f = 0; f < 2; f++) {
      boolean remembers = laws[f] != null;
      FaceMemory m = memory[f];
      water[stage][f] = remembers ? m.weight * m.waterRate() : 0;
      humidity[stage][f] = remembers ? m.weight * m.humidityRate : 0;
      held[stage][f] = m.waterBase + water[stage][f];
      fed[stage][f] = remembers ? m.weight * m.fed : 0;
      dripped[stage][f] = remembers ? m.dripped : 0;
      lift[stage][f] = remembers ? m.outerTemperature - face[f] : 0;
    }
  }

  /** Writes what is carried at the end of a step; {@code to.evaporated} must be known. */
  void finish(State from, double step, State to) {
    CarriedFaces before = from.carried;
    CarriedFaces after = to.carried;
    after.copy(before);
    double inverse = 1 / (Esdirk4.GAMMA * step);
    for (int f = 0; f < 2; f++) {
      RememberingLaw law = laws[f];
      if (law != null) {
        after.water[f] = held[LAST][f];
        after.crust[f] = law.crustThickness(after.water[f]);
        after.waterRate[f] = water[LAST][f] * inverse;
        after.humidity[f] = memory[f].humidity;
        after.humidityRate[f] = humidity[LAST][f] * inverse;
        after.sunk[f] = kappa * memory[f].sunk;
        after.lift[f] = lift[LAST][f];
        after.feeding[f] = fed[LAST][f] * inverse;
        after.dripping[f] = dripped[LAST][f];
        after.fed[f] = memory[f].fedBase + fed[LAST][f];
        after.dripped[f] = before.dripped[f] + step * mean(dripped, f);
        after.evaporated[f] = before.evaporated[f] + (to.evaporated[f] - from.evaporated[f]);
      }
    }
  }

  /** Whether the last attempt ended with a face that was fed more than there was to feed. */
  boolean isFedTooMuch() {
    boolean tooMuch = false;
    for (int f = 0; active && f < near.length; f++) {
      double most = (1 + ROUND_OFF) * memory[f].mostFed;
      tooMuch |= laws[f] != null && memory[f].fedBase + fed[LAST][f] > most;
    }
    return tooMuch;
  }

  /** Water of a face in a stage of the last attempt [kg/m²]. */
  double held(int stage, int face) {
    return held[stage][face];
  }

  /** γ h dW/dt of a face in a stage of the last attempt [kg/m²]. */
  double increment(int stage, int face) {
    return water[stage][face];
  }

  /** γ h times the rate of the humidity around a face in a stage of the last attempt [kg/kg]. */
  double humidityIncrement(int stage, int face) {
    return humidity[stage][face];
  }

  /** γ h times the rate at which a face is fed in a stage of the last attempt [kg/m²]. */
  double fedIncrement(int stage, int face) {
    return fed[stage][face];
  }

  private static double mean(double[][] rates, int face) {
    double sum = 0;
    for (int s = 0; s < Esdirk4.STAGES; s++) {
      sum += Esdirk4.b(s) * rates[s][face];
    }
    return sum;
  }

  /**
   * Embedded error of the faces' water, or of that in the air around, as the mean temperature of
   * the body that its heat is worth [K].
   */
  double error() {
    double[] w = Esdirk4.errorWeights();
    double largest = 0;
    for (int f = 0; f < near.length; f++) {
      RememberingLaw law = laws[f];
      double air = law == null ? 0 : law.airHeld();
      double sum = 0;
      double inAir = 0;
      for (int s = 0; s < Esdirk4.STAGES; s++) {
        sum += w[s] * water[s][f];
        inAir += w[s] * humidity[s][f];
      }
      largest = Math.max(largest, Math.max(Math.abs(sum), air * Math.abs(inAir)));
    }
    return MoistAir.latentHeat(WATER_AT) * largest / (Esdirk4.GAMMA * heatUnit * totalVolume);
  }
}
