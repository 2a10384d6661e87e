package org.roastfield.lab.command;

import java.util.OptionalDouble;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.ErrorSummary;
import org.roastfield.lab.replay.ReplayResult;
import org.roastfield.lab.replay.TargetTime;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** A replay as text for a screen. */
final class ReplayText {

  private ReplayText() {}

  static String of(CookFile cook, CookLog log, ReplayResult replay, TemperatureScale scale) {
    StringBuilder text = new StringBuilder();
    text.append(cook.name()).append(", log ").append(log.fileName());
    text.append(cook.madeUp() ? " (numbers made up, not measured)" : "").append("\n\n");
    text.append("Core, computed less measured, nothing fitted\n");
    text.append(errors(replay.errors(), scale)).append('\n');
    text.append(targets(replay, scale)).append('\n');
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

  private static String errors(ErrorSummary errors, TemperatureScale scale) {
    TextTable table = new TextTable(false, false);
    table.add("  RMS error", scale.differenceText(errors.rms()));
    table.add("  bias", scale.differenceText(errors.bias()));
    table.add(
        "  worst error",
        scale.differenceText(errors.worst()) + " at " + Times.hours(errors.worstTime()) + " h");
    table.add("  readings used", errors.readings() + ", missing " + errors.missing());
    return table.toString();
  }

  private static String targets(ReplayResult replay, TemperatureScale scale) {
    TextTable table = new TextTable(true, true, true, true);
    table.add("core reaches", "measured", "computed", "error");
    for (TargetTime target : replay.targets()) {
      table.add(
          scale.text(target.temperature()),
          time(target.measured()),
          time(target.computed()),
          target.error().isPresent() ? Times.signedMinutes(target.error().getAsDouble()) : "none");
    }
    return table.toString();
  }

  private static String time(OptionalDouble time) {
    return time.isPresent() ? Times.hours(time.getAsDouble()) + " h" : "never";
  }
}
