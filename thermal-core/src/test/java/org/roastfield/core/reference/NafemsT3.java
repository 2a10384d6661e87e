package org.roastfield.core.reference;

/**
 * NAFEMS benchmark T3: a bar with one end at 0 °C and the other at 100 sin(π t / 40) °C.
 *
 * <p>Constants and target as in {@code reference/nafems_t3.json}; source of the target: The
 * Standard NAFEMS Benchmarks, 1990, test T3. The exact solution is the sine series of the bar with
 * its end temperature as Duhamel integral (Carslaw and Jaeger, Conduction of Heat in Solids, 2nd
 * ed., 1959, chapter III). Validity: constant properties, start at 0 °C.
 */
public final class NafemsT3 {
  public static final double LENGTH_METRES = 0.1;
  public static final double CONDUCTIVITY = 35.0;
  public static final double SPECIFIC_HEAT_CAPACITY = 440.5;
  public static final double DENSITY = 7200.0;
  public static final double START_CELSIUS = 0.0;
  public static final double COLD_END_CELSIUS = 0.0;
  public static final double AMPLITUDE_KELVIN = 100.0;
  public static final double ANGULAR_FREQUENCY = Math.PI / 40;
  public static final double TARGET_DISTANCE_METRES = 0.08;
  public static final double TARGET_TIME_SECONDS = 32.0;
  public static final double TARGET_CELSIUS = 36.6;

  private static final int TERMS = 20_000;

  private NafemsT3() {}

  /** Thermal diffusivity [m²/s]. */
  public static double diffusivity() {
    return CONDUCTIVITY / (DENSITY * SPECIFIC_HEAT_CAPACITY);
  }

  /** Temperature of the driven end [°C]. */
  public static double drivenEndCelsius(double seconds) {
    return AMPLITUDE_KELVIN * Math.sin(ANGULAR_FREQUENCY * seconds);
  }

  /**
   * Exact temperature [°C].
   *
   * @param metres distance from the cold end, in [0, 0.1]
   * @param seconds time since the start, at least 0
   */
  public static double celsius(double metres, double seconds) {
    Require.within("metres", 0, LENGTH_METRES, metres);
    Require.atLeast("seconds", 0, seconds);
    double share = metres / LENGTH_METRES;
    double sum = 0;
    for (int n = TERMS; n >= 1; n--) {
      double sign = n % 2 == 0 ? 1 : -1;
      sum += sign / n * Math.sin(n * Math.PI * share) * memory(n, seconds);
    }
    return share * drivenEndCelsius(seconds) + 2 / Math.PI * AMPLITUDE_KELVIN * sum;
  }

  // Integral of exp(−κ (t − s)) w cos(w s) over s from 0 to t, in closed form.
  private static double memory(int n, double seconds) {
    double wavenumber = n * Math.PI / LENGTH_METRES;
    double rate = diffusivity() * wavenumber * wavenumber;
    double w = ANGULAR_FREQUENCY;
    double angle = w * seconds;
    double forced = rate * (Math.cos(angle) - Math.exp(-rate * seconds)) + w * Math.sin(angle);
    return w * forced / (rate * rate + w * w);
  }
}
