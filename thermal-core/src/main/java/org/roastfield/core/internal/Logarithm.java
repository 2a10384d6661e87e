package org.roastfield.core.internal;

/**
 * Natural logarithm as a bounded kernel of square roots, products and one division, the same on
 * every machine and fit for vector instructions.
 *
 * <p>s = r^(1/16), t = (s − 1)/(s + 1), ln r = 32 t (1 + t²/3 + … + t¹⁸/19). Error for r in [1e-3,
 * 1e3]: below 2e-14 + 1e-12 |ln r|; up to 1e8: below 1e-6 |ln r|.
 */
public final class Logarithm {

  private Logarithm() {}

  /**
   * ln r.
   *
   * @param r greater than 0; NaN for less
   */
  public static double of(double r) {
    double s = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(r))));
    double t = (s - 1) / (s + 1);
    double q = t * t;
    double sum = 1.0 / 17 + q * (1.0 / 19);
    sum = 1.0 / 15 + q * sum;
    sum = 1.0 / 13 + q * sum;
    sum = 1.0 / 11 + q * sum;
    sum = 1.0 / 9 + q * sum;
    sum = 1.0 / 7 + q * sum;
    sum = 1.0 / 5 + q * sum;
    sum = 1.0 / 3 + q * sum;
    return 32 * t * (1 + q * sum);
  }
}
