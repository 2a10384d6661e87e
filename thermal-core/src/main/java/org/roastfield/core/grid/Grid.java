package org.roastfield.core.grid;

import org.roastfield.core.internal.Check;

/**
 * Finite volumes with geometry exponent m and the constants of the fluxes between their averages.
 * Immutable.
 *
 * <p>Between cells, eqs. (13)-(14): F = G (A₊ − A₋) + B₋ S₋ + B₊ S₊, with A the cell averages of
 * the Kirchhoff temperature and S those of its Laplacian. Near a face the flux is exact for
 * parabolas, deeper for cubics, and near the middle of a symmetric body for 1, ξ² and ξ⁴. At a
 * face, eq. (15): the slope of the parabola through the face value and the last two averages. A
 * two-sided grid is its own mirror image to the last bit: near ξ = 1 powers of ξ would cancel to
 * ten digits.
 */
public final class Grid {

  /** Fewest cells that the closures at both ends leave room for. */
  public static final int FEWEST_CELLS = 6;

  /** Most cells. */
  public static final int MOST_CELLS = 100_000;

  /** Highest geometry exponent that stability was shown for ({@code GridStabilityTest}). */
  public static final double HIGHEST_EXPONENT = 4;

  /** Below this ξ a symmetric body's fluxes are made for even functions of ξ. */
  private static final double EVEN_BELOW = 0.4;

  /**
   * Largest correction in units of the cell's volume: the mass matrix is then dominated by its
   * diagonal, column by column.
   */
  private static final double LARGEST_CORRECTION = 0.25;

  private final double exponent;
  private final boolean twoSided;
  private final double[] faces;
  private final double[] volumes;
  private final Flux[] fluxes;
  private final FaceClosure upper;
  private final FaceClosure lower;

  private Grid(double exponent, boolean twoSided, double[] faces, double compactBelow) {
    this.exponent = exponent;
    this.twoSided = twoSided;
    this.faces = faces;
    int n = faces.length - 1;
    this.volumes = new double[n];
    int mirror = twoSided ? n / 2 : n;
    for (int i = 0; i < n; i++) {
      volumes[i] = i < mirror ? moment(exponent, i) : volumes[n - 1 - i];
    }
    this.fluxes = new Flux[n + 1];
    fluxes[0] = Flux.NONE;
    fluxes[n] = Flux.NONE;
    for (int f = 1; f < n; f++) {
      fluxes[f] = f <= mirror ? flux(f, compactBelow) : fluxes[n - f].mirrored();
    }
    this.lower = FaceClosure.lower(this);
    this.upper = twoSided ? lower.mirrored(n) : FaceClosure.upper(this);
  }

  /**
   * Grid of a body heated all round.
   *
   * @param exponent m: 0 half a slab, 1 cylinder, 2 sphere; any number in [0, {@value
   *     #HIGHEST_EXPONENT}]
   * @param cells {@value #FEWEST_CELLS} … {@value #MOST_CELLS}
   * @param surfaceCell width of the cell at the face, relative to the radius, in (0, 1)
   * @param compactDepth relative distance from the face beyond which fluxes are exact for cubics; 1
   *     or more for none
   */
  public static Grid symmetric(
      double exponent, int cells, double surfaceCell, double compactDepth) {
    Check.inRange("exponent", exponent, 0, HIGHEST_EXPONENT);
    checkCells(cells, surfaceCell);
    double[] widths = Widths.capped(cells, 1, surfaceCell);
    double[] faces = new double[cells + 1];
    for (int i = 0; i < cells; i++) {
      faces[i + 1] = faces[i] + widths[cells - 1 - i];
    }
    faces[cells] = 1;
    return new Grid(exponent, false, faces, 1 - compactDepth);
  }

  /**
   * Grid of a slab with two faces.
   *
   * @param cells {@value #FEWEST_CELLS} … {@value #MOST_CELLS}, made even by adding one
   * @param surfaceCell width of the cells at the faces, relative to the thickness, in (0, 1)
   * @param compactDepth distance from the faces, relative to the thickness, beyond which fluxes are
   *     of fourth order; ½ or more for none
   */
  public static Grid twoSided(int cells, double surfaceCell, double compactDepth) {
    checkCells(cells, surfaceCell);
    int half = (cells + 1) / 2;
    double[] widths = Widths.capped(half, 0.5, surfaceCell);
    double[] faces = new double[2 * half + 1];
    for (int i = 0; i < half; i++) {
      faces[i + 1] = faces[i] + widths[i];
    }
    faces[half] = 0.5;
    for (int i = 0; i < half; i++) {
      faces[2 * half - i] = 1 - faces[i];
    }
    return new Grid(0, true, faces, 1 - compactDepth);
  }

  private static void checkCells(int cells, double surfaceCell) {
    Check.inRange("cells", cells, FEWEST_CELLS, MOST_CELLS);
    Check.positive("surfaceCell", surfaceCell);
  }

  /** Number of cells. */
  public int cells() {
    return volumes.length;
  }

  /** Geometry exponent m. */
  public double exponent() {
    return exponent;
  }

  /** Whether ξ = 0 is a heated face too. */
  public boolean isTwoSided() {
    return twoSided;
  }

  /** Position of face {@code f} in 0 … cells. */
  public double face(int f) {
    return faces[f];
  }

  /** Width of cell {@code i}. */
  public double width(int i) {
    return faces[i + 1] - faces[i];
  }

  /** Volume of cell {@code i} for a unit area at ξ = 1. */
  public double volume(int i) {
    return volumes[i];
  }

  /** Volume of the whole body for a unit area at ξ = 1: 1/(m + 1). */
  public double totalVolume() {
    return 1.0 / (exponent + 1);
  }

  /** G of face {@code f}, 0 at both ends. */
  public double conductance(int f) {
    return fluxes[f].conductance();
  }

  /** Weight of the Laplacian of cell {@code f − 1} in the flow through face {@code f}. */
  public double correctionBelow(int f) {
    return fluxes[f].below();
  }

  /** Weight of the Laplacian of cell {@code f} in the flow through face {@code f}. */
  public double correctionAbove(int f) {
    return fluxes[f].above();
  }

  /** Closure at ξ = 1. */
  public FaceClosure upper() {
    return upper;
  }

  /** Closure at ξ = 0 of a two-sided grid. */
  public FaceClosure lower() {
    return lower;
  }

  /** Mean of ξ^power over cell {@code i}, weighted with the area ξ^m. */
  double mean(int power, int i) {
    return moment(exponent + power, i) / volumes[i];
  }

  /**
   * Mean of (ξ − origin)^power over cell {@code i}, weighted with the area ξ^m; power 0, 1 or 2.
   */
  double centredMean(double origin, int power, int i) {
    return switch (power) {
      case 0 -> 1;
      case 1 -> mean(1, i) - origin;
      case 2 -> mean(2, i) - 2 * origin * mean(1, i) + origin * origin;
      default -> throw new IllegalArgumentException("power must be 0, 1 or 2, was " + power);
    };
  }

  private double moment(double power, int i) {
    return (power(faces[i + 1], power + 1) - power(faces[i], power + 1)) / (power + 1);
  }

  /** base^exponent: a product as far as the exponent is whole. */
  static double power(double base, double exponent) {
    int whole = (int) exponent;
    double result = 1;
    for (int i = 0; i < whole; i++) {
      result *= base;
    }
    return exponent == whole ? result : result * StrictMath.pow(base, exponent - whole);
  }

  /**
   * Flux of the highest order that the place allows. Near the middle of a symmetric body
   * temperature is even in ξ; near a face compact fluxes overshoot when its conditions jump; and a
   * correction must stay well below the cells' volumes, or the scheme would lose its stability.
   */
  private Flux flux(int f, double compactBelow) {
    double nearestFace = twoSided ? Math.max(faces[f], 1 - faces[f]) : faces[f];
    boolean compact = nearestFace <= compactBelow;
    Flux best;
    if (!twoSided && faces[f] < EVEN_BELOW) {
      best = compact ? Flux.fourthPowerExact(this, f) : Flux.squareExact(this, f);
    } else {
      best = compact ? Flux.cubicExact(this, f) : Flux.parabolaExact(this, f);
    }
    if (isModerate(best, f)) {
      return best;
    }
    return twoSided ? Flux.plain(this, f) : Flux.squareExact(this, f);
  }

  private boolean isModerate(Flux flux, int f) {
    return flux.conductance() > 0
        && Math.abs(flux.below()) <= LARGEST_CORRECTION * volumes[f - 1]
        && Math.abs(flux.above()) <= LARGEST_CORRECTION * volumes[f];
  }
}
