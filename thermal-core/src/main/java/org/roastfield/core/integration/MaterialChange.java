package org.roastfield.core.integration;

/** Changes of u and φ with one parameter at fixed temperatures. */
final class MaterialChange {

  private final CookVariation variation;
  private double[] below = new double[0];

  MaterialChange(CookVariation variation) {
    this.variation = variation;
  }

  /** Whether there is any. */
  boolean isAny() {
    return variation.changesProperties();
  }

  /** u_p and φ_p at many temperatures, overwritten. */
  void of(double[] temperature, double[] enthalpy, double[] kirchhoff) {
    if (below.length < temperature.length) {
      below = new double[temperature.length];
    }
    variation.materialAbove().enthalpies(temperature, enthalpy);
    variation.materialBelow().enthalpies(temperature, below);
    quotient(enthalpy);
    variation.materialAbove().kirchhoffs(temperature, kirchhoff);
    variation.materialBelow().kirchhoffs(temperature, below);
    quotient(kirchhoff);
  }

  private void quotient(double[] above) {
    double perWidth = variation.perWidth();
    for (int i = 0; i < above.length; i++) {
      above[i] = (above[i] - below[i]) * perWidth;
    }
  }

  /** u_p at a temperature. */
  double enthalpy(double temperature) {
    return isAny() ? variation.enthalpy(temperature) : 0;
  }

  /** Change of du/dT at a temperature. */
  double enthalpySlope(double temperature) {
    return isAny() ? variation.enthalpySlope(temperature) : 0;
  }

  /** φ_p at a temperature. */
  double kirchhoff(double temperature) {
    return isAny() ? variation.kirchhoff(temperature) : 0;
  }
}
