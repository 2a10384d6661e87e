package org.roastfield.lab.command;

import java.util.Locale;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Inside;
import org.roastfield.lab.timeline.Spread;
import org.roastfield.lab.timeline.Station;
import org.roastfield.lab.timeline.TemperatureScale;

/** What a cut is like inside as text for a screen. */
final class InsideText {

  private InsideText() {}

  static String of(ComputedCook cook, TemperatureScale scale) {
    StringBuilder text = new StringBuilder("Inside, by the estimate\n");
    TextTable table = new TextTable(false, false, false);
    if (cook.stations().isEmpty()) {
      addDoneness(cook.inside(), "", table);
    }
    for (Station station : cook.stations()) {
      addDoneness(station.inside(), station.name() + ", ", table);
    }
    if (!cook.stations().isEmpty()) {
      table.add("  and at its thickest", "", "");
    }
    for (Inside.Line number : cook.inside().numbers()) {
      table.add("  " + number.subject(), number.text(), number.status().word());
    }
    text.append(table);
    if (cook.inside().spread().isEmpty()) {
      text.append("  Spreads of these and chances: --members 500\n");
    }
    cook.inside().spread().ifPresent(spread -> text.append('\n').append(spread(spread, scale)));
    return text.toString();
  }

  private static void addDoneness(Inside inside, String place, TextTable table) {
    for (Doneness doneness : inside.doneness()) {
      DonenessScale scale = doneness.scale();
      table.add("  " + place + scale.name(), shares(doneness), scale.status().word());
      table.add("", ring(doneness), "");
    }
  }

  private static String spread(Spread spread, TemperatureScale scale) {
    TextTable table = new TextTable(false, false);
    for (Spread.Row row : spread.rows()) {
      table.add("  " + row.subject(), row.text(scale));
    }
    return "10 / 50 / 90 % of " + spread.words() + '\n' + table;
  }

  private static String shares(Doneness doneness) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < doneness.shares().size(); i++) {
      if (doneness.shares().get(i) > 0.0005) {
        text.append(text.length() == 0 ? "" : ", ");
        text.append(
            String.format(
                Locale.ROOT,
                "%.1f %% %s",
                100 * doneness.shares().get(i),
                doneness.scale().bands().get(i).name()));
      }
    }
    return text.toString();
  }

  private static String ring(Doneness doneness) {
    String lower =
        doneness.lowerRing() > 0
            ? String.format(Locale.ROOT, " above, %.1f mm below", 1000 * doneness.lowerRing())
            : "";
    return String.format(
        Locale.ROOT,
        "%s: %.1f mm%s; spread %.1f K",
        Inside.ringName(doneness),
        1000 * doneness.upperRing(),
        lower,
        doneness.spread());
  }
}
