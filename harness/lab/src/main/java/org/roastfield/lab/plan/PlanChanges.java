package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.Fires;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.WhatIf;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;

/** What usually happens to plans, and what it does. */
final class PlanChanges {

  private static final double HOTTER = 15;
  private static final double THICKER = 0.1;
  private static final double WINDIER = 0.5;
  private static final double OPEN = 120;

  /** Shortest gentle heat in which a lid is opened twice, each after a third of it [s]. */
  private static final double LEAST_OPENED = 900;

  private static final double LATER = 3600;

  private final PlanRequest request;
  private final Plan plan;
  private final CookFile file;
  private final List<Role> roles;
  private final PlanAsk ask;
  private final WhatIf whatIf;

  PlanChanges(
      PlanRequest request, Plan plan, VariedCook cook, PlanAsk ask, EnsembleSimulator simulator) {
    this.request = request;
    this.plan = plan;
    this.file = cook.file();
    this.roles = request.cook().roles();
    this.ask = ask;
    this.whatIf = WhatIf.of(simulator, request, plan);
  }

  /** Changes that this cook can have; none if the plan's pull may never come. */
  List<PlanChange> list() {
    List<PlanChange> changes = new ArrayList<>();
    if (!Double.isFinite(plan.milestone(Milestone.Kind.PULL).time().high())) {
      return changes;
    }
    ChangedFile changed = new ChangedFile(file, roles);
    hotter()
        .ifPresent(
            hotter -> {
              String what = "the fire " + ask.scale().wholeDifferenceText(HOTTER) + " hotter";
              changes.add(change(what, hotter, HOTTER));
            });
    opened(changed).ifPresent(changes::add);
    scaled("wind (convection half as much again)", CookParameters.CONVECTION, WINDIER)
        .ifPresent(changes::add);
    String what = file.taper().isPresent() ? "its thick end" : "every length";
    scaled(what + " 10 % more", CookParameters.SIZE, THICKER).ifPresent(changes::add);
    changes.add(drawn("the table an hour later once it is on", request.cook(), LATER));
    return changes;
  }

  /**
   * The cook in gentle heat that is so much hotter; of a file written anew where it has no fire.
   */
  Optional<DoubleFunction<PlannedCook>> hotter() {
    ChangedFile changed = new ChangedFile(file, roles);
    Optional<Fires> fires = request.cook().fires();
    if (fires.isPresent()) {
      return Optional.of(request.cook()::hotter);
    }
    return changed.hotter(HOTTER).isPresent()
        ? Optional.of(amount -> planned(changed.hotter(amount).orElseThrow(), roles))
        : Optional.empty();
  }

  private PlanChange change(String what, DoubleFunction<PlannedCook> change, double amount) {
    return ask.exact()
        ? drawn(what, change.apply(amount), 0)
        : new PlanChange(what, whatIf.estimate(change, amount));
  }

  private PlanChange drawn(String what, PlannedCook changed, double later) {
    return new PlanChange(
        what, ask.exact() ? whatIf.exact(changed, later) : whatIf.few(changed, later));
  }

  private PlannedCook planned(CookFile other, List<Role> otherRoles) {
    return planned(other, otherRoles, ask.display());
  }

  /** The cook of another file, decided by the same display. */
  static PlannedCook planned(CookFile other, List<Role> roles, Probe display) {
    return planned(VariedCook.planned(other, display), roles);
  }

  private static PlannedCook planned(VariedCook cook, List<Role> roles) {
    return new PlannedCook(cook, roles, cook.probe(cook.channels().get(0)));
  }

  /** The cook of another file, on its fires as far as the request's may be let down and raised. */
  private PlannedCook onFires(CookFile other, List<Role> otherRoles) {
    VariedCook cook = VariedCook.planned(other, ask.display());
    PlannedCook stated = planned(cook, otherRoles);
    return request
        .cook()
        .fires()
        .map(
            own ->
                stated.with(
                    new Fires(
                        kelvin -> point -> cook.apply(cook.hotter(point, kelvin)),
                        own.coolest(),
                        own.hottest())))
        .orElse(stated);
  }

  private Optional<PlanChange> opened(ChangedFile changed) {
    double gentle = plan.lead() + plan.milestone(Milestone.Kind.PULL).time().median();
    if (gentle < LEAST_OPENED) {
      return Optional.empty();
    }
    List<Double> times = List.of(gentle / 3, 2 * gentle / 3);
    return changed
        .opened(times, OPEN)
        .map(
            other ->
                drawn("the lid open twice, 2 min each", onFires(other, StageRoles.of(other)), 0));
  }

  /** A multiplier of the cook times one more than the amount; empty if nothing depends on it. */
  private Optional<PlanChange> scaled(String what, Parameter parameter, double amount) {
    if (!request.prior().parameters().has(parameter.id())) {
      return Optional.empty();
    }
    return Optional.of(
        change(
            what,
            more -> request.cook().changed(point -> scaled(point, parameter.id(), more)),
            amount));
  }

  private static ParameterPoint scaled(ParameterPoint point, String id, double more) {
    return point.moved(point.index(id), point.value(id) * (1 + more));
  }
}
