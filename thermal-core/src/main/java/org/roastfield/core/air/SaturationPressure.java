package org.roastfield.core.air;

import org.roastfield.core.internal.Check;

/**
 * Saturation pressure of water, eq. (11), by a bounded kernel of additions, products and one
 * division.
 *
 * <p>ln p = a/T + Σ bₙ xⁿ with x = (T − 388.15 K)/120 K, fitted to the reference equation
 * [WagnerPruss1993]; then p = e^10.5 · (e^y)^16 with y = (ln p − 10.5)/16 and a Taylor polynomial
 * of degree 8 for e^y. Against the reference equation: relative error below 3e-7 from −5 to 235 °C.
 */
public final class SaturationPressure {

  /** Lower end of the range [K]. */
  public static final double LOWEST = 268.15;

  /** Upper end of the range [K]. */
  public static final double HIGHEST = 508.15;

  private static final double INVERSE_TERM = -6038.00365981534;
  private static final double B0 = 27.594570825176095;
  private static final double B1 = -0.8959954963177726;
  private static final double B2 = 0.10563402357469387;
  private static final double B3 = 0.021576522731861204;
  private static final double B4 = -0.010751747661172947;
  private static final double B5 = 0.002053069240006473;
  private static final double CENTRE = 388.15;
  private static final double HALF_RANGE = 120;
  private static final double LOG_CENTRE = 10.5;

  /** e^10.5. */
  private static final double SCALE = 36315.50267424664;

  private static final double LEAST_PRESSURE = 425;
  private static final double MOST_PRESSURE = 3e6;

  private SaturationPressure() {}

  /**
   * Saturation pressure [Pa].
   *
   * @param temperature [K], from {@link #LOWEST} to {@link #HIGHEST}
   * @throws IllegalArgumentException outside that range
   */
  public static double at(double temperature) {
    Check.inRange("temperature", temperature, LOWEST, HIGHEST);
    return unchecked(temperature);
  }

  /** Saturation pressure [Pa] for kernels: NaN outside the range instead of an exception. */
  public static double orNaN(double temperature) {
    return temperature >= LOWEST && temperature <= HIGHEST ? unchecked(temperature) : Double.NaN;
  }

  /** d(ln p)/dT [1/K], of the same fit. */
  public static double logSlope(double temperature) {
    double x = (temperature - CENTRE) / HALF_RANGE;
    double slope = (((5 * B5 * x + 4 * B4) * x + 3 * B3) * x + 2 * B2) * x + B1;
    return slope / HALF_RANGE - INVERSE_TERM / (temperature * temperature);
  }

  /**
   * Temperature at which water boils under a pressure [K].
   *
   * @param pressure [Pa], from 425 Pa to 3 MPa
   */
  public static double boilingPoint(double pressure) {
    return temperatureAt("pressure", pressure);
  }

  /**
   * Temperature at which moist food boils [K]; infinite if beyond the range of this class.
   *
   * @param pressure of the air [Pa]
   * @param waterActivity of the food, which lowers its vapour pressure, in (0, 1]
   */
  public static double boilingPoint(double pressure, double waterActivity) {
    double needed = pressure / waterActivity;
    return needed <= MOST_PRESSURE ? boilingPoint(needed) : Double.POSITIVE_INFINITY;
  }

  /** Temperature [K] at which the saturation pressure is the given one, named so in complaints. */
  static double temperatureAt(String name, double pressure) {
    Check.inRange(name, pressure, LEAST_PRESSURE, MOST_PRESSURE);
    double temperature = 373.15;
    for (int i = 0; i < 50; i++) {
      double step = StrictMath.log(pressure / unchecked(temperature)) / logSlope(temperature);
      temperature += step;
      if (Math.abs(step) < 1e-10) {
        return temperature;
      }
    }
    throw new IllegalStateException("boiling point did not converge at pressure " + pressure);
  }

  private static double unchecked(double temperature) {
    return fromScaledLogarithm(scaledLogarithm(temperature));
  }

  /** First half of the kernel for rows: y = (ln p − 10.5)/16; meaningless outside the range. */
  public static double scaledLogarithm(double temperature) {
    double x = (temperature - CENTRE) * (1 / HALF_RANGE);
    double logPressure =
        INVERSE_TERM / temperature + (((((B5 * x + B4) * x + B3) * x + B2) * x + B1) * x + B0);
    return (logPressure - LOG_CENTRE) * (1.0 / 16);
  }

  /** Second half of the kernel for rows: p [Pa] from y = (ln p − 10.5)/16 in [−0.3, 0.3]. */
  public static double fromScaledLogarithm(double y) {
    double e = 1 + y * (1.0 / 8);
    e = 1 + y * (1.0 / 7) * e;
    e = 1 + y * (1.0 / 6) * e;
    e = 1 + y * (1.0 / 5) * e;
    e = 1 + y * (1.0 / 4) * e;
    e = 1 + y * (1.0 / 3) * e;
    e = 1 + y * (1.0 / 2) * e;
    e = 1 + y * e;
    double e2 = e * e;
    double e4 = e2 * e2;
    double e8 = e4 * e4;
    return SCALE * (e8 * e8);
  }
}
