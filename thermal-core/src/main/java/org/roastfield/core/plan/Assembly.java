package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Puts a plan together from draws that followed it. */
final class Assembly {

  /** Times at which the core is kept, about. */
  static final int SAMPLES = 97;

  /** Slack of what nothing waits for. */
  private static final double FREE = Double.POSITIVE_INFINITY;

  private final PlanRequest request;
  private final Draws draws;
  private final Decision decision;
  private final Service service;
  private final Run run;
  private final int[] members;
  private final double lead;

  Assembly(PlanRequest request, Draws draws, Decision decision, Run run) {
    this.request = request;
    this.draws = draws;
    this.decision = decision;
    this.service = request.service();
    this.run = run;
    this.members = IntStream.range(0, run.size()).filter(run::isComputed).toArray();
    this.lead = decision.lead();
  }

  /** Lead for the demanded chance, if enough draws ever get there [s]. */
  private double needed() {
    double needed = Pace.neededLead(run.ready, service);
    return needed < Double.POSITIVE_INFINITY ? needed : lead;
  }

  private double arrived() {
    double[] pulls = values(i -> run.pull[i]);
    return (double) Arrays.stream(pulls).filter(Double::isFinite).count() / pulls.length;
  }

  Plan plan() {
    double[][] all = new double[run.cores.length][];
    for (int s = 0; s < all.length; s++) {
      double[] core = run.cores[s];
      all[s] = values(i -> core[i]);
    }
    double[] cores = all[0];
    Tally tally = Tally.of(all, request);
    double[] carved = values(i -> Math.max(0, run.ready[i] - lead));
    double[] held = values(i -> Math.max(0, lead - run.ready[i]));
    Timing timing = decision.timing(service);
    double tooLong = share(held, service.longestHold());
    return new Plan(
        decision.pull(),
        decision.readings(),
        draws.check(),
        draws.course().waits() ? timing : new Timing(service.leastRest(), lead, 0),
        milestones(),
        Spread.of(cores),
        Arrays.stream(Tally.coldest(all)).sorted().boxed().toList(),
        tally.expectedLoss(),
        tally.under(),
        tally.over(),
        stations(all),
        1 - share(carved, service.latest()),
        1 - share(carved, 0),
        Spread.of(held),
        tooLong,
        decision.candidates(),
        SearCheck.of(cores, values(i -> run.pull[i]), values(this::readingAfterSear)),
        band(),
        new Shortfalls(request, decision, Spread.of(cores), tally)
            .list(arrived(), needed(), lead, 1 - share(carved, service.latest()), tooLong),
        members.length,
        request.members() - members.length);
  }

  /** What a display shows at the end of the sear, its error as at the pull [K]. */
  private double readingAfterSear(int i) {
    return run.searCore[i] - run.pullCore[i] + draws.readingOf(i, decision.pull());
  }

  private List<Station.Result> stations(double[][] cores) {
    List<Station.Result> results = new ArrayList<>();
    for (int s = 1; s < cores.length; s++) {
      Station station = request.stations().get(s - 1);
      results.add(
          new Station.Result(
              station.name(),
              station.wish(),
              Spread.of(cores[s]),
              Tally.under(cores[s], station.wish()),
              Tally.over(cores[s], station.wish())));
    }
    return results;
  }

  /** Values of the computed draws. */
  private double[] values(ToDoubleOfDraw value) {
    return Arrays.stream(members).mapToDouble(value::of).toArray();
  }

  private interface ToDoubleOfDraw {
    double of(int draw);
  }

  private static double share(double[] values, double above) {
    return (double) Arrays.stream(values).filter(value -> value > above).count() / values.length;
  }

  private List<Milestone> milestones() {
    List<Milestone> list = new ArrayList<>();
    for (Preparation one : request.preparations()) {
      add(list, one.kind(), i -> -one.before(), Milestone.Rule.MOVE_THE_REST);
    }
    if (draws.course().firstSear >= 0) {
      add(list, Milestone.Kind.FIRST_SEAR, i -> 0, Milestone.Rule.MOVE_THE_REST);
      add(list, Milestone.Kind.ON, i -> run.firstSear[i], Milestone.Rule.BY_CLOCK_AND_CRUST);
    } else {
      add(list, Milestone.Kind.ON, i -> 0, Milestone.Rule.MOVE_THE_REST);
    }
    run.times(lead).forEach((kind, times) -> add(list, kind, i -> times[i], rule(kind)));
    ToDoubleFunction<Milestone> byMedian = one -> one.time().median();
    list.sort(Comparator.comparingDouble(byMedian).thenComparing(Milestone::kind));
    return list;
  }

  private static Milestone.Rule rule(Milestone.Kind kind) {
    return switch (kind) {
      case CHECK, NEAR, PULL -> Milestone.Rule.BY_READING;
      case RAISE, SEAR, REST -> Milestone.Rule.BY_CLOCK_AND_CRUST;
      case PEAK, READY, CARVE -> Milestone.Rule.HOLD_OR_CARVE_LATER;
      default -> Milestone.Rule.MOVE_THE_REST;
    };
  }

  /** Adds an event at times since the start of the cook. */
  private void add(
      List<Milestone> list, Milestone.Kind kind, ToDoubleOfDraw at, Milestone.Rule rule) {
    Spread time = Spread.of(values(at)).plus(-lead);
    list.add(new Milestone(kind, time, kind == Milestone.Kind.PEAK ? FREE : slack(time, at), rule));
  }

  private double slack(Spread time, ToDoubleOfDraw at) {
    double[] after = values(i -> after(run, i, at.of(i)));
    return service.latest() - time.median() - Spread.quantile(service.chance(), after);
  }

  /** From an event until it could have rested, whatever it waits between [s]. */
  private static double after(Run run, int i, double event) {
    double rested = event > run.pull[i] ? run.rested[i] : run.ready[i];
    return rested == Double.POSITIVE_INFINITY ? rested : rested - event;
  }

  private Plan.CoreBand band() {
    List<Double> times = new ArrayList<>();
    List<Spread> spreads = new ArrayList<>();
    double until = decision.lead() + service.latest();
    double[] kept = draws.times();
    for (int k = 0; k < kept.length && kept[k] <= until; k++) {
      int sample = k;
      double[] cores =
          Arrays.stream(members)
              .mapToDouble(i -> run.result.coreAt(i, sample))
              .filter(core -> !Double.isNaN(core))
              .toArray();
      if (cores.length > members.length / 2) {
        times.add(kept[k] - lead);
        spreads.add(Spread.of(cores));
      }
    }
    return new Plan.CoreBand(times, spreads);
  }
}
