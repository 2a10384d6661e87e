package org.roastfield.core.integration;

import org.roastfield.core.surface.FaceMemory;
import org.roastfield.core.surface.RememberingLaw;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/** The laws of the faces in one stage, what they carry along, and their flux where last asked. */
final class FaceLaws {

  private static final int MOST_RETREATS = 30;
  private static final double RETREAT_TO = 273.15;
  private static final double RETREAT_SHARE = 0.9;

  /** Flux at the last {@link #evaluate}. */
  final SurfaceFlux flux = new SurfaceFlux();

  /** sinkGain[a][b]: change of f at face a with κ times what boiling takes below face b. */
  final double[][] sinkGain = new double[2][2];

  private final FaceStages carried;
  private final Counters counters;
  private SurfaceLaw upperLaw = SurfaceLaw.insulated();
  private SurfaceLaw lowerLaw = SurfaceLaw.insulated();

  /** Face, time and temperature of the last {@link #evaluate}; no temperature once forgotten. */
  private int askedFace;

  private double askedTime;
  private double asked = Double.NaN;

  /** How far memories went on since their laws were asked [2] [K]. */
  private final double[] followed = new double[2];

  FaceLaws(FaceStages carried, Counters counters) {
    this.carried = carried;
    this.counters = counters;
  }

  void set(SurfaceLaw upper, SurfaceLaw lower, int faces) {
    upperLaw = upper;
    lowerLaw = lower;
    carried.laws(upper, lower, faces);
    forget();
  }

  /** Called where what the faces remember changed: no value of a law is known any more. */
  void forget() {
    asked = Double.NaN;
  }

  /** Finds the flux into the cells at a face temperature. */
  void evaluate(int f, double time, double temperature) {
    flux.clear();
    RememberingLaw remembering = carried.law(f);
    if (remembering == null) {
      (f == State.UPPER ? upperLaw : lowerLaw).evaluate(temperature, time, flux);
    } else {
      FaceMemory memory = carried.memory[f];
      remembering.evaluate(temperature, time, memory, carried.near(f), flux);
      flux.addHeat(-sinkGain[f][f] * memory.sunk, -sinkGain[f][f] * memory.sunkSlope);
    }
    askedFace = f;
    askedTime = time;
    asked = temperature;
    followed[f] = 0;
    counters.fluxEvaluations++;
  }

  /**
   * Where {@link #flux} is known near a guess, for a law that is asked again in the same stage
   * after the cells changed a little: that temperature; else the guess itself after asking there,
   * see {@link #whereItHasAValue}.
   *
   * @param near largest distance from the guess [K]
   */
  double whereItIsKnown(int f, double time, double guess, double near) {
    boolean known = askedFace == f && askedTime == time && Math.abs(asked - guess) <= near;
    if (known && isUnmoved(f, near) && isFinite(flux.heatFlux())) {
      return asked;
    }
    return whereItHasAValue(f, time, guess);
  }

  /**
   * Whether the law near a face temperature is what it was, whatever the cells are now, and does
   * not begin to boil there.
   */
  private boolean isUnmoved(int f, double near) {
    return carried.law(f) == null
        || (carried.memory[f].isStraight(near) && !carried.boilsInside(f));
  }

  /**
   * Leaves the memory as it is with the face that was found, if its law remembers.
   *
   * @param change of the face temperature since the law was asked last; NaN if that was elsewhere
   */
  void remember(int f, double time, double change, double[] face, double[] evaporated) {
    if (carried.law(f) == null) {
      return;
    }
    if (carried.memory[f].follow(change - followed[f])) {
      followed[f] = change;
    } else {
      evaluate(f, time, face[f]);
      evaporated[f] = flux.evaporation();
    }
  }

  /** Whether a law of these carries something along. */
  boolean remember() {
    return carried.isActive();
  }

  /** Change of f at a face with what boiling takes below the faces. */
  double boiling(int f, double kappa, int faces) {
    double sum = 0;
    for (int g = 0; g < faces; g++) {
      sum += carried.boilsInside(g) ? sinkGain[f][g] * kappa * carried.memory[g].sunk : 0;
    }
    return sum;
  }

  /** The same of what boils below the other face. */
  double boilingBeyond(int f, double kappa, int faces) {
    int g = 1 - f;
    return g < faces && carried.boilsInside(g)
        ? sinkGain[f][g] * kappa * carried.memory[g].sunk
        : 0;
  }

  /** Whether the law has a value at a temperature; it is left in {@link #flux}. */
  boolean hasValue(int f, double time, double temperature) {
    evaluate(f, time, temperature);
    return isFinite(flux.heatFlux());
  }

  /**
   * The guess, or the first temperature below it at which the law has a value, left in {@link
   * #flux}: a face that is wetted while it is hotter than boiling falls below it at once.
   */
  double whereItHasAValue(int f, double time, double guess) {
    double temperature = guess;
    evaluate(f, time, temperature);
    for (int i = 0; i < MOST_RETREATS && !isFinite(flux.heatFlux()); i++) {
      temperature = RETREAT_TO + RETREAT_SHARE * (temperature - RETREAT_TO);
      evaluate(f, time, temperature);
    }
    return temperature;
  }

  private static boolean isFinite(double value) {
    return Math.abs(value) <= Double.MAX_VALUE;
  }
}
