package org.roastfield.core.ensemble;

import java.util.List;
import org.roastfield.core.chamber.FireDemand;
import org.roastfield.core.chamber.FireNeeds;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.internal.Check;

/**
 * What a fire needs for a cook over many pits that one pit may be. Members that never get warm are
 * in no distribution: compare {@link Distribution#size} with the number of pits.
 *
 * @param lighting from the match to coals in the pit [s]
 * @param beforeOn from the match to when the cut goes on [s]
 * @param ramp from open vents to a fire fit for the sear [s]
 * @param burnt fuel that burns [kg]
 * @param fuel to begin with [kg]
 */
public record FireOutlook(
    Distribution lighting,
    Distribution beforeOn,
    Distribution ramp,
    Distribution burnt,
    Distribution fuel) {

  /**
   * Computes it, one pit after another.
   *
   * @param pits at least one, of equal weight
   */
  public static FireOutlook of(List<FirePit> pits, FireDemand demand) {
    int n = Check.inRange("number of pits", pits.size(), 1, Integer.MAX_VALUE);
    double[][] found = new double[5][n];
    for (int i = 0; i < n; i++) {
      FireNeeds needs = FireNeeds.of(pits.get(i), demand);
      found[0][i] = needs.lighting();
      found[1][i] = needs.beforeOn();
      found[2][i] = needs.ramp();
      found[3][i] = needs.burnt();
      found[4][i] = needs.fuel();
    }
    return new FireOutlook(
        Distribution.of(found[0]),
        Distribution.of(found[1]),
        Distribution.of(found[2]),
        Distribution.of(found[3]),
        Distribution.of(found[4]));
  }
}
