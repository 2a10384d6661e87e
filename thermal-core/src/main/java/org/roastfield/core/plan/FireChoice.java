package org.roastfield.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.roastfield.core.units.Temperatures;

/**
 * Chooses how the fire is kept from a look at the display on, so that draws are ready in the
 * promised window: the later a draw gets to a reading, the hotter its fire, the middle one as
 * stated. Each draw is cooked on each fire, its pull drawn on to where its core would be as wished;
 * the bands are those of the greatest share in the window, eq. (96).
 */
final class FireChoice {

  /** Where between the start and the pull the display is looked at; assumed. */
  private static final double SHARE = 0.5;

  /** By how much the display may be drawn on then; 0 for not at all [K]. */
  private static final double[] AHEADS = {0, 10, 20, 40, 60};

  /** The ends of the window are blurred, so that few draws do not decide [s]. */
  private static final double BLUR = 300;

  /** What a fire changed as far as it may be costs, in chances of the window; assumed. */
  private static final double EFFORT = 0.08;

  /** Gain below which a band more, or a look at all, is not worth it. */
  private static final double WORTH_IT = 0.01;

  /** Share of the draws on each side of the middle one that keep the fire as stated; assumed. */
  private static final double MIDDLE = 0.1;

  private static final int LEADS = 60;
  private static final double MINUTE = 60;

  private final PlanRequest request;
  private final Fires fires;
  private final double[] levels;
  private final Arrivals arrivals;

  /** When a draw is ready on each of the fires, pulled for the wished core [s]. */
  private final double[][] ready;

  private final double reading;

  /**
   * Cooks the first draws on each fire.
   *
   * @param pull a reading near the pull [K]
   * @param timing what the clock decides
   */
  FireChoice(PlanRequest request, Fires fires, Draws draws, int count, double pull, Timing timing) {
    this.request = request;
    this.fires = fires;
    this.levels =
        IntStream.range(0, 4)
            .mapToDouble(
                i ->
                    new double[] {0 - fires.coolest(), 0, 0.5 * fires.hottest(), fires.hottest()}
                        [i])
            .distinct()
            .toArray();
    double zero = Temperatures.ZERO_CELSIUS;
    double start = draws.hottestStart(count);
    this.reading = zero + Math.rint(start + SHARE * (pull - start) - zero);
    Approach way = draws.approach(count, reading);
    this.arrivals = way.arrivals();
    this.ready = new double[levels.length][];
    for (int l = 0; l < levels.length; l++) {
      draws.watch(FireCheck.always(reading, levels[l]), fires, way);
      ready[l] = asWished(draws.run(count, pull, timing));
    }
    draws.watchNot();
  }

  /** Draws in order of when they get there, drawn on so far [K]. */
  private final class Order {

    final double ahead;
    final double[] times;
    final Integer[] draws;

    Order(double ahead) {
      this.ahead = ahead;
      FireCheck look = new FireCheck(reading, ahead, List.of(), List.of(0.0));
      times =
          IntStream.range(0, arrivals.size()).mapToDouble(i -> arrivals.drawnOn(i, look)).toArray();
      draws = new Integer[times.length];
      Arrays.setAll(draws, i -> i);
      Arrays.sort(draws, Comparator.comparingDouble(i -> times[i]));
    }
  }

  /** The look that is worth it, if one is. */
  Optional<FireCheck> best() {
    double[] finite =
        Arrays.stream(ready)
            .flatMapToDouble(Arrays::stream)
            .filter(time -> time < Double.POSITIVE_INFINITY)
            .sorted()
            .toArray();
    if (finite.length == 0 || levels.length < 2) {
      return Optional.empty();
    }
    double[] leads =
        IntStream.range(0, LEADS)
            .mapToDouble(k -> Spread.quantile((k + 0.5) / LEADS, finite))
            .map(arrival -> Math.min(arrival, -request.service().earliestOn()))
            .toArray();
    double kept = Arrays.stream(leads).map(this::asStated).max().orElseThrow();
    Optional<FireCheck> best = Optional.empty();
    for (double ahead : AHEADS) {
      Order order = new Order(ahead);
      Bands bands =
          Arrays.stream(leads)
              .mapToObj(lead -> bands(lead, order))
              .max(Comparator.comparingDouble(one -> one.value))
              .orElseThrow();
      if (bands.value > kept + WORTH_IT * arrivals.size()) {
        kept = bands.value;
        best = Optional.of(check(bands, order));
      }
    }
    return best;
  }

  /** Levels of the draws in order of their times, and what they are worth together. */
  private static final class Bands {

    final double value;
    final int[] levels;

    Bands(double value, int[] levels) {
      this.value = value;
      this.levels = levels;
    }
  }

  /** Levels of the draws in order of their times, each at least as hot as the one before. */
  private Bands bands(double lead, Order order) {
    int n = order.draws.length;
    double[][] value = new double[n][levels.length];
    int[][] from = new int[n][levels.length];
    for (int i = 0; i < n; i++) {
      int best = 0;
      for (int l = 0; l < levels.length; l++) {
        boolean middle = Math.abs(i - 0.5 * n) < MIDDLE * n && levels[l] != 0;
        double own = middle ? Double.NEGATIVE_INFINITY : worth(l, order.draws[i], lead);
        if (i > 0) {
          best = value[i - 1][l] > value[i - 1][best] ? l : best;
          double switched = value[i - 1][best] - WORTH_IT * n;
          boolean stays = value[i - 1][l] >= switched || best == l;
          from[i][l] = stays ? l : best;
          own += stays ? value[i - 1][l] : switched;
        }
        value[i][l] = own;
      }
    }
    int last = 0;
    for (int l = 1; l < levels.length; l++) {
      last = value[n - 1][l] > value[n - 1][last] ? l : last;
    }
    int[] chosen = new int[n];
    double total = value[n - 1][last];
    for (int i = n - 1; i >= 0; i--) {
      chosen[i] = last;
      last = from[i][last];
    }
    return new Bands(total, chosen);
  }

  private double asStated(double lead) {
    int stated =
        IntStream.range(0, levels.length).filter(l -> levels[l] == 0).findFirst().orElse(0);
    return IntStream.range(0, arrivals.size()).mapToDouble(i -> worth(stated, i, lead)).sum();
  }

  /** Blurred membership of the window, less the effort. */
  private double worth(int level, int draw, double lead) {
    double late = ready[level][draw] - lead;
    double most = levels[level] < 0 ? fires.coolest() : fires.hottest();
    double effort = levels[level] == 0 ? 0 : EFFORT * Math.abs(levels[level]) / most;
    double before = request.service().latest() - late;
    double after = late + request.service().longestHold();
    return step(before) * step(after) - effort;
  }

  private static double step(double time) {
    return time == Double.NEGATIVE_INFINITY ? 0 : 1 / (1 + StrictMath.exp(-time / BLUR));
  }

  private FireCheck check(Bands bands, Order order) {
    List<Double> until = new ArrayList<>();
    List<Double> hotter = new ArrayList<>();
    int[] chosen = bands.levels;
    hotter.add(levels[chosen[0]]);
    for (int i = 1; i < chosen.length; i++) {
      if (chosen[i] != chosen[i - 1]) {
        double end = order.times[order.draws[i - 1]];
        double next = Math.min(order.times[order.draws[i]], end + 2 * MINUTE);
        until.add(MINUTE * Math.rint(0.5 * (end + next) / MINUTE));
        hotter.add(levels[chosen[i]]);
      }
    }
    return new FireCheck(reading, order.ahead, until, hotter);
  }

  /** When draws are ready if each is pulled where its final core is as wished [s]. */
  private double[] asWished(Run run) {
    double[] result = new double[run.size()];
    for (int i = 0; i < result.length; i++) {
      double slowness = (run.pull[i] - run.near[i]) / Plan.AHEAD;
      double lacking = request.wish().middle() - run.finalCore[i];
      boolean there = run.ready[i] < Double.POSITIVE_INFINITY && run.finalCore[i] > 0;
      result[i] = there ? run.ready[i] + slowness * lacking : Double.POSITIVE_INFINITY;
    }
    return result;
  }
}
