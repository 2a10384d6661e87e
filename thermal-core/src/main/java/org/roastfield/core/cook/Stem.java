package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;

/**
 * The stem of a probe as a fin in the food: it carries heat from the warmer outside to the tip, so
 * that a probe reads high while the cut heats, eqs. (52)-(54). One that goes in along an isotherm,
 * from an end of a long cut, reads less high, see {@link #inserted(double)}.
 *
 * @param finLength L_c [m], at least 0; 0 for a stem that carries nothing
 * @param entryExcess how much warmer the stem is where it enters than a long stem would be there,
 *     or with a stated way than the face [K]; 0 where only food heats it
 * @param airShare share of the way from that temperature to the air's that it is warmed or cooled
 *     from outside, in [0, 1]: √(h P)/(√(h P) + √G) for a long stem of circumference P in air,
 *     0.3-0.45 for tubes of 1.5-6 mm at 30-60 W/(m²·K) (calculated)
 * @param inserted how much of it is in the food [m], from an end or edge straight to the tip; 0 for
 *     the shortest way from the surface to the tip
 */
public record Stem(double finLength, double entryExcess, double airShare, double inserted) {

  /** A stem that carries no heat. */
  public static final Stem NONE = new Stem(0, 0);

  /** Shallowest tip in units of L_c; above it the long-stem error of eq. (52) means little. */
  public static final double SHALLOWEST = 1.5;

  /** Stainless steel [W/(m·K)]: 15-17 [Incropera2007]. */
  private static final double STEEL_CONDUCTIVITY = 16;

  /** Wall of the tube over its diameter: assumed, 0.3 mm at 3 mm. */
  private static final double WALL_SHARE = 0.1;

  /**
   * Conductivity times cross-section of two thin copper leads, 0.075 mm² together [W·m/K]: assumed.
   */
  private static final double LEADS = 3e-5;

  /** Radius beyond which food does not feel the stem [m]: assumed, enters as a logarithm. */
  private static final double OUTER_RADIUS = 0.02;

  /** Moist food [W/(m·K)]: the middle of 0.40-0.56. */
  private static final double FOOD_CONDUCTIVITY = 0.48;

  /**
   * @throws IllegalArgumentException if a number is not finite, or a length negative
   */
  public Stem {
    Check.notNegative("finLength", finLength);
    Check.finite("entryExcess", entryExcess);
    Check.inRange("airShare", airShare, 0, 1);
    Check.notNegative("inserted", inserted);
  }

  /** Stem that goes in by the shortest way. */
  public Stem(double finLength, double entryExcess) {
    this(finLength, entryExcess, 0, 0);
  }

  /** Stem of a fin length L_c [m], heated by food only. */
  public static Stem ofFinLength(double finLength) {
    return new Stem(finLength, 0);
  }

  /**
   * Steel tube with copper leads in moist food, eq. (53): 7, 8, 9 and 11 mm of fin length for 1.5,
   * 3, 4 and 6 mm of diameter. Wall, leads and the radius around it are assumed; real stems of one
   * diameter differ by a quarter.
   *
   * @param diameter [m], 1 to 10 mm
   */
  public static Stem ofTube(double diameter) {
    double radius = 0.5 * Check.inRange("diameter", diameter, 1e-3, 1e-2);
    double inner = radius - WALL_SHARE * diameter;
    double conductance = STEEL_CONDUCTIVITY * Math.PI * (radius * radius - inner * inner) + LEADS;
    double fromFood = 2 * Math.PI * FOOD_CONDUCTIVITY / StrictMath.log(OUTER_RADIUS / radius);
    return ofFinLength(Math.sqrt(conductance / fromFood));
  }

  /** The same with a share of the air's temperature where it enters, in [0, 1]. */
  public Stem inAir(double airShare) {
    return new Stem(finLength, entryExcess, airShare, inserted);
  }

  /**
   * The same going in from an end or an edge, straight to the tip. The computed body has no end:
   * food along the way is taken to be as warm as food at 1/1.4 of its depth under the side, and
   * beyond 1.4 times the depth of the tip as warm as there.
   *
   * @param inserted length in the food [m], greater than 0
   */
  public Stem inserted(double inserted) {
    return new Stem(finLength, entryExcess, airShare, Check.positive("inserted", inserted));
  }

  /** Whether the stem carries heat. */
  public boolean conducts() {
    return finLength > 0;
  }
}
