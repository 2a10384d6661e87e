package org.roastfield.lab.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.synthetic.ScenarioCut;

/** One thing wrong on purpose ends in a finding that names it, never in a profile that is sure. */
class MisfitTest {

  /** Two of a profile's spreads: it may be off by as much, and say so. */
  private static final double HONEST = 2;

  private final SpoiledLogs.Written good = SpoiledLogs.good(ScenarioCut.PORK_LOIN, 31);

  @Test
  void goodLog_isBelieved() {
    Asked asked = Asked.about(good);
    assertEquals(Verdict.Status.AS_STATED, asked.verdict().status());
    assertEquals(List.of(), asked.causes());
    assertTrue(asked.words(Finding.Kind.DATA).isEmpty(), asked.findings()::toString);
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1 / 1.2, 1.2})
  void radiusWrongByAFifth(double factor) {
    Asked asked = Asked.about(SpoiledLogs.statedSize(good, factor));
    assertTrue(asked.causes().get(0).contains("not of the stated size"), asked::toString);
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }

  @Test
  void probeFarOff() {
    Asked asked = Asked.about(SpoiledLogs.probeAt(good, 0.015, 0));
    assertTrue(asked.causes().get(0).contains("not where it is said to be"), asked::toString);
    assertNotEquals(Verdict.Status.AS_STATED, asked.verdict().status());
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }

  @Test
  void probeThatSlips() {
    double end = good.log().readings().end();
    Asked asked = Asked.about(SpoiledLogs.probeAt(good, 0.015, 0.4 * end));
    assertTrue(asked.causes().get(0).contains("probably the probe slipped"), asked::toString);
    assertEquals(Verdict.Status.MISFIT, asked.verdict().status());
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }

  @Test
  void lidOpeningThatNobodySaw() {
    double end = good.log().readings().end();
    Asked asked = Asked.about(SpoiledLogs.lidOpen(good, 0.4 * end, 1800));
    assertTrue(asked.causes().get(0).contains("the lid was open"), asked::toString);
    assertNotEquals(Verdict.Status.AS_STATED, asked.verdict().status());
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }

  @Test
  void lidOpeningThatTheChamberShows() {
    Asked asked = Asked.about(SpoiledLogs.unlogged(good, LogEvent.Kind.LID_OPENED));
    long named =
        asked.words(Finding.Kind.DATA).stream()
            .filter(words -> words.contains("lid opening that is not written down"))
            .count();
    assertTrue(named >= 1, asked.findings()::toString);
  }

  @Test
  void logOfAnotherCut() {
    SpoiledLogs.Written bison = SpoiledLogs.good(ScenarioCut.BISON_STRIP, 31);
    Asked asked = Asked.about(good.with(bison.log()));
    assertTrue(asked.causes().get(0).contains("log of another cut"), asked::toString);
    assertEquals(Verdict.Status.MISFIT, asked.verdict().status());
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }

  @Test
  void readingsThatAreMissing() {
    Asked asked = Asked.about(SpoiledLogs.missing(good, 0.3, 7));
    assertTrue(
        asked.words(Finding.Kind.DATA).stream()
            .anyMatch(words -> words.contains("% of the readings of channel core are missing")),
        asked.findings()::toString);
    assertEquals(Verdict.Status.AS_STATED, asked.verdict().status());
    assertTrue(Math.abs(asked.convectionOff(good)) < HONEST);
  }
}
