package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * What is wrapped around a cut or laid over it, as factors on the exchange of the bare face, eq.
 * (56). The wrap has no heat capacity, and what lies under it is one still gap.
 *
 * @param name shown
 * @param radiation factor on the emissivity, in [0, 1]
 * @param convection factor on the convective coefficient, in [0, 1]
 * @param leak factor on the vapour flux of the bare face, in [0, 1]
 */
public record Wrap(String name, double radiation, double convection, double leak) {

  /**
   * Tight foil. Radiation to a tenth: emissivity of foil, 0.04-0.1, literature. Convection 0.65:
   * chosen so that with 5.8-6.8 W/(m²·K) of radiation and 4.4-6.6 of natural convection of a bare
   * cut in a room of 20 °C, 3.5-5 W/(m²·K) are left, which is what an air gap of 2-5 mm lets
   * through; calculated. Leak: 0.02 of a wet face where a bare one has 0.6; assumed, ± 60 %.
   */
  public static final Wrap FOIL = new Wrap("foil", 0.1, 0.65, 1.0 / 30);

  /**
   * Unwaxed paper, which is black to heat but one more layer: half the radiation, the gap of foil.
   * Leak: 0.15 of a wet face where a bare one has 0.6; assumed, ± 60 %.
   */
  public static final Wrap PAPER = new Wrap("paper", 0.5, 0.65, 0.25);

  /**
   * Loose tent of foil. Radiation 0.3 and convection 0.95: chosen so that 6-8 W/(m²·K) are left of
   * the bare cut above; assumed. Half the vapour escapes; assumed.
   */
  public static final Wrap TENT = new Wrap("tent", 0.3, 0.95, 0.5);

  /**
   * @throws IllegalArgumentException if the name is blank or a factor is outside [0, 1]
   */
  public Wrap {
    Check.notBlank("name", name);
    Check.inRange("radiation", radiation, 0, 1);
    Check.inRange("convection", convection, 0, 1);
    Check.inRange("leak", leak, 0, 1);
  }
}
