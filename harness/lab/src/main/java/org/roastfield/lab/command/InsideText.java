package org.roastfield.lab.command;

import java.util.Locale;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.lab.timeline.Inside;

/** What a cut is like inside as text for a screen. */
final class InsideText {

  private InsideText() {}

  static String of(Inside inside) {
    StringBuilder text = new StringBuilder("Inside, by the estimate\n");
    TextTable table = new TextTable(false, false, false);
    for (Doneness doneness : inside.doneness()) {
      table.add("  " + doneness.scale().name(), shares(doneness), doneness.scale().status().word());
      table.add("", ring(doneness), "");
    }
    for (Inside.Line number : inside.numbers()) {
      table.add("  " + number.subject(), number.text(), number.status().word());
    }
    return text.append(table).toString();
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
    String band = doneness.scale().bands().get(doneness.target()).name();
    String lower =
        doneness.lowerRing() > 0
            ? String.format(Locale.ROOT, " above, %.1f mm below", 1000 * doneness.lowerRing())
            : "";
    return String.format(
        Locale.ROOT,
        "ring beyond %s: %.1f mm%s; spread %.1f K",
        band,
        1000 * doneness.upperRing(),
        lower,
        doneness.spread());
  }
}
