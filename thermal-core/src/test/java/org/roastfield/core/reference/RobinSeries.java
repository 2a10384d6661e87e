package org.roastfield.core.reference;

/**
 * Exact temperature of a slab, cylinder or sphere at uniform start, heated through a Robin surface.
 *
 * <p>Dimensionless: θ = (T − Ta) / (T0 − Ta) over x = r / R and Fo = α t / R², with Bi = h R / k
 * and R the half thickness or radius: θ = Σ C φ(β x) exp(−β² Fo). With g = β (−φ′(β)) the weights
 * are C = 2 g / (g² + β² φ(β)² + (1 − m) g φ(β)), which stays well conditioned from small to large
 * Bi. Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed., 1959, chapters III (slab),
 * VII (cylinder) and IX (sphere).
 *
 * <p>Validity: constant properties and surroundings, Bi in [0.001, 10 000], Fo at least {@value
 * #SMALLEST_FOURIER_NUMBER}; the terms left out are then below 1e-17. Absolute error below 1e-12.
 */
public final class RobinSeries {
  public static final double SMALLEST_FOURIER_NUMBER = 0.001;

  // exp(−42) is below 1e-18: terms beyond do not count at the smallest Fourier number.
  private static final double LARGEST_EXPONENT = 42;

  private final RadialMode mode;
  private final double biotNumber;
  private final double[] roots;
  private final double[] weights;

  private RobinSeries(RadialMode mode, double biotNumber) {
    this.mode = mode;
    this.biotNumber = Require.within("biotNumber", 0.001, 10_000, biotNumber);
    double largestRoot = Math.sqrt(LARGEST_EXPONENT / SMALLEST_FOURIER_NUMBER);
    this.roots = new RobinRoots(mode, biotNumber).upTo(largestRoot);
    this.weights = new double[roots.length];
    for (int n = 0; n < roots.length; n++) {
      weights[n] = weight(mode, roots[n]);
    }
  }

  /**
   * Series of one body.
   *
   * @param mode shape
   * @param biotNumber h R / k, in [0.001, 10 000]
   */
  public static RobinSeries of(RadialMode mode, double biotNumber) {
    return new RobinSeries(mode, biotNumber);
  }

  /** Series of a slab heated alike on both faces; the length in Bi and Fo is half its thickness. */
  public static RobinSeries slab(double biotNumber) {
    return of(RadialMode.SLAB, biotNumber);
  }

  /** Series of a long cylinder; the length in Bi and Fo is its radius. */
  public static RobinSeries cylinder(double biotNumber) {
    return of(RadialMode.CYLINDER, biotNumber);
  }

  /** Series of a sphere; the length in Bi and Fo is its radius. */
  public static RobinSeries sphere(double biotNumber) {
    return of(RadialMode.SPHERE, biotNumber);
  }

  public double biotNumber() {
    return biotNumber;
  }

  public RadialMode mode() {
    return mode;
  }

  /** Number of terms held. */
  public int terms() {
    return roots.length;
  }

  /** Eigenvalue β of the term {@code index}, counted from 0. */
  public double root(int index) {
    return roots[index];
  }

  /**
   * θ at one place and time.
   *
   * @param position x = r / R, in [0, 1]: 0 is the centre, 1 the surface
   * @param fourierNumber Fo = α t / R², at least {@value #SMALLEST_FOURIER_NUMBER}
   */
  public double temperature(double position, double fourierNumber) {
    Require.within("position", 0, 1, position);
    double sum = 0;
    for (int n = termsAt(fourierNumber) - 1; n >= 0; n--) {
      sum += weights[n] * mode.value(roots[n] * position) * decay(n, fourierNumber);
    }
    return sum;
  }

  /**
   * Volume mean of θ, which is the share of the heat still to be exchanged.
   *
   * @param fourierNumber Fo = α t / R², at least {@value #SMALLEST_FOURIER_NUMBER}
   */
  public double mean(double fourierNumber) {
    double sum = 0;
    for (int n = termsAt(fourierNumber) - 1; n >= 0; n--) {
      double meanOfMode = (mode.exponent() + 1) * mode.descent(roots[n]) / roots[n];
      sum += weights[n] * meanOfMode * decay(n, fourierNumber);
    }
    return sum;
  }

  private static double weight(RadialMode mode, double root) {
    double value = mode.value(root);
    double gradient = root * mode.descent(root);
    double norm =
        gradient * gradient
            + root * root * value * value
            + (1 - mode.exponent()) * gradient * value;
    return 2 * gradient / norm;
  }

  private double decay(int index, double fourierNumber) {
    return Math.exp(-roots[index] * roots[index] * fourierNumber);
  }

  private int termsAt(double fourierNumber) {
    Require.atLeast("fourierNumber", SMALLEST_FOURIER_NUMBER, fourierNumber);
    int count = 1;
    while (count < roots.length && roots[count] * roots[count] * fourierNumber < LARGEST_EXPONENT) {
      count++;
    }
    return count;
  }
}
