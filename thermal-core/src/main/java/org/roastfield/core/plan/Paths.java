package org.roastfield.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What would come of each draw if it were pulled at one reading or another and held for one time or
 * another: computed at a few of each, straight between readings, and beyond them a little and where
 * the clock decides.
 */
final class Paths {

  /** Of so many readings one is computed for draws that are held. */
  static final int COARSE = 4;

  /** Steps between two computed readings. */
  private static final int FINE = 12;

  /** How far readings are drawn on below those computed, in their distances. */
  private static final int BELOW = 2;

  private final double lowest;
  private final double step;
  private final int size;

  /** How many readings there are. */
  private final int all;

  /** When each draw gets to each reading [s]. */
  private final double[][] times;

  /** Of the display, over the last {@link Plan#AHEAD} kelvin [K/s]. */
  private final double[][] rates;

  /** When it could have rested [s]. */
  private final double[][] ready;

  /** Final cores of the planned cook and each station [K]: time held, station, draw, reading. */
  private final double[][][][] cores;

  private final Helds helds;

  /** How many readings each draw gets to. */
  private final int[] reached;

  /** How much later than usual each draw is by its look [s]. */
  private final double[] slow;

  /**
   * @param readings in order, evenly spaced, at least two
   * @param helds times that the draws were held for
   * @param runs draws of each of these times, those of one reading side by side: of all readings
   *     for the first, of every {@link #COARSE}th for the others, which add to that what changes
   *     little
   * @param slow how much later than usual each draw is by its look [s]
   * @param floor below which no reading is possible [K]
   */
  Paths(double[] readings, Helds helds, List<Run> runs, double[] slow, double floor) {
    this.helds = helds;
    Run run = runs.get(0);
    int count = run.size() / readings.length;
    int[] draws = computed(runs, count);
    double apart = readings[1] - readings[0];
    step = apart / FINE;
    int below = (int) Math.floor(Math.min(BELOW * apart, readings[0] - floor) / step + 1e-9);
    lowest = readings[0] - Math.max(0, below) * step;
    all = Math.max(0, below) + (readings.length - 1) * FINE + 1;
    size = draws.length;
    times = new double[size][];
    rates = new double[size][];
    ready = new double[size][];
    cores = new double[runs.size()][run.cores.length][size][];
    reached = new int[size];
    this.slow = Arrays.stream(draws).mapToDouble(draw -> slow[draw]).toArray();
    for (int i = 0; i < size; i++) {
      int draw = draws[i];
      int nodes = arrivals(run, count, draw, readings.length);
      reached[i] = nodes == 0 ? 0 : (nodes - 1) * FINE + Math.max(0, below) + 1;
      times[i] = fine(readings, nodes, i, at -> run.pull[at * count + draw]);
      rates[i] = fine(readings, nodes, i, at -> rate(run, at * count + draw));
      ready[i] = fine(readings, nodes, i, at -> run.ready[at * count + draw]);
      for (int h = 0; h < cores.length; h++) {
        for (int s = 0; s < run.cores.length; s++) {
          double[] core = run.cores[s];
          double[] held = runs.get(h).cores[s];
          AtNode value =
              h == 0 ? at -> core[at * count + draw] : at -> held(core, held, at, count, draw);
          cores[h][s][i] = nodes == 0 ? new double[] {core[draw]} : fine(readings, nodes, i, value);
        }
      }
    }
  }

  /** Final core of a draw that is held: that of one which is not, and what holding adds to it. */
  private static double held(double[] core, double[] held, int node, int count, int draw) {
    int below = node / COARSE;
    int above = Math.min(below + 1, held.length / count - 1);
    double share = (double) (node - below * COARSE) / COARSE;
    double first = held[below * count + draw] - core[below * COARSE * count + draw];
    double second = held[above * count + draw] - core[above * COARSE * count + draw];
    return core[node * count + draw] + first + share * (second - first);
  }

  private interface AtNode {
    double of(int node);
  }

  private static int[] computed(List<Run> runs, int count) {
    return IntStream.range(0, count)
        .filter(i -> runs.stream().allMatch(run -> isComputed(run, count, i)))
        .toArray();
  }

  private static boolean isComputed(Run run, int count, int draw) {
    return IntStream.range(0, run.size() / count).allMatch(k -> run.isComputed(k * count + draw));
  }

  private static int arrivals(Run run, int count, int draw, int readings) {
    int nodes = 0;
    while (nodes < readings && run.pull[nodes * count + draw] < Double.POSITIVE_INFINITY) {
      nodes++;
    }
    return nodes;
  }

  private static double rate(Run run, int at) {
    double taken = run.pull[at] - run.near[at];
    return taken > 0 ? Plan.AHEAD / taken : 0;
  }

  /** Values at all readings that a draw gets to. */
  private double[] fine(double[] readings, int nodes, int draw, AtNode value) {
    double[] values = new double[reached[draw]];
    for (int j = 0; j < values.length; j++) {
      double place = (reading(j) - readings[0]) / (step * FINE);
      int k = nodes < 2 ? 0 : (int) Math.max(0, Math.min(nodes - 2, Math.floor(place)));
      double low = value.of(k);
      values[j] = nodes < 2 ? low : low + (place - k) * (value.of(k + 1) - low);
    }
    return values;
  }

  private double reading(double place) {
    return lowest + place * step;
  }

  int size() {
    return size;
  }

  /** What comes of the draws by a rule; arrays over draws. */
  final class Followed {

    /** Of the display at the pull [K]; infinite for draws that never get there. */
    final double[] readings = new double[size];

    /** When they are pulled [s]; infinite for never. */
    final double[] pulls = new double[size];

    /** When they could have rested [s]; infinite for never. */
    final double[] ready = new double[size];

    /** The same by the display alone. */
    final double[] shown = new double[size];

    /** Whether the clock takes them off before the display says so. */
    final boolean[] byClock = new boolean[size];

    /** Final cores of the planned cook and each station [K]. */
    final double[][] cores = new double[Paths.this.cores[0].length][size];

    private Followed(Pull pull, double lead, double lean) {
      Pull.Walk walk = pull.walk();
      for (int i = 0; i < size; i++) {
        walk.begin();
        double display =
            place(times[i], rates[i], walk, FireCheck.raised(lean, slow[i]), pull.ahead());
        boolean shows = !Double.isNaN(display);
        shown[i] = shows ? at(Paths.this.ready[i], display) : Double.POSITIVE_INFINITY;
        double place = pull.isBound() ? bound(i, display, pull) : display;
        byClock[i] = shows ? place < display : pull.isBound();
        boolean there = !Double.isNaN(place);
        readings[i] = there ? reading(place) : Double.POSITIVE_INFINITY;
        pulls[i] = there ? at(times[i], place) : Double.POSITIVE_INFINITY;
        ready[i] = there ? at(Paths.this.ready[i], place) : Double.POSITIVE_INFINITY;
        double[] weights = helds.weights(there ? lead - ready[i] : 0);
        for (int h = 0; h < weights.length; h++) {
          for (int s = 0; s < cores.length; s++) {
            double[] core = Paths.this.cores[h][s][i];
            cores[s][i] += weights[h] * (there ? at(core, place) : core[core.length - 1]);
          }
        }
      }
    }

    /** Share that would only be pulled beyond the readings that were computed. */
    double beyond() {
      long beyond =
          IntStream.range(0, size)
              .filter(i -> reached[i] == all && pulls[i] == Double.POSITIVE_INFINITY)
              .count();
      return (double) beyond / size;
    }

    /** Share that would be pulled below those that were computed. */
    double below(double lowestComputed) {
      return (double) Arrays.stream(readings).filter(r -> r < lowestComputed).count() / size;
    }

    /** Share whose display gets there. */
    double arrived() {
      return (double) Arrays.stream(shown).filter(Double::isFinite).count() / size;
    }

    /**
     * Readings of those that get there [K].
     *
     * @param otherwise if none does
     */
    Spread spread(double otherwise) {
      double[] there = Arrays.stream(readings).filter(Double::isFinite).toArray();
      return Spread.of(there.length == 0 ? new double[] {otherwise} : there);
    }
  }

  /**
   * The draws by a rule of cooks that begin so long before they are to be carved [s].
   *
   * @param lean by how much more a display must show for each second that it is slow [K/s]
   */
  Followed by(Pull pull, double lead, double lean) {
    return new Followed(pull, lead, lean);
  }

  /**
   * Where a draw first meets a rule, in steps; NaN if it never does.
   *
   * @param there when it gets to each reading, in order [s]
   * @param rates at each of them [K/s]
   * @param walk along the rule's targets, at its start
   * @param raised by how much more than these it must show [K]
   * @param ahead of the rule [s]
   */
  private double place(
      double[] there, double[] rates, Pull.Walk walk, double raised, double ahead) {
    double least = walk.lowest() + raised;
    int j = 0;
    while (j < there.length && reading(j) + ahead * rates[j] < least) {
      j++;
    }
    double before = 0;
    for (int k = Math.max(0, j - 1); k < there.length; k++) {
      double missing = walk.target(there[k]) + raised - reading(k) - ahead * rates[k];
      if (missing <= 0) {
        return k == 0 ? 0 : k - 1 + before / (before - missing);
      }
      before = missing;
    }
    return Double.NaN;
  }

  /**
   * Where a draw is within the bounds of a rule, by the straight line through the nearest two
   * readings if that is beyond those computed; at its last where it gets no further.
   *
   * @param display where it is by the display alone; NaN for nowhere
   */
  private double bound(int draw, double display, Pull pull) {
    double[] there = times[draw];
    if (there.length < 2) {
      return display;
    }
    double first = crossed(there, pull.from());
    double last = crossed(there, pull.until());
    double within = Math.max(first, Double.isNaN(display) ? last : Math.min(last, display));
    return reached[draw] == all ? within : Math.min(within, there.length - 1);
  }

  /**
   * Where a draw is at a time, in steps, straight beyond the first and the last. One that gets to a
   * single computed reading is taken to be there.
   */
  private static double crossed(double[] there, double time) {
    int above = 1;
    while (above < there.length - 1 && there[above] < time) {
      above++;
    }
    double taken = there[above] - there[above - 1];
    return taken > 0 ? above - 1 + (time - there[above - 1]) / taken : above - 1;
  }

  private static double at(double[] values, double place) {
    int last = values.length - 1;
    int j = place > last ? last - 1 : (int) Math.max(0, Math.floor(place));
    double share = place - j;
    return share == 0 ? values[j] : values[j] + share * (values[j + 1] - values[j]);
  }

  /** Median rate of the draws that get to a reading [K/s]. */
  double middleRate(double reading) {
    int j = (int) Math.rint((reading - lowest) / step);
    double[] there =
        IntStream.range(0, size)
            .filter(i -> j >= 0 && j < reached[i])
            .mapToDouble(i -> rates[i][j])
            .toArray();
    return there.length == 0 ? 0 : Spread.of(there).median();
  }
}
