package org.roastfield.lab.command;

import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.replay.ReplayResult;
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
    text.append(ComparedText.of(replay.compared(), scale)).append('\n');
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
}
