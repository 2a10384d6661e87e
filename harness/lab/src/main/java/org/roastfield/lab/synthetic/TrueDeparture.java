package org.roastfield.lab.synthetic;

import java.util.Set;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;

/**
 * How far the truth departs, in numbers; what does not depart is NaN.
 *
 * @param kinds in what it departs
 * @param taperPosition where the probe sits, as a share of the length from the thick end: 0.3-0.8
 * @param wetness constant: 0.3, sd 40 % of the logarithm, 0.05-1
 * @param gradient by how much the far half of the chamber is cooler than its probe [K]: 10-25, of
 *     10-40 that pits have
 * @param heatTransfer factor of the heat transfer coefficient over time
 * @param movedAt when the probe slips, as a share of the gentle heat: 0.3-0.7
 * @param movedTo its offset from then on [m]: 8-18 mm
 */
record TrueDeparture(
    Set<Departure> kinds,
    double taperPosition,
    double wetness,
    double gradient,
    Signal heatTransfer,
    double movedAt,
    double movedTo) {

  /** Relative standard deviation and correlation time [s] of heat transfer that wanders. */
  private static final double WANDER = 0.12;

  private static final double WANDER_TIME = 2700;
  private static final double STEP = 60;

  static TrueDeparture drawn(Set<Departure> kinds, long seed, double duration) {
    Noise noise = Noise.ofSeed(seed, TrueValues.DEPARTURE_STREAM);
    double position = noise.uniform(0.3, 0.8);
    double wetness = noise.logNormal(0.3, 0.4, 0.05, 1);
    double gradient = noise.uniform(10, 25);
    double movedAt = noise.uniform(0.3, 0.7);
    double movedTo = noise.uniform(0.008, 0.018);
    return new TrueDeparture(
        kinds,
        kinds.contains(Departure.TAPER) ? position : Double.NaN,
        kinds.contains(Departure.WETNESS_LAW) ? wetness : Double.NaN,
        kinds.contains(Departure.CHAMBER_GRADIENT) ? gradient : Double.NaN,
        kinds.contains(Departure.WANDERING_HEAT_TRANSFER)
            ? wandering(noise, duration)
            : Signal.constant(1),
        kinds.contains(Departure.MOVED_PROBE) ? movedAt : Double.NaN,
        kinds.contains(Departure.MOVED_PROBE) ? movedTo : Double.NaN);
  }

  boolean has(Departure kind) {
    return kinds.contains(kind);
  }

  private static Signal wandering(Noise noise, double duration) {
    int count = (int) Math.ceil(duration / STEP) + 1;
    double[] logarithms = noise.correlated(count, STEP, WANDER, WANDER_TIME);
    double[] times = new double[count];
    double[] factors = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = i * STEP;
      factors[i] = StrictMath.exp(logarithms[i]);
    }
    return SampledSignal.of(times, factors, 4 * STEP);
  }
}
