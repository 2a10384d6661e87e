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

  /** Schedule of its sear at a point; empty if it has none. */
  public Optional<SearSchedule> sear(ParameterPoint point) {
    List<Stage> sears = sears(at(point));
    if (sears.isEmpty()) {
      return Optional.empty();
    }
    boolean first = roles.get(0) == Role.SEAR;
    boolean last = roles.lastIndexOf(Role.SEAR) > roles.lastIndexOf(Role.GENTLE);
    SearSchedule.Order order =
        first ? last ? SearSchedule.Order.BOTH : SearSchedule.Order.FIRST : SearSchedule.Order.LAST;
    return Optional.of(SearSchedule.of(sears, order));
  }

  /**
   * The same seared by another schedule; of two halves the first has the smaller number of rounds.
   * A pause while the fire ramps is left out where the sear comes first.
   *
   * @throws IllegalArgumentException if it has no sear
   */
  public PlannedCook searedBy(SearSchedule schedule, ParameterPoint anywhere) {
    int legs = schedule.legs(sears(at(anywhere)), 1, 1).size();
    boolean both = schedule.order() == SearSchedule.Order.BOTH;
    int before =
        both
            ? Math.max(1, schedule.rounds() / 2)
            : schedule.order() == SearSchedule.Order.FIRST ? schedule.rounds() : 0;
    int after = both ? Math.max(1, schedule.rounds() - before) : schedule.rounds() - before;
    List<Role> order = new ArrayList<>(Collections.nCopies(before * legs, Role.SEAR));
    for (Role role : roles) {
      if (staysBefore(role, after)) {
        order.add(role);
      }
    }
    order.addAll(Collections.nCopies(after * legs, Role.SEAR));
    order.addAll(roles.subList(roles.indexOf(Role.REST), roles.size()));
    return new PlannedCook(point -> seared(at(point), schedule, before, after), order, probe);
  }

  private Cook seared(Cook cook, SearSchedule schedule, int before, int after) {
    List<Stage> sears = sears(cook);
    double share = before == 0 ? 0 : after == 0 ? 1 : 0.5;
    List<Stage> stages = new ArrayList<>(schedule.legs(sears, share, before));
    for (int i = 0; i < roles.size(); i++) {
      if (staysBefore(roles.get(i), after)) {
        stages.add(cook.stages().get(i));
      }
    }
    stages.addAll(schedule.legs(sears, 1 - share, after));
    stages.addAll(cook.stages().subList(roles.indexOf(Role.REST), roles.size()));
    return new Cook(cook.cut(), stages, cook.probes());
  }

  /** Whether a role stays ahead of a number of rounds after the gentle heat. */
  private static boolean staysBefore(Role role, int rounds) {
    return role == Role.GENTLE || (role == Role.PAUSE && rounds > 0);
  }

  private List<Stage> sears(Cook cook) {
    List<Stage> sears = new ArrayList<>();
    for (int i = 0; i < roles.size(); i++) {
      if (roles.get(i) == Role.SEAR) {
        sears.add(cook.stages().get(i));
      }
    }
    return sears;
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
