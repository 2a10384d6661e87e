package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.roastfield.lab.cooker.CookerSearch;

class SearchProgressTest {

  private static String told(boolean shown, boolean draws, int evaluations) {
    StringWriter text = new StringWriter();
    SearchProgress bar = new SearchProgress(new PrintWriter(text), shown, 4, draws);
    bar.tell(new CookerSearch.Progress(2, evaluations));
    bar.end();
    return text.toString();
  }

  @Test
  void bar_goesByWhatIsUsual() {
    assertEquals(
        "\r[==========          ] about 50 %, 2 logs computed 80 times " + System.lineSeparator(),
        told(true, false, 80));
    assertTrue(told(true, true, 80).contains("about 11 %"), told(true, true, 80));
  }

  @Test
  void longSearch_isNeverSaidToBeDone() {
    String told = told(true, false, 5000);
    assertTrue(told.contains("[===================" + " ] about 95 %"), told);
  }

  @Test
  void nobodyLooking_orBetweenTens_nothingIsTold() {
    assertEquals("", told(false, false, 80));
    assertEquals("", told(true, false, 83));
  }
}
