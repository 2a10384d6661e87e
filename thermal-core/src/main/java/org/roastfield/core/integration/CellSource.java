package org.roastfield.core.integration;

/** Heat released inside the body, as cell averages; serves the exact solutions that need one. */
@FunctionalInterface
interface CellSource {

  /**
   * Writes the averages.
   *
   * @param time since the start of the cook [s]
   * @param averages [cells], overwritten [W/m³]
   */
  void averages(double time, double[] averages);
}
