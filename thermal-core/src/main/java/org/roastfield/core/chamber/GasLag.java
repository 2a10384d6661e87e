package org.roastfield.core.chamber;

import java.util.List;

/**
 * How the gas comes to its balance after each deed: what it lacks decays, with {@link Lid#FALL}
 * under an open lid, else with the time in which walls exchange heat with it, eq. (80). Immutable.
 */
final class GasLag {

  private final double[] times;
  private final double[] lacks;
  private final double[] decays;

  /**
   * Prepares it.
   *
   * @param deeds first moments after each deed, in order
   * @param settling time constant under a closed lid [s]
   */
  GasLag(List<Deed> deeds, double settling) {
    int n = deeds.size();
    times = new double[n];
    lacks = new double[n];
    decays = new double[n];
    for (int k = 0; k < n; k++) {
      Deed deed = deeds.get(k);
      times[k] = deed.time();
      lacks[k] = (k > 0 ? at(deed.time(), k - 1) : 0) + deed.before() - deed.after();
      decays[k] = deed.open() ? Lid.FALL : settling;
    }
  }

  /**
   * A deed.
   *
   * @param time [s]
   * @param before gas in balance just before [K]; at the beginning, gas as it is
   * @param after gas in balance just after [K]
   * @param open whether the lid is open then
   */
  record Deed(double time, double before, double after, boolean open) {}

  /** Gas over its balance [K]. */
  double at(double time) {
    int k = times.length - 1;
    while (k > 0 && times[k] >= time) {
      k--;
    }
    return at(time, k);
  }

  private double at(double time, int k) {
    return lacks[k] * StrictMath.exp(-(time - times[k]) / decays[k]);
  }

  /** Twice the shortest time between two deeds [s]. */
  double shortestPeriod() {
    double shortest = Double.POSITIVE_INFINITY;
    for (int k = 1; k < times.length; k++) {
      shortest = Math.min(shortest, 2 * (times[k] - times[k - 1]));
    }
    return shortest;
  }
}
