package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Chooses the rule of a pull: the time that the display is drawn on, and targets for a cut that has
 * yet to wait for as long as it may be kept, for one that need not wait, and for one that is as
 * late as it may be. Least expected loss decides, a missed window counting as a core that is some
 * degrees short; found by going downhill from the same target for all.
 */
final class PullChoice {

  /**
   * A cook that misses the promised window counts as one whose core is this far short of the wish
   * [K]: a band of doneness; assumed.
   */
  private static final double MISSED = 3;

  /** A cook that is never pulled counts as so many more: assumed. */
  private static final double NEVER = 3;

  /** Gain of a loss for which a rule may be less simple: assumed. */
  private static final double WORTH_IT = 0.98;

  /** Times for which a rise may be drawn on [s]; 0 for none. */
  private static final double[] AHEADS = {0, 600, 900, 1200, 1800};

  /** What targets that differ by a kelvin cost, so that few draws do not bend a rule [1/K²]. */
  private static final double BEND = 0.003;

  /** What an hour more of lead costs, so that of leads alike the shorter is taken. */
  private static final double LONGER = 0.1;

  /** Moves of targets that are tried, from the longest to the shortest [K]; and of the lead [s]. */
  private static final double[] MOVES = {4, 2, 1, 0.5, 0.25, 0.1};

  private static final double[] LEADS = {2400, 1200, 600, 300, 150, 60};

  /** More than any loss: of what a demanded chance lacks. */
  private static final double LACKING = 1e6;

  /** Readings that are told of, around the chosen one, and how far they are apart [K]. */
  private static final int TOLD = 30;

  private static final double APART = 0.2;

  private final PlanRequest request;
  private final Service service;
  private final Paths paths;
  private final double after;

  /** Times of the targets, since a cut need not wait any longer [s]. */
  private final double[] knots;

  /**
   * @param after from the end of a wait to having rested [s]
   */
  PullChoice(PlanRequest request, Paths paths, double after) {
    this.request = request;
    this.service = request.service();
    this.paths = paths;
    this.after = after;
    this.knots =
        DoubleStream.of(0 - service.longestHold(), 0, service.latest()).distinct().toArray();
  }

  /** A rule, and how long before the wanted carving a cook begins that goes by it [s]. */
  record Choice(Pull pull, double lead) {

    private Choice raised(double by) {
      return new Choice(pull.raised(by), lead);
    }

    private Choice longer(double by) {
      return new Choice(pull.later(by), lead + by);
    }

    private Choice drawnOn(double ahead) {
      return new Choice(new Pull(pull.times(), pull.targets(), ahead), lead);
    }

    private Choice with(int knot, double by) {
      List<Double> targets = new ArrayList<>(pull.targets());
      targets.set(knot, targets.get(knot) + by);
      return new Choice(new Pull(pull.times(), targets, pull.ahead()), lead);
    }
  }

  /**
   * The choice of least cost.
   *
   * @param reading to begin with [K]
   * @param lead likewise [s]
   */
  Choice best(double reading, double lead) {
    double rate = paths.middleRate(reading);
    double sears = Math.max(0, lead - after);
    List<Double> times = Arrays.stream(knots).map(knot -> sears + knot).boxed().toList();
    List<Double> targets = times.stream().map(time -> reading).toList();
    Choice best = downhill(new Choice(new Pull(times, targets, 0), lead));
    double least = cost(best);
    for (int a = 1; a < AHEADS.length; a++) {
      double further = (AHEADS[a] - best.pull().ahead()) * rate;
      Choice other = downhill(best.raised(further).drawnOn(AHEADS[a]));
      double cost = cost(other);
      if (cost < WORTH_IT * least) {
        best = other;
        least = cost;
      }
    }
    return best;
  }

  private Choice downhill(Choice start) {
    Choice best = start;
    double least = cost(best);
    for (int m = 0; m < MOVES.length; m++) {
      boolean better = true;
      while (better) {
        better = false;
        for (Choice other : moved(best, MOVES[m], LEADS[m])) {
          double cost = cost(other);
          if (cost < least * (1 - 1e-9)) {
            best = other;
            least = cost;
            better = true;
          }
        }
      }
    }
    return best;
  }

  /** All targets, each of them, and the lead, moved up and down. */
  private List<Choice> moved(Choice from, double move, double leadMove) {
    List<Choice> others = new ArrayList<>();
    for (int sign = 1; sign >= -1; sign -= 2) {
      others.add(from.raised(sign * move));
      for (int k = 0; knots.length > 1 && k < knots.length; k++) {
        others.add(from.with(k, sign * move));
      }
      double by = sign * leadMove;
      if (from.lead() + by >= 0 && from.lead() + by <= -service.earliestOn()) {
        others.add(from.longer(by));
      }
    }
    return others;
  }

  /** Expected loss, with that of missing the window and of what demanded chances lack. */
  private double cost(Choice choice) {
    Paths.Followed followed = paths.by(choice.pull(), choice.lead());
    Tally tally = Tally.of(followed.cores, request);
    CoreWish wish = request.wish();
    double missed = request.loss().of(wish.middle() - MISSED, wish);
    double lacking = Math.max(0, service.chance() - followed.arrived()) + tally.shortage();
    List<Double> targets = choice.pull().targets();
    double bend = 0;
    for (int k = 1; k < targets.size(); k++) {
      double difference = targets.get(k) - targets.get(k - 1);
      bend += BEND * difference * difference;
    }
    return tally.expectedLoss()
        + (1 - window(followed, choice.lead()) + NEVER * (1 - followed.arrived())) * missed
        + LACKING * (lacking + late(followed, choice.lead()))
        + bend
        + LONGER * choice.lead() / 3600;
  }

  /** What the demanded chance of being ready lacks where a longer lead could give it. */
  private double late(Paths.Followed followed, double lead) {
    if (lead >= -service.earliestOn() - LEADS[LEADS.length - 1]) {
      return 0;
    }
    double latest = lead + service.latest();
    long there = Arrays.stream(followed.ready).filter(t -> t <= latest).count();
    return Math.max(0, service.chance() * followed.arrived() - (double) there / paths.size());
  }

  /** Share in the promised window. */
  private double window(Paths.Followed followed, double lead) {
    double latest = lead + service.latest();
    double earliest = lead - service.longestHold();
    long there = Arrays.stream(followed.ready).filter(t -> t >= earliest && t <= latest).count();
    return (double) there / paths.size();
  }

  /** Rules with all targets higher or lower than those of one, in order of their readings. */
  List<Candidate> around(Choice best) {
    List<Candidate> candidates = new ArrayList<>();
    double before = Double.NEGATIVE_INFINITY;
    for (int n = -TOLD; n <= TOLD; n++) {
      Paths.Followed followed = followed(best.raised(n * APART));
      double reading = followed.spread(before).median();
      if (reading > before && reading < Double.POSITIVE_INFINITY) {
        candidates.add(candidate(followed, reading));
        before = reading;
      }
    }
    return candidates;
  }

  Paths.Followed followed(Choice choice) {
    return paths.by(choice.pull(), choice.lead());
  }

  private Candidate candidate(Paths.Followed followed, double reading) {
    Tally tally = Tally.of(followed.cores, request);
    double arrives = followed.arrived();
    boolean allowed = arrives >= service.chance() && tally.meetsMinima();
    return new Candidate(
        reading,
        tally.expectedLoss(),
        Spread.of(followed.cores[0]),
        tally.under(),
        tally.over(),
        arrives,
        allowed);
  }

  /** Change of the median final core with the targets of a rule. */
  double slope(Choice choice) {
    double above = Spread.of(followed(choice.raised(1)).cores[0]).median();
    double below = Spread.of(followed(choice.raised(-1)).cores[0]).median();
    return 0.5 * (above - below);
  }
}
