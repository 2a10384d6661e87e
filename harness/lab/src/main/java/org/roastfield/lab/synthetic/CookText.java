package org.roastfield.lab.synthetic;

import java.util.Locale;

/**
 * Cook file and source of a made-up cook. The cook file states what its cook would believe: stated
 * sizes, usual values, the chamber's setting; nothing of the truth.
 */
final class CookText {

  private CookText() {}

  static String yaml(SyntheticCook recipe) {
    ScenarioCut cut = recipe.cut();
    StringBuilder yaml = new StringBuilder();
    yaml.append(
            "# Made up, no such cook took place. What its cook would state; the truth is elsewhere.\n")
        .append("roastfield: cook/1\n")
        .append("name: ")
        .append(recipe.id())
        .append('\n')
        .append("made-up: true\n")
        .append("starts: 2026-06-13T12:00\n")
        .append("altitude: 0 m\n\n")
        .append("cut:\n")
        .append("  food: ")
        .append(cut.food())
        .append('\n')
        .append(cut.shapeInFile())
        .append("  start-temperature: ")
        .append(TrueValues.STATED_START)
        .append(" °C\n")
        .append("  material: ")
        .append(cut.materialName())
        .append('\n')
        .append("  emissivity: ")
        .append(number(TrueValues.STATED.emissivity()))
        .append('\n')
        .append("  water-activity: ")
        .append(number(TrueCook.WATER_ACTIVITY))
        .append("\n\n")
        .append("stages:\n")
        .append(
            stage(
                TrueCook.GENTLE,
                number(recipe.setting()),
                "",
                "0.035",
                TrueCook.GENTLE_COEFFICIENT))
        .append("    wetness: drying\n")
        .append("    end: {core: ")
        .append(cut.pull())
        .append(" °C, at-latest: 10 h}\n\n");
    if (cut.sear() > 0) {
      yaml.append(
              stage(
                  TrueCook.SEAR,
                  number(TrueCook.SEAR_AIR),
                  "walls: " + TrueCook.SEAR_WALLS + " °C, ",
                  number(TrueCook.SEAR_HUMIDITY),
                  TrueCook.SEAR_COEFFICIENT))
          .append("    wetness: drying\n")
          .append("    contact: {plate: 260 °C, conductance: ")
          .append(TrueCook.BARS_CONDUCTANCE)
          .append(" W/(m²·K), share: ")
          .append(number(100 * TrueValues.STATED.bars() * TrueCook.barsSeen(cut.shape())))
          .append(" %}\n")
          .append("    end: {after: ")
          .append(cut.sear())
          .append(" s}\n\n");
    }
    return yaml.append(stage(TrueCook.REST, number(TrueCook.ROOM), "", "0.008", 11))
        .append("    emissivity: 0            # counted in the coefficient\n")
        .append("    wetness: 0\n")
        .append("    end: {after: ")
        .append(cut.restMinutes())
        .append(" min}\n")
        .toString();
  }

  private static String stage(
      String name, String air, String walls, String humidity, int coefficient) {
    return "  - name: "
        + name
        + "\n    chamber: {air: "
        + air
        + " °C, "
        + walls
        + "humidity-ratio: "
        + humidity
        + ", heat-transfer: "
        + coefficient
        + " W/(m²·K)}\n";
  }

  static String source(SyntheticCook recipe, String title) {
    StringBuilder text = new StringBuilder();
    text.append("# ")
        .append(recipe.id())
        .append("\n\n")
        .append(title)
        .append(". Licence: Apache-2.0, as the repository.\n\n")
        .append("Made by `make-data` from seed ")
        .append(recipe.seed())
        .append(", random numbers ")
        .append(Noise.ALGORITHM)
        .append("; for ")
        .append(recipe.split().word())
        .append(".\n\n")
        .append(
            "The computed core is read by a probe off the middle that lags, is biased and drifts; the chamber by a biased\n")
        .append(
            "one, until the gentle heat ends. The chamber drifts, sags until fuel is added, and is opened. A kitchen scale weighs the\n")
        .append(
            "cut before and after, unless it is a leg. The cook file states what the cook believes. Good for showing that a calibration finds what is true; no evidence that the physics is right.\n");
    return text.toString();
  }

  /** Decimal without a needless fraction. */
  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.4f", value);
    return text.replaceAll("\\.?0+$", "");
  }
}
