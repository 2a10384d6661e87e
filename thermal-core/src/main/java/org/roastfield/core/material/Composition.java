package org.roastfield.core.material;

import org.roastfield.core.internal.Check;

/**
 * Mass fractions of a food; {@link #of} scales them to a sum of one.
 *
 * @param water mass fraction in [0, 1]
 * @param protein mass fraction in [0, 1]
 * @param fat mass fraction in [0, 1]
 * @param carbohydrate mass fraction in [0, 1], sugar and starch
 * @param fibre mass fraction in [0, 1]
 * @param ash mass fraction in [0, 1], minerals
 */
public record Composition(
    double water, double protein, double fat, double carbohydrate, double fibre, double ash) {

  private static final double SUM_TOLERANCE = 1e-9;

  /** Largest departure of a stated sum from one that {@link #of} scales away. */
  public static final double STATED_SUM_TOLERANCE = 0.05;

  /**
   * @throws IllegalArgumentException if a fraction is outside [0, 1] or they do not sum to one
   *     within 1e-9
   */
  public Composition {
    Check.inRange("water", water, 0, 1);
    Check.inRange("protein", protein, 0, 1);
    Check.inRange("fat", fat, 0, 1);
    Check.inRange("carbohydrate", carbohydrate, 0, 1);
    Check.inRange("fibre", fibre, 0, 1);
    Check.inRange("ash", ash, 0, 1);
    double sum = water + protein + fat + carbohydrate + fibre + ash;
    Check.inRange("sum of the mass fractions", sum, 1 - SUM_TOLERANCE, 1 + SUM_TOLERANCE);
  }

  /**
   * Composition from stated fractions, divided by their sum, since printed tables seldom add up to
   * 100 %.
   *
   * @throws IllegalArgumentException if the sum differs from one by more than {@value
   *     #STATED_SUM_TOLERANCE}
   */
  public static Composition of(
      double water, double protein, double fat, double carbohydrate, double fibre, double ash) {
    double sum = water + protein + fat + carbohydrate + fibre + ash;
    Check.inRange(
        "sum of the mass fractions", sum, 1 - STATED_SUM_TOLERANCE, 1 + STATED_SUM_TOLERANCE);
    return new Composition(
        water / sum, protein / sum, fat / sum, carbohydrate / sum, fibre / sum, ash / sum);
  }

  /** Composition of meat or fish: water, protein, fat and ash, scaled to a sum of one. */
  public static Composition ofMeat(double water, double protein, double fat, double ash) {
    return of(water, protein, fat, 0, 0, ash);
  }
}
