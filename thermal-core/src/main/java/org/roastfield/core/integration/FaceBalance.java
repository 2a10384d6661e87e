package org.roastfield.core.integration;

import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Heat balance of the faces, eq. (18): κ q(Ts, t) = f with f = offset + Σ gain · φ(Ts), solved for
 * the face temperatures by Newton's method.
 *
 * <p>Symbols: κ = ℓ/k₀ [m²·K/W], f inward flow ∂φ/∂ξ [K], q the laws' flux [W/m²]. A step is halved
 * while a law has no value there or the residual grows. After the last correction, below {@link
 * #tolerance}, f comes from the cells' side of the balance, so that heat is conserved to round-off;
 * the laws' side differs by the square of that correction.
 */
final class FaceBalance {

  /**
   * Largest correction of a face temperature that may be the last [K], for laws of usual slope;
   * what is left is about 3 % of its square.
   */
  private static final double LARGEST_LAST_CORRECTION = 5e-3;

  private static final double ACCURACY_SHARE = 0.5;

  private static final int MOST_ITERATIONS = 60;

  /** Slope of a flux that may end within the last correction, next to boiling [W/(m²·K)]. */
  static final double STEEP = 1e4;

  private static final int MOST_HALVINGS = 60;

  /**
   * Slope of a flux above which the last correction must be smaller, because what it leaves grows
   * with the slope, as it does towards boiling [W/(m²·K)].
   */
  private static final double USUAL_SLOPE = 100;

  private final ScaledMaterial material;
  private double kappa;
  private final int faces;
  private double tolerance;
  private final FaceLaws laws;
  private final SurfaceFlux flux;

  /**
   * φ of the cell at each face, from which φ of the face is counted so that no digits are lost [2]
   * [K].
   */
  final double[] origin = new double[2];

  /** Part of f at each face that does not depend on the faces [2]. */
  final double[] offset = new double[2];

  /** gain[a][b]: change of f at face a with φ of face b. */
  final double[][] gain = new double[2][2];

  /** φ of the faces that were found [2] [K]. */
  final double[] phi = new double[2];

  private final double[] residual = new double[2];
  private final double[] fluxSlope = new double[2];
  private final double[] evaporation = new double[2];
  private final double[] evaporationSlope = new double[2];
  private final double[] trial = new double[2];
  private final double[] correction = new double[2];
  private final double[] start = new double[2];

  FaceBalance(
      ScaledMaterial material, double kappa, int faces, double accuracy, Counters counters) {
    this(material, kappa, faces, accuracy, new FaceLaws(new FaceStages(), counters));
  }

  FaceBalance(ScaledMaterial material, double kappa, int faces, double accuracy, FaceLaws laws) {
    this.tolerance = tolerance(accuracy);
    this.material = material;
    this.kappa = kappa;
    this.faces = faces;
    this.laws = laws;
    this.flux = laws.flux;
  }

  /** Largest correction of a face temperature that may be the last, for an accuracy [K]. */
  static double tolerance(double accuracy) {
    return Math.min(LARGEST_LAST_CORRECTION, ACCURACY_SHARE * accuracy);
  }

  /**
   * Whether a correction may be the last, where the law is not too steep to tell.
   *
   * @param change correction [K]
   * @param slope of the flux where it started [W/(m²·K)]
   * @param tolerance largest correction for usual slopes [K]
   */
  static boolean isSettled(double change, double slope, double tolerance) {
    double curved = Math.max(1, Math.abs(slope) * (1 / USUAL_SLOPE));
    return change * change * curved <= tolerance * tolerance;
  }

  /**
   * The same for any slope. Next to boiling a tiny correction may leave a large residual, so there
   * the residual must be small for the body's side of the balance, or the correction rounding.
   *
   * @param temperature of the face before the correction [K]
   * @param excess residual [K]
   * @param give change of f with the face temperature
   */
  private boolean isSettled(
      double temperature, double change, double slope, double excess, double give) {
    if (Math.abs(slope) <= STEEP) {
      return isSettled(change, slope, tolerance);
    }
    return Math.abs(excess) <= give * tolerance || Math.abs(change) <= 4 * Math.ulp(temperature);
  }

  /** Sets κ of another body. */
  void kappa(double kappa) {
    this.kappa = kappa;
  }

  void laws(SurfaceLaw upper, SurfaceLaw lower) {
    laws.set(upper, lower, faces);
  }

  /** Called before the first balance of a stage of an attempt, or of a restart. */
  void begin() {
    laws.forget();
  }

  /**
   * Finds the face temperatures.
   *
   * @param time [s]
   * @param face guess, overwritten with the solution [K]
   * @param flow overwritten with f [K]
   * @param evaporated overwritten with the rate [kg/(m²·s)]
   * @return whether it converged
   */
  boolean solve(double time, double[] face, double[] flow, double[] evaporated) {
    return faces == 1
        ? solveOne(time, face, flow, evaporated)
        : solveTwo(time, face, flow, evaporated);
  }

  private boolean solveOne(double time, double[] face, double[] flow, double[] evaporated) {
    if (!solveFace(State.UPPER, time, face, evaporated)) {
      return false;
    }
    flow[0] = flowAt(0) + laws.boiling(0, kappa, faces);
    return true;
  }

  /** Finds one face temperature while φ of the other, if any, stays. */
  private boolean solveFace(int f, double time, double[] face, double[] evaporated) {
    double linked = offset[f] - gain[f][f] * origin[f] + laws.boilingBeyond(f, kappa, faces);
    for (int g = 0; g < faces; g++) {
      linked += g == f ? 0 : gain[f][g] * (phi[g] - origin[g]);
    }
    double temperature =
        faces == 1
            ? laws.whereItIsKnown(f, time, face[f], tolerance)
            : laws.whereItHasAValue(f, time, face[f]);
    material.expand(temperature);
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double excess = kappa * flux.heatFlux() - (linked + gain[f][f] * material.kirchhoff());
      double give = gain[f][f] * material.kirchhoffSlope();
      double change = -excess / (kappa * flux.slope() - give);
      evaporated[f] = flux.evaporation() + change * flux.evaporationSlope();
      if (isSettled(temperature, change, flux.slope(), excess, give)) {
        boolean steep = Math.abs(flux.slope()) > STEEP;
        boolean beyond = steep && !laws.hasValue(f, time, temperature + change);
        double kept = beyond ? 0 : change;
        face[f] = temperature + kept;
        phi[f] = material.kirchhoff() + kept * material.kirchhoffSlope();
        laws.remember(f, time, steep ? Double.NaN : kept, face, evaporated);
        return true;
      }
      double next = advanceFace(f, time, temperature, change, Math.abs(excess), linked);
      if (!(next < Double.POSITIVE_INFINITY)) {
        face[f] = temperature;
        material.expand(temperature);
        phi[f] = material.kirchhoff();
        laws.remember(f, time, Double.NaN, face, evaporated);
        return isAtEndOfLaw(f, time, temperature);
      }
      temperature = next;
    }
    return false;
  }

  /**
   * Moves along the correction, shortened until the residual is finite and smaller; NaN if none is.
   * Leaves law and material expanded there.
   */
  private double advanceFace(
      int f, double time, double temperature, double change, double size, double linked) {
    double share = change;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      double trial = temperature + share;
      material.expand(trial);
      laws.evaluate(f, time, trial);
      double excess = kappa * flux.heatFlux() - (linked + gain[f][f] * material.kirchhoff());
      if (Math.abs(excess) < size) {
        return trial;
      }
      share *= 0.5;
    }
    return Double.NaN;
  }

  /**
   * Whether the law ends just above a temperature, as at boiling, so that the balance lies between
   * two neighbouring numbers and the face rests on the lower.
   */
  private boolean isAtEndOfLaw(int f, double time, double temperature) {
    return !laws.hasValue(f, time, temperature + tolerance) && laws.hasValue(f, time, temperature);
  }

  /** Both faces together; one after the other where that fails, as next to boiling. */
  private boolean solveTwo(double time, double[] face, double[] flow, double[] evaporated) {
    start[0] = face[0];
    start[1] = face[1];
    if (!solveTogether(time, face, evaporated)) {
      face[0] = start[0];
      face[1] = start[1];
      keepPhi(face);
      if (!solveInTurn(time, face, evaporated)) {
        return false;
      }
    }
    flow[0] = flowAt(0) + laws.boiling(0, kappa, faces);
    flow[1] = flowAt(1) + laws.boiling(1, kappa, faces);
    return true;
  }

  private boolean solveInTurn(double time, double[] face, double[] evaporated) {
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double change = 0;
      for (int f = 0; f < faces; f++) {
        double before = face[f];
        if (!solveFace(f, time, face, evaporated)) {
          return false;
        }
        change = Math.max(change, Math.abs(face[f] - before));
      }
      if (change <= tolerance) {
        return true;
      }
    }
    return false;
  }

  private boolean solveTogether(double time, double[] face, double[] evaporated) {
    face[0] = laws.whereItHasAValue(State.UPPER, time, face[0]);
    face[1] = laws.whereItHasAValue(State.LOWER, time, face[1]);
    double size = evaluate(time, face);
    if (!(size < Double.POSITIVE_INFINITY)) {
      return false;
    }
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      correct(face);
      if (isSettled(0, face) && isSettled(1, face)) {
        return keepTogether(time, face, evaporated);
      }
      size = advance(time, face, size);
      if (!(size < Double.POSITIVE_INFINITY)) {
        return false;
      }
    }
    return false;
  }

  private boolean isSettled(int f, double[] face) {
    double give = gain[f][f] * material.kirchhoffSlope(face[f]);
    return isSettled(face[f], correction[f], fluxSlope[f] / kappa, residual[f], give);
  }

  private boolean keepTogether(double time, double[] face, double[] evaporated) {
    for (int f = 0; f < faces; f++) {
      if (isSteep(f) && !laws.hasValue(f, time, face[f] + correction[f])) {
        return false;
      }
    }
    for (int f = 0; f < faces; f++) {
      face[f] += correction[f];
      evaporated[f] = evaporation[f] + correction[f] * evaporationSlope[f];
    }
    keepPhi(face);
    for (int f = 0; f < faces; f++) {
      laws.remember(f, time, isSteep(f) ? Double.NaN : correction[f], face, evaporated);
    }
    return true;
  }

  private boolean isSteep(int f) {
    return Math.abs(fluxSlope[f]) > kappa * STEEP;
  }

  /**
   * Moves {@code face} along the correction, shortened until the residual is finite and smaller.
   */
  private double advance(double time, double[] face, double size) {
    double share = 1;
    for (int halving = 0; halving < MOST_HALVINGS; halving++) {
      for (int f = 0; f < faces; f++) {
        trial[f] = face[f] + share * correction[f];
      }
      double trialSize = evaluate(time, trial);
      if (trialSize < size) {
        System.arraycopy(trial, 0, face, 0, faces);
        return trialSize;
      }
      share *= 0.5;
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Residual κ q − f of each face, its slope and the evaporation; returns the sum of absolute
   * residuals.
   */
  private double evaluate(double time, double[] face) {
    double size = 0;
    keepPhi(face);
    for (int f = 0; f < faces; f++) {
      laws.evaluate(f, time, face[f]);
      residual[f] = kappa * flux.heatFlux() - flowAt(f);
      fluxSlope[f] = kappa * flux.slope();
      evaporation[f] = flux.evaporation();
      evaporationSlope[f] = flux.evaporationSlope();
    }
    for (int f = 0; f < faces; f++) {
      residual[f] -= laws.boilingBeyond(f, kappa, faces);
      size += Math.abs(residual[f]);
    }
    return size;
  }

  /** Newton correction −J⁻¹ r of one face, or of two that see each other through the body. */
  private void correct(double[] face) {
    double slope0 = material.kirchhoffSlope(face[0]);
    double j00 = fluxSlope[0] - gain[0][0] * slope0;
    if (faces == 1) {
      correction[0] = -residual[0] / j00;
      return;
    }
    double slope1 = material.kirchhoffSlope(face[1]);
    double j11 = fluxSlope[1] - gain[1][1] * slope1;
    double j01 = -gain[0][1] * slope1;
    double j10 = -gain[1][0] * slope0;
    double determinant = j00 * j11 - j01 * j10;
    correction[0] = (j01 * residual[1] - j11 * residual[0]) / determinant;
    correction[1] = (j10 * residual[0] - j00 * residual[1]) / determinant;
  }

  private void keepPhi(double[] face) {
    for (int f = 0; f < faces; f++) {
      phi[f] = material.kirchhoff(face[f]);
    }
  }

  private double flowAt(int f) {
    double sum = offset[f];
    for (int g = 0; g < faces; g++) {
      sum += gain[f][g] * (phi[g] - origin[g]);
    }
    return sum;
  }
}
