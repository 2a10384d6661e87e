package org.roastfield.core.chamber;

import org.roastfield.core.internal.Check;

/**
 * What a fire carries along.
 *
 * @param airTemperature [K], greater than 0
 * @param wallTemperature [K], greater than 0
 * @param strength power that the glowing coals can give with air enough [W], at least 0
 * @param fuel coals and unlit fuel that will burn [kg], at least 0; infinite if it is kept stoked
 */
public record FireState(
    double airTemperature, double wallTemperature, double strength, double fuel) {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public FireState {
    Check.positive("airTemperature", airTemperature);
    Check.positive("wallTemperature", wallTemperature);
    Check.notNegative("strength", strength);
    if (!(fuel >= 0)) {
      throw new IllegalArgumentException("fuel must be at least 0, was " + fuel);
    }
  }

  /** A pit that has long been held, its gas as it is [K], with fuel that does not run out. */
  public static FireState held(double gas, FirePit.Held held) {
    return new FireState(
        gas, held.wallTemperature(), FireMoment.RESERVE * held.power(), Double.POSITIVE_INFINITY);
  }

  /** The same state with so much fuel [kg]. */
  public FireState withFuel(double mass) {
    return new FireState(airTemperature, wallTemperature, strength, mass);
  }
}
