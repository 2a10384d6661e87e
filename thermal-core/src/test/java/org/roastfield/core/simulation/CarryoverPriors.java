package org.roastfield.core.simulation;

import java.util.Random;
import org.roastfield.core.units.Temperatures;

/**
 * What is not known about the measured roasts of {@code datasets/reference/carryover.csv}, as
 * distributions. Written down before the model was first run on those roasts, and not altered
 * since. M_c and f_min belong to a drying law that the first runs had; they are drawn still, so
 * that all other draws stay what they were.
 *
 * <p><b>Oven</b>, literature: [Lowe1932] says of these tables that all meats but ham were seared at
 * 250-275 °C for 20 min and then kept at 125 °C, baked hams at 150 °C for 30 min and then at 125
 * °C. Scatter of the low temperature: 8 K, assumed, for an oven regulated by hand. Still air: ovens
 * of the time had no fan.
 *
 * <p><b>Start temperature</b>, assumed: not stated; with even odds from the refrigerator, 5 ± 1.5
 * °C, or tempered, 12 ± 3 °C.
 *
 * <p><b>Shape</b>. Ribs: [Lowe1932] works the depth of the thermometer out for a circle of 4¼
 * inches, 108 mm, inscribed in the cut face; taken as the median diameter. Other joints: a cylinder
 * of the mean raw mass, 1.05 kg/l, with length over diameter 1.8 for a leg or ham and 4 for a loin,
 * assumed. Diameter ± 12 %, assumed: nobody measured it, and a ruler alone gives 6-8 %. Geometry
 * exponent: 1.0 for ribs and loin, 1.3 for legs and hams, which are shorter, both ± 0.2 within ±
 * 0.5, assumed; effects are interpolated between cylinder and sphere or slab.
 *
 * <p><b>The rest</b>, assumed, priors chosen for every cook and not for these: see the components.
 * The wetness of a face is that of half bare meat and half fat. How fast a face dries is an open
 * question, so M_c comes with even odds from a prior for hot ovens and from what a slow cook over
 * charcoal showed. Rest in still room air of 21 ± 2 °C and humidity ratio 0.008.
 *
 * @param diameter [m]
 * @param exponent geometry exponent in [0.5, 1.8]
 * @param startTemperature [K]
 * @param searTemperature of oven and walls in the first minutes [K]
 * @param searDuration [s]
 * @param ovenTemperature afterwards [K]
 * @param wallOffset walls less air [K]: 0 ± 8, within ± 25
 * @param heatTransferCoefficient in the oven [W/(m²·K)]: 6.5 of natural convection times a factor
 *     of 1.2 ± 30 %, 0.6-3
 * @param emissivity 0.92 ± 0.04, 0.8-0.98
 * @param humidityRatio in the oven [kg/kg]: 0.035 ± 50 %, 0.008-0.15
 * @param wetness f₀ at the start: bare 0.6 and fat 0.15, each ± 40 %, mean of the two
 * @param dryingScale M_c [kg/m²] of f = max(f_min, f₀ exp(−M/M_c)): 2.0 ± 45 %, 0.7-5, or 10 × 1.7
 * @param leastWetness f_min: 0.01 ± 70 %, 0-0.03
 * @param diffusivity [m²/s]: 1.30e-7 ± 7 %, 1.05e-7-1.55e-7
 * @param conductivity [W/(m·K)]: 0.48 ± 7 %, 0.40-0.56
 * @param restCoefficient convection and radiation in the rest [W/(m²·K)]: 11 ± 20 %, 7-20
 * @param room temperature [K]
 * @param probeBias [K]: 0.3 ± 0.5, within ± 2
 * @param probeOffset distance of the bulb from the middle [m]: 4 ± 3 mm, 0-15 mm
 */
record CarryoverPriors(
    double diameter,
    double exponent,
    double startTemperature,
    double searTemperature,
    double searDuration,
    double ovenTemperature,
    double wallOffset,
    double heatTransferCoefficient,
    double emissivity,
    double humidityRatio,
    double wetness,
    double dryingScale,
    double leastWetness,
    double diffusivity,
    double conductivity,
    double restCoefficient,
    double room,
    double probeBias,
    double probeOffset) {

  /** Draws of each roast. */
  static final int DRAWS = 400;

  /** Seed of the draws. */
  static final long SEED = 1932;

  private static final double DENSITY = 1050;

  /** Kinds of joint. */
  enum Joint {
    RIBS(Double.NaN, 1.0),
    HAM(1.8, 1.3),
    LEG(1.8, 1.3),
    LOIN(4.0, 1.0);

    final double lengthOverDiameter;
    final double exponent;

    Joint(double lengthOverDiameter, double exponent) {
      this.lengthOverDiameter = lengthOverDiameter;
      this.exponent = exponent;
    }

    /** Joint of a line of the file, by the first words of its name. */
    static Joint of(String meat) {
      if (meat.startsWith("Prime ribs")) {
        return RIBS;
      }
      if (meat.startsWith("Ham")) {
        return HAM;
      }
      return meat.startsWith("Pork loin") ? LOIN : LEG;
    }

    /** Median diameter [m] at a mean raw mass [kg]. */
    double diameter(double mass) {
      return this == RIBS
          ? 0.108
          : StrictMath.cbrt(4 * mass / DENSITY / (Math.PI * lengthOverDiameter));
    }
  }

  /** A draw for a joint of a mean raw mass [kg]. */
  static CarryoverPriors draw(Joint joint, double mass, Random random) {
    boolean tempered = random.nextBoolean();
    boolean slowToDry = random.nextBoolean();
    boolean ham = joint == Joint.HAM;
    return new CarryoverPriors(
        positive(random, joint.diameter(mass), 0.12, 0.04, 0.3),
        bounded(random, joint.exponent, 0.2, joint.exponent - 0.5, joint.exponent + 0.5),
        Temperatures.celsius(
            tempered ? bounded(random, 12, 3, -1, 22) : bounded(random, 5, 1.5, -1, 22)),
        Temperatures.celsius(ham ? 150 : 250 + 25 * random.nextDouble()),
        ham ? 1800 : 1200,
        Temperatures.celsius(bounded(random, 125, 8, 100, 150)),
        bounded(random, 0, 8, -25, 25),
        6.5 * positive(random, 1.2, 0.3, 0.6, 3),
        bounded(random, 0.92, 0.04, 0.8, 0.98),
        positive(random, 0.035, 0.5, 0.008, 0.15),
        0.5 * (positive(random, 0.6, 0.4, 0.05, 1) + positive(random, 0.15, 0.4, 0.05, 1)),
        slowToDry
            ? 10 * StrictMath.exp(StrictMath.log(1.7) * random.nextGaussian())
            : positive(random, 2, 0.45, 0.7, 5),
        positive(random, 0.01, 0.7, 1e-4, 0.03),
        positive(random, 1.3e-7, 0.07, 1.05e-7, 1.55e-7),
        positive(random, 0.48, 0.07, 0.4, 0.56),
        positive(random, 11, 0.2, 7, 20),
        Temperatures.celsius(bounded(random, 21, 2, 15, 27)),
        bounded(random, 0.3, 0.5, -2, 2),
        bounded(random, 0.004, 0.003, 0, 0.015));
  }

  /** Normal within bounds, by drawing again. */
  private static double bounded(
      Random random, double mean, double deviation, double low, double high) {
    double value = mean + deviation * random.nextGaussian();
    return value >= low && value <= high ? value : bounded(random, mean, deviation, low, high);
  }

  /** Lognormal with a median and a relative deviation within bounds, by drawing again. */
  private static double positive(
      Random random, double median, double relative, double low, double high) {
    double value = median * StrictMath.exp(relative * random.nextGaussian());
    return value >= low && value <= high ? value : positive(random, median, relative, low, high);
  }
}
