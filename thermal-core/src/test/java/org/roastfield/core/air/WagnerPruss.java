package org.roastfield.core.air;

/**
 * Vapour pressure of water, the reference equation: ln(p/p_c) = (T_c/T) (a₁ τ + a₂ τ^1.5 + a₃ τ³ +
 * a₄ τ^3.5 + a₅ τ⁴ + a₆ τ^7.5), τ = 1 − T/T_c. Source: Wagner and Pruss, J. Phys. Chem. Ref. Data
 * 22, 1993, 783-787, eq. (1).
 */
final class WagnerPruss {

  private static final double CRITICAL_TEMPERATURE = 647.096;
  private static final double CRITICAL_PRESSURE = 22.064e6;

  private WagnerPruss() {}

  /** Vapour pressure [Pa] at a temperature [K] from the triple to the critical point. */
  static double pressure(double temperature) {
    double tau = 1 - temperature / CRITICAL_TEMPERATURE;
    double sum =
        -7.85951783 * tau
            + 1.84408259 * Math.pow(tau, 1.5)
            - 11.7866497 * Math.pow(tau, 3)
            + 22.6807411 * Math.pow(tau, 3.5)
            - 15.9618719 * Math.pow(tau, 4)
            + 1.80122502 * Math.pow(tau, 7.5);
    return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / temperature * sum);
  }
}
