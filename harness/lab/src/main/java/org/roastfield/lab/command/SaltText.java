package org.roastfield.lab.command;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalDouble;
import org.roastfield.lab.salting.SaltPlan;

/** Salt in a cut as text for a screen. */
final class SaltText {

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private SaltText() {}

  static String of(SaltPlan plan) {
    StringBuilder text = new StringBuilder(plan.file().name());
    text.append(plan.file().madeUp() ? " (numbers made up, not measured)" : "").append("\n\n");
    text.append("Salt, by the estimate\n").append(summary(plan)).append('\n');
    text.append("Share of the raw meat at depths, and water activity of the face\n");
    text.append(table(plan)).append('\n');
    text.append("Rests on\n");
    SaltPlan.restsOn().forEach(line -> text.append("  ").append(line).append('\n'));
    text.append("\nCautions\n");
    SaltPlan.cautions().forEach(line -> text.append("  ").append(line).append('\n'));
    return text.append('\n').toString();
  }

  private static TextTable summary(SaltPlan plan) {
    TextTable table = new TextTable(false, false);
    table.add(
        "  salt",
        plan.mass().isPresent()
            ? String.format(
                Locale.ROOT,
                "%.0f g on all faces, %.1f %% of the raw meat",
                1000 * plan.mass().getAsDouble(),
                100 * plan.wish().share())
            : String.format(Locale.ROOT, "%.1f %% of the raw meat", 100 * plan.wish().share()));
    table.add("  put it on", when(plan));
    table.add("  so that", wish(plan));
    table.add(
        "  the middle",
        String.format(
            Locale.ROOT,
            "%.0f mm deep, has that %s",
            1000 * plan.middle(),
            plan.middleHours().isPresent()
                ? "after " + hours(plan.middleHours())
                : "not within ten days"));
    return table;
  }

  private static String when(SaltPlan plan) {
    OptionalDouble hours = plan.hours();
    String span = " (" + hours(plan.fastHours()) + " to " + hours(plan.slowHours()) + ")";
    return hours.isPresent()
        ? hours(hours)
            + " before the cut goes on, "
            + CLOCK.format(plan.clock(hours.getAsDouble()))
            + span
        : "more than ten days before" + span + "; wish for less depth or less evenness";
  }

  private static String wish(SaltPlan plan) {
    return String.format(
        Locale.ROOT,
        "the meat %.1f mm below the face has %.0f %% of what the face has",
        1000 * plan.depth(),
        100 * plan.wish().evenness());
  }

  private static String hours(OptionalDouble hours) {
    return hours.isPresent()
        ? String.format(Locale.ROOT, "%.0f h", hours.getAsDouble())
        : "over 240 h";
  }

  private static TextTable table(SaltPlan plan) {
    TextTable table = new TextTable(true, true, true, true, true, true);
    double half = plan.depth() / 2;
    table.add("hours", "face", depth(half), depth(plan.depth()), "middle", "activity");
    for (double hours : SaltPlan.HOURS) {
      table.add(
          String.format(Locale.ROOT, "%.0f", hours),
          share(plan, 0, hours),
          share(plan, half, hours),
          share(plan, plan.depth(), hours),
          share(plan, plan.middle(), hours),
          String.format(Locale.ROOT, "%.3f", plan.waterActivity(0, hours)));
    }
    return table;
  }

  private static String depth(double metres) {
    return String.format(Locale.ROOT, "%.1f mm", 1000 * metres);
  }

  private static String share(SaltPlan plan, double depth, double hours) {
    return String.format(Locale.ROOT, "%.2f %%", 100 * Math.max(0, plan.share(depth, hours)));
  }
}
