package org.roastfield.lab.timeline;

import java.util.Locale;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.PublishedMinimum;

/** How an estimate stands to something published, in a sentence or two. */
final class FindingWords {

  private FindingWords() {}

  static String of(Finding finding, CutKind kind, Inside inside, TemperatureScale scale) {
    String stands =
        switch (finding.unit()) {
          case KELVIN -> minimum(finding, kind, inside, scale);
          case LOG ->
              against("the place with the least lethality", finding)
                  + String.format(
                      Locale.ROOT, ", by %.1f powers of ten.", Math.abs(finding.margin()));
          case SECOND -> against("the slowest place", finding) + hours(finding.margin());
        };
    return stands + chance(finding, inside);
  }

  /** Less than a minute is no margin to speak of. */
  private static String hours(double margin) {
    return Math.abs(margin) < 60
        ? "."
        : String.format(Locale.ROOT, ", by %.1f h.", Math.abs(margin) / 3600);
  }

  private static String against(String place, Finding finding) {
    return "By the estimate "
        + place
        + (finding.met() ? " meets" : " does NOT meet")
        + " the published "
        + finding.minimum();
  }

  private static String chance(Finding finding, Inside inside) {
    if (finding.chance().isEmpty()) {
      return "";
    }
    int computed = inside.spread().orElseThrow().computed();
    long met = Math.round(finding.chance().getAsDouble() * computed);
    return String.format(
        Locale.ROOT,
        " With inputs drawn around the stated ones %d of %d cooks meet it: %s.",
        met,
        computed,
        share(finding.chance().getAsDouble()));
  }

  /** No share of draws is a certainty. */
  private static String share(double share) {
    if (share < 0.005) {
      return "under 1 %";
    }
    return share > 0.995 ? "over 99 %" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static String minimum(
      Finding finding, CutKind kind, Inside inside, TemperatureScale scale) {
    PublishedMinimum minimum =
        PublishedMinimum.of(kind).stream()
            .filter(one -> finding.minimum().endsWith(" " + one.of()))
            .findFirst()
            .orElseThrow();
    return "The coldest place gets to "
        + scale.text(inside.outcomes().coldest())
        + " by the estimate; for as long as is asked it is "
        + scale.differenceText(Math.abs(finding.margin()))
        + (finding.met() ? " above" : " BELOW")
        + " the published minimum for "
        + minimum.of()
        + ", "
        + scale.text(minimum.temperature())
        + (minimum.then().isEmpty() ? "" : " " + minimum.then())
        + ".";
  }
}
