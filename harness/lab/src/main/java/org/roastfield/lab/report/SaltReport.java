package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.salting.SaltPlan;

/** Salt in a cut as one HTML file. */
public final class SaltReport {

  private static final String MADE_UP =
      "Made-up numbers: a demonstration, not a cook that took place";

  private static final int PLACES = 96;

  private SaltReport() {}

  /** The report: a file that needs no script, no network and no other file. */
  public static String html(SaltPlan plan, RunManifest manifest) {
    return Page.start(
            plan.file().name(),
            "Salt before the cook",
            plan.file().madeUp() ? List.of(MADE_UP) : List.of(),
            List.of("Computed from " + plan.file().fileName() + "; nothing here was measured."))
        .section("How early", page -> page.table(hours(plan)))
        .section("Where the salt is", page -> page.figure(figure(plan)))
        .section("What it rests on", page -> SaltPlan.restsOn().forEach(page::paragraph))
        .section("Cautions", page -> SaltPlan.cautions().forEach(page::paragraph))
        .section("What it was made from", page -> ReportParts.manifest(page, manifest))
        .finished();
  }

  private static Table hours(SaltPlan plan) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("by the middle diffusivity", text(plan.hours())));
    rows.add(List.of("if salt is fast", text(plan.fastHours())));
    rows.add(List.of("if salt is slow", text(plan.slowHours())));
    rows.add(List.of("for the middle of the cut", text(plan.middleHours())));
    return Table.ofWords(
        String.format(
            Locale.ROOT,
            "Hours before the cut goes on, for %.0f %% of the face's salt %.1f mm below it",
            100 * plan.wish().evenness(),
            1000 * plan.depth()),
        List.of("estimate", "hours"),
        rows);
  }

  private static String text(OptionalDouble hours) {
    return hours.isPresent()
        ? Numbers.decimal(hours.getAsDouble(), 0)
        : "more than the 240 that were computed";
  }

  private static Figure figure(SaltPlan plan) {
    List<Curve> curves = new ArrayList<>();
    Curve.Role[] roles = {
      Curve.Role.FIRST, Curve.Role.SECOND, Curve.Role.THIRD, Curve.Role.FOURTH, Curve.Role.PROBE_TWO
    };
    for (int i = 0; i < SaltPlan.HOURS.size(); i++) {
      double hours = SaltPlan.HOURS.get(i);
      List<Point> points = new ArrayList<>();
      for (int place = 0; place <= PLACES; place++) {
        double depth = plan.middle() * place / PLACES;
        points.add(new Point(1000 * depth, 100 * Math.max(0, plan.share(depth, hours))));
      }
      curves.add(new Curve(Numbers.decimal(hours, 0) + " h", roles[i], points));
    }
    ProfileFigure profile = new ProfileFigure(curves, "middle", ProfileFigure.Quantity.SALT);
    String title = "Salt over depth";
    return new Figure(
        title,
        "Share of the raw meat that is salt, some hours after it was put on; all of it would be "
            + Numbers.decimal(100 * plan.wish().share(), 1)
            + " % everywhere.",
        List.of(profile.panel(title)),
        List.of(profile.table("Salt at depths, %")));
  }
}
