package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.core.outcome.Browning;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.outcome.CrossSection;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.outcome.FirstOrder;
import org.roastfield.core.outcome.Juice;
import org.roastfield.core.outcome.PublishedMinimum;
import org.roastfield.core.outcome.Status;
import org.roastfield.core.outcome.Tenderness;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Food;

/**
 * What a computed cut is like inside.
 *
 * @param highest temperature reached over the cross-section [K]
 * @param doneness one for each scale that bears on the food, never mixed
 * @param numbers everything else
 */
public record Inside(CrossSection highest, List<Doneness> doneness, List<Line> numbers) {

  /**
   * A number about the inside.
   *
   * @param subject what it is
   * @param text the number with its unit
   * @param status what it rests on
   * @param source in words, or empty
   */
  public record Line(String subject, String text, Status status, String source) {}

  /** Copies the lists. */
  public Inside {
    doneness = List.copyOf(doneness);
    numbers = List.copyOf(numbers);
  }

  /** Of a computed cook; a vegetable has a crust alone. */
  public static Inside of(CookFile file, SimulationResult result) {
    CookedCut cut = CookedCut.of(result);
    List<Doneness> doneness = scales(file.food()).stream().map(cut::doneness).toList();
    List<Line> numbers = new ArrayList<>();
    if (file.food() != Food.VEGETABLE) {
      colour(file.food(), cut, numbers);
    }
    crust(Browning.of(cut, result), numbers);
    if (file.food() != Food.VEGETABLE) {
      juice(file, cut, result, numbers);
      tenderness(Tenderness.of(cut), numbers);
    }
    return new Inside(cut.highest(), doneness, numbers);
  }

  private static List<DonenessScale> scales(Food food) {
    return switch (food) {
      case BEEF, LAMB, PORK, UNSTATED -> List.of(DonenessScale.TRADE, DonenessScale.RESEARCH);
      case POULTRY -> List.of(agency(CutKind.POULTRY));
      case FISH -> List.of(agency(CutKind.FISH));
      case GROUND -> List.of(agency(CutKind.GROUND));
      case VEGETABLE -> List.of();
    };
  }

  private static DonenessScale agency(CutKind kind) {
    return DonenessScale.around(PublishedMinimum.of(kind).get(0));
  }

  private static void colour(Food food, CookedCut cut, List<Line> numbers) {
    if (food == Food.POULTRY || food == Food.FISH) {
      return;
    }
    FirstOrder pigment = food == Food.LAMB ? FirstOrder.MYOGLOBIN_OF_LAMB : FirstOrder.MYOGLOBIN;
    CrossSection changed = cut.over(pigment::changed);
    numbers.add(
        new Line(
            "red colour lost",
            String.format(
                Locale.ROOT,
                "%.0f %% at least, %.0f %% on average (6.5 %% looks rare, 93 %% well done)",
                100 * changed.least(),
                100 * changed.mean()),
            pigment.status(),
            pigment.source()));
  }

  private static void crust(Browning crust, List<Line> numbers) {
    if (crust.dryDepth().isPresent()) {
      String depth = String.format(Locale.ROOT, "%.1f mm", 1000 * crust.dryDepth().getAsDouble());
      numbers.add(new Line("dry layer", depth, Status.ASSUMED, ""));
    }
    numbers.add(
        new Line(
            "browning index",
            String.format(
                Locale.ROOT,
                "%.0f (%.0f to %.0f) of 52; face above 100 °C for %.1f min",
                crust.middle(),
                crust.low(),
                crust.high(),
                crust.timeDry() / 60),
            Browning.STATUS,
            "Zanoni, Peri and Bruno 1995, bread crumb, 3 to 8 times as fast"));
  }

  private static void juice(
      CookFile file, CookedCut cut, SimulationResult result, List<Line> numbers) {
    Juice juice =
        file.extent()
            .map(extent -> Juice.of(cut, extent.evaporatedMass(result) / extent.mass()))
            .orElseGet(() -> Juice.of(cut, result));
    numbers.add(
        new Line(
            "lost of the raw mass",
            String.format(
                Locale.ROOT,
                "%.1f %% evaporated + %.1f %% pressed out = %.1f %%; %.0f %% left",
                100 * juice.evaporated(),
                100 * juice.dripped(),
                100 * juice.total(),
                100 * juice.left()),
            Juice.DRIP_STATUS,
            "water-holding curve of lean beef, from memory"));
  }

  private static void tenderness(Tenderness tender, List<Line> numbers) {
    numbers.add(
        new Line(
            "actin hardened",
            String.format(
                Locale.ROOT,
                "%.0f %% on average, %.0f %% at the least",
                100 * tender.actin(),
                100 * tender.actinAtCore()),
            FirstOrder.ACTIN.status(),
            FirstOrder.ACTIN.source()));
    numbers.add(
        new Line(
            "collagen to gelatine",
            String.format(
                Locale.ROOT,
                "%.0f %% on average, %.0f %% at the least",
                100 * tender.collagen(),
                100 * tender.collagenAtCore()),
            FirstOrder.COLLAGEN.status(),
            FirstOrder.COLLAGEN.source()));
    numbers.add(
        new Line(
            "fat molten",
            String.format(
                Locale.ROOT,
                "%.0f %%; about %.0f %% runs off",
                100 * tender.fatMelted(),
                100 * tender.runOff()),
            Tenderness.FAT_STATUS,
            "melting range of 20 to 50 °C; share that runs off is a judgement"));
  }
}
