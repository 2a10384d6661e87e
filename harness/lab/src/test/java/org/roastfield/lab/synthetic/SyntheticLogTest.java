package org.roastfield.lab.synthetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;
import org.roastfield.lab.files.CookTexts;
import org.roastfield.lab.replay.ComparisonOptions;
import org.roastfield.lab.replay.Replay;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.synthetic.SyntheticLog.Made;

class SyntheticLogTest {

  private static final String ID = "syn-boathouse-pork-loin-1";

  @Test
  void publishedLog_isMadeAgainByteForByte() {
    String published = new String(Published.syntheticLogBytes(), StandardCharsets.UTF_8);
    assertEquals(published, csv(1));
  }

  @Test
  void anotherSeed_givesAnotherLog() {
    assertNotEquals(csv(1).replaceAll("(?m)^#.*\n", ""), csv(2).replaceAll("(?m)^#.*\n", ""));
  }

  @Test
  void comments_sayThatItIsMadeUp() {
    assertTrue(csv(1).startsWith("# " + ID + ": made up, no such cook took place\n"));
  }

  /** The same cook read by a probe that lags and is biased: a replay that knows it is as good. */
  @Test
  void probeThatErrs_isWhatTheLogIsReadBy() {
    String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
    String probe = "{name: leaf, off-centre: 4 mm, response: 300 s, bias: 2 K}";
    CookFile file =
        CookFileReader.parse(
            "cook.yaml",
            text.replace("{name: halfway, depth: 24 mm}", probe).getBytes(StandardCharsets.UTF_8));
    String csv = ((Made.Text) make(ID, file, 1)).csv();
    assertTrue(csv.contains("% lost, as probe leaf shows it\n"), csv.substring(0, 600));
    CookLog log = CookLogReader.parse("log.csv", csv.getBytes(StandardCharsets.UTF_8));
    double known = rms(file, log, ComparisonOptions.DEFAULTS);
    assertTrue(known > 0.15 && known < 0.45, "rms " + known);
    double ignored = rms(file, log, ComparisonOptions.DEFAULTS.withProbe("core"));
    assertTrue(ignored > 0.7, "rms " + ignored);
  }

  private static double rms(CookFile file, CookLog log, ComparisonOptions options) {
    Replay replay = Replay.of(file, log, options, false);
    SimulationResult result = Simulator.withDefaults().run(replay.cook()).orElseThrow();
    return replay.compare(result).errors().rms();
  }

  @Test
  void id_isMarkedSynthetic() {
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> make("real", Published.porkLoin(), 1));
    assertEquals(
        "id must be syn- and then lower-case letters, digits and hyphens, was \"real\"",
        e.getMessage());
  }

  @Test
  void cookThatFails_givesNoLog() {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("at-latest: 3 h", "at-latest: 3 min"));
    assertInstanceOf(Made.Failed.class, make(ID, file, 1));
  }

  private static String csv(long seed) {
    return ((Made.Text) make(ID, Published.porkLoin(), seed)).csv();
  }

  private static Made make(String id, CookFile file, long seed) {
    return SyntheticLog.of(
        id,
        Inputs.file("cook", "cook.yaml", Published.porkLoinBytes()),
        file,
        seed,
        SyntheticSettings.withDefaults());
  }
}
