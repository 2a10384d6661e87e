package org.roastfield.lab.command;

import java.util.Locale;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.ByProfile;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** A replay as text for a screen. */
final class ReplayText {

  /** Share of cooks as far off below which a log is called out of the ordinary: assumed. */
  private static final double FEW = 0.05;

  private ReplayText() {}

  static String of(CookFile cook, CookLog log, ReplayResult replay, TemperatureScale scale) {
    StringBuilder text = new StringBuilder();
    text.append(cook.name()).append(", log ").append(log.fileName());
    text.append(cook.madeUp() ? " (numbers made up, not measured)" : "").append("\n\n");
    text.append("Core, computed less measured, nothing fitted");
    text.append(replay.profile().map(by -> ", by profile " + by.id()).orElse("")).append('\n');
    text.append(ComparedText.of(replay.compared(), scale)).append('\n');
    replay.profile().ifPresent(by -> text.append(byProfile(by, replay)).append('\n'));
    text.append("Taken for the computation\n");
    replay.assumptions().forEach(line -> text.append("  ").append(line).append('\n'));
    replay
        .simulation()
        .notes()
        .forEach(
            note ->
                text.append("  note, ")
                    .append(note.subject())
                    .append(": ")
                    .append(note.text())
                    .append('\n'));
    text.append('\n').append(CautionText.of(Cautions.of(cook, replay.simulation(), scale)));
    return text.append('\n').toString();
  }

  private static String byProfile(ByProfile by, ReplayResult replay) {
    TextTable table = new TextTable(false, false);
    table.add(
        "  RMS error without it",
        String.format(Locale.ROOT, "%.2f K, computed alike", by.without().rms()));
    table.add(
        "  band from 10 to 90 %",
        String.format(
            Locale.ROOT,
            "holds %.0f %% of the readings, meant are 80 %%",
            100 * by.inside(replay.core())));
    table.add(
        "  as far off",
        String.format(
            Locale.ROOT,
            "%.0f %% of such cooks (whole traces): %s",
            100 * by.asFarOff(),
            by.asFarOff() >= FEW
                ? "what nobody measured of the cut, probe and cooker moves a core as much"
                : "something stated may be wrong; calibrate with this log says what"));
    table.add(
        "  draws behind it",
        by.drawn()
            + (by.leftOut() > 0 ? ", " + by.leftOut() + " that cannot be computed left out" : ""));
    if (by.madeFromThisLog()) {
      table.add("  made from", "this very log: how well it foretells others, score says");
      table.add("  of the cut", "the profile holds nothing: it is of the cooker alone");
    }
    return "By the profile\n" + table;
  }
}
