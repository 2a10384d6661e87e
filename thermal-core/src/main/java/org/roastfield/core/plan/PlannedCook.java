package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * A cook whose stages have roles, as a function of what is unknown of it.
 *
 * @param cooks builds the cook at a point of the parameters, values by their ids; as many stages
 *     everywhere
 * @param roles of its stages in order: gentle heat, perhaps a pause, a sear before or after both,
 *     one rest, and perhaps one hold
 * @param probe name of the probe whose display decides when the gentle heat ends: one of the
 *     cook's, or "core" for an ideal one. Its errors are draws like everything else, where {@code
 *     cooks} gives it an instrument and an offset by the point
 * @param fires the same cook on a hotter or cooler fire; empty if the fire stays as stated
 */
public record PlannedCook(
    Function<ParameterPoint, Cook> cooks, List<Role> roles, String probe, Optional<Fires> fires) {

  /**
   * @throws IllegalArgumentException if roles are not in a possible order
   */
  public PlannedCook {
    roles = List.copyOf(roles);
    Check.notBlank("probe", probe);
    String order = letters(roles);
    if (!order.matches("S*G+P*S*RH?")) {
      throw new IllegalArgumentException(
          "roles must be gentle heat, perhaps pauses, a sear before or after these, one rest and"
              + " perhaps one hold, were "
              + roles);
    }
  }

  /** A cook whose fire stays as stated. */
  public PlannedCook(Function<ParameterPoint, Cook> cooks, List<Role> roles, String probe) {
    this(cooks, roles, probe, Optional.empty());
  }

  /** The same with a fire that can be kept hotter and cooler. */
  public PlannedCook with(Fires fires) {
    return new PlannedCook(cooks, roles, probe, Optional.of(fires));
  }

  /** A cook decided by an ideal probe in its core. */
  public static PlannedCook of(Function<ParameterPoint, Cook> cooks, List<Role> roles) {
    return new PlannedCook(cooks, roles, Probe.CORE.name());
  }

  /** The same with other cooks, of the same stages, whose fire stays as stated. */
  public PlannedCook with(Function<ParameterPoint, Cook> cooks) {
    return new PlannedCook(cooks, roles, probe);
  }

  /** The same of points that are changed before a cook is built, on whatever fire. */
  public PlannedCook changed(UnaryOperator<ParameterPoint> change) {
    Optional<Fires> changed =
        fires.map(
            those ->
                new Fires(
                    kelvin -> those.cooks().apply(kelvin).compose(change),
                    those.coolest(),
                    those.hottest()));
    return new PlannedCook(cooks.compose(change), roles, probe, changed);
  }

  /**
   * The same on a fire that is so much hotter than stated [K], and is let down and raised from
   * there.
   *
   * @throws IllegalArgumentException if it has no fires
   */
  public PlannedCook hotter(double kelvin) {
    Fires own = fire();
    Fires from =
        new Fires(further -> own.cooks().apply(kelvin + further), own.coolest(), own.hottest());
    return new PlannedCook(own.cooks().apply(kelvin), roles, probe, Optional.of(from));
  }

  /** Its fires. */
  Fires fire() {
    return fires.orElseThrow(
        () -> new IllegalArgumentException("cook must have fires, to be kept on another"));
  }

  /** Schedule of its sears at a point; empty if it has none. */
  public Optional<SearSchedule> sear(ParameterPoint point) {
    Sears own = sears(at(point));
    if (own.first.isEmpty() && own.last.isEmpty()) {
      return Optional.empty();
    }
    SearSchedule.Order order =
        own.first.isEmpty()
            ? SearSchedule.Order.LAST
            : own.last.isEmpty() ? SearSchedule.Order.FIRST : SearSchedule.Order.BOTH;
    return Optional.of(new SearSchedule(own.duration(), own.rounds(), order));
  }

  /**
   * The same seared by another schedule. Rounds and time of one with a sear first and last are
   * shared between these as they are in this cook, or by halves, of which the first has the smaller
   * number of rounds. A pause while the fire ramps is left out where the sear comes first.
   *
   * @throws IllegalArgumentException if it has no sear
   */
  public PlannedCook searedBy(SearSchedule schedule, ParameterPoint anywhere) {
    Sears own = sears(at(anywhere));
    Check.inRange("number of sears", own.first.size() + own.last.size(), 1, Integer.MAX_VALUE);
    int before = own.before(schedule);
    int after = own.after(schedule);
    List<Role> order =
        new ArrayList<>(
            Collections.nCopies(schedule.legs(own.likeFirst(), 1, before).size(), Role.SEAR));
    for (Role role : roles) {
      if (staysBefore(role, after)) {
        order.add(role);
      }
    }
    order.addAll(Collections.nCopies(schedule.legs(own.likeLast(), 1, after).size(), Role.SEAR));
    order.addAll(roles.subList(roles.indexOf(Role.REST), roles.size()));
    return new PlannedCook(point -> seared(at(point), schedule), order, probe);
  }

  private Cook seared(Cook cook, SearSchedule schedule) {
    Sears own = sears(cook);
    double share = own.share(schedule.order());
    int after = own.after(schedule);
    List<Stage> stages =
        new ArrayList<>(schedule.legs(own.likeFirst(), share, own.before(schedule)));
    for (int i = 0; i < roles.size(); i++) {
      if (staysBefore(roles.get(i), after)) {
        stages.add(cook.stages().get(i));
      }
    }
    stages.addAll(schedule.legs(own.likeLast(), 1 - share, after));
    stages.addAll(cook.stages().subList(roles.indexOf(Role.REST), roles.size()));
    return new Cook(cook.cut(), stages, cook.probes());
  }

  /** Whether a role stays ahead of a number of rounds after the gentle heat. */
  private static boolean staysBefore(Role role, int rounds) {
    return role == Role.GENTLE || (role == Role.PAUSE && rounds > 0);
  }

  private Sears sears(Cook cook) {
    List<Stage> first = new ArrayList<>();
    List<Stage> last = new ArrayList<>();
    for (int i = 0; i < roles.size(); i++) {
      if (roles.get(i) == Role.SEAR) {
        (i < roles.indexOf(Role.GENTLE) ? first : last).add(cook.stages().get(i));
      }
    }
    return new Sears(first, last);
  }

  /** Sears before and after the gentle heat. */
  private record Sears(List<Stage> first, List<Stage> last) {

    double duration() {
      return SearSchedule.duration(first) + SearSchedule.duration(last);
    }

    int rounds() {
      return SearSchedule.rounds(first) + SearSchedule.rounds(last);
    }

    /** What a sear before the gentle heat is like. */
    List<Stage> likeFirst() {
      return first.isEmpty() ? last : first;
    }

    List<Stage> likeLast() {
      return last.isEmpty() ? first : last;
    }

    private boolean isBoth() {
      return !first.isEmpty() && !last.isEmpty();
    }

    /** Share of the time that comes first. */
    double share(SearSchedule.Order order) {
      return switch (order) {
        case FIRST -> 1;
        case LAST -> 0;
        case BOTH -> isBoth() ? SearSchedule.duration(first) / duration() : 0.5;
      };
    }

    /** Rounds that come first. */
    int before(SearSchedule schedule) {
      return switch (schedule.order()) {
        case FIRST -> schedule.rounds();
        case LAST -> 0;
        case BOTH -> Math.max(1, isBoth() ? part(schedule.rounds()) : schedule.rounds() / 2);
      };
    }

    /** As large a part of rounds as these sears have first. */
    private int part(int rounds) {
      return rounds * SearSchedule.rounds(first) / rounds();
    }

    int after(SearSchedule schedule) {
      int left = schedule.rounds() - before(schedule);
      return schedule.order() == SearSchedule.Order.BOTH ? Math.max(1, left) : left;
    }
  }

  /** Cook at a point, checked against the roles. */
  Cook at(ParameterPoint point) {
    Cook cook = cooks.apply(point);
    if (cook.stages().size() != roles.size()) {
      throw new IllegalArgumentException(
          "cook must have a stage for each of the roles "
              + roles
              + ", had "
              + cook.stages().size()
              + " stages");
    }
    return cook;
  }

  /** The probe that decides in a cook. */
  public Probe probeOf(Cook cook) {
    if (probe.equals(Probe.CORE.name())) {
      return Probe.CORE;
    }
    return cook.probes().stream()
        .filter(one -> one.name().equals(probe))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "probe must be \"core\" or a probe of the cook, was \"" + probe + "\""));
  }

  private static String letters(List<Role> roles) {
    StringBuilder letters = new StringBuilder();
    for (Role role : roles) {
      letters.append(role.name().charAt(0));
    }
    return letters.toString();
  }
}
