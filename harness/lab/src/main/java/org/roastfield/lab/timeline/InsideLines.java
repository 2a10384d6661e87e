package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.outcome.Browning;
import org.roastfield.core.outcome.Colour;
import org.roastfield.core.outcome.CutOutcomes;
import org.roastfield.core.outcome.FirstOrder;
import org.roastfield.core.outcome.HoldTable;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.outcome.Status;
import org.roastfield.core.outcome.Tenderness;
import org.roastfield.lab.files.Food;

/** The numbers about the inside of a cut in words. */
final class InsideLines {

  /** Lethality above which its number says nothing more [powers of ten]. */
  private static final double MANY = 99;

  private final List<Inside.Line> lines = new ArrayList<>();

  private InsideLines() {}

  /**
   * @param tight what meat loses that holds its water better
   * @param loose what meat loses that holds it less well
   */
  static List<Inside.Line> of(Food food, CutOutcomes outcomes, Juice tight, Juice loose) {
    InsideLines lines = new InsideLines();
    outcomes.colour().ifPresent(lines::colour);
    lines.crust(outcomes.browning());
    if (food != Food.VEGETABLE) {
      lines.juice(outcomes.juice(), tight, loose);
      lines.tenderness(outcomes.tenderness());
      lines.safety(outcomes.safety());
    }
    return lines.lines;
  }

  private void add(String subject, String text, Status status, String source) {
    lines.add(new Inside.Line(subject, text, status, source));
  }

  private void colour(Colour colour) {
    add(
        "red colour lost",
        String.format(
            Locale.ROOT,
            "%.0f %% at least, %.0f %% on average (6.5 %% looks rare, 93 %% well done)",
            100 * colour.changed().least(),
            100 * colour.changed().mean()),
        colour.pigment().status(),
        colour.pigment().source());
    add(
        "look by that",
        String.format(
            Locale.ROOT,
            "%.1f %% of it rare, %.1f %% between, %.1f %% well done",
            100 * colour.rare(),
            100 * colour.between(),
            100 * colour.wellDone()),
        colour.pigment().status(),
        colour.pigment().source() + "; time at temperature, not the highest alone");
  }

  private void crust(Browning crust) {
    if (crust.dryDepth().isPresent()) {
      String depth = String.format(Locale.ROOT, "%.1f mm", 1000 * crust.dryDepth().getAsDouble());
      add("dry layer", depth, Status.ASSUMED, "law of a drying face, its constants by three cooks");
    }
    add(
        "browning index",
        String.format(
            Locale.ROOT,
            "%.0f (%.0f to %.0f) of 52; face above 100 °C for %.1f min",
            crust.middle(),
            crust.low(),
            crust.high(),
            crust.timeDry() / 60),
        Browning.STATUS,
        "Zanoni, Peri and Bruno 1995, bread crumb, 3 to 8 times as fast");
  }

  private void juice(Juice juice, Juice tight, Juice loose) {
    add(
        "lost of the raw mass",
        String.format(
            Locale.ROOT,
            "%.1f %% evaporated + %.1f %% (%.0f to %.0f %%) dripped = %.1f %%; %.0f %% left",
            100 * juice.evaporated(),
            100 * juice.dripped(),
            100 * tight.dripped(),
            100 * loose.dripped(),
            100 * juice.total(),
            100 * juice.left()),
        Juice.DRIP_STATUS,
        Juice.DRIP_SOURCE);
  }

  private void tenderness(Tenderness tender) {
    add(
        "actin hardened",
        shares(tender.actin(), tender.actinAtCore()),
        FirstOrder.ACTIN.status(),
        FirstOrder.ACTIN.source());
    add(
        "collagen to gelatine",
        shares(tender.collagen(), tender.collagenAtCore()),
        FirstOrder.COLLAGEN.status(),
        FirstOrder.COLLAGEN.source());
    add(
        "fat molten",
        String.format(
            Locale.ROOT,
            "%.0f %%; about %.0f %% runs off",
            100 * tender.fatMelted(),
            100 * tender.runOff()),
        Tenderness.FAT_STATUS,
        "melting range of 20 to 50 °C; share that runs off is a judgement");
  }

  private static String shares(double mean, double least) {
    return String.format(
        Locale.ROOT, "%.0f %% on average, %.0f %% at the least", 100 * mean, 100 * least);
  }

  private void safety(List<Safety> kinds) {
    Safety first = kinds.get(0);
    add(
        "rise to 54.4 °C",
        first.riseTime().isPresent()
            ? String.format(
                Locale.ROOT,
                "%.1f h from 10 °C in the slowest place, held against 6 h",
                first.riseTime().getAsDouble() / 3600)
            : "not in every place",
        Status.LITERATURE,
        Safety.RISE_SOURCE);
    add(
        "growth range",
        String.format(
            Locale.ROOT,
            "%.1f h from 4.4 to 60 °C in the slowest place",
            first.growthTime() / 3600),
        Status.LITERATURE,
        Safety.GROWTH_SOURCE);
    Optional<Safety> table = kinds.stream().filter(one -> one.kind().hasHoldTables()).findFirst();
    table.ifPresent(
        safety ->
            add(
                "lethality",
                many(safety.lethality())
                    + " in the place with the least, "
                    + many(safety.surfaceLethality())
                    + " at the face [powers of ten]",
                Status.LITERATURE,
                "6.5-log fit and table, the smaller; " + HoldTable.SOURCE));
  }

  private static String many(double lethality) {
    return lethality > MANY ? "over 99" : String.format(Locale.ROOT, "%.1f", lethality);
  }
}
