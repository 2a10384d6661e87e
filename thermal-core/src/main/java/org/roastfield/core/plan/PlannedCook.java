package org.roastfield.core.plan;

import java.util.List;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
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
 */
public record PlannedCook(Function<ParameterPoint, Cook> cooks, List<Role> roles, String probe) {

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

  /** A cook decided by an ideal probe in its core. */
  public static PlannedCook of(Function<ParameterPoint, Cook> cooks, List<Role> roles) {
    return new PlannedCook(cooks, roles, Probe.CORE.name());
  }

  /** The same with other cooks, such as those of a hotter fire; of the same stages. */
  public PlannedCook with(Function<ParameterPoint, Cook> cooks) {
    return new PlannedCook(cooks, roles, probe);
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
  Probe probeOf(Cook cook) {
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
