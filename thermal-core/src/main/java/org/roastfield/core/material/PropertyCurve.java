package org.roastfield.core.material;

import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * A property as a polynomial of temperature, p(T) = Σ cₙ (T − 273.15 K)ⁿ on a stated range, held
 * constant outside it.
 *
 * <p>Holding is never silent: a simulation reports how far a temperature left {@link #lowest()} …
 * {@link #highest()}. The integral is that of the held curve, so heat is conserved there too.
 * Immutable.
 */
public final class PropertyCurve {

  private final double[] coefficients;
  private final double[] integralCoefficients;
  private final double lowest;
  private final double highest;

  private PropertyCurve(double lowest, double highest, double[] coefficients) {
    this.lowest = lowest;
    this.highest = highest;
    this.coefficients = coefficients;
    this.integralCoefficients = new double[coefficients.length + 1];
    for (int n = 0; n < coefficients.length; n++) {
      integralCoefficients[n + 1] = coefficients[n] / (n + 1);
    }
  }

  /**
   * A property that does not depend on temperature.
   *
   * @param value greater than 0
   */
  public static PropertyCurve constant(double value) {
    Check.positive("value", value);
    return new PropertyCurve(0, Double.MAX_VALUE, new double[] {value});
  }

  /**
   * Polynomial in degrees Celsius.
   *
   * @param lowest lower end of the range [K]
   * @param highest upper end of the range [K], above {@code lowest}
   * @param coefficients c₀, c₁, … of (T − 273.15 K)ⁿ, at least one; not modified
   * @throws IllegalArgumentException if the range is empty or the curve is not positive at both
   *     ends
   */
  public static PropertyCurve polynomial(double lowest, double highest, double... coefficients) {
    Check.notNegative("lowest", lowest);
    Check.inRange("highest", highest, Math.nextUp(lowest), Double.MAX_VALUE);
    Check.inRange("coefficients.length", coefficients.length, 1, 16);
    PropertyCurve curve = new PropertyCurve(lowest, highest, coefficients.clone());
    Check.positive("value at the lowest temperature", curve.at(lowest));
    Check.positive("value at the highest temperature", curve.at(highest));
    return curve;
  }

  /** Whether the property is the same at every temperature. */
  public boolean isConstant() {
    return coefficients.length == 1;
  }

  /** Value at a temperature [K]; outside the range, the value at its nearer end. */
  public double at(double temperature) {
    return horner(coefficients, held(temperature) - Temperatures.ZERO_CELSIUS);
  }

  /** Integral of the property from 273.15 K to {@code temperature} [property unit · K]. */
  public double integral(double temperature) {
    double held = held(temperature);
    double x = held - Temperatures.ZERO_CELSIUS;
    double inside = horner(integralCoefficients, x);
    return held == temperature ? inside : inside + (temperature - held) * horner(coefficients, x);
  }

  /** Lower end of the range [K]. */
  public double lowest() {
    return lowest;
  }

  /** Upper end of the range [K]. */
  public double highest() {
    return highest;
  }

  private double held(double temperature) {
    return Math.min(Math.max(temperature, lowest), highest);
  }

  private static double horner(double[] c, double x) {
    double sum = c[c.length - 1];
    for (int n = c.length - 2; n >= 0; n--) {
      sum = sum * x + c[n];
    }
    return sum;
  }
}
