package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerSearch;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.ScenarioCut;
import org.roastfield.lab.synthetic.SyntheticCook;
import org.roastfield.lab.synthetic.SyntheticCooker;

/** A calibration that is told to stop does so at the next cook, wherever it is. */
class StoppedTest {

  private int left = Integer.MAX_VALUE;
  private int asked;

  private static final class Told extends RuntimeException {
    private static final long serialVersionUID = 1;
  }

  private void check() {
    asked++;
    if (asked > left) {
      throw new Told();
    }
  }

  private CookerSearch search() {
    return new CookerSearch(
        Optional.empty(),
        parameter -> parameter.id().equals("convection"),
        Simulator.withDefaults(),
        progress -> {},
        this::check);
  }

  private static LogPackage log() {
    SyntheticCook recipe =
        new SyntheticCook(
            "syn-loin-1",
            ScenarioCut.PORK_LOIN,
            SyntheticCooker.boathouse().get(0),
            ScenarioCut.PORK_LOIN.setting(),
            41,
            SyntheticCook.Split.FIT,
            Set.of());
    return assertInstanceOf(MadeCook.class, recipe.make()).log();
  }

  private static List<LoggedCase> cases(LogPackage log) {
    byte[] text = log.cook().orElseThrow().getBytes(StandardCharsets.UTF_8);
    return List.of(
        LoggedCase.of(CookFileReader.parse("cook.yaml", text), log, LogSpan.ALL, Optional.empty()));
  }

  @Test
  void inTheSearch_nothingIsFound() {
    CookerSearch search = search();
    List<LoggedCase> cases = cases(log());
    left = 1;
    assertThrows(Told.class, () -> search.find(cases, 1, false, 1));
    assertEquals(2, asked);
    assertTrue(search.best().isEmpty());
  }

  @Test
  void inTheInquiry_whatWasFoundStays() {
    CookerSearch search = search();
    LogPackage log = log();
    CookerSearch.Found found = search.find(cases(log), 1, false, 1);
    Source source = new Source(log, LogSpan.ALL, Optional.empty());
    Inquiry inquiry = Inquiry.of(found.logs(), List.of(source), Simulator.withDefaults());
    for (int after : new int[] {0, 40}) {
      asked = 0;
      left = after;
      assertThrows(Told.class, () -> inquiry.into(found.calibration(), found.estimate()));
      assertEquals(after + 1, asked);
    }
    CookerSearch.Found kept = search.best().orElseThrow();
    List<String> hashes = List.of("0".repeat(64));
    CookerProfile profile = search.profile("pit", kept, kept.belief(), hashes, "unchecked", false);
    assertEquals("unchecked", profile.diagnosis().status());
    assertFalse(profile.complete());
  }
}
