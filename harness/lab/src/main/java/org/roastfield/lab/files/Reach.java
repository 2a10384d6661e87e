package org.roastfield.lab.files;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;

/**
 * Temperatures that no part of a cut can leave: those of its start and of all surroundings so far.
 * Evaporation and condensation stop at the dew point, which therefore counts as a temperature of
 * the surroundings.
 *
 * @param coldest [K]
 * @param hottest [K]
 */
record Reach(double coldest, double hottest) {

  static Reach of(double startTemperature) {
    return new Reach(startTemperature, startTemperature);
  }

  Reach with(FaceSetup face, double pressure) {
    Reach reach = with(face.air()).with(face.walls());
    if (face.contact().isPresent()) {
      reach = reach.with(face.contact().get().plateTemperature());
    }
    if (face.wetness() > 0) {
      double vapour = MoistAir.vapourPressure(face.humidityRatio(), pressure);
      reach = reach.with(dewPoint(vapour / face.waterActivity()));
    }
    return reach;
  }

  private Reach with(double temperature) {
    return new Reach(Math.min(coldest, temperature), Math.max(hottest, temperature));
  }

  /**
   * Temperature [K] at which the saturation pressure is the given one, held to the range of its
   * formula.
   */
  private static double dewPoint(double vapourPressure) {
    double low = SaturationPressure.LOWEST;
    double high = SaturationPressure.HIGHEST;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (SaturationPressure.at(middle) < vapourPressure) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return 0.5 * (low + high);
  }
}
