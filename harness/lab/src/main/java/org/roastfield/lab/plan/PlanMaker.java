package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.function.DoubleFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.CoreLoss;
import org.roastfield.core.plan.Fires;
import org.roastfield.core.plan.Milestone;
import org.roastfield.core.plan.Minimum;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.PlannedCook;
import org.roastfield.core.plan.Planner;
import org.roastfield.core.plan.Preparation;
import org.roastfield.core.plan.Role;
import org.roastfield.core.plan.Spread;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Food;
import org.roastfield.lab.files.PlanWishes;
import org.roastfield.lab.salting.SaltPlan;

/** Makes a plan of a cook file. */
public final class PlanMaker {

  /** Out of the fridge before it goes on [s]: for drying, not for warming; assumed. */
  static final double OUT_OF_COLD = 1800;

  /** Patted dry before it goes on [s]; assumed. */
  static final double PAT_DRY = 600;

  /** How long metal, coals or air take to get hot for a sear if nothing is said [s]; assumed. */
  private static final double SEAR_HEAT = 900;

  /** Draws of plans that are only compared with. */
  private static final int FEW = 400;

  private final CookFile file;
  private final VariedCook cook;
  private final CookerBelief belief;
  private final PlanAsk ask;
  private final Executor executor;
  private final EnsembleSimulator simulator;
  private final Planner planner;
  private final List<Role> roles;
  private final CoreWishes wish;
  private final ServiceTimes times;
  private final Optional<SaltPlan> salt;
  private final Optional<TaperStations> taper;
  private final Optional<FireForecast> lighting;
  private final double fireReady;

  private PlanMaker(
      VariedCook cook, CookerBelief belief, PlanAsk ask, Executor executor, int workers) {
    this.file = cook.file();
    this.cook = cook;
    this.belief = belief;
    this.ask = ask;
    this.executor = executor;
    this.simulator = EnsembleSimulator.with(Planner.PLANNING).on(executor, workers);
    this.planner = Planner.with(simulator);
    this.roles = StageRoles.of(file);
    this.wish = CoreWishes.of(file);
    this.times = ServiceTimes.of(file, ask.service(), ask.zone());
    this.salt = salt(file);
    this.taper = file.taper().map(any -> TaperStations.of(file));
    this.lighting = fire(0);
    this.fireReady =
        file.notes()
            .plan()
            .fireReady()
            .orElseGet(() -> lighting.map(FireForecast::lead).orElse(ServiceTimes.FIRE_READY));
  }

  private Optional<FireForecast> fire(double gentle) {
    return file.notes()
        .plan()
        .pit()
        .map(pit -> FireForecast.of(file, roles, pit, gentle, ask.seed()));
  }

  /** What the fire needs for as long as the plan expects it to be gentle. */
  private Optional<FireForecast> fire(Plan plan) {
    double off = plan.milestone(Milestone.Kind.PULL).time().median();
    double gentle = off - plan.milestone(Milestone.Kind.ON).time().median();
    return Double.isFinite(gentle) ? fire(gentle) : lighting;
  }

  private static Optional<SaltPlan> salt(CookFile file) {
    try {
      return SaltPlan.of(file);
    } catch (IllegalArgumentException noMeat) {
      throw new UnplannableException("salt: " + noMeat.getMessage());
    }
  }

  /**
   * The plan of a cook.
   *
   * @param cook as planned, with the probe that the ask says decides
   * @param belief in what is unknown of it
   * @param executor that the draws are computed on
   * @param workers how many share them, at least 1
   * @throws UnplannableException if the file does not say what a plan needs
   */
  public static PlanSheet sheet(
      VariedCook cook, CookerBelief belief, PlanAsk ask, Executor executor, int workers) {
    return new PlanMaker(cook, belief, ask, executor, workers).sheet();
  }

  private PlanSheet sheet() {
    PlanRequest even = request();
    Optional<TaperStations.Lie> lie = taper.flatMap(thirds -> lie(thirds, even));
    VariedCook here = lie.flatMap(this::cookAsItLies).orElse(cook);
    PlanRequest wanted =
        lie.map(one -> lying(taper.orElseThrow(), even, one.across())).orElse(even);
    Plan calm = planner.plan(wanted);
    OptionalDouble now = ask.now().apply(times.clock());
    boolean tight = now.isPresent() && now.getAsDouble() + fireReady + calm.lead() > 0;
    Optional<PlanRequest> sooner =
        tight ? hurried(wanted, now.getAsDouble() + fireReady) : Optional.empty();
    Optional<Plan> hurried = sooner.map(planner::plan);
    boolean inTime =
        hurried.isPresent() && hurried.get().chanceReady() >= wanted.service().chance();
    PlanRequest request = inTime ? sooner.orElseThrow() : wanted;
    Plan plan = inTime ? hurried.orElseThrow() : calm;
    Optional<Lateness> late =
        tight && !inTime ? Optional.of(late(calm, hurried, now.getAsDouble())) : none();
    double moved = late.map(Lateness::later).orElse(0.0);
    OptionalDouble since =
        now.isPresent() ? OptionalDouble.of(now.getAsDouble() - moved) : OptionalDouble.empty();
    Optional<Cook> expected = expected(request, plan);
    Optional<SimulationResult> central =
        expected.map(one -> Simulator.withDefaults().run(one).orElseThrow());
    Optional<Purchase> purchase = Purchase.of(file, central);
    double held = CentralCook.held(plan, central);
    CompletableFuture<Optional<SearTable>> searing =
        CompletableFuture.supplyAsync(() -> sears(here.file(), request, held), executor);
    PlanChanges changer =
        new PlanChanges(request.withStations(List.of()), plan, here, ask, simulator);
    List<PlanChange> changes = changer.list();
    Optional<Plan> ofKnownCooker = ofKnownCooker(request, plan);
    Optional<SearTable> sears = SearTable.awaited(searing);
    Optional<RingWish> ring =
        RingWish.of(
            request, held, file.notes().wishes().ring(), changer.hotter(), sears, ask.scale());
    PlanLines lines = new PlanLines(file, plan, request, wish, ask.scale());
    Optional<FireForecast> fire = fire(plan);
    List<PlanLine> statements =
        new ArrayList<>(lines.all(ofKnownCooker, belief, sears, changes, purchase, salt));
    PlanClock movedClock = times.clock().moved(moved);
    List<PlanLine> rules = lines.rules(movedClock);
    statements.addAll(2, rules);
    fire.map(one -> one.line(fireReady)).ifPresent(one -> statements.add(2 + rules.size(), one));
    ring.map(one -> one.line(request, ask.scale())).ifPresent(one -> statements.add(1, one));
    lie.map(TaperStations.Lie::line).ifPresent(one -> statements.add(1, one));
    taper.ifPresent(thirds -> statements.addAll(1, thirds.lines(plan, ask.scale())));
    taper.ifPresent(thirds -> statements.set(0, thirds.read(statements.get(0))));
    double heating = fire.flatMap(FireForecast::ramp).map(Spread::high).orElse(SEAR_HEAT);
    List<PlanStep> steps =
        new PlanSteps(
                file,
                roles,
                plan,
                ask.scale(),
                heating,
                lie.map(TaperStations.Lie::towards),
                sears.flatMap(SearTable::pale),
                expected.map(one -> CentralCook.bySearing(one, roles)).orElse(0.0))
            .list(salt, purchase, times.carving(), since, rules, lines.example(movedClock));
    List<Unmet> problems =
        new ArrayList<>(new PlanProblems(plan, request.wish(), ask.scale()).list());
    sears.flatMap(one -> one.problem(ask.scale())).ifPresent(problems::add);
    purchase.flatMap(one -> one.problem(file)).ifPresent(problems::add);
    ring.filter(one -> !one.isMet())
        .ifPresent(one -> problems.add(one.problem(request, ask.scale())));
    List<Keeping> keepings =
        expected
            .map(
                one ->
                    Keeping.of(
                        file, one, roles, plan, held, request.service().leastRest(), ask.scale()))
            .orElse(List.of());
    if (keepings.size() > 1) {
      statements.add(
          Keeping.line(keepings, plan.waits(), held, Keeping.minimum(file), ask.scale()));
    }
    return new PlanSheet(
        file,
        times.clock().moved(moved),
        times.carving(),
        plan,
        wish.wish(),
        belief.words(),
        steps,
        statements,
        assumed(request, plan, steps, heating),
        problems,
        late,
        fire,
        purchase,
        sears,
        ring,
        keepings,
        changes,
        central,
        new PlanCautions(file, plan, request, ask.scale()).list(central, keepings, held),
        ask.scale());
  }

  private List<PlanLine> assumed(
      PlanRequest request, Plan plan, List<PlanStep> steps, double heating) {
    boolean heats = steps.stream().anyMatch(step -> step.id().equals(PlanSteps.SEAR_HEAT_ID));
    return PlanAssumptions.of(
        file,
        ask,
        request,
        fireReady,
        heats ? Optional.of(heating) : Optional.empty(),
        plan.check().isPresent());
  }

  private Optional<SearTable> sears(CookFile here, PlanRequest request, double held) {
    return SearTable.of(
        request, held, file.notes().wishes().crust(), new SearCooks(here, roles, ask.display()));
  }

  private static Optional<Lateness> none() {
    return Optional.empty();
  }

  private PlanRequest request() {
    PlanWishes wishes = file.notes().plan();
    List<Minimum> minima =
        wishes
            .minimum()
            .map(one -> List.of(new Minimum(one.core(), one.chance())))
            .orElse(List.of());
    String probe = cook.channels().isEmpty() ? "core" : cook.probe(cook.channels().get(0));
    PlannedCook stated = new PlannedCook(cook, roles, probe);
    PlannedCook planned = cook.hasFire() && ask.alone() ? stated.with(fires(wishes)) : stated;
    CoreLoss loss =
        wishes
            .loss()
            .map(one -> CoreLoss.squares(one.shortOf(), one.beyond()))
            .orElseGet(CoreLoss::usual);
    return PlanRequest.of(planned, belief.prior(), wish.wish())
        .with(loss)
        .with(times.service(file, Double.NEGATIVE_INFINITY))
        .withMinima(minima)
        .withStations(taper.map(thirds -> thirds.others(this::hotter, 0)).orElse(List.of()))
        .withPreparations(preparations())
        .withDraws(ask.members(), ask.seed());
  }

  /** As far as the file lets the fire be changed, and never to where it sears. */
  private Fires fires(PlanWishes wishes) {
    return new Fires(
        kelvin -> point -> cook.apply(cook.hotter(point, kelvin)),
        wishes.fireCooler().orElse(Fires.USUAL_COOLER),
        Math.min(wishes.fireHotter().orElse(Fires.USUAL_HOTTER), StageRoles.room(file, roles)));
  }

  /** The cook in gentle heat that is so much hotter than stated [K]. */
  private VariedCook hotter(double kelvin) {
    return kelvin == 0
        ? cook
        : VariedCook.planned(
            new ChangedFile(file, roles)
                .hotter(kelvin)
                .orElseThrow(
                    () ->
                        new UnplannableException(
                            "plan.across: gentle heat must be that of a chamber with an air")),
            ask.display());
  }

  /** How a taper lies best in a chamber with a hotter side, from fewer draws each way. */
  private Optional<TaperStations.Lie> lie(TaperStations thirds, PlanRequest request) {
    OptionalDouble across = file.notes().plan().across();
    return across.isEmpty()
        ? Optional.empty()
        : Optional.of(
            thirds.lie(
                across.getAsDouble(),
                hotter -> planner.plan(lying(thirds, request, hotter).withDraws(few(), ask.seed())),
                ask.scale()));
  }

  /** The thick third's cook where it lies, if a taper lies in a chamber with a hotter side. */
  private Optional<VariedCook> cookAsItLies(TaperStations.Lie lie) {
    return taper.map(thirds -> hotter(thirds.hotterAtPlanned(lie.across())));
  }

  /** The request in a chamber whose air is so much hotter at the first end than at the last [K]. */
  private PlanRequest lying(TaperStations thirds, PlanRequest request, double across) {
    return request
        .with(request.cook().with(hotter(thirds.hotterAtPlanned(across))))
        .withStations(thirds.others(this::hotter, across));
  }

  private List<Preparation> preparations() {
    List<Preparation> list = new ArrayList<>();
    salt.ifPresent(
        one ->
            one.hours()
                .ifPresent(hours -> list.add(new Preparation(Milestone.Kind.SALT, 3600 * hours))));
    list.add(new Preparation(Milestone.Kind.LIGHT, fireReady));
    if (file.food() != Food.VEGETABLE) {
      list.add(new Preparation(Milestone.Kind.OUT_OF_COLD, OUT_OF_COLD));
      list.add(new Preparation(Milestone.Kind.PAT_DRY, PAT_DRY));
    }
    return list;
  }

  /** The request begun at the earliest, if its service is still to come; 0 is its carving [s]. */
  private Optional<PlanRequest> hurried(PlanRequest request, double earliestOn) {
    return earliestOn < 0
        ? Optional.of(request.with(times.service(file, earliestOn)))
        : Optional.empty();
  }

  /**
   * Nothing is late that, begun at once, is ready in time with the demanded chance; else the next
   * service that is, to the minute.
   */
  private Lateness late(Plan plan, Optional<Plan> hurried, double now) {
    double missing = now + fireReady + plan.lead();
    return new Lateness(
        times.clock(),
        times.carving(),
        -plan.lead() - fireReady,
        60 * Math.ceil(missing / 60),
        hurried.map(one -> OptionalDouble.of(one.chanceReady())).orElse(OptionalDouble.empty()));
  }

  private int few() {
    return Math.min(FEW, ask.members());
  }

  /**
   * What the plan comes to on a cooker that is known without doubt, from fewer draws; empty if
   * nothing is in doubt.
   */
  private Optional<Plan> ofKnownCooker(PlanRequest request, Plan plan) {
    return belief.doubtsCooker()
        ? Optional.of(
            planner.followed(request.with(belief.cookerKnown()).withDraws(few(), ask.seed()), plan))
        : Optional.empty();
  }

  private Optional<Cook> expected(PlanRequest request, Plan plan) {
    ParameterPoint middle = belief.middle();
    PlannedCook planned = request.cook();
    DoubleFunction<Cook> fires =
        kelvin ->
            planned
                .fires()
                .map(all -> all.cooks().apply(kelvin))
                .orElse(planned.cooks())
                .apply(middle);
    Probe display = planned.probeOf(fires.apply(0));
    return CentralCook.of(fires, display, roles, plan, request.service().leastRest());
  }
}
