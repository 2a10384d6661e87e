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

  /** Coefficients that the kernels over arrays have room for. */
  private static final int KERNEL_COEFFICIENTS = 6;

  private static final int SHORT_COEFFICIENTS = 3;

  private final double[] coefficients;
  private final double[] integralCoefficients;
  private final double lowest;
  private final double highest;
  private final double atLowest;
  private final double atHighest;

  private PropertyCurve(double lowest, double highest, double[] coefficients) {
    this.lowest = lowest;
    this.highest = highest;
    this.coefficients = coefficients;
    this.integralCoefficients = new double[coefficients.length + 1];
    for (int n = 0; n < coefficients.length; n++) {
      integralCoefficients[n + 1] = coefficients[n] / (n + 1);
    }
    this.atLowest = horner(coefficients, lowest - Temperatures.ZERO_CELSIUS);
    this.atHighest = horner(coefficients, highest - Temperatures.ZERO_CELSIUS);
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

  /**
   * Scaled values at many temperatures.
   *
   * @param temperatures [K], not modified
   * @param values scale · p(T), overwritten, as long as {@code temperatures}
   */
  public void at(double[] temperatures, double scale, double[] values) {
    if (coefficients.length > KERNEL_COEFFICIENTS) {
      for (int i = 0; i < values.length; i++) {
        values[i] = scale * at(temperatures[i]);
      }
      return;
    }
    values(
        temperatures,
        lowest,
        highest,
        scale * coefficient(0),
        scale * coefficient(1),
        scale * coefficient(2),
        scale * coefficient(3),
        scale * coefficient(4),
        scale * coefficient(5),
        values);
  }

  /**
   * Scaled integrals from 273.15 K to many temperatures.
   *
   * @param temperatures [K], not modified
   * @param shift added to each
   * @param values shift + scale · integral, overwritten, as long as {@code temperatures}
   */
  public void integrals(double[] temperatures, double shift, double scale, double[] values) {
    if (coefficients.length > KERNEL_COEFFICIENTS) {
      for (int i = 0; i < values.length; i++) {
        values[i] = shift + scale * integral(temperatures[i]);
      }
      return;
    }
    if (coefficients.length <= SHORT_COEFFICIENTS) {
      integrals(
          temperatures,
          lowest,
          highest,
          scale * atLowest,
          scale * atHighest,
          shift,
          scale * integralCoefficient(1),
          scale * integralCoefficient(2),
          scale * integralCoefficient(3),
          values);
    } else {
      integrals(
          temperatures,
          lowest,
          highest,
          scale * atLowest,
          scale * atHighest,
          shift,
          scale * integralCoefficient(1),
          scale * integralCoefficient(2),
          scale * integralCoefficient(3),
          scale * integralCoefficient(4),
          scale * integralCoefficient(5),
          scale * integralCoefficient(6),
          values);
    }
  }

  private double integralCoefficient(int n) {
    return n < integralCoefficients.length ? integralCoefficients[n] : 0;
  }

  private double coefficient(int n) {
    return n < coefficients.length ? coefficients[n] : 0;
  }

  private static void values(
      double[] temperatures,
      double lowest,
      double highest,
      double c0,
      double c1,
      double c2,
      double c3,
      double c4,
      double c5,
      double[] values) {
    for (int i = 0; i < values.length; i++) {
      double x = Math.min(Math.max(temperatures[i], lowest), highest) - Temperatures.ZERO_CELSIUS;
      values[i] = ((((c5 * x + c4) * x + c3) * x + c2) * x + c1) * x + c0;
    }
  }

  /** Straight lines with the slopes at the ends beyond the range, without a branch. */
  private static void integrals(
      double[] temperatures,
      double lowest,
      double highest,
      double slopeBelow,
      double slopeAbove,
      double shift,
      double d1,
      double d2,
      double d3,
      double[] values) {
    double half = 0.5 * (slopeAbove + slopeBelow);
    double halfChange = 0.5 * (slopeAbove - slopeBelow);
    for (int i = 0; i < values.length; i++) {
      double t = temperatures[i];
      double held = Math.min(Math.max(t, lowest), highest);
      double x = held - Temperatures.ZERO_CELSIUS;
      double beyond = t - held;
      values[i] =
          shift + ((d3 * x + d2) * x + d1) * x + (half * beyond + halfChange * Math.abs(beyond));
    }
  }

  private static void integrals(
      double[] temperatures,
      double lowest,
      double highest,
      double slopeBelow,
      double slopeAbove,
      double shift,
      double d1,
      double d2,
      double d3,
      double d4,
      double d5,
      double d6,
      double[] values) {
    double half = 0.5 * (slopeAbove + slopeBelow);
    double halfChange = 0.5 * (slopeAbove - slopeBelow);
    for (int i = 0; i < values.length; i++) {
      double t = temperatures[i];
      double held = Math.min(Math.max(t, lowest), highest);
      double x = held - Temperatures.ZERO_CELSIUS;
      double beyond = t - held;
      double inside = (((((d6 * x + d5) * x + d4) * x + d3) * x + d2) * x + d1) * x;
      values[i] = shift + inside + (half * beyond + halfChange * Math.abs(beyond));
    }
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
