package org.roastfield.lab.command;

import java.util.Locale;
import java.util.OptionalDouble;
import org.roastfield.lab.replay.Compared;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.HeatingRate;
import org.roastfield.lab.replay.TargetTime;
import org.roastfield.lab.replay.WaterLoss;
import org.roastfield.lab.timeline.TemperatureScale;

/** A log beside its computation as text for a screen. */
final class ComparedText {

  private final Compared compared;
  private final TemperatureScale scale;

  private ComparedText(Compared compared, TemperatureScale scale) {
    this.compared = compared;
    this.scale = scale;
  }

  /** Errors, times to temperatures, heating rates and water, a table each. */
  static String of(Compared compared, TemperatureScale scale) {
    ComparedText text = new ComparedText(compared, scale);
    String rates = compared.rates().isEmpty() ? "" : text.rates() + "\n";
    return text.errors() + "\n" + text.targets() + "\n" + rates + text.water();
  }

  private String errors() {
    ErrorSummary errors = compared.errors();
    TextTable table = new TextTable(false, false);
    table.add("  RMS error", difference(errors.rms(), "%.2f %s"));
    table.add("  bias", difference(errors.bias(), "%+.2f %s"));
    table.add(
        "  worst error",
        difference(errors.worst(), "%+.2f %s") + " at " + Times.hours(errors.worstTime()) + " h");
    table.add("  readings used", errors.readings() + ", missing " + errors.missing());
    return table.toString();
  }

  private String targets() {
    TextTable table = new TextTable(true, true, true, true, true);
    String trueCore = compared.byProbe() ? "true core" : "";
    table.add(
        compared.byProbe() ? "probe shows" : "core reaches",
        "measured",
        "computed",
        "error",
        trueCore);
    for (TargetTime target : compared.targets()) {
      table.add(
          scale.text(target.temperature()),
          time(target.measured()),
          time(target.computed()),
          target.error().isPresent() ? timeError(target) : "none",
          compared.byProbe() ? time(target.trueCore()) : "");
    }
    return table.toString();
  }

  private static String timeError(TargetTime target) {
    double error = target.error().orElseThrow();
    double measured = target.measured().orElseThrow();
    String share =
        measured > 0 ? String.format(Locale.ROOT, " (%+.0f %%)", percent(error / measured)) : "";
    return Times.signedMinutes(error) + share;
  }

  private String rates() {
    TextTable table = new TextTable(true, true, true, true);
    table.add("heating rate", "measured", "computed", "error");
    for (HeatingRate rate : compared.rates()) {
      table.add(
          scale.text(rate.span().low()) + " to " + scale.text(rate.span().high()),
          rate(rate.measured()),
          rate(rate.computed()),
          rate.relativeError().isPresent()
              ? String.format(Locale.ROOT, "%+.0f %%", percent(rate.relativeError().getAsDouble()))
              : "none");
    }
    return table.toString();
  }

  private String rate(OptionalDouble rate) {
    return rate.isPresent() ? difference(60 * rate.getAsDouble(), "%.2f %s/min") : "not crossed";
  }

  private String water() {
    WaterLoss water = compared.water();
    TextTable table = new TextTable(false, false);
    table.add("  evaporated", water(water.evaporated(), water.evaporatedPerArea()));
    table.add("  dripped", water(water.dripped(), water.drippedPerArea()));
    if (water.weighed().isPresent()) {
      table.add("  weighed loss", grams(water.weighed().getAsDouble(), "%.1f"));
    }
    if (water.error().isPresent()) {
      table.add("  error", grams(water.error().getAsDouble(), "%+.1f") + " of both together");
    }
    return table.toString();
  }

  private static String water(OptionalDouble whole, double perArea) {
    String text = String.format(Locale.ROOT, "%.2f kg/m²", plain(perArea, 100));
    return whole.isPresent()
        ? grams(whole.getAsDouble(), "%.1f") + ", " + text
        : text + " (the cook file states no whole size, so no mass)";
  }

  /** Without the sign of a zero. */
  private static double plain(double value, double perUnit) {
    return Math.rint(value * perUnit) == 0 ? 0 : value;
  }

  private static double percent(double share) {
    return plain(100 * share, 1);
  }

  private static String grams(double kilograms, String format) {
    return String.format(Locale.ROOT, format + " g", plain(1000 * kilograms, 10));
  }

  private String difference(double kelvin, String format) {
    String unit = scale == TemperatureScale.FAHRENHEIT ? "°F" : "K";
    return String.format(Locale.ROOT, format, plain(scale.difference(kelvin), 100), unit);
  }

  private static String time(OptionalDouble time) {
    return time.isPresent() ? Times.hours(time.getAsDouble()) + " h" : "never";
  }
}
