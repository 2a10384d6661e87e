package org.roastfield.lab.cooker;

import java.util.List;
import org.roastfield.lab.files.CookFile;

/**
 * Where cooks are: their mean air in the first stage and their thickness, the least and the most.
 *
 * @param coolest [K]
 * @param hottest [K]
 * @param thinnest [m]
 * @param thickest [m]
 */
record Reach(double coolest, double hottest, double thinnest, double thickest) {

  /** Places at which the air of a first stage is asked for. */
  private static final int PLACES = 64;

  static Reach of(List<LoggedCase> cases) {
    double coolest = Double.POSITIVE_INFINITY;
    double hottest = 0;
    double thinnest = Double.POSITIVE_INFINITY;
    double thickest = 0;
    for (LoggedCase one : cases) {
      double air = meanAir(one.cook());
      double thickness = thickness(one.cook().file());
      coolest = Math.min(coolest, air);
      hottest = Math.max(hottest, air);
      thinnest = Math.min(thinnest, thickness);
      thickest = Math.max(thickest, thickness);
    }
    return new Reach(coolest, hottest, thinnest, thickest);
  }

  static double thickness(CookFile file) {
    return file.cook().cut().shape().thickness();
  }

  /** Mean air of a first stage [K]. */
  static double meanAir(VariedCook cook) {
    double sum = 0;
    for (int i = 0; i < PLACES; i++) {
      sum += cook.air().at((i + 0.5) / PLACES * cook.firstEnd());
    }
    return sum / PLACES;
  }

  CookerProfile.Validity widened() {
    return new CookerProfile.Validity(
        coolest - CookerProfile.Validity.AIR,
        hottest + CookerProfile.Validity.AIR,
        thinnest / CookerProfile.Validity.THICKNESS,
        thickest * CookerProfile.Validity.THICKNESS);
  }
}
