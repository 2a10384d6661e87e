package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * How the vapour of a cut stays in the air around it, eqs. (58) and (94): what is drawn through
 * carries it off, and what the chamber holds takes time to fill. All of the cut's surface is taken
 * to evaporate as the face does.
 *
 * @param load surface of the cut over the flow of dry air [m²·s/kg]; 0 is air that the cut does not
 *     change
 * @param held dry air in the chamber over the surface of the cut [kg/m²]; 0 is air in balance at
 *     each moment
 */
public record AirLoad(double load, double held) {

  /** Air that the cut does not change. */
  public static final AirLoad NONE = new AirLoad(0, 0);

  /**
   * @throws IllegalArgumentException if a number is negative or not finite, or air is held through
   *     which none is drawn
   */
  public AirLoad {
    Check.notNegative("load", load);
    Check.notNegative("held", held);
    if (held > 0) {
      Check.positive("load of air that is held", load);
    }
  }

  /** Whether the cut changes the air. */
  public boolean isLoaded() {
    return load > 0;
  }

  /** Time in which the air is exchanged once [s]; 0 is balance at each moment. */
  public double exchangeTime() {
    return load * held;
  }

  /**
   * The same chamber around a cut that is larger by a factor.
   *
   * @param factor of every length, greater than 0
   */
  public AirLoad scaled(double factor) {
    return new AirLoad(factor * factor * load, held / (factor * factor));
  }
}
