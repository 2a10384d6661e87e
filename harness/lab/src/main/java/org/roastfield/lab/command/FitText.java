package org.roastfield.lab.command;

import java.util.List;
import java.util.Locale;
import org.roastfield.core.cook.Cut;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.Fit;
import org.roastfield.lab.replay.FitParameter;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** A fit as text for a screen. */
final class FitText {

  private FitText() {}

  static String of(
      CookFile cook,
      CookLog log,
      List<FitParameter> free,
      Fit.Fitted fitted,
      TemperatureScale scale) {
    StringBuilder text = new StringBuilder();
    text.append(cook.name()).append(", log ").append(log.fileName());
    text.append(cook.madeUp() ? " (numbers made up, not measured)" : "").append("\n\n");
    text.append(values(free, fitted, scale)).append('\n');
    text.append("Core, computed less measured, ")
        .append(free.isEmpty() ? "nothing" : free.size())
        .append(" fitted\n");
    text.append(ComparedText.of(fitted.compared(), scale)).append('\n');
    text.append("Taken for the computation\n");
    fitted.assumptions().forEach(line -> text.append("  ").append(line).append('\n'));
    text.append('\n').append(CautionText.of(Cautions.of(cook, fitted.result(), scale)));
    return text.append('\n').toString();
  }

  private static String values(List<FitParameter> free, Fit.Fitted fitted, TemperatureScale scale) {
    TextTable table = new TextTable(false, false);
    for (FitParameter parameter : FitParameter.values()) {
      double value = fitted.values().getOrDefault(parameter, parameter.neutral());
      String kind = free.contains(parameter) ? "fitted" : "given";
      boolean atBound = free.contains(parameter) && parameter.isAtBound(value);
      table.add(
          "  " + parameter.word(),
          String.format(Locale.ROOT, "%.3f %s", value, kind)
              + (atBound ? ", at its bound: the log does not tell it" : ""));
    }
    Cut cut = fitted.result().cook().cut();
    table.add(
        "  distance to the core",
        String.format(Locale.ROOT, "%.1f mm", 1000 * cut.shape().halfThickness()));
    table.add("  start temperature", scale.text(cut.startTemperature()));
    return table.toString();
  }
}
