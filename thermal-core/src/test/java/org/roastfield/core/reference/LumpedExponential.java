package org.roastfield.core.reference;

/**
 * Temperature of a body without inner resistance, the limit Bi → 0 of {@link RobinSeries}.
 *
 * <p>θ = exp(−(m + 1) Bi Fo), with (m + 1) / R the surface per volume. Source: the heat balance C V
 * dT/dt = h A (Ta − T) of a body at one temperature (Newton's law of cooling). Validity: Bi far
 * below 1; the volume mean of the exact solution then differs by a share of order Bi at Fo of order
 * 1 / Bi.
 *
 * @param exponent geometry exponent m, at least 0
 * @param biotNumber Bi = h R / k, positive
 */
public record LumpedExponential(double exponent, double biotNumber) {

  public LumpedExponential {
    Require.atLeast("exponent", 0, exponent);
    Require.positive("biotNumber", biotNumber);
  }

  /** θ = (T − Ta) / (T0 − Ta) at Fo = α t / R², at least 0. */
  public double temperature(double fourierNumber) {
    Require.atLeast("fourierNumber", 0, fourierNumber);
    return Math.exp(-(exponent + 1) * biotNumber * fourierNumber);
  }
}
