package org.roastfield.lab.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Trace;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.Food;

/** The cautions that stand beside the numbers of a cook. None of them permits anything. */
public final class Cautions {

  /** Bounds of the range in which the rise is timed [K]: 50 and 130 °F. */
  private static final double SLOW_RISE_FROM = Temperatures.fahrenheit(50);

  private static final double SLOW_RISE_TO = Temperatures.fahrenheit(130);

  private static final int SLOW_RISE_HOURS = 6;

  private static final String SLOW_RISE_SOURCE =
      "USDA Food Safety and Inspection Service, Cooking Guideline (revised Appendix A), 2021:"
          + " 50 to 130 °F in at most 6 h";

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
    cautions.add(minimum(file.food(), CoreHistory.highest(result), scale));
    if (file.food() != Food.VEGETABLE) {
      slowRise(result.core(), scale).ifPresent(cautions::add);
    }
    if (file.food() != Food.VEGETABLE && file.food() != Food.POULTRY) {
      cautions.add(OPENED_MEAT);
    }
    cautions.add(CHARCOAL);
    if (isOverHeat(file)) {
      cautions.add(HOT_METAL);
    }
    return List.copyOf(cautions);
  }

  private static Caution minimum(Food food, double highestCore, TemperatureScale scale) {
    List<PublishedMinimum> minima = PublishedMinimum.forFood(food);
    StringBuilder text = new StringBuilder();
    for (PublishedMinimum minimum : minima) {
      text.append(comparison(minimum, highestCore, scale)).append(' ');
    }
    if (minima.isEmpty()) {
      text.append("No minimum for meat is applied to a vegetable. ");
    }
    text.append("Local food codes and trained people decide; this estimate does not.");
    return new Caution(
        "Published minimum", text.toString(), minima.isEmpty() ? "" : minima.get(0).source());
  }

  private static String comparison(
      PublishedMinimum minimum, double highestCore, TemperatureScale scale) {
    double margin = highestCore - minimum.temperature();
    String side = margin < 0 ? "BELOW" : "above";
    String then = minimum.then().isEmpty() ? "" : " " + minimum.then();
    return "The highest estimated core, "
        + scale.text(highestCore)
        + ", is "
        + scale.differenceText(Math.abs(margin))
        + " "
        + side
        + " the published minimum for "
        + minimum.of()
        + ", "
        + scale.text(minimum.temperature())
        + then
        + ".";
  }

  private static Optional<Caution> slowRise(Trace core, TemperatureScale scale) {
    OptionalDouble begin = CoreHistory.firstRise(core, SLOW_RISE_FROM);
    if (begin.isEmpty()) {
      return Optional.empty();
    }
    double end = CoreHistory.firstRise(core, SLOW_RISE_TO).orElse(core.end());
    double hours = (end - begin.getAsDouble()) / 3600;
    if (hours <= SLOW_RISE_HOURS) {
      return Optional.empty();
    }
    String text =
        String.format(
            Locale.ROOT,
            "The core spends %.1f h between %s and %s, where bacteria can grow; guidance for meat"
                + " processors allows %d h.",
            hours,
            scale.text(SLOW_RISE_FROM),
            scale.text(SLOW_RISE_TO),
            SLOW_RISE_HOURS);
    return Optional.of(new Caution("Slow rise", text, SLOW_RISE_SOURCE));
  }

  private static boolean isOverHeat(CookFile file) {
    return file.stages().stream()
        .anyMatch(stage -> isOverHeat(stage.upper()) || isOverHeat(stage.lower()));
  }

  private static boolean isOverHeat(FaceSetup face) {
    return face.contact().isPresent() || face.bed().isPresent();
  }
}
