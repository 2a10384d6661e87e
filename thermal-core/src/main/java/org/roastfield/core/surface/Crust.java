package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * What is left of food that has boiled dry.
 *
 * @param conductivity k_c [W/(m·K)]; 0.08-0.20, assumed
 * @param water that boils off where the crust grows, for each volume [kg/m³]
 */
public record Crust(double conductivity, double water) {

  /** 0.12 W/(m·K), assumed; 72 % of 1060 kg/m³ as in lean meat. */
  private static final Crust MEAT = new Crust(0.12, 0.72 * 1060);

  /**
   * @throws IllegalArgumentException if an argument is not greater than 0
   */
  public Crust {
    Check.positive("conductivity", conductivity);
    Check.positive("water", water);
  }

  /** Lean meat; assumed, within the ranges of physical judgement. */
  public static Crust ofMeat() {
    return MEAT;
  }

  /** Thickness of a crust that misses water [m]; 0 where the face holds some. */
  public double thickness(double faceWater) {
    return faceWater < 0 ? -faceWater / water : 0;
  }
}
