package org.roastfield.lab.command;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.roastfield.core.chamber.FireDemand;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.LidCost;
import org.roastfield.core.ensemble.Distribution;
import org.roastfield.core.ensemble.FireOutlook;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.lab.files.PitKind;
import org.roastfield.lab.pit.PitLog;
import org.roastfield.lab.timeline.TemperatureScale;

/** What a fire needs, as text for a screen. */
final class PitText {

  private static final double MINUTE = 60;

  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("fire-wall-capacity", "heat that the walls hold"),
          Map.entry("fire-wall-loss", "heat that the walls lose"),
          Map.entry("fire-gas-exchange", "exchange of gas and walls"),
          Map.entry("fire-vents", "vents"),
          Map.entry("fire-bed-power", "power of the whole bed"),
          Map.entry("fire-ignition", "time in which glowing spreads"),
          Map.entry("fire-heating-value", "heating value"),
          Map.entry("fire-lid-loss", "loss through the open lid"),
          Map.entry("fire-lighting", "time to light"),
          Map.entry("fire-glowing", "coals that went in"),
          Map.entry("fire-setting-offset", "setting less median reading"),
          Map.entry("fire-probe-lag", "lag of the probe"));

  private final PitKind kind;
  private final FireDemand demand;
  private final TemperatureScale scale;
  private final StringBuilder text = new StringBuilder();

  PitText(PitKind kind, FireDemand demand, TemperatureScale scale) {
    this.kind = kind;
    this.demand = demand;
    this.scale = scale;
    text.append(
        String.format(
            Locale.ROOT,
            "A pit of %s, %s outside, wind %.0f m/s, %.1f kg of glowing coals\n\n",
            kind.word().replace('-', ' '),
            scale.text(demand.outside().temperature()),
            demand.outside().wind(),
            demand.glowing()));
  }

  /** Adds what a log says. */
  void log(PitLog log, MapEstimate found) {
    text.append("What the log tells, ").append(log.used()).append(" readings used\n");
    TextTable table = new TextTable(false, true, false);
    for (int p = 0; p < log.parameters().size(); p++) {
      Parameter parameter = log.parameters().get(p);
      double value = found.value(p);
      boolean told = found.contraction(p) >= MapEstimate.LEAST_CONTRACTION;
      table.add(
          "  " + WORDS.getOrDefault(parameter.id(), parameter.id()),
          shown(parameter, value),
          told ? "± " + spread(parameter, value, found.spread(p)) : "not told by the log");
    }
    text.append(table);
    text.append(
        String.format(
            Locale.ROOT,
            "  strays by              %.1f K over %.0f min\n",
            found.errors(0).driftSpread(),
            found.errors(0).driftTime() / MINUTE));
    text.append(
        String.format(
            Locale.ROOT,
            "  %.0f %% of the searches agree; factors are of the assumed pit\n\n",
            100 * found.agreement()));
  }

  private static String shown(Parameter parameter, double value) {
    return parameter.unit().equals("1")
        ? String.format(Locale.ROOT, "× %.2f", value)
        : String.format(Locale.ROOT, "%.1f %s", value, parameter.unit());
  }

  private static String spread(Parameter parameter, double value, double spread) {
    return switch (parameter.scale()) {
      case LOGARITHM ->
          parameter.unit().equals("1")
              ? String.format(Locale.ROOT, "%.2f", value * spread)
              : String.format(Locale.ROOT, "%.1f %s", value * spread, parameter.unit());
      case PLAIN -> String.format(Locale.ROOT, "%.1f %s", spread, parameter.unit());
    };
  }

  /** All of it. */
  String needs(List<FirePit> pits) {
    FireOutlook outlook = FireOutlook.of(pits, demand);
    TextTable table = new TextTable(false, true, true, true);
    table.add("", "10 %", "50 %", "90 %");
    add(table, "  from the match to on", outlook.beforeOn(), MINUTE, "%.0f min");
    if (demand.sear().isPresent()) {
      add(table, "  pause before the sear", outlook.ramp(), MINUTE, "%.0f min");
    }
    add(table, "  charcoal burnt", outlook.burnt(), 1, "%.1f kg");
    add(table, "  charcoal to begin with", outlook.fuel(), 1, "%.1f kg");
    text.append(
        String.format(
            Locale.ROOT,
            "%.1f h at %s%s, food that takes %.0f W\n",
            demand.gentle() / 3600,
            scale.text(demand.setting()),
            demand.sear().map(s -> ", then a sear in " + scale.text(s.target())).orElse(""),
            demand.load()));
    text.append(table);
    int missing = pits.size() - outlook.fuel().size();
    text.append(
        String.format(
            Locale.ROOT,
            "  %d of %d pits like this never get there within six hours\n\n",
            missing,
            pits.size()));
    return text.append(lid()).append(footing()).toString();
  }

  private static void add(
      TextTable table, String name, Distribution found, double unit, String format) {
    if (found.size() == 0) {
      table.add(name, "never", "never", "never");
      return;
    }
    table.add(
        name,
        String.format(Locale.ROOT, format, found.quantile(0.1) / unit),
        String.format(Locale.ROOT, format, found.median() / unit),
        String.format(Locale.ROOT, format, found.quantile(0.9) / unit));
  }

  private String lid() {
    LidCost cost =
        LidCost.of(kind.pit(), demand.outside(), demand.setting(), demand.load(), MINUTE);
    return String.format(
        Locale.ROOT,
        """
        A minute with the lid open: walls %s cooler, gas back after %.1f min, %.0f g of charcoal
          (of the assumed pit)
        """,
        scale.differenceText(cost.wallFall()),
        cost.recovery() / MINUTE,
        1000 * cost.fuel());
  }

  private static String footing() {
    return """
        Assumed: what such pits are like; no measured source was found.
        Burn charcoal outdoors only: it makes carbon monoxide.
        """;
  }
}
