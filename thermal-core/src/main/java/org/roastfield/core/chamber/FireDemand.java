package org.roastfield.core.chamber;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.internal.Check;

/**
 * What a cook asks of a fire: warm up to a setting, hold it, then a sear.
 *
 * @param outside weather
 * @param glowing coals that glow when they are put in [kg], 0.01 to 50
 * @param setting of the gentle heat [K], 310 to 620
 * @param gentle how long the cut is on the gentle heat [s], 0 to 3e5
 * @param openings of the lid, from when the cut goes on; the last ends before the gentle heat does
 * @param load heat that the cut takes from the air in the mean [W], 0 to 5000
 * @param sear what comes after, if anything
 */
public record FireDemand(
    Outside outside,
    double glowing,
    double setting,
    double gentle,
    List<Lid.Opening> openings,
    double load,
    Optional<Sear> sear) {

  /**
   * @throws IllegalArgumentException if a number is outside its range, or the lid is open past the
   *     end of the gentle heat
   */
  public FireDemand {
    Check.inRange("glowing", glowing, 0.01, 50);
    Check.inRange("setting", setting, 310, 620);
    Check.inRange("gentle", gentle, 0, 3e5);
    Check.inRange("load", load, 0, 5000);
    openings = List.copyOf(openings);
    if (!openings.isEmpty()) {
      openings = new Lid(openings).openings();
      double last = openings.get(openings.size() - 1).closes();
      if (!(last < gentle)) {
        throw new IllegalArgumentException(
            "openings must end before the gentle heat, after " + gentle + " s, was " + last);
      }
    }
  }

  /** Gentle heat alone, its lid closed. */
  public static FireDemand gentle(
      Outside outside, double glowing, double setting, double duration) {
    return new FireDemand(outside, glowing, setting, duration, List.of(), 0, Optional.empty());
  }

  /** The same with so much heat going into the cut [W]. */
  public FireDemand withLoad(double watt) {
    return new FireDemand(outside, glowing, setting, gentle, openings, watt, sear);
  }

  /** The same with a lid that is opened. */
  public FireDemand withOpenings(List<Lid.Opening> times) {
    return new FireDemand(outside, glowing, setting, gentle, times, load, sear);
  }

  /** The same with a sear after it. */
  public FireDemand withSear(Sear last) {
    return new FireDemand(outside, glowing, setting, gentle, openings, load, Optional.of(last));
  }

  /** The same in other weather. */
  public FireDemand in(Outside weather) {
    return new FireDemand(weather, glowing, setting, gentle, openings, load, sear);
  }

  /**
   * A sear, before which the vents are opened wide and the cut waits.
   *
   * @param place over what it is seared
   * @param target when it begins: gas [K], 400 to 900, under a closed lid; strength of the coals
   *     [W], 100 to 1e6, over open ones
   * @param duration [s], greater than 0
   */
  public record Sear(Place place, double target, double duration) {

    /** Where a cut is seared. */
    public enum Place {
      /** In hot gas under a closed lid. */
      COVERED,
      /** Over coals in the open. */
      OPEN
    }

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Sear {
      if (place == Place.COVERED) {
        Check.inRange("target", target, 400, 900);
      } else {
        Check.inRange("target", target, 100, 1e6);
      }
      Check.positive("duration", duration);
    }
  }
}
