package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a cook file says for planning: all of it may be left out.
 *
 * @param zone of the file's clock times
 * @param earliest service
 * @param latest service
 * @param carving time from carving to the table [s]
 * @param onTime chance wanted of being on the table by the latest service, in (0, 1)
 * @param core final temperature of the coldest place that is wished [K]; instead of doneness
 * @param minimum that the user sets
 * @param loss what missing the wish costs
 * @param kept whether the window from the earliest to the latest service holds whatever the core is
 * @param restAtLeast shortest time from the last heat to the table [s]
 * @param restAtMost longest time that it waits for its sear and rests, or rests and is kept [s]
 * @param holdMinimum what the local food code has hot food held at [K]
 * @param fireReady time from lighting until the chamber is steady [s]
 * @param fireCooler by how much at most the fire may be let down on the way [K]; 0 for not at all
 * @param fireHotter by how much at most it may be raised [K]
 * @param pit whose fire it is, which says how long that takes if {@code fireReady} does not
 * @param across how much hotter one side of the chamber is than the other [K]
 * @param plates how much to buy for
 * @param salt to be put on ahead
 */
public record PlanWishes(
    Optional<ZoneId> zone,
    Optional<LocalDateTime> earliest,
    Optional<LocalDateTime> latest,
    OptionalDouble carving,
    OptionalDouble onTime,
    OptionalDouble core,
    Optional<Minimum> minimum,
    Optional<Loss> loss,
    boolean kept,
    OptionalDouble restAtLeast,
    OptionalDouble restAtMost,
    OptionalDouble holdMinimum,
    OptionalDouble fireReady,
    OptionalDouble fireCooler,
    OptionalDouble fireHotter,
    Optional<Pit> pit,
    OptionalDouble across,
    Optional<Plates> plates,
    Optional<Salt> salt) {

  private static final PlanWishes NONE =
      new PlanWishes(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          false,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty());

  /** Nothing is said. */
  public static PlanWishes none() {
    return NONE;
  }

  /**
   * A minimum that the user sets.
   *
   * @param core temperature that the coldest place is to reach [K]
   * @param chance wanted of that, in (0, 1)
   */
  public record Minimum(double core, double chance) {}

  /**
   * What it costs to miss the wish, as weights of squared distances from its middle, or the
   * service.
   *
   * @param shortOf of a core that falls short, greater than 0
   * @param beyond of one that goes beyond, greater than 0
   * @param missed a core so far short counts as a missed service [K]; empty if not stated
   */
  public record Loss(double shortOf, double beyond, OptionalDouble missed) {}

  /**
   * The fire.
   *
   * @param like kind of the pit
   * @param outside air around it [K]; empty if not stated
   */
  public record Pit(PitKind like, OptionalDouble outside) {}

  /**
   * Whom the cut is to feed.
   *
   * @param people how many
   * @param portion cooked and carved, for one [kg]; empty if not stated
   * @param trim share of the bought weight that is cut off; empty if not stated
   * @param bone share of what is cooked that is bone; empty if not stated
   */
  public record Plates(
      int people, OptionalDouble portion, OptionalDouble trim, OptionalDouble bone) {}

  /**
   * Salt put on ahead.
   *
   * @param share of the raw weight, in (0, 1)
   * @param depth below the surface at which it is to have arrived [m]; empty if not stated
   */
  public record Salt(double share, OptionalDouble depth) {}
}
