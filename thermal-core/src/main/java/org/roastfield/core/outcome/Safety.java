package org.roastfield.core.outcome;

import java.util.ArrayList;
import java.util.List;
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
 */
public record Safety(
    CutKind kind,
    List<Finding> findings,
    double lethality,
    double surfaceLethality,
    double growthTime) {

  private static final double RISE_FROM = Temperatures.fahrenheit(50);
  private static final double RISE_TO = Temperatures.fahrenheit(130);
  private static final double RISE_LIMIT = 6 * 3600;
  private static final double COOL_MIDDLE = Temperatures.fahrenheit(80);
  private static final double COOL_FIRST_LIMIT = 1.5 * 3600;
  private static final double COOL_LAST = Temperatures.fahrenheit(40);
  private static final double COOL_LAST_LIMIT = 5 * 3600;
  private static final double GROWTH_HIGH = Temperatures.fahrenheit(140);

  private static final String RISE_SOURCE =
      "USDA Food Safety and Inspection Service, Cooking Guideline (revised Appendix A), 2021:"
          + " 50 to 130 °F in at most 6 h; from memory";

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
        -least(places, place -> -place.timeBetween(COOL_LAST, GROWTH_HIGH)));
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
    double margin = least(places, Safety::riseMargin);
    boolean reached = places.stream().allMatch(place -> place.highest() >= RISE_TO);
    String caution =
        reached
            ? "Bacteria grow, and some make poisons that heat leaves behind."
            : "A place in the cut does not get to 54.4 °C at all: counted as if the 6 h were over.";
    return finding(
        "rise from 10 to 54.4 °C in 6 h", RISE_SOURCE, margin, Finding.Unit.SECOND, caution);
  }

  private static double riseMargin(TemperatureHistory place) {
    OptionalDouble from = place.firstRise(RISE_FROM);
    OptionalDouble to = place.firstRise(RISE_TO);
    if (from.isEmpty() || to.isEmpty()) {
      double spent = place.timeBetween(RISE_FROM, RISE_TO);
      return Math.min(-1, RISE_LIMIT - spent);
    }
    return RISE_LIMIT - (to.getAsDouble() - from.getAsDouble());
  }

  /** Least margin of the fall after the peak; empty if a place has not cooled to 80 °F. */
  private static OptionalDouble cooling(List<TemperatureHistory> places) {
    double margin = Double.POSITIVE_INFINITY;
    for (TemperatureHistory place : places) {
      TemperatureHistory after = place.fromWarmest();
      OptionalDouble from = after.firstFall(RISE_TO);
      OptionalDouble middle = after.firstFall(COOL_MIDDLE);
      if (from.isEmpty() || middle.isEmpty()) {
        return OptionalDouble.empty();
      }
      double first = middle.getAsDouble() - from.getAsDouble();
      margin = Math.min(margin, COOL_FIRST_LIMIT - first);
      OptionalDouble last = after.firstFall(COOL_LAST);
      double second = after.timeBetween(COOL_LAST, COOL_MIDDLE);
      margin = Math.min(margin, last.isPresent() ? COOL_LAST_LIMIT - second : margin);
    }
    return OptionalDouble.of(margin);
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
   * The first of several computations of one cook, with the share of all that meet each minimum.
   *
   * @throws IllegalArgumentException if there is none, or their findings are not the same ones
   */
  public static Safety withChances(List<Safety> all) {
    Check.inRange("number of computations", all.size(), 1, Integer.MAX_VALUE);
    Safety first = all.get(0);
    List<Finding> findings = new ArrayList<>();
    for (Finding finding : first.findings()) {
      long met = all.stream().filter(one -> one.meets(finding.minimum())).count();
      findings.add(finding.withChance((double) met / all.size()));
    }
    return new Safety(
        first.kind(), findings, first.lethality(), first.surfaceLethality(), first.growthTime());
  }

  /** Whether the estimate meets a minimum of a name. */
  public boolean meets(String minimum) {
    return findings.stream()
        .filter(finding -> finding.minimum().equals(minimum))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException("minimum must be among the findings, was " + minimum))
        .met();
  }
}
