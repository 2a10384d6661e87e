package org.roastfield.lab.synthetic;

import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;

/**
 * The true temperature of a made-up chamber: drift about the stated value, and dips while the lid
 * is open.
 */
final class MadeUpChamber {

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

  private MadeUpChamber() {}

  /**
   * Chamber over a time.
   *
   * @param stated temperature without drift [K]
   * @param duration [s]
   */
  static Signal of(double stated, double duration, SyntheticSettings settings, Noise noise) {
    int count = (int) Math.ceil(duration / STEP) + 1;
    double[] drift =
        noise.correlated(count, STEP, settings.chamberDeviation(), settings.chamberCorrelation());
    double[] times = new double[count];
    double[] temperatures = new double[count];
    double dip = 0;
    double opens = noise.exponential(settings.lidInterval());
    double closes = opens + noise.uniform(SHORTEST_OPENING, LONGEST_OPENING);
    for (int i = 0; i < count; i++) {
      times[i] = i * STEP;
      double closed = stated + drift[i];
      if (times[i] > closes) {
        opens = closes + noise.exponential(settings.lidInterval());
        closes = opens + noise.uniform(SHORTEST_OPENING, LONGEST_OPENING);
      }
      boolean open = times[i] >= opens;
      dip = next(dip, open ? closed - OPEN_AIR : 0, open ? FALL : RECOVERY);
      temperatures[i] = closed - dip;
    }
    return SampledSignal.of(times, temperatures, 4 * STEP);
  }

  private static double next(double dip, double goal, double timeConstant) {
    return goal + (dip - goal) * StrictMath.exp(-STEP / timeConstant);
  }
}
