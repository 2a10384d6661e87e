package org.roastfield.lab.synthetic;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;

/**
 * The true temperature of a made-up chamber: drift about the stated value, dips while the lid is
 * open, sags until fuel is added.
 *
 * @param air [K]
 * @param openings of the lid, in order of time
 * @param sags of the fire, in order of time; each ends when fuel is added
 */
record MadeUpChamber(Signal air, List<Span> openings, List<Span> sags) {

  /** Spacing of the samples [s]. */
  private static final double STEP = 15;

  /** Air that the chamber falls to with the lid open [K]: ambient and some way up. */
  private static final double OPEN_AIR = Temperatures.celsius(55);

  /** Time constants of the air after opening and after closing [s]. */
  private static final double FALL = 15;

  private static final double RECOVERY = 180;

  /** Shortest and longest time that the lid stays open [s]. */
  private static final double SHORTEST_OPENING = 45;

  private static final double LONGEST_OPENING = 150;

  /** Least and greatest depth of a sag [K], and time constants of burning down and coming back. */
  private static final double LEAST_SAG = 10;

  private static final double DEEPEST_SAG = 25;
  private static final double BURNING_DOWN = 900;
  private static final double COMING_BACK = 420;

  /** Shortest and longest time until somebody sees to the fire [s]. */
  private static final double SHORTEST_SAG = 900;

  private static final double LONGEST_SAG = 2700;

  /** Copies the lists. */
  MadeUpChamber {
    openings = List.copyOf(openings);
    sags = List.copyOf(sags);
  }

  /**
   * Something that lasts.
   *
   * @param begins since the cut went on [s]
   * @param ends [s]
   * @param depth of a sag [K]; 0 for an opening
   */
  record Span(double begins, double ends, double depth) {}

  /**
   * Chamber over a time.
   *
   * @param stated temperature without drift [K]
   * @param duration [s]
   */
  static MadeUpChamber of(double stated, double duration, Fire fire, Noise noise) {
    int count = (int) Math.ceil(duration / STEP) + 1;
    double[] drift = noise.correlated(count, STEP, fire.deviation(), fire.correlationTime());
    List<Span> openings = openings(duration, fire, noise);
    List<Span> sags = sags(duration, fire, noise);
    double[] times = new double[count];
    double[] temperatures = new double[count];
    double dip = 0;
    double sag = 0;
    for (int i = 0; i < count; i++) {
      times[i] = i * STEP;
      sag =
          next(sag, depthAt(sags, times[i]), isDuring(sags, times[i]) ? BURNING_DOWN : COMING_BACK);
      double closed = stated + drift[i] - sag;
      boolean open = isDuring(openings, times[i]);
      dip = next(dip, open ? closed - OPEN_AIR : 0, open ? FALL : RECOVERY);
      temperatures[i] = closed - dip;
    }
    return new MadeUpChamber(SampledSignal.of(times, temperatures, 4 * STEP), openings, sags);
  }

  private static List<Span> openings(double duration, Fire fire, Noise noise) {
    List<Span> openings = new ArrayList<>();
    double closes = 0;
    while (closes < duration) {
      double opens = closes + noise.exponential(fire.lidInterval());
      closes = opens + noise.uniform(SHORTEST_OPENING, LONGEST_OPENING);
      openings.add(new Span(opens, closes, 0));
    }
    return openings.stream().filter(opening -> opening.begins() < duration).toList();
  }

  private static List<Span> sags(double duration, Fire fire, Noise noise) {
    List<Span> sags = new ArrayList<>();
    double ends = fire.sagInterval() == Double.POSITIVE_INFINITY ? duration : 0;
    while (ends < duration) {
      double begins = ends + noise.exponential(fire.sagInterval());
      ends = begins + noise.uniform(SHORTEST_SAG, LONGEST_SAG);
      sags.add(new Span(begins, ends, noise.uniform(LEAST_SAG, DEEPEST_SAG)));
    }
    return sags.stream().filter(sag -> sag.begins() < duration).toList();
  }

  private static boolean isDuring(List<Span> spans, double time) {
    return spans.stream().anyMatch(span -> time >= span.begins() && time <= span.ends());
  }

  private static double depthAt(List<Span> sags, double time) {
    return sags.stream()
        .filter(sag -> time >= sag.begins() && time <= sag.ends())
        .mapToDouble(Span::depth)
        .sum();
  }

  private static double next(double dip, double goal, double timeConstant) {
    return goal + (dip - goal) * StrictMath.exp(-STEP / timeConstant);
  }
}
