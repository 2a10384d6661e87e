package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.WhatIf;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.timeline.TemperatureScale;

/** What usually happens to plans, and what it does. */
final class PlanChanges {

  private static final double HOTTER = 15;
  private static final double THICKER = 0.1;
  private static final double WINDIER = 0.5;
  private static final double OPEN = 120;

  /** Draws that tell what an opened lid does, for which there is no derivative. */
  private static final int FEW = 40;

  private final PlanRequest request;
  private final Plan plan;
  private final CookFile file;
  private final List<Role> roles;
  private final Probe display;
  private final WhatIf whatIf;

  PlanChanges(
      PlanRequest request, Plan plan, VariedCook cook, Probe display, EnsembleSimulator simulator) {
    this.request = request;
    this.plan = plan;
    this.file = cook.file();
    this.roles = request.cook().roles();
    this.display = display;
    this.whatIf = WhatIf.with(simulator);
  }

  /** Changes that this cook can have; none if the plan's pull may never come. */
  List<PlanChange> list(TemperatureScale scale) {
    List<PlanChange> changes = new ArrayList<>();
    if (!Double.isFinite(plan.milestone(Milestone.Kind.PULL).time().high())) {
      return changes;
    }
    ChangedFile changed = new ChangedFile(file, roles);
    if (changed.hotter(HOTTER).isPresent()) {
      String what =
          String.format(
              Locale.ROOT, "the fire %.0f %s hotter", scale.difference(HOTTER), unit(scale));
      changes.add(
          new PlanChange(
              what,
              whatIf.estimate(
                  request,
                  plan,
                  amount -> planned(changed.hotter(amount).orElseThrow(), roles),
                  HOTTER)));
    }
    opened(changed).ifPresent(changes::add);
    scaled("wind: half as much convection again", CookParameters.CONVECTION, WINDIER)
        .ifPresent(changes::add);
    scaled("every length 10 % more than stated", CookParameters.SIZE, THICKER)
        .ifPresent(changes::add);
    return changes;
  }

  private static String unit(TemperatureScale scale) {
    return scale == TemperatureScale.FAHRENHEIT ? "°F" : "K";
  }

  private PlannedCook planned(CookFile other, List<Role> otherRoles) {
    return planned(other, otherRoles, display);
  }

  /** The cook of another file, decided by the same display. */
  static PlannedCook planned(CookFile other, List<Role> roles, Probe display) {
    VariedCook cook = VariedCook.planned(other, display);
    return new PlannedCook(cook, roles, cook.probe(cook.channels().get(0)));
  }

  private Optional<PlanChange> opened(ChangedFile changed) {
    double gentle = plan.lead() + plan.milestone(Milestone.Kind.PULL).time().median();
    List<Double> times = List.of(gentle / 3, 2 * gentle / 3);
    return changed
        .opened(times, OPEN)
        .map(
            other ->
                new PlanChange(
                    "the lid open twice, two minutes each",
                    whatIf.exact(
                        request.withDraws(FEW, request.seed()),
                        plan,
                        planned(other, StageRoles.of(other)))));
  }

  /** A multiplier of the cook times one more than the amount; empty if nothing depends on it. */
  private Optional<PlanChange> scaled(String what, Parameter parameter, double amount) {
    if (!request.prior().parameters().has(parameter.id())) {
      return Optional.empty();
    }
    return Optional.of(
        new PlanChange(
            what,
            whatIf.estimate(
                request,
                plan,
                more ->
                    request
                        .cook()
                        .with(
                            point ->
                                request.cook().cooks().apply(scaled(point, parameter.id(), more))),
                amount)));
  }

  private static ParameterPoint scaled(ParameterPoint point, String id, double more) {
    return point.moved(point.index(id), point.value(id) * (1 + more));
  }
}
