package org.roastfield.lab.files;

import org.roastfield.core.air.MoistAir;

/**
 * Temperatures that no part of a cut can leave: those of its start and of all surroundings so far.
 * Evaporation and condensation stop at the dew point, which therefore counts as a temperature of
 * the surroundings.
 *
 * @param coldest [K]
 * @param hottest [K]
 */
record Reach(double coldest, double hottest) {

  /** Dew points of −5 °C and 234 °C [Pa]. */
  private static final double LOWEST_VAPOUR = 425;

  private static final double HIGHEST_VAPOUR = 3e6;

  static Reach of(double startTemperature) {
    return new Reach(startTemperature, startTemperature);
  }

  Reach with(FaceSetup face, double pressure) {
    Reach reach = with(face.air()).with(face.walls());
    if (face.contact().isPresent()) {
      ContactSetup metal = face.contact().get();
      double drop = metal.settling().map(ContactSetup.Settling::drop).orElse(0.0);
      reach = reach.with(metal.plateTemperature()).with(metal.plateTemperature() - drop);
    }
    if (face.bed().isPresent()) {
      reach = reach.with(face.bed().get().temperature());
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

  /** Dew point [K], or the end of its range that a pressure lies beyond. */
  private static double dewPoint(double vapourPressure) {
    return MoistAir.dewPoint(Math.max(LOWEST_VAPOUR, Math.min(HIGHEST_VAPOUR, vapourPressure)));
  }
}
