package org.roastfield.lab.heldout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.SampleProfiles;
import org.roastfield.lab.diagnosis.ProfileWords;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookLogReader;
import org.roastfield.lab.plan.UnplannableException;
import org.roastfield.lab.replay.ByProfile;
import org.roastfield.lab.replay.ComparisonOptions;
import org.roastfield.lab.replay.ReplayResult;

/** The published synthetic log comes from its cook file as stated: convection × 1 is its truth. */
class ProfileReplayTest {

  private static final ComparisonOptions OPTIONS = ComparisonOptions.DEFAULTS.withUntil(5400);
  private static final Simulator SIMULATOR = Simulator.withDefaults();

  private static ProfileReplay of(CookLog log, CookerProfile profile, boolean startFromLog) {
    return ProfileReplay.of(
        Published.porkLoin(),
        log,
        List.of(),
        SampleProfiles.hashOf("sample-pit"),
        OPTIONS,
        startFromLog,
        profile);
  }

  private static ReplayResult replay(double convection, boolean startFromLog) {
    CookerProfile profile = SampleProfiles.sure("sample-pit", convection);
    ProfileReplay replay = of(Published.syntheticLog(), profile, startFromLog);
    return replay.compare(SIMULATOR.run(replay.cook()).orElseThrow(), SIMULATOR, 1);
  }

  @Test
  void profileThatIsRight_isWhatTheCookFileStates() {
    ReplayResult result = replay(1, false);
    ByProfile by = result.profile().orElseThrow();
    assertEquals(by.without().rms(), result.errors().rms(), 1e-6);
    assertTrue(by.madeFromThisLog());
    assertEquals(ProfileReplay.DRAWS, by.drawn() + by.leftOut());
    assertEquals(result.core().size(), by.band().size());
    for (int i = 0; i < by.band().size(); i++) {
      double width = by.band().get(i).high() - by.band().get(i).low();
      assertTrue(width > 0.5, "drift, noise and bias alone are wider, was " + width);
    }
    assertTrue(by.inside(result.core()) > 0.8, "inside " + by.inside(result.core()));
    assertTrue(by.asFarOff() > 0.2, "as far off " + by.asFarOff());
  }

  @Test
  void profileThatIsWrong_isWorseThanNone() {
    ReplayResult result = replay(2, false);
    ByProfile by = result.profile().orElseThrow();
    assertTrue(
        result.errors().rms() > 2 * by.without().rms(), result.errors() + " " + by.without());
    assertTrue(result.errors().bias() > 1, "a hotter cooker computes a hotter core");
    assertTrue(by.asFarOff() < replay(1, false).profile().orElseThrow().asFarOff(), by::toString);
    int last = result.core().size() - 1;
    double middle = (by.band().get(last).low() + by.band().get(last).high()) / 2;
    assertTrue(middle > result.core().get(last).measured() + 1, "band around " + middle);
  }

  @Test
  void startFromLog_isTheFirstReading() {
    ReplayResult result = replay(1, true);
    double first = Published.syntheticLog().channel(CookLog.CORE).orElseThrow().temperature(0);
    assertEquals(first, result.startTemperature());
    assertTrue(result.startFromLog());
    assertEquals(first, result.simulation().core().at(0), 1e-9);
  }

  @Test
  void sameArguments_giveTheSameBand() {
    ByProfile one = replay(1.1, false).profile().orElseThrow();
    assertEquals(one, replay(1.1, false).profile().orElseThrow());
    assertFalse(one.band().isEmpty());
  }

  @Test
  void profileWithoutInformation_isRefused() {
    CookerProfile sure = SampleProfiles.sure("sample-pit", 1);
    CookerProfile told =
        new CookerProfile(
            sure.id(),
            sure.model(),
            sure.madeUp(),
            sure.complete(),
            sure.parameters(),
            Prior.of(sure.parameters()),
            sure.validity(),
            sure.errors(),
            sure.diagnosis(),
            sure.logs());
    assertTrue(sure.hasInformation());
    assertFalse(told.hasInformation());
    UnplannableException thrown =
        assertThrows(UnplannableException.class, () -> of(Published.syntheticLog(), told, false));
    assertTrue(
        String.valueOf(thrown.getMessage()).contains("sample-pit holds no information"),
        thrown::getMessage);
    assertTrue(ProfileWords.status(told).startsWith("No information"));
  }

  @Test
  void logWithoutCore_isRefused() {
    CookLog log =
        CookLogReader.parse(
            "log.csv", "time_s,chamber_degC\n0,110\n600,110\n".getBytes(StandardCharsets.UTF_8));
    CookerProfile profile = SampleProfiles.sure("sample-pit", 1);
    IllegalArgumentException thrown =
        assertThrows(IllegalArgumentException.class, () -> of(log, profile, false));
    assertEquals("log.csv has no core channel to compare with", thrown.getMessage());
  }
}
