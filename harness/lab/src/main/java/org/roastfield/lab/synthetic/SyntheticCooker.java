package org.roastfield.lab.synthetic;

import java.util.List;
import java.util.Optional;
import org.roastfield.core.units.Temperatures;

/**
 * A cooker that does not exist, with what is true of it: what a calibration of its logs should
 * find.
 *
 * <p>The priors that {@link #drawn} draws from are assumed, from the ranges of the literature: the
 * median is the usual value, the spread that of single cookers and cooks together, of which three
 * quarters of the variance of the heat transfer are laid on the cooker (assumed).
 *
 * @param id lower-case letters, digits and hyphens
 * @param title shown
 * @param convection factor of the stated heat transfer coefficient, above 0
 * @param wallOffset walls less air [K]
 * @param humidityRatio of the chamber [kg water / kg dry air], at least 0
 * @param chamberBias what its chamber probe shows too much [K]
 * @param grate temperature of its bars in the sear [K]
 * @param readingInterval between the rows of its logs [s], above 0
 * @param fire how the chamber strays
 */
public record SyntheticCooker(
    String id,
    String title,
    double convection,
    double wallOffset,
    double humidityRatio,
    double chamberBias,
    double grate,
    double readingInterval,
    Fire fire) {

  /** Standard deviation of the logarithm of {@link #convection} over cookers. */
  public static final double CONVECTION_DEVIATION = 0.26;

  /** The same over the cooks on one cooker: together with it 0.30. */
  public static final double CONVECTION_DEVIATION_OF_COOKS = 0.15;

  private static final SyntheticCooker SLIPWAY_PIT =
      new SyntheticCooker(
          "slipway-pit",
          "the slipway pit, lidded, of brick and steel, charcoal",
          1.12,
          4,
          0.035,
          2.5,
          Temperatures.celsius(260),
          60,
          new Fire(6, 1800, 3600, 9000));

  private static final SyntheticCooker NET_LOFT_OVEN =
      new SyntheticCooker(
          "net-loft-oven",
          "the net loft's oven, thick clay, wood, slow and damp",
          0.82,
          11,
          0.058,
          -3,
          Temperatures.celsius(225),
          60,
          new Fire(3, 5400, 7200, 18_000));

  private static final SyntheticCooker PONTOON_BARREL =
      new SyntheticCooker(
          "pontoon-barrel",
          "the pontoon's barrel, thin steel in the wind, charcoal",
          1.45,
          -6,
          0.021,
          5,
          Temperatures.celsius(290),
          30,
          new Fire(9, 1500, 2700, 6000));

  /** Checks the ranges. */
  public SyntheticCooker {
    if (!id.matches("[a-z0-9][a-z0-9-]{0,39}")) {
      throw new IllegalArgumentException(
          "id must be lower-case letters, digits and hyphens, at most 40, was \"" + id + "\"");
    }
    if (!(convection > 0 && humidityRatio >= 0 && grate > 0 && readingInterval > 0)) {
      throw new IllegalArgumentException(
          "convection, grate and readingInterval must be above 0 and humidityRatio at least 0, were "
              + List.of(convection, grate, readingInterval, humidityRatio));
    }
  }

  /** The three cookers of the boathouse. Their numbers are made up. */
  public static List<SyntheticCooker> boathouse() {
    return List.of(SLIPWAY_PIT, NET_LOFT_OVEN, PONTOON_BARREL);
  }

  /** Cooker of the boathouse of an id, if it has one. */
  public static Optional<SyntheticCooker> named(String id) {
    return boathouse().stream().filter(cooker -> cooker.id().equals(id)).findFirst();
  }

  /** A cooker drawn from the priors; the same seed draws the same. */
  public static SyntheticCooker drawn(long seed) {
    Noise noise = Noise.ofSeed(seed, TrueValues.COOKER_STREAM);
    return new SyntheticCooker(
        "drawn-" + Long.toUnsignedString(seed, 36),
        "a cooker drawn from the priors",
        noise.logNormal(1, CONVECTION_DEVIATION, 0.5, 2.5),
        noise.normal(0, 8, -25, 25),
        noise.logNormal(0.035, 0.5, 0.008, 0.15),
        noise.normal(0, 4, -15, 15),
        noise.normal(
            Temperatures.celsius(260), 40, Temperatures.celsius(150), Temperatures.celsius(400)),
        60,
        new Fire(
            noise.uniform(3, 10),
            noise.uniform(1200, 3600),
            noise.uniform(2400, 7200),
            noise.uniform(6000, 18_000)));
  }
}
