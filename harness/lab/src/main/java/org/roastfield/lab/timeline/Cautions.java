package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.roastfield.core.outcome.Browning;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.PublishedMinimum;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.Food;

/** The cautions that stand beside the numbers of a cook. None of them permits anything. */
public final class Cautions {

  private static final String MINIMUM = "Published minimum";

  private static final Caution ESTIMATE =
      new Caution(
          "Estimates",
          "Every temperature and time here is computed, not measured. Pull, carryover and peak depend"
              + " on numbers that are rarely known well: check with a thermometer you trust, in the"
              + " middle of the thickest part.",
          "");

  private static final Caution OPENED_MEAT =
      new Caution(
          "Opened meat",
          "Meat that was boned and rolled, injected, mechanically tenderised or ground can carry"
              + " bacteria inside: food codes ask more of it than of an intact cut.",
          "");

  private static final Caution CHARCOAL =
      new Caution(
          "Charcoal",
          "Glowing coals give off carbon monoxide, which has no smell and kills: burn them outdoors"
              + " only, and never bring them inside to go out.",
          "");

  private static final Caution CHARRING =
      new Caution(
          "Charring",
          "The face gets to 230 °C or more by the estimate: it may char, and fat on it may burn.",
          "");

  private static final Caution HOT_METAL =
      new Caution(
          "Hot grate",
          "Fat on a hot grate or over coals flares up, and the grate stays hot long after the fire:"
              + " heatproof gloves, long tongs, and the lid within reach.",
          "");

  private Cautions() {}

  /**
   * Cautions for a cook.
   *
   * @param file the cook
   * @param result its computation
   * @param scale in which to state temperatures
   */
  public static List<Caution> of(CookFile file, SimulationResult result, TemperatureScale scale) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(ESTIMATE);
    CookedCut cut = CookedCut.of(result);
    cautions.addAll(findings(file.food(), cut, scale));
    if (Browning.of(cut, result).mayChar()) {
      cautions.add(CHARRING);
    }
    if (file.food() != Food.VEGETABLE && file.food() != Food.POULTRY) {
      cautions.add(OPENED_MEAT);
    }
    HotAir.caution(file).ifPresent(cautions::add);
    cautions.add(CHARCOAL);
    if (isOverHeat(file)) {
      cautions.add(HOT_METAL);
    }
    return List.copyOf(cautions);
  }

  /** Findings of all kinds that the food may be, each once. */
  private static List<Caution> findings(Food food, CookedCut cut, TemperatureScale scale) {
    Map<String, Caution> cautions = new LinkedHashMap<>();
    for (CutKind kind : kinds(food)) {
      Safety safety = cut.safety(kind);
      for (Finding finding : safety.findings()) {
        cautions.putIfAbsent(
            finding.minimum(),
            new Caution(subject(finding), text(finding, kind, cut, scale), finding.source()));
      }
    }
    if (cautions.isEmpty()) {
      String text = "No minimum for meat is applied to a vegetable. " + Finding.DEFERENCE;
      return List.of(new Caution(MINIMUM, text, ""));
    }
    return List.copyOf(cautions.values());
  }

  /** Kinds of cut that a food may be; a cook file does not say whether meat was opened. */
  private static List<CutKind> kinds(Food food) {
    return switch (food) {
      case PORK, BEEF, LAMB -> List.of(CutKind.INTACT, CutKind.TENDERISED);
      case FISH -> List.of(CutKind.FISH);
      case GROUND -> List.of(CutKind.GROUND);
      case POULTRY -> List.of(CutKind.POULTRY);
      case VEGETABLE -> List.of();
      case UNSTATED -> List.of(CutKind.INTACT, CutKind.TENDERISED, CutKind.GROUND, CutKind.POULTRY);
    };
  }

  private static String subject(Finding finding) {
    return switch (finding.unit()) {
      case KELVIN -> MINIMUM;
      case LOG -> "Hold times";
      case SECOND -> finding.met() ? "Rise and fall" : "Slow rise";
    };
  }

  private static String text(Finding finding, CutKind kind, CookedCut cut, TemperatureScale scale) {
    String first =
        switch (finding.unit()) {
          case KELVIN -> minimum(finding, kind, cut, scale);
          case LOG ->
              String.format(
                  Locale.ROOT,
                  "By the estimate the place with the least lethality %s the published %s, by %.1f"
                      + " powers of ten.",
                  finding.met() ? "meets" : "does NOT meet",
                  finding.minimum(),
                  Math.abs(finding.margin()));
          case SECOND ->
              String.format(
                  Locale.ROOT,
                  "By the estimate the slowest place %s the published %s, by %.1f h.",
                  finding.met() ? "meets" : "does NOT meet",
                  finding.minimum(),
                  Math.abs(finding.margin()) / 3600);
        };
    return first + " " + finding.caution() + " " + Finding.DEFERENCE;
  }

  private static String minimum(
      Finding finding, CutKind kind, CookedCut cut, TemperatureScale scale) {
    PublishedMinimum minimum =
        PublishedMinimum.of(kind).stream()
            .filter(one -> finding.minimum().endsWith(" " + one.of()))
            .findFirst()
            .orElseThrow();
    return "The coldest place gets to "
        + scale.text(cut.coldest().highest())
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

  private static boolean isOverHeat(CookFile file) {
    return file.stages().stream()
        .anyMatch(stage -> isOverHeat(stage.upper()) || isOverHeat(stage.lower()));
  }

  private static boolean isOverHeat(FaceSetup face) {
    return face.contact().isPresent() || face.bed().isPresent();
  }
}
