package org.roastfield.lab.synthetic;

import org.roastfield.core.units.Temperatures;

/**
 * What is true of one made-up cook, beside its cooker. Drawn from priors that are assumed, from the
 * ranges of the literature; bounds truncate them.
 *
 * @param size factor of every stated length: 1, sd 7 % of the logarithm, 0.8-1.2
 * @param diffusivity factor of the thermal diffusivity by composition, made by the heat capacity of
 *     a volume: sd 7 % of the logarithm, 0.8-1.2. The conductivity is that of the composition
 * @param startTemperature [K]: stated 5 °C, sd 1.5 K, −0.5 to 22 °C
 * @param emissivity 0.92, sd 0.04, 0.8-0.98
 * @param drive factor of the water that the face holds and gets: sd 40 % of the logarithm, 0.1-3
 * @param convection factor of the heat transfer coefficient beside the cooker's: sd 15 % of the
 *     logarithm
 * @param bars share of the face that touches the grate: 0.22, sd 0.06, 0.1-0.4
 * @param rest heat transfer coefficient in the rest, radiation included [W/(m²·K)]: 11, sd 20 % of
 *     the logarithm, 7-20
 * @param probeBias of the core probe [K]: 0.3, sd 0.5, ±2
 * @param probeOffset of its tip from the middle [m]: 4 mm, sd 3 mm, 0-15 mm
 * @param probeResponse its time constant [s]: 20-70
 * @param noise standard deviation of its white error [K]: 0.1, sd 30 % of the logarithm
 * @param wander standard deviation of its error that drifts [K]: 0.3, sd 30 % of the logarithm
 * @param wanderTime over which that forgets itself [s]: 5-10 min
 */
public record TrueValues(
    double size,
    double diffusivity,
    double startTemperature,
    double emissivity,
    double drive,
    double convection,
    double bars,
    double rest,
    double probeBias,
    double probeOffset,
    double probeResponse,
    double noise,
    double wander,
    double wanderTime) {

  /** Start temperature that cook files state [°C]: out of the fridge. */
  static final int STATED_START = 5;

  /** Streams of a seed. Cooks of one seed share what does not depend on how they depart. */
  static final int COOKER_STREAM = 0;

  static final int VALUES_STREAM = 1;
  static final int CHAMBER_STREAM = 2;
  static final int READINGS_STREAM = 3;
  static final int DEPARTURE_STREAM = 4;
  static final int WEIGHTS_STREAM = 5;

  /** What cook files state and a fit begins with: all factors 1, an ideal probe. */
  public static final TrueValues STATED =
      new TrueValues(
          1, 1, Temperatures.celsius(STATED_START), 0.92, 1, 1, 0.22, 11, 0, 0, 0, 0, 0, 600);

  /** Values of a cook of a seed. */
  static TrueValues drawn(long seed) {
    Noise noise = Noise.ofSeed(seed, VALUES_STREAM);
    return new TrueValues(
        noise.logNormal(1, 0.07, 0.8, 1.2),
        noise.logNormal(1, 0.07, 0.8, 1.2),
        Temperatures.celsius(noise.normal(STATED_START, 1.5, -0.5, 22)),
        noise.normal(0.92, 0.04, 0.8, 0.98),
        noise.logNormal(1, 0.4, 0.1, 3),
        noise.logNormal(1, SyntheticCooker.CONVECTION_DEVIATION_OF_COOKS, 0.5, 2),
        noise.normal(0.22, 0.06, 0.1, 0.4),
        noise.logNormal(11, 0.2, 7, 20),
        noise.normal(0.3, 0.5, -2, 2),
        noise.normal(0.004, 0.003, 0, 0.015),
        noise.uniform(20, 70),
        noise.logNormal(0.1, 0.3, 0.03, 0.3),
        noise.logNormal(0.3, 0.3, 0.1, 0.9),
        noise.uniform(300, 600));
  }
}
