package org.roastfield.core.outcome;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * How the places of a cut stand to published minima. The least of all places counts, wherever a
 * probe may be.
 *
 * @param kind of cut
 * @param findings each against one thing published
 * @param lethality of the place where it is least, 6.5-log column, in powers of ten; 0 where no
 *     table bears on the kind
 * @param surfaceLethality the same of the faces' least
 * @param growthTime longest time that a place spends between 40 and 140 °F [s]
 * @param riseTime longest time that a place takes from 50 to 130 °F [s]; empty if one does not get
 *     there
 */
public record Safety(
    CutKind kind,
    List<Finding> findings,
    double lethality,
    double surfaceLethality,
    double growthTime,
    OptionalDouble riseTime) {

  private static final double RISE_FROM = Temperatures.fahrenheit(50);
  private static final double RISE_TO = Temperatures.fahrenheit(130);
  private static final double RISE_LIMIT = 6 * 3600;
  private static final double COOL_MIDDLE = Temperatures.fahrenheit(80);
  private static final double COOL_LAST = Temperatures.fahrenheit(40);

  private static final List<Fall> FALLS =
      List.of(
          new Fall(RISE_TO, COOL_MIDDLE, 1.5 * 3600), new Fall(COOL_MIDDLE, COOL_LAST, 5 * 3600));

  private static final double GROWTH_HIGH = Temperatures.fahrenheit(140);

  /** Where the limit of the rise is published. */
  public static final String RISE_SOURCE =
      "USDA Food Safety and Inspection Service, Cooking Guideline (revised Appendix A), 2021:"
          + " 50 to 130 °F in at most 6 h; from memory";

  /** Where the range of growth is published. */
  public static final String GROWTH_SOURCE =
      "USDA Food Safety and Inspection Service, 40 to 140 °F; other agencies say 5 to 57 °C or 8 to"
          + " 63 °C";

  private static final String COOL_SOURCE =
      "USDA Food Safety and Inspection Service, Appendix B, option 1";

  private static final String TABLE_CAUTION =
      "The table asks for humidity too, and dry faces are slower to die off than it says; at its"
          + " coolest rows tests did not always reach it.";

  /** Copies the list. */
  public Safety {
    findings = List.copyOf(findings);
  }

  /**
   * Findings for the places of a cut.
   *
   * @param places histories from one end of the cross-section to the other, two or more; the last
   *     is a face
   * @param twoFaced whether the first is a face too
   */
  public static Safety of(CutKind kind, List<TemperatureHistory> places, boolean twoFaced) {
    Check.inRange("number of places", places.size(), 2, Integer.MAX_VALUE);
    List<Finding> findings = new ArrayList<>();
    for (PublishedMinimum minimum : PublishedMinimum.of(kind)) {
      double margin = least(places, minimum::margin);
      findings.add(
          finding(
              "minimum for " + minimum.of(),
              minimum.source(),
              margin,
              Finding.Unit.KELVIN,
              kind.caution()));
    }
    if (kind.hasHoldTables()) {
      findings.add(table(HoldTable.LOG_6_5, places));
      findings.add(table(HoldTable.LOG_7, places));
    }
    findings.add(rise(places));
    cooling(places).ifPresent(margin -> findings.add(cooling(margin)));
    List<TemperatureHistory> faces = new ArrayList<>(List.of(places.get(places.size() - 1)));
    if (twoFaced) {
      faces.add(places.get(0));
    }
    return new Safety(
        kind,
        findings,
        kind.hasHoldTables() ? least(places, HoldTable.LOG_6_5::lethality) : 0,
        kind.hasHoldTables() ? least(faces, HoldTable.LOG_6_5::lethality) : 0,
        -least(places, place -> -place.timeBetween(COOL_LAST, GROWTH_HIGH)),
        riseTime(places));
  }

  private static Finding table(HoldTable table, List<TemperatureHistory> places) {
    String name =
        "table of hold times for a reduction by "
            + Double.toString(table.logs())
            + " powers of ten";
    double margin =
        least(
            places,
            place -> {
              double excess = table.lethality(place) - table.logs();
              return table.reachesInstantRow(place) ? Math.max(0, excess) : excess;
            });
    return finding(name, HoldTable.SOURCE, margin, Finding.Unit.LOG, TABLE_CAUTION);
  }

  /** The slowest rise of all places counts; one that does not get there misses by all of it. */
  private static Finding rise(List<TemperatureHistory> places) {
    OptionalDouble time = riseTime(places);
    double spent = -least(places, place -> -place.timeBetween(RISE_FROM, RISE_TO));
    double margin = RISE_LIMIT - time.orElse(Math.max(spent, RISE_LIMIT + 1));
    String caution =
        time.isPresent()
            ? "Bacteria grow, and some make poisons that heat leaves behind."
            : "A place in the cut does not get to 54.4 °C at all: counted as if the 6 h were over.";
    return finding(
        "rise from 10 to 54.4 °C in 6 h", RISE_SOURCE, margin, Finding.Unit.SECOND, caution);
  }

  private static OptionalDouble riseTime(List<TemperatureHistory> places) {
    double longest = 0;
    for (TemperatureHistory place : places) {
      OptionalDouble from = place.firstRise(RISE_FROM);
      OptionalDouble to = place.firstRise(RISE_TO);
      if (from.isEmpty() || to.isEmpty()) {
        return OptionalDouble.empty();
      }
      longest = Math.max(longest, to.getAsDouble() - from.getAsDouble());
    }
    return OptionalDouble.of(longest);
  }

  /**
   * Least margin of the fall after the peak. Empty if a place has not cooled to the end of the two
   * spans, and no limit is over yet.
   */
  private static OptionalDouble cooling(List<TemperatureHistory> places) {
    double margin = Double.POSITIVE_INFINITY;
    boolean known = true;
    for (TemperatureHistory place : places) {
      TemperatureHistory after = place.fromWarmest();
      for (Fall fall : FALLS) {
        double spent = after.timeBetween(fall.to(), fall.from());
        boolean over = after.firstFall(fall.to()).isPresent();
        known &= over;
        margin = over || spent > fall.limit() ? Math.min(margin, fall.limit() - spent) : margin;
      }
    }
    return known || margin < 0 ? OptionalDouble.of(margin) : OptionalDouble.empty();
  }

  private static Finding cooling(double margin) {
    return finding(
        "cooling from 130 to 80 °F in 1.5 h, and to 40 °F in 5 h more",
        COOL_SOURCE,
        margin,
        Finding.Unit.SECOND,
        "As far as the cook was computed: what stands after its end is not in the number.");
  }

  private static Finding finding(
      String minimum, String source, double margin, Finding.Unit unit, String caution) {
    return new Finding(minimum, source, margin >= 0, margin, unit, OptionalDouble.empty(), caution);
  }

  private static double least(
      List<TemperatureHistory> places, ToDoubleFunction<TemperatureHistory> of) {
    return places.stream().mapToDouble(of).min().orElseThrow();
  }

  /**
   * The same with the share of several computations of the cook that meet each minimum. One that
   * shows no finding of a name does not meet it; a minimum that only some of them show, and miss,
   * joins the findings.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Safety withChances(List<Safety> all) {
    Check.inRange("number of computations", all.size(), 1, Integer.MAX_VALUE);
    Map<String, Finding> named = new LinkedHashMap<>();
    findings.forEach(finding -> named.put(finding.minimum(), finding));
    all.stream()
        .flatMap(one -> one.findings().stream())
        .filter(finding -> !finding.met())
        .forEach(finding -> named.putIfAbsent(finding.minimum(), finding));
    List<Finding> with = new ArrayList<>();
    for (Finding finding : named.values()) {
      long met = all.stream().filter(one -> one.meets(finding.minimum())).count();
      with.add(finding.withChance((double) met / all.size()));
    }
    return new Safety(kind, with, lethality, surfaceLethality, growthTime, riseTime);
  }

  /** Whether there is a finding of a name that the estimate meets. */
  public boolean meets(String minimum) {
    return findings.stream()
        .anyMatch(finding -> finding.minimum().equals(minimum) && finding.met());
  }

  /**
   * A span of cooling and its limit.
   *
   * @param from [K]
   * @param to [K]
   * @param limit [s]
   */
  private record Fall(double from, double to, double limit) {}
}
