package org.roastfield.lab.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;
import org.roastfield.lab.files.CookTexts;

class ReplayTest {

  /**
   * The synthetic log comes from the same equations, so what is left is the error that was put in:
   * 0.3 K on the core, and next to nothing through the chamber, whose errors a core does not feel.
   * Its correlation over 7 min leaves some 10 independent errors an hour, hence the margin of a
   * half.
   */
  @Test
  void syntheticLog_isMetToTheErrorThatWasPutIn() {
    ReplayResult result = replay(Published.porkLoin(), Published.syntheticLog());
    assertTrue(result.errors().rms() < 0.45, "rms " + result.errors().rms());
    assertTrue(result.errors().rms() > 0.15, "rms " + result.errors().rms());
    assertTrue(Math.abs(result.errors().bias()) < 0.2, "bias " + result.errors().bias());
    assertTrue(result.chamberFromLog());
    assertEquals(
        Published.syntheticLog().rows(), result.errors().readings() + result.errors().missing());
    assertEquals(5, result.targets().size());
    for (TargetTime target : result.targets()) {
      double error = Math.abs(target.error().orElseThrow());
      assertTrue(error < 180, target + " is off by " + error + " s");
    }
  }

  /** The chamber of the cook file is not that of the log: using it must show. */
  @Test
  void logWithoutChamber_usesTheCookFilesAndSaysSo() {
    CookLog log = log("time_s,core_degC\n0,5\n600,8\n1200,15\n1800,20\n");
    ReplayResult result = replay(CookTexts.read(CookTexts.SLAB), log);
    assertFalse(result.chamberFromLog());
    assertEquals(0, result.chamber().size());
    assertEquals(
        "chamber: the log has none, so the cook file's 110.0 °C throughout, walls as warm as the"
            + " air",
        result.assumptions().get(0));
  }

  @Test
  void chamberReadings_areTheSurroundings() {
    String cold = "time_s,chamber_degC,core_degC\n0,5,5\n600,5,5\n1200,5,5\n";
    CookFile dry = CookTexts.read(CookTexts.SLAB.replace("wetness: 0.3", "wetness: 0"));
    ReplayResult result = replay(dry, log(cold));
    assertEquals(0, result.errors().rms(), 1e-6);
    ReplayResult warm = replay(dry, log(cold.replace(",5,", ",110,")));
    assertTrue(warm.errors().bias() > 1);
  }

  @Test
  void errors_areThoseOfThePairs() {
    List<Comparison> pairs =
        List.of(
            new Comparison(0, 280, 281, 281),
            new Comparison(60, 281, 279, 279),
            new Comparison(120, 282, 282.5, 282.5));
    ErrorSummary errors = ErrorSummary.of(pairs, 4);
    assertEquals(3, errors.readings());
    assertEquals(4, errors.missing());
    assertEquals(Math.sqrt((1 + 4 + 0.25) / 3), errors.rms(), 1e-12);
    assertEquals(-0.5 / 3, errors.bias(), 1e-12);
    assertEquals(-2, errors.worst(), 1e-12);
    assertEquals(60, errors.worstTime());
  }

  @Test
  void targets_areMetBetweenReadings_orNever() {
    CookLog log = log("time_s,core_degC\n0,5\n600,8\n1200,15\n1800,20\n");
    ComparisonOptions options = ComparisonOptions.DEFAULTS.withTargets(List.of(283.15, 373.15));
    ReplayResult result = replay(CookTexts.read(CookTexts.SLAB), log, options);
    assertEquals(600 + 600 * 2 / 7.0, result.targets().get(0).measured().orElseThrow(), 1e-9);
    assertTrue(result.targets().get(1).measured().isEmpty());
    assertTrue(result.targets().get(1).error().isEmpty());
  }

  @Test
  void until_leavesOutWhatComesLater() {
    CookLog log = log("time_s,core_degC\n0,5\n600,8\n1200,15\n1800,20\n");
    ComparisonOptions options = ComparisonOptions.DEFAULTS.withUntil(1300);
    ReplayResult result = replay(CookTexts.read(CookTexts.SLAB), log, options);
    assertEquals(3, result.errors().readings());
    assertEquals(1200, result.simulation().endTime(), 1e-9);
  }

  @Test
  void startFromLog_replacesTheStatedStart() {
    CookLog log = log("time_s,core_degC\n0,12\n600,13\n");
    CookFile file = CookTexts.read(CookTexts.SLAB);
    ReplayResult result = replay(file, log, ComparisonOptions.DEFAULTS, true);
    assertEquals(285.15, result.startTemperature(), 1e-9);
    assertEquals(0, result.core().get(0).error(), 1e-3);
    assertTrue(
        result.assumptions().contains("start temperature: 12.0 °C, the log's first core reading"));
  }

  /** Between 5 and 15 °C: 10 K in 1200 s; the span beyond the log's readings is never crossed. */
  @Test
  void heatingRates_areTakenBetweenFirstCrossings() {
    CookLog log = log("time_s,core_degC\n0,5\n600,8\n1200,15\n1800,20\n");
    ComparisonOptions options =
        ComparisonOptions.DEFAULTS.withRates(
            List.of(new RateSpan(278.15, 288.15), new RateSpan(288.15, 323.15)));
    Compared compared = replay(CookTexts.read(CookTexts.SLAB), log, options).compared();
    assertEquals(10 / 1200.0, compared.rates().get(0).measured().orElseThrow(), 1e-9);
    assertTrue(compared.rates().get(0).computed().orElseThrow() > 0);
    assertTrue(compared.rates().get(1).measured().isEmpty());
    assertTrue(compared.rates().get(1).relativeError().isEmpty());
    assertRefused("high must be above 300.0 K, was 300.0 K", () -> new RateSpan(300, 300));
  }

  @Test
  void from_leavesOutEarlierErrors() {
    CookLog log = log("time_s,core_degC\n0,50\n600,8\n1200,15\n1800,20\n");
    ComparisonOptions options = ComparisonOptions.DEFAULTS.withFrom(600);
    assertEquals(3, replay(CookTexts.read(CookTexts.SLAB), log, options).errors().readings());
    assertRefused("until must be greater than 600.0, was 600.0", () -> options.withUntil(600));
  }

  @Test
  void probeThatCoreReadingsAreFrom_isTheOneThatErrsOrIsNamed() {
    String two = "- {name: tip, off-centre: 2 mm, bias: 1 K}\n  - {name: leaf, off-centre: 0 mm}";
    CookFile both = CookTexts.read(CookTexts.SLAB.replace("- {name: tip, depth: 15 mm}", two));
    CookFile ideal = CookTexts.read(CookTexts.SLAB);
    assertEquals("the true core", Readout.of(ideal, Optional.empty()).words());
    assertEquals("probe tip", Readout.of(ideal, Optional.of("tip")).words());
    assertEquals("the true core", Readout.of(both, Optional.of("core")).words());
    assertRefused(
        "probe must be stated where more than one could have logged the core, which tip, leaf of"
            + " cook.yaml could",
        () -> Readout.of(both, Optional.empty()));
    assertRefused(
        "probe must be core or one of cook.yaml (tip, leaf), was \"tap\"",
        () -> Readout.of(both, Optional.of("tap")));
    CookLog log = log("time_s,core_degC\n0,5\n600,8\n1200,15\n1800,20\n");
    Compared compared = replay(both, log, ComparisonOptions.DEFAULTS.withProbe("tip")).compared();
    assertTrue(compared.core().get(3).computed() > compared.core().get(3).trueCore() + 1);
    TargetTime ten = compared.targets().get(0);
    assertTrue(ten.computed().orElseThrow() < ten.trueCore().orElseThrow() - 30, ten::toString);
  }

  private static void assertRefused(String message, Executable action) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, action);
    assertEquals(message, e.getMessage());
  }

  @Test
  void logWithoutUsableCore_isRefused() {
    CookFile file = CookTexts.read(CookTexts.SLAB);
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> replay(file, log("time_s,chamber_degC\n0,5\n60,6\n")));
    assertEquals("log.csv has no core channel to compare with", e.getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> replay(file, log("time_s,core_degC\n0,5\n60,\n")));
  }

  private static CookLog log(String text) {
    return CookLogReader.parse("log.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  private static ReplayResult replay(CookFile file, CookLog log) {
    return replay(file, log, ComparisonOptions.DEFAULTS);
  }

  private static ReplayResult replay(CookFile file, CookLog log, ComparisonOptions options) {
    return replay(file, log, options, false);
  }

  private static ReplayResult replay(
      CookFile file, CookLog log, ComparisonOptions options, boolean startFromLog) {
    Replay replay = Replay.of(file, log, options, startFromLog);
    return replay.compare(Simulator.withDefaults().run(replay.cook()).orElseThrow());
  }
}
