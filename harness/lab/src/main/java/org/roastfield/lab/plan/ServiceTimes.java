package org.roastfield.lab.plan;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.Service;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.PlanWishes;

/**
 * When a cut is to be on the table and what is possible around it. The plan's zero is the carving.
 *
 * @param clock of the plan
 * @param carving from carving to the table [s]
 * @param early how much before the wanted service it may be served [s]
 * @param late how much after it [s]
 */
public record ServiceTimes(PlanClock clock, double carving, double early, double late) {

  /** From carving to the table if nothing is said [s]: ten minutes; assumed. */
  static final double CARVING = 600;

  /** From lighting until the chamber is steady if nothing is said [s]: 45 min; assumed. */
  static final double FIRE_READY = 2700;

  /**
   * Times of a file.
   *
   * @param service when it is served, instead of what the file says; its window moves along
   * @param zone of the clock times, instead of the file's
   * @throws UnplannableException if no service is known, or clocks leave it out
   */
  static ServiceTimes of(CookFile file, Optional<LocalDateTime> service, Optional<ZoneId> zone) {
    PlanWishes wishes = file.notes().plan();
    Optional<LocalDateTime> stated = file.notes().serves();
    LocalDateTime table =
        service
            .or(() -> stated)
            .orElseThrow(
                () ->
                    new UnplannableException(
                        "no time of service: say serves: in the file, or --serve-at"));
    double carving = wishes.carving().orElse(CARVING);
    Optional<ZoneId> place = zone.or(wishes::zone);
    Optional<PlanClock> usual = stated.map(time -> clock("serves", time, place));
    double early = -wishes.earliest().map(t -> after(usual, "earliest", t, place)).orElse(-0.0);
    double late = wishes.latest().map(t -> after(usual, "latest", t, place)).orElse(0.0);
    PlanClock onTable = clock("serves", table, place);
    return new ServiceTimes(onTable.moved(-carving), carving, early, late);
  }

  private static double after(
      Optional<PlanClock> usual, String key, LocalDateTime time, Optional<ZoneId> place) {
    return usual.orElseThrow().timeOf(clock(key, time, place));
  }

  private static PlanClock clock(String key, LocalDateTime time, Optional<ZoneId> place) {
    place
        .flatMap(zone -> PlanClock.leftOut(time, zone))
        .ifPresent(
            gap -> {
              throw new UnplannableException(key + " must be " + gap);
            });
    return PlanClock.of(time, place);
  }

  /**
   * The time nearest to a file's service at which a clock shows this; of two alike the later. A
   * file without a service has the first such time after its start.
   */
  public static LocalDateTime nearest(CookFile file, LocalTime time) {
    Optional<LocalDateTime> serves = file.notes().serves();
    if (serves.isEmpty()) {
      LocalDateTime same = file.starts().toLocalDate().atTime(time);
      return same.isAfter(file.starts()) ? same : same.plusDays(1);
    }
    LocalDateTime same = serves.get().toLocalDate().atTime(time);
    Duration ahead = Duration.between(serves.get(), same);
    Duration half = Duration.ofHours(12);
    if (ahead.compareTo(half) > 0) {
      return same.minusDays(1);
    }
    return ahead.compareTo(half.negated()) <= 0 ? same.plusDays(1) : same;
  }

  /** How long a file's stage of rest lasts, if that is stated as a time [s]. */
  static OptionalDouble statedRest(CookFile file) {
    int rest = StageRoles.of(file).indexOf(Role.REST);
    return file.cook().stages().get(rest).end() instanceof StageEnd.After after
        ? OptionalDouble.of(after.duration())
        : OptionalDouble.empty();
  }

  /** As wished, or as long as the stage of rest; if neither is said, no longer than it may last. */
  private static double leastRest(CookFile file, double usual) {
    PlanWishes wishes = file.notes().plan();
    if (wishes.restAtLeast().isPresent()) {
      return wishes.restAtLeast().getAsDouble();
    }
    double rest = statedRest(file).orElse(usual);
    double most = wishes.restAtMost().orElse(Double.POSITIVE_INFINITY);
    if (statedRest(file).isPresent() && rest > most) {
      throw new UnplannableException(
          "plan.rest-at-most must be no shorter than its stage of rest, "
              + Words.duration(rest)
              + ", was "
              + Words.duration(most)
              + ": change one of them, or say plan: rest-at-least");
    }
    return Math.min(rest, most);
  }

  /**
   * For the planner: with its rest and hold, which carving early shortens.
   *
   * @param earliestOn [s] after the carving, −∞ if there is time enough
   */
  Service service(CookFile file, double earliestOn) {
    PlanWishes wishes = file.notes().plan();
    Service usual = Service.usual();
    double rest = leastRest(file, usual.leastRest());
    double hold =
        wishes.restAtMost().isPresent()
            ? Math.max(0, wishes.restAtMost().getAsDouble() - rest)
            : usual.longestHold();
    double missed =
        wishes
            .loss()
            .map(PlanWishes.Loss::missed)
            .orElse(OptionalDouble.empty())
            .orElse(usual.missed());
    return new Service(
        late,
        earliestOn,
        wishes.onTime().orElse(usual.chance()),
        rest,
        hold + early,
        missed,
        wishes.kept());
  }
}
