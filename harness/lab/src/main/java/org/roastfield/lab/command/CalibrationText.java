package org.roastfield.lab.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.diagnosis.Calibrated;
import org.roastfield.lab.diagnosis.Finding;
import org.roastfield.lab.diagnosis.ProfileWords;

/** A calibration as text. */
final class CalibrationText {

  private static final int WIDEST = 100;

  private CalibrationText() {}

  static String of(Calibrated calibrated) {
    CookerProfile profile = calibrated.profile();
    StringBuilder text = new StringBuilder();
    text.append("Cooker ").append(profile.id()).append(", ").append(ProfileWords.source(profile));
    text.append(profile.madeUp() ? " (numbers made up)\n\n" : "\n\n");
    TextTable table = new TextTable(false, false, false, false);
    table.add("number", "before its logs", "now (10 to 90 %)", "learned");
    ProfileWords.rows(profile).forEach(row -> table.add(row.toArray(new String[0])));
    text.append(table).append('\n');
    for (CookerProfile.Log log : profile.logs()) {
      text.append(
          String.format(
              Locale.ROOT,
              "%s: computed less logged %.2f K (root mean square) of %d readings%n",
              log.name(),
              log.rms(),
              log.readings()));
    }
    text.append('\n');
    if (!profile.complete()) {
      text.append(wrapped("! ", "stopped before its end: usable, but nothing of it was checked"));
    }
    for (Finding finding : calibrated.findings()) {
      String lead = finding.weight() == Finding.Weight.NOTE ? "- " : "! ";
      String log = finding.log().map(name -> name + ": ").orElse("");
      text.append(wrapped(lead, log + finding.words()));
    }
    text.append(wrapped("- ", ProfileWords.status(profile)));
    return text.toString();
  }

  private static String wrapped(String lead, String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(lead);
    for (String word : words.split(" ", -1)) {
      if (line.length() + word.length() > WIDEST) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder("  ");
      }
      line.append(word).append(' ');
    }
    lines.add(line.toString().stripTrailing());
    return String.join("\n", lines) + "\n";
  }
}
