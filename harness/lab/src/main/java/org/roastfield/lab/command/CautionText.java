package org.roastfield.lab.command;

import java.util.List;
import org.roastfield.lab.timeline.Caution;

/** Cautions as text for a screen. */
final class CautionText {

  private CautionText() {}

  static String of(List<Caution> cautions) {
    StringBuilder text = new StringBuilder("Cautions\n");
    for (Caution caution : cautions) {
      text.append("  ").append(caution.subject()).append(": ").append(caution.text());
      text.append(caution.source().isEmpty() ? "" : " [" + caution.source() + "]").append('\n');
    }
    return text.toString();
  }
}
