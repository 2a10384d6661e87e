package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.roastfield.lab.heldout.HeldOutScores;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.score.PairedScores;
import org.roastfield.lab.score.ScoreSummary;

/** Scores on cooks that were kept aside, as one HTML file. */
public final class HeldOutReport {

  private HeldOutReport() {}

  /** The report; the same arguments give the same text. */
  public static String html(HeldOutScores scores, RunManifest manifest) {
    Page page =
        Page.start(
            "Cooks kept aside",
            "Scores",
            List.of(),
            List.of(
                "Each of "
                    + scores.errors().size()
                    + " cooks in turn was foretold from what the others on its cooker say. Times"
                    + " are of the core reading two kelvin below the pull, in the chamber as it was"
                    + " logged."));
    page.section("Traces foretold by the profile alone", part -> part.table(errors(scores)));
    scores
        .forecasts()
        .forEach(
            (share, by) ->
                page.section(
                    "With " + Math.round(100 * share) + " % of the way seen",
                    part -> forecasts(part, scores, share, by)));
    if (!scores.leftOut().isEmpty()) {
      page.section("Left out", part -> scores.leftOut().forEach(part::paragraph));
    }
    page.section("What it was made from", part -> ReportParts.manifest(part, manifest));
    return page.finished();
  }

  private static Table errors(HeldOutScores scores) {
    List<List<String>> rows = new ArrayList<>();
    for (HeldOutScores.TraceError error : scores.errors()) {
      rows.add(
          Table.row(
              error.cook(),
              List.of(
                  Integer.toString(error.others()), Numbers.decimal(error.rootMeanSquare(), 2))));
    }
    return Table.ofNumbers(
        "Root mean square of computed less read core, in the first stage",
        List.of("cook", "cooks in its profile", "error, K"),
        rows);
  }

  private static void forecasts(
      Page part, HeldOutScores scores, double share, Map<String, ScoreSummary> by) {
    part.table(ScorePictures.scores(by));
    part.paragraph(
        skill(scores, share, HeldOutScores.PRIOR) + " " + skill(scores, share, HeldOutScores.LINE));
    part.figure(
        new ScorePictures(scores.of(share, HeldOutScores.PROFILE))
            .figure("Forecasts from profile and log so far"));
  }

  private static String skill(HeldOutScores scores, double share, String reference) {
    PairedScores paired =
        PairedScores.ofCrps(scores.of(share, HeldOutScores.PROFILE), scores.of(share, reference));
    return "CRPS skill of profile and log over "
        + reference
        + ": "
        + Numbers.decimal(paired.skill(), 2)
        + ".";
  }
}
