package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.parameter.ParameterSet;

/**
 * What was drawn for a plan, as far as it can be built.
 *
 * @param members the cooks
 * @param points what they were drawn at
 * @param stations cooks of each station, one a member
 */
record Drawn(List<Member> members, List<ParameterPoint> points, List<List<Member>> stations) {

  /**
   * Draws the members of a request.
   *
   * @throws IllegalArgumentException if most members cannot be built, with the reason of the first
   */
  static Drawn of(PlanRequest request) {
    SplittableRandom random = new SplittableRandom(request.seed());
    ParameterSet parameters = request.prior().parameters();
    List<List<Member>> stations = new ArrayList<>();
    request.stations().forEach(station -> stations.add(new ArrayList<>()));
    Drawn drawn = new Drawn(new ArrayList<>(), new ArrayList<>(), stations);
    @Nullable IllegalArgumentException first = null;
    for (int i = 0; i < request.members(); i++) {
      ParameterPoint point = parameters.point(request.prior().draw(random));
      try {
        drawn.add(request, point);
      } catch (IllegalArgumentException cannotBeBuilt) {
        first = first == null ? cannotBeBuilt : first;
      }
    }
    if (first != null && drawn.members.size() < request.members() / 2) {
      throw first;
    }
    return drawn;
  }

  private void add(PlanRequest request, ParameterPoint point) {
    Cook cook = request.cook().at(point);
    List<Member> others = new ArrayList<>();
    for (Station station : request.stations()) {
      PlannedCook other = new PlannedCook(station.cooks(), request.cook().roles(), "core");
      others.add(Member.of(other.at(point), Probe.CORE));
    }
    members.add(Member.of(cook, request.cook().probeOf(cook)));
    points.add(point);
    for (int s = 0; s < others.size(); s++) {
      stations.get(s).add(others.get(s));
    }
  }
}
