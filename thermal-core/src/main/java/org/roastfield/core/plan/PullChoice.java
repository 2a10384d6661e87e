package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.roastfield.core.ensemble.EnsembleSimulator;

/**
 * Chooses the rule of a pull: the time that the display is drawn on, and targets for a cut that has
 * yet to wait for as long as it may be kept, for one that need not wait, and for one that is as
 * late as it may be. Least expected loss decides, a missed window counting as a core that is some
 * degrees short; a window that is kept is never missed, and draws are bound by the clock. Found by
 * going downhill from the same target for all.
 */
final class PullChoice {

  /** A cook that is never pulled counts as so many more: assumed. */
  private static final double NEVER = 3;

  /** What is held too long beyond the share that may be counts as so many more: assumed. */
  private static final double TOO_LONG = 4;

  /** No lead is so long that a greater share is held too long: assumed. */
  static final double MOST_EARLY = 0.5;

  /** Gain of a loss for which a rule may be less simple: assumed. */
  private static final double WORTH_IT = 0.98;

  /** Times for which a rise may be drawn on [s]; 0 for none. */
  private static final double[] AHEADS = {0, 600, 900, 1200, 1800, 2400, 3000};

  /** What targets that differ by a kelvin cost, so that few draws do not bend a rule [1/K²]. */
  private static final double BEND = 0.003;

  /** What an hour more of lead costs, so that of leads alike the shorter is taken. */
  private static final double LONGER = 0.1;

  /** Moves of targets that are tried, from the longest to the shortest [K]; and of the lead [s]. */
  private static final double[] MOVES = {4, 2, 1, 0.5, 0.25, 0.1};

  private static final double[] LEADS = {2400, 1200, 600, 300, 150, 60};

  /** And of what the look adds to targets [K/s]: the last is what is told, 0.05 K in 10 min. */
  private static final double[] LEANS = {
    0.8 / 600, 0.4 / 600, 0.2 / 600, 0.1 / 600, 0.05 / 600, 0.05 / 600
  };

  /** Downhill from these leads too, longer and shorter than the first [s]. */
  private static final double OTHER_LEAD = 1800;

  /** Share of the cost that going downhill once more must gain. */
  private static final double GAIN = 0.001;

  /** Least rate by which a lead is moved along with targets [K/s]: a kelvin an hour. */
  private static final double LEAST_RATE = 1.0 / 3600;

  /** More than any loss: of what a demanded chance lacks. */
  private static final double LACKING = 1e6;

  /**
   * What a kelvin counts beside it by which a minimum is missed, so that far from one there is a
   * way.
   */
  private static final double BELOW = 0.01;

  /** Readings that are told of, around the chosen one, and how far they are apart [K]. */
  private static final int TOLD = 30;

  private static final double APART = 0.2;

  private final PlanRequest request;
  private final Service service;
  private final Paths paths;
  private final double after;
  private final EnsembleSimulator simulator;

  private final double reading;
  private final boolean looks;

  /** Times of the targets, since a cut need not wait any longer [s]. */
  private final double[] knots;

  /** Of the displays where the search begins [K/s]. */
  private final double middleRate;

  /**
   * @param after from the end of a wait to having rested [s]
   * @param reading to begin with [K]
   * @param looks whether the display is looked at on the way
   * @param simulator on whose executor rules are tried beside each other
   */
  PullChoice(
      PlanRequest request,
      Paths paths,
      double after,
      double reading,
      boolean looks,
      EnsembleSimulator simulator) {
    this.simulator = simulator;
    this.looks = looks;
    this.reading = reading;
    this.middleRate = Math.max(LEAST_RATE, paths.middleRate(reading));
    this.request = request;
    this.service = request.service();
    this.paths = paths;
    this.after = after;
    this.knots = knots(0 - service.longestHold(), service.latest());
  }

  /** A step where the window begins, a bend where a cut need not wait, and the window's end. */
  private static double[] knots(double earliest, double latest) {
    return earliest < 0 && latest > 0
        ? new double[] {earliest, earliest, 0, latest}
        : new double[] {earliest, earliest, latest};
  }

  /**
   * A rule, how long before the wanted carving a cook begins that goes by it [s], and by how much
   * more the display must show for each second that the look finds it slow [K/s].
   */
  record Choice(Pull pull, double lead, double lean) {

    private Choice raised(double by) {
      return new Choice(pull.raised(by), lead, lean);
    }

    /** All that the clock decides so much later. */
    private Choice longer(double by) {
      return new Choice(pull.later(by), lead + by, lean);
    }

    /** To a whole multiple of what is told, so that none is none. */
    private Choice leaning(double by) {
      double told = LEANS[LEANS.length - 1];
      return new Choice(pull, lead, told * Math.rint((lean + by) / told));
    }

    /** The same, with targets that are those of before at any time since the start. */
    private Choice longerAlone(double by) {
      List<Double> times = pull.later(by).times();
      List<Double> targets = times.stream().map(pull::target).toList();
      return new Choice(new Pull(times, targets, pull.ahead()), lead + by, lean);
    }

    private Choice drawnOn(double ahead) {
      return new Choice(new Pull(pull.times(), pull.targets(), ahead), lead, lean);
    }

    private Choice with(int knot, double by) {
      List<Double> targets = new ArrayList<>(pull.targets());
      targets.set(knot, targets.get(knot) + by);
      return new Choice(new Pull(pull.times(), targets, pull.ahead()), lead, lean);
    }
  }

  /**
   * The choice of least cost; of the longest possible lead, if a longer one would be best.
   *
   * @param lead to begin with [s]
   */
  Choice best(double lead) {
    double possible = -service.earliestOn();
    Choice free = best(List.of(lead, lead + OTHER_LEAD, Math.max(0, lead - OTHER_LEAD)), true);
    return free.lead() <= possible ? free : best(List.of(possible), false);
  }

  /**
   * @param leads to begin with [s]
   * @param free whether they may be moved
   */
  private Choice best(List<Double> leads, boolean free) {
    Choice best = downhill(flat(leads.get(0)), free);
    double least = cost(best, free);
    for (double other : leads.subList(1, leads.size())) {
      Choice from = downhill(flat(other), free);
      double cost = cost(from, free);
      best = cost < least ? from : best;
      least = Math.min(cost, least);
    }
    for (int a = 1; a < AHEADS.length; a++) {
      double further = (AHEADS[a] - best.pull().ahead()) * middleRate;
      Choice other = downhill(best.raised(further).drawnOn(AHEADS[a]), free);
      double cost = cost(other, free);
      if (cost < WORTH_IT * least) {
        best = other;
        least = cost;
      }
    }
    return best;
  }

  private Choice flat(double lead) {
    double sears = Math.max(0, lead - after);
    List<Double> times = Arrays.stream(knots).map(knot -> sears + knot).boxed().toList();
    List<Double> targets = times.stream().map(time -> reading).toList();
    return new Choice(new Pull(times, targets, 0), lead, 0);
  }

  /** From the longest moves to the shortest, and again for as long as that gains something. */
  private Choice downhill(Choice start, boolean free) {
    Choice best = start;
    double least = Double.POSITIVE_INFINITY;
    while (cost(best, free) < least * (1 - GAIN)) {
      least = cost(best, free);
      for (int m = 0; m < MOVES.length; m++) {
        best = downhill(best, MOVES[m], free ? LEADS[m] : 0, looks ? LEANS[m] : 0, free);
      }
    }
    return best;
  }

  private Choice downhill(
      Choice start, double move, double leadMove, double leanMove, boolean free) {
    Choice best = start;
    double least = cost(best, free);
    boolean better = true;
    while (better) {
      better = false;
      List<Choice> others = moved(best, move, leadMove, leanMove);
      double[] costs = new double[others.size()];
      simulator.forEach(costs.length, i -> costs[i] = cost(others.get(i), free));
      for (int i = 0; i < costs.length; i++) {
        if (costs[i] < least * (1 - 1e-9)) {
          best = others.get(i);
          least = costs[i];
          better = true;
        }
      }
    }
    return best;
  }

  /**
   * All targets, each of them, the lead, and what the look adds, moved up and down.
   *
   * @param leadMove 0 if the lead stays
   * @param leanMove 0 if there is no look
   */
  private List<Choice> moved(Choice from, double move, double leadMove, double leanMove) {
    List<Choice> others = new ArrayList<>();
    for (int sign = 1; sign >= -1; sign -= 2) {
      others.add(from.raised(sign * move));
      for (int k = 0; k < knots.length; k++) {
        others.add(from.with(k, sign * move));
      }
      double by = sign * leadMove;
      double asMuch = sign * move / middleRate;
      if (by != 0 && from.lead() + by >= 0) {
        others.add(from.longer(by));
        others.add(from.longerAlone(by));
      }
      if (by != 0 && from.lead() + asMuch >= 0) {
        others.add(from.raised(sign * move).longer(asMuch));
      }
      if (leanMove != 0) {
        others.add(from.leaning(sign * leanMove));
      }
    }
    return others;
  }

  /**
   * Expected loss, with that of missing the window and of what demanded chances lack. Being ready
   * in time as often as demanded is not bought by holding most of them too long; where the lead
   * cannot be longer, it is not asked.
   */
  private double cost(Choice choice, boolean free) {
    Paths.Followed followed = followed(choice);
    Tally tally = Tally.of(followed.cores, request, followed.byClock);
    double lacking =
        Math.max(0, service.chance() - followed.arrived())
            + tally.shortage()
            + BELOW * tally.missing();
    List<Double> targets = choice.pull().targets();
    double bend = 0;
    for (int k = 1; k < targets.size(); k++) {
      double difference = targets.get(k) - targets.get(k - 1);
      bend += BEND * difference * difference;
    }
    double early = early(followed, choice.lead());
    double misses = service.kept() && free ? 0 : misses(followed, choice.lead(), early);
    return tally.expectedLoss()
        + misses * Tally.missed(request)
        + LACKING
            * (lacking + (free ? Math.max(late(followed, choice.lead()), early - MOST_EARLY) : 0))
        + bend
        + LONGER * choice.lead() / 3600;
  }

  /** How many windows are missed for each draw, by the display alone. */
  private double misses(Paths.Followed followed, double lead, double early) {
    double tooLong = Math.max(0, early - (1 - service.chance()));
    return 1 - window(followed, lead) + NEVER * (1 - followed.arrived()) + TOO_LONG * tooLong;
  }

  /**
   * What the demanded chance of being ready lacks by the display alone, as far as draws ever get
   * there, and by a standard error of so few draws, since a lead that others have corrected no
   * longer suits the targets.
   */
  private double late(Paths.Followed followed, double lead) {
    double latest = lead + service.latest();
    long there = Arrays.stream(followed.shown).filter(t -> t <= latest).count();
    double chance = service.chance();
    double surely = chance + Math.sqrt(chance * (1 - chance) / paths.size());
    double arrived = followed.arrived();
    double possible = arrived < surely ? Math.min(chance, arrived) : surely;
    return Math.max(0, possible - (double) there / paths.size());
  }

  /** Share that would have to be held for too long by the display alone. */
  private double early(Paths.Followed followed, double lead) {
    double earliest = lead - service.longestHold();
    long early = Arrays.stream(followed.shown).filter(t -> t < earliest).count();
    return (double) early / paths.size();
  }

  /** Share in the promised window by the display alone. */
  private double window(Paths.Followed followed, double lead) {
    double latest = lead + service.latest();
    double earliest = lead - service.longestHold();
    long there = Arrays.stream(followed.shown).filter(t -> t >= earliest && t <= latest).count();
    return (double) there / paths.size();
  }

  /**
   * Rules with all targets higher or lower than those of one, in order of their readings; that one
   * alone if no draw gets to any.
   */
  List<Candidate> around(Choice best) {
    List<Candidate> candidates = new ArrayList<>();
    double before = Double.NEGATIVE_INFINITY;
    for (int n = -TOLD; n <= TOLD; n++) {
      Paths.Followed followed = followed(best.raised(n * APART));
      double middle = followed.spread(before).median();
      if (middle > before && middle < Double.POSITIVE_INFINITY) {
        candidates.add(candidate(followed, middle));
        before = middle;
      }
    }
    if (candidates.isEmpty()) {
      candidates.add(candidate(followed(best), reading));
    }
    return candidates;
  }

  /** The draws by a choice, within the window if that is kept. */
  Paths.Followed followed(Choice choice) {
    Pull pull = choice.pull();
    double lead = choice.lead();
    Pull within = service.kept() ? pull.within(service, lead - after) : pull;
    return paths.by(within, lead, choice.lean());
  }

  /** The draws by the display alone. */
  Paths.Followed byDisplay(Choice choice) {
    return paths.by(choice.pull(), choice.lead(), choice.lean());
  }

  /** Median final core by the display alone [K]. */
  double expected(Choice choice) {
    return Spread.of(byDisplay(choice).cores[0]).median();
  }

  private Candidate candidate(Paths.Followed followed, double middle) {
    Tally tally = Tally.of(followed.cores, request, followed.byClock);
    double arrives = followed.arrived();
    boolean allowed = arrives >= service.chance() && tally.meetsMinima();
    return new Candidate(
        middle,
        tally.expectedLoss(),
        Spread.of(followed.cores[0]),
        tally.under(),
        tally.over(),
        arrives,
        allowed);
  }

  /** Change of the median final core with the targets of a rule, by the display alone. */
  double slope(Choice choice) {
    return 0.5 * (expected(choice.raised(1)) - expected(choice.raised(-1)));
  }
}
