package org.roastfield.core.chamber;

import org.roastfield.core.internal.Check;

/**
 * What is done to a fire from a time on.
 *
 * @param start [s] since the fire's beginning
 * @param setting temperature that the air is held at as far as coals and vents allow [K]; infinite
 *     where the vents stay open
 * @param vents share of the vents' area that may be open, 0.001 to 1
 * @param load heat that the air gives to what is cooked [W], at least 0
 * @param open whether the lid is open
 */
public record Tending(double start, double setting, double vents, double load, boolean open) {

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Tending {
    Check.notNegative("start", start);
    if (!(setting > 0)) {
      throw new IllegalArgumentException("setting must be greater than 0, was " + setting);
    }
    Check.inRange("vents", vents, 1e-3, 1);
    Check.notNegative("load", load);
  }

  /** Air held at a setting [K]. */
  public static Tending hold(double start, double setting) {
    return new Tending(start, setting, 1, 0, false);
  }

  /** Vents wide open. */
  public static Tending wide(double start) {
    return hold(start, Double.POSITIVE_INFINITY);
  }

  /** The same with so much heat going into what is cooked [W]. */
  public Tending withLoad(double watt) {
    return new Tending(start, setting, vents, watt, open);
  }

  /** The same with the lid open. */
  public Tending withOpenLid() {
    return new Tending(start, setting, vents, load, true);
  }

  /** The same with no more than a share of the vents' area. */
  public Tending withVents(double share) {
    return new Tending(start, setting, share, load, open);
  }

  /** The same with a setting higher by a difference [K], or lower if negative. */
  public Tending shifted(double difference) {
    return new Tending(start, setting + difference, vents, load, open);
  }

  /** The same from another time on. */
  public Tending at(double time) {
    return new Tending(time, setting, vents, load, open);
  }
}
