package org.roastfield.core.plan;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.internal.Check;

/**
 * A plan worked backwards from the carving. Times in seconds after the wanted carving.
 *
 * @param pull rule for the end of the gentle heat
 * @param readings of the display at which it ends [K]
 * @param check the look at the display on the way that decides about the fire; its times are since
 *     the start of the cook. Empty if the fire is kept as stated
 * @param timing what the clock decides
 * @param milestones in order of their medians
 * @param finalCore highest core up to carving [K]
 * @param coldest the same of the coldest station of each draw, in order [K]
 * @param expectedLoss in the unit of the loss: what plans of one wish are compared by
 * @param chanceUnder of a final core below the wish, in [0, 1]
 * @param chanceOver of one above it, in [0, 1]
 * @param stations other cross-sections, in the order of the request
 * @param chanceReady of having rested by the latest carving, in [0, 1]
 * @param chanceReadyAsWished of having rested by the wanted carving, in [0, 1]
 * @param held how long it waits for its sear, or is kept after its least rest [s]
 * @param chanceHeldTooLong of being kept for longer than wished, in [0, 1]
 * @param candidates readings that were weighed, in order
 * @param searCheck what a reading at the end of the sear is worth
 * @param core over time, from the beginning of the cook on
 * @param shortfalls wishes that could not be met; empty if all are
 * @param members draws that were computed
 * @param notBuilt draws that could not be, and are left out
 */
public record Plan(
    Pull pull,
    Spread readings,
    Optional<FireCheck> check,
    Timing timing,
    List<Milestone> milestones,
    Spread finalCore,
    List<Double> coldest,
    double expectedLoss,
    double chanceUnder,
    double chanceOver,
    List<Station.Result> stations,
    double chanceReady,
    double chanceReadyAsWished,
    Spread held,
    double chanceHeldTooLong,
    List<Candidate> candidates,
    SearCheck searCheck,
    CoreBand core,
    List<Shortfall> shortfalls,
    int members,
    int notBuilt) {

  /** How far short of the pull the display calls for readiness [K]; assumed. */
  public static final double AHEAD = 5;

  /** Copies the lists. */
  public Plan {
    milestones = List.copyOf(milestones);
    coldest = List.copyOf(coldest);
    stations = List.copyOf(stations);
    candidates = List.copyOf(candidates);
    shortfalls = List.copyOf(shortfalls);
  }

  /**
   * The core over time, of draws that are not yet carved.
   *
   * @param times after the wanted carving [s]
   * @param spreads of the core at these times [K]
   */
  public record CoreBand(List<Double> times, List<Spread> spreads) {

    /**
     * @throws IllegalArgumentException if there are not as many times as spreads
     */
    public CoreBand {
      times = List.copyOf(times);
      spreads = List.copyOf(spreads);
      Check.inRange("number of spreads", spreads.size(), times.size(), times.size());
    }
  }

  /** Reading of the display at which the gentle heat ends in the middle [K]. */
  public double reading() {
    return readings.median();
  }

  /**
   * How long before the wanted carving the cook begins [s]: the gentle heat, or a sear before it.
   */
  public double lead() {
    return timing.leave();
  }

  /** Whether a cut that is off the gentle heat early waits for its sear. */
  public boolean waits() {
    return timing.sears() > 0;
  }

  /**
   * Chance that the middle gets to a temperature before it is carved, at every station, in [0, 1].
   *
   * @param temperature [K]
   */
  public double chanceOf(double temperature) {
    return (double) coldest.stream().filter(core -> core >= temperature).count() / coldest.size();
  }

  /** Whether every wish is met. */
  public boolean meetsWishes() {
    return shortfalls.isEmpty();
  }

  /**
   * The milestone of a kind.
   *
   * @throws IllegalArgumentException if the plan has none
   */
  public Milestone milestone(Milestone.Kind kind) {
    return milestones.stream()
        .filter(one -> one.kind() == kind)
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("kind must be one of the plan, was " + kind));
  }
}
