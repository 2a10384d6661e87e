package org.roastfield.lab.command;

import java.io.PrintWriter;
import java.util.Locale;
import org.roastfield.lab.cooker.CookerSearch;

/**
 * Bar that tells how far a search for a cooker is. How often a search computes its cooks is known
 * only when it ends, so the bar goes by what is usual and never says that all is done.
 */
final class SearchProgress {

  /** Tells of every tenth computation. */
  private static final int EVERY = 10;

  private static final int CELLS = 20;

  /** Computations of a search from one start; of one to three made-up logs 23 to 45. */
  private static final int OF_A_START = 40;

  /** Those of weighed draws. */
  private static final int OF_DRAWS = 600;

  /** More is not said to be done. */
  private static final double MOST = 0.95;

  private final PrintWriter screen;
  private final boolean shown;
  private final int usual;
  private boolean begun;

  /**
   * @param shown whether somebody looks
   * @param starts of the search
   * @param draws whether draws are weighed in any case
   */
  SearchProgress(PrintWriter screen, boolean shown, int starts, boolean draws) {
    this.screen = screen;
    this.shown = shown;
    this.usual = OF_A_START * starts + (draws ? OF_DRAWS : 0);
  }

  void tell(CookerSearch.Progress progress) {
    if (!shown || progress.evaluations() % EVERY != 0) {
      return;
    }
    double share = Math.min(MOST, (double) progress.evaluations() / usual);
    int filled = (int) Math.round(CELLS * share);
    String logs = progress.logs() == 1 ? "1 log" : progress.logs() + " logs";
    screen.print(
        String.format(
            Locale.ROOT,
            "\r[%s%s] about %.0f %%, %s computed %d times ",
            "=".repeat(filled),
            " ".repeat(CELLS - filled),
            100 * share,
            logs,
            progress.evaluations()));
    screen.flush();
    begun = true;
  }

  /** The search has ended, however. */
  void end() {
    if (begun) {
      screen.println();
      screen.flush();
    }
  }
}
