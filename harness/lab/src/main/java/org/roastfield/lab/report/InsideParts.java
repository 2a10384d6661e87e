package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.Safety;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Inside;
import org.roastfield.lab.timeline.Spread;
import org.roastfield.lab.timeline.Station;
import org.roastfield.lab.timeline.TemperatureScale;

/** Parts of a report about the inside of a cut. */
final class InsideParts {

  private InsideParts() {}

  /** Pictures of the slice, and the numbers about it. */
  static void slice(Page page, ComputedCook cook) {
    SliceFigure.of(cook, TemperatureScale.CELSIUS).forEach(page::figure);
    page.table(numbers("Inside the cut, by the estimate", cook.inside()));
    for (Station station : cook.stations()) {
      page.table(numbers("Inside the " + station.name(), station.inside()));
    }
    cook.inside().spread().ifPresent(spread -> page.table(spread(spread)));
  }

  private static Table numbers(String caption, Inside inside) {
    List<List<String>> rows = new ArrayList<>();
    for (Inside.Line line : inside.numbers()) {
      rows.add(List.of(line.subject(), line.text(), line.status().word(), line.source()));
    }
    return Table.ofWords(caption, List.of("what", "how much", "status", "rests on"), rows);
  }

  private static Table spread(Spread spread) {
    List<List<String>> rows = new ArrayList<>();
    for (Spread.Row row : spread.rows()) {
      rows.add(List.of(row.subject(), row.text(TemperatureScale.CELSIUS)));
    }
    return Table.ofWords(spread.words(), List.of("what", "10 / 50 / 90 % of the cooks"), rows);
  }

  /** How the estimate stands to published minima. */
  static void published(Page page, ComputedCook cook) {
    LethalityFigure.of(cook).ifPresent(page::figure);
    List<List<String>> rows = new ArrayList<>();
    for (Safety safety : cook.inside().safety()) {
      for (Finding finding : safety.findings()) {
        rows.add(
            List.of(
                safety.kind().word(),
                finding.minimum(),
                finding.met() ? "by the estimate yes" : "by the estimate NO",
                margin(finding),
                chance(finding.chance()),
                finding.source()));
      }
    }
    if (rows.isEmpty()) {
      page.paragraph("No minimum for meat is applied to a vegetable. " + Finding.DEFERENCE);
    } else {
      page.table(
          Table.ofWords(
              "Published minima, for each kind that the cut may be. " + Finding.DEFERENCE,
              List.of("kind", "published", "met", "margin", "share of drawn cooks", "source"),
              rows));
    }
  }

  private static String margin(Finding finding) {
    return switch (finding.unit()) {
      case KELVIN -> Numbers.signed(finding.margin(), 1) + " K";
      case LOG -> Numbers.signed(finding.margin(), 1) + " powers of ten";
      case SECOND -> Numbers.signed(finding.margin() / 3600, 1) + " h";
    };
  }

  private static String chance(OptionalDouble share) {
    return share.isPresent()
        ? Numbers.decimal(100 * share.getAsDouble(), 0) + " %"
        : "not computed";
  }
}
