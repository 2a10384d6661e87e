package org.roastfield.core.integration;

import org.roastfield.core.grid.FaceClosure;
import org.roastfield.core.grid.Grid;
import org.roastfield.core.surface.Beneath;

/**
 * Front of boiling below one face in a stage, eq. (47). Between two neighbours, face or middles of
 * cells, its temperature is on their straight line less what a kink there rises above it, and what
 * boiling takes is shared among them as the lever of its place. Beyond the middle of the last cell
 * boiling ends with what is left of it, eq. (101). Scratch memory of one integration.
 *
 * <p>Symbols: T = T̂ + X + Δφ · response + κ q · sink for each cell, q heat that boiling takes
 * inside.
 */
final class NearFace implements Beneath {

  private static final double BOILING = 373.15;

  private final int cells;
  private final int start;
  private final int step;
  private final double[] relativeDepth;
  private final ScaledMaterial material;
  private final boolean upper;

  /** Response of the cells to κ q of boiling inside [cells]. */
  final double[] sink;

  private double length;
  private double conductivity;
  private int outer;
  private double share;
  private double gap;
  private double thickness;
  private double left;
  private double known;
  private double own;
  private double cooling;
  private double originPhi;

  NearFace(Grid grid, boolean upper, ScaledMaterial material) {
    this.material = material;
    this.upper = upper;
    cells = grid.cells();
    sink = new double[cells];
    FaceClosure closure = upper ? grid.upper() : grid.lower();
    start = closure.cell();
    step = closure.nextCell() - closure.cell();
    relativeDepth = new double[cells];
    double origin = upper ? 1 : 0;
    for (int i = 0; i < cells; i++) {
      int cell = start + step * i;
      relativeDepth[i] = Math.abs(origin - 0.5 * (grid.face(cell) + grid.face(cell + 1)));
    }
  }

  /** Takes the body: ξ = 1 stands for {@code length} [m]. */
  void body(double length) {
    body(length, material);
  }

  /** Takes the body of another cook. */
  void body(double length, ScaledMaterial of) {
    this.length = length;
    conductivity = of.conductivity() * of.kirchhoffSlope(BOILING);
  }

  /** Places the front, wherever its crust ends, or beyond the body where all of it is dry. */
  void place(double thickness) {
    this.thickness = thickness;
    double place = thickness / length;
    int i = 0;
    while (i < cells && relativeDepth[i] < place) {
      i++;
    }
    boolean last = i == cells;
    left = last ? Math.max(0, (1 - place) / (1 - relativeDepth[cells - 1])) : 1;
    outer = last ? cells - 2 : i - 1;
    double before = outer < 0 ? 0 : relativeDepth[outer];
    gap = relativeDepth[outer + 1] - before;
    share = last ? 1 : (place - before) / gap;
  }

  /** Distance of the front from the nearest place where its equations have a kink [m]. */
  double clearance() {
    if (left == 1) {
      return Math.min(share, 1 - share) * gap * length;
    }
    double beyond = thickness - relativeDepth[cells - 1] * length;
    return Math.min(beyond, Math.abs(length - thickness));
  }

  /** Whether boiling takes heat from cells. */
  boolean isInside() {
    return thickness > 0;
  }

  /** Adds {@code amount} to the cells between which the front lies, by their shares in it. */
  void addShares(double amount, double[] target) {
    if (outer < 0) {
      target[start] += amount;
    } else {
      target[start + step * outer] += amount * (1 - share);
      target[start + step * (outer + 1)] += amount * share;
    }
  }

  /** Adds the change of {@link #addShares} with the front's ξ. */
  void addShareSlopes(double amount, double[] target) {
    if (outer >= 0 && left == 1) {
      target[start + step * outer] -= amount / gap;
      target[start + step * (outer + 1)] += amount / gap;
    }
  }

  /** Finds the response to boiling in a stage of weight λ. */
  void respond(double lambda, ConductionMatrix matrix) {
    java.util.Arrays.fill(sink, 0);
    if (isInside()) {
      addShares(-lambda, sink);
      matrix.solve(sink);
    }
  }

  /** The cells as they are, whatever the face. */
  void fixed(double[] temperature) {
    java.util.Arrays.fill(sink, 0);
    known = read(temperature);
    own = 0;
    cooling = kink();
  }

  /**
   * The cells of a stage.
   *
   * @param known T̂ [cells] [K]
   * @param change X with the face's φ at its origin [cells] [K]
   * @param originPhi that origin [K]
   */
  void moving(double[] known, double[] change, double originPhi, ConductionMatrix matrix) {
    this.known = read(known) + read(change);
    this.originPhi = originPhi;
    own = read(upper ? matrix.upperResponse : matrix.lowerResponse);
    cooling = kink() - inside() * length / material.conductivity() * read(sink);
  }

  /** Makes the cells at the front warmer than they are [K]. */
  void warm(double by) {
    known += by;
  }

  /** Share of the front's temperature that comes from the cells' {@code values}. */
  double read(double[] values) {
    double inner = share * values[start + step * (outer + 1)];
    return outer < 0 ? inner : inner + (1 - share) * values[start + step * outer];
  }

  /** Infinite where nothing is left to boil. */
  private double kink() {
    double ending = (1 / left - 1) * (1 - relativeDepth[cells - 1]);
    return (share * (1 - share) * gap + ending) * length / conductivity;
  }

  private double inside() {
    return 1 - shareAtFace();
  }

  @Override
  public double frontTemperature(double faceTemperature) {
    double shift = own == 0 ? 0 : own * (material.kirchhoff(faceTemperature) - originPhi);
    return shareAtFace() * faceTemperature + known + shift;
  }

  @Override
  public double frontSlope() {
    return shareAtFace() + own;
  }

  @Override
  public double frontCooling() {
    return cooling;
  }

  @Override
  public double shareAtFace() {
    return outer < 0 ? 1 - share : 0;
  }

  @Override
  public double thickness() {
    return thickness;
  }

  @Override
  public double conductivity() {
    return conductivity;
  }
}
