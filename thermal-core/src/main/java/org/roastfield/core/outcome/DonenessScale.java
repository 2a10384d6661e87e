package org.roastfield.core.outcome;

import java.util.List;
import org.roastfield.core.units.Temperatures;

/**
 * Names for highest temperatures, from one source; scales differ by 5-11 K and are never mixed.
 *
 * @param name says whose names these are
 * @param source where the bounds come from
 * @param status what they rest on
 * @param bands from cold to hot, without gaps
 */
public record DonenessScale(String name, String source, Status status, List<Band> bands) {

  /**
   * A name of a scale.
   *
   * @param name as the source has it
   * @param from temperature at which it begins [K]; 0 for the first
   */
  public record Band(String name, double from) {}

  /** Trade names for beef and lamb. Where the book leaves a gap, it counts to the colder name. */
  public static final DonenessScale TRADE =
      new DonenessScale(
          "trade",
          "a trade reference book, read in a copy of it; gaps between its ranges count to the"
              + " colder name",
          Status.LITERATURE,
          List.of(
              band("below blue", -273.15),
              band("blue", 46),
              band("rare", 52),
              band("medium-rare", 55),
              band("medium", 60),
              band("medium-well", 65),
              band("well done", 71)));

  /**
   * End points of steaks in research. 62.8, 71.1 and 76.7 °C were read, 55 and 60 °C are from
   * memory; each counts as the lower bound of its name.
   */
  public static final DonenessScale RESEARCH =
      new DonenessScale(
          "research",
          "end points of a meat research association's steak cookery; the lower two from memory;"
              + " each taken as where its name begins",
          Status.LITERATURE,
          List.of(
              band("below very rare", -273.15),
              band("very rare", 55),
              band("rare", 60),
              band("medium-rare", 62.8),
              band("medium", 71.1),
              band("well done", 76.7)));

  /** Scales that a wish can be stated on. */
  public static final List<DonenessScale> NAMED = List.of(TRADE, RESEARCH);

  /** Copies the list, and checks its order. */
  public DonenessScale {
    bands = List.copyOf(bands);
    for (int i = 0; i < bands.size(); i++) {
      double before = i == 0 ? -1 : bands.get(i - 1).from();
      if (!(bands.get(i).from() > before)) {
        throw new IllegalArgumentException(
            "bands must begin at increasing temperatures, was " + bands.get(i));
      }
    }
    if (bands.isEmpty() || bands.get(0).from() > 1e-9) {
      throw new IllegalArgumentException("bands must begin at 0 K, were " + bands);
    }
  }

  /** Two bands on either side of the temperature of a published minimum; not a doneness. */
  public static DonenessScale around(PublishedMinimum minimum) {
    return new DonenessScale(
        "agency minimum for " + minimum.of(),
        minimum.source(),
        Status.LITERATURE,
        List.of(
            new Band("below the published temperature", 0),
            new Band("at or above the published temperature", minimum.temperature())));
  }

  /** Degrees of doneness by name, from least to most done: all bands but the one below them. */
  public List<String> degrees() {
    return bands.stream().skip(1).map(Band::name).toList();
  }

  /** Index of the band that a temperature [K] falls in. */
  public int indexAt(double temperature) {
    int i = bands.size() - 1;
    while (i > 0 && temperature < bands.get(i).from()) {
      i--;
    }
    return i;
  }

  /** Where a band ends [K]; infinite for the last. */
  public double end(int band) {
    return band + 1 < bands.size() ? bands.get(band + 1).from() : Double.POSITIVE_INFINITY;
  }

  private static Band band(String name, double celsius) {
    return new Band(name, celsius == -273.15 ? 0 : Temperatures.celsius(celsius));
  }
}
