package org.roastfield.core.reference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.BesselJ;
import org.apache.commons.math3.special.Gamma;

/**
 * Exact temperature of a body with any geometry exponent m in [0, 4], at uniform start, heated
 * through a Robin surface: {@link RobinSeries} for exponents that need not be whole.
 *
 * <p>The mode is φ(z) = Γ(ν + 1) (2/z)^ν J_ν(z) with ν = (m − 1)/2, −φ′(z) = Γ(ν + 1) (2/z)^ν
 * J_ν₊₁(z) (DLMF 10.6.6), and J_ν of negative order from the two orders above (DLMF 10.6.1).
 * Validity: Bi in [0.01, 1000], Fo at least {@value #SMALLEST_FOURIER_NUMBER}. Absolute error below
 * 1e-9, tested at whole exponents.
 */
public final class BesselSeries {
  public static final double SMALLEST_FOURIER_NUMBER = 0.01;

  private static final double LARGEST_ROOT = 48;
  private static final double SCAN_STEP = 0.25;

  private final double exponent;
  private final double biotNumber;
  private final List<Double> roots = new ArrayList<>();
  private final List<Double> weights = new ArrayList<>();

  /** Series of a body of exponent m with Bi = h R/k. */
  public BesselSeries(double exponent, double biotNumber) {
    this.exponent = Require.within("exponent", 0, 4, exponent);
    this.biotNumber = Require.within("biotNumber", 0.01, 1000, biotNumber);
    for (double z = 0; z < LARGEST_ROOT; z += SCAN_STEP) {
      double from = z == 0 ? -biotNumber : residual(z);
      if (from < 0 != residual(z + SCAN_STEP) < 0) {
        add(bisected(z, z + SCAN_STEP, from < 0));
      }
    }
  }

  /**
   * θ at one place and time.
   *
   * @param position x = r/R, in [0, 1]
   * @param fourierNumber Fo = α t/R², at least {@value #SMALLEST_FOURIER_NUMBER}
   */
  public double temperature(double position, double fourierNumber) {
    Require.atLeast("fourierNumber", SMALLEST_FOURIER_NUMBER, fourierNumber);
    double sum = 0;
    for (int n = 0; n < roots.size(); n++) {
      double root = roots.get(n);
      sum += weights.get(n) * value(root * position) * Math.exp(-root * root * fourierNumber);
    }
    return sum;
  }

  private void add(double root) {
    double value = value(root);
    double g = root * descent(root);
    roots.add(root);
    weights.add(2 * g / (g * g + root * root * value * value + (1 - exponent) * g * value));
  }

  private double bisected(double left, double right, boolean negativeOnTheLeft) {
    double low = left;
    double high = right;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (residual(middle) < 0 == negativeOnTheLeft) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }

  private double residual(double z) {
    return z * descent(z) - biotNumber * value(z);
  }

  private double value(double z) {
    if (z < 1e-6) {
      return 1;
    }
    double order = 0.5 * (exponent - 1);
    double bessel =
        order >= 0
            ? BesselJ.value(order, z)
            : 2 * (order + 1) / z * BesselJ.value(order + 1, z) - BesselJ.value(order + 2, z);
    return scale(z) * bessel;
  }

  private double descent(double z) {
    return scale(z) * BesselJ.value(0.5 * (exponent + 1), z);
  }

  private double scale(double z) {
    double order = 0.5 * (exponent - 1);
    return Gamma.gamma(order + 1) * Math.pow(2 / z, order);
  }
}
