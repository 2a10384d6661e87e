package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.roastfield.core.inference.ErrorModel;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

class OtherCookersTest {

  private static final Parameter CONVECTION = CookParameters.CONVECTION;
  private static final double ASSUMED = CONVECTION.spread();

  private static List<CookerProfile> sure(double... convection) {
    List<CookerProfile> profiles = new ArrayList<>();
    for (int i = 0; i < convection.length; i++) {
      profiles.add(SampleProfiles.sure("pit-" + i, Math.exp(convection[i])));
    }
    return profiles;
  }

  /** A profile that knows one number of its cooker, as logs of it with some error would tell. */
  private static CookerProfile learned(String id, double truth, double error, double noise) {
    double precision = 1 / (ASSUMED * ASSUMED) + 1 / (error * error);
    double mean = (truth + error * noise) / (error * error) / precision;
    CookerProfile like = SampleProfiles.sure(id, 1);
    return new CookerProfile(
        id,
        like.model(),
        false,
        true,
        like.parameters(),
        Prior.of(like.parameters(), new double[] {mean}, new double[][] {{1 / precision}}),
        like.validity(),
        ErrorModel.CORE,
        like.diagnosis(),
        like.logs());
  }

  /** Eq. (91) by hand: sure profiles are cookers that were seen. */
  @Test
  void sureProfiles_countBesideFourAssumedCookers() {
    double[] seen = {0.1, 0.2, 0.3, 0.4, 0.1, 0.2, 0.3, 0.4};
    Parameter found = OtherCookers.of(sure(seen)).priors().get(0);
    double mean = 2.0 / 12;
    double squares = 4 * (ASSUMED * ASSUMED + mean * mean);
    for (double each : seen) {
      squares += (each - mean) * (each - mean);
    }
    // Each profile leaves a hundredth of the assumed variance.
    squares += 8 * 0.01 * ASSUMED * ASSUMED;
    assertEquals(mean, Math.log(found.median()), 2e-3);
    assertEquals(Math.sqrt(squares / 12 * (1 + 1.0 / 12)), found.spread(), 2e-3);
    assertEquals("learned from 8 other cookers", found.source());
    assertEquals(CONVECTION.low(), found.low());
  }

  @Test
  void numbersThatNoProfileHas_stayAsAssumed_andMadeUpIsKept() {
    OtherCookers others = OtherCookers.of(sure(0, 0, 0, 0, 0, 0, 0, 0));
    assertEquals(CookParameters.WALLS, others.prior(CookParameters.WALLS));
    assertEquals(ParameterSet.of(others.prior(CONVECTION)), others.priors());
    assertTrue(others.madeUp());
    assertEquals(CONVECTION, OtherCookers.NONE.prior(CONVECTION));
  }

  /**
   * Cookers that give a fifth more heat than assumed, and differ by half as much: ten profiles with
   * errors foretell the next cooker. Coverage of 400 within four standard errors, from below alone:
   * what was assumed keeps it wide.
   */
  @Test
  void nextCooker_isForetold_closerThanByWhatIsAssumed() {
    SplittableRandom random = new SplittableRandom(7);
    int rounds = 400;
    int covered = 0;
    double squares = 0;
    double assumed = 0;
    double spread = 0;
    for (int round = 0; round < rounds; round++) {
      List<CookerProfile> profiles = new ArrayList<>();
      for (int i = 0; i < 10; i++) {
        profiles.add(learned("pit-" + i, cooker(random), 0.12, random.nextGaussian()));
      }
      Parameter prior = OtherCookers.of(profiles).priors().get(0);
      double next = cooker(random);
      double off = next - prior.centre();
      covered += Math.abs(off) <= 1.645 * prior.spread() ? 1 : 0;
      squares += off * off / rounds;
      assumed += next * next / rounds;
      spread += prior.spread() / rounds;
    }
    double share = (double) covered / rounds;
    assertTrue(share >= 0.9 - 4 * 0.015, "covered " + share);
    assertTrue(squares < 0.6 * assumed, squares + " of " + assumed);
    assertTrue(spread < 0.9 * ASSUMED, "spread " + spread);
  }

  private static double cooker(SplittableRandom random) {
    return Math.log(1.2) + 0.15 * random.nextGaussian();
  }

  @Test
  void tooFew_twins_andAProfileOfItsOwn_areRefused_withAdvice() {
    assertEquals(
        "profiles of other cookers must be at least 8 that can be relied on, were 7: fewer do not"
            + " tell how far cookers differ",
        message(() -> OtherCookers.of(sure(0, 0, 0, 0, 0, 0, 0))));
    List<CookerProfile> twins = new ArrayList<>(sure(0, 0, 0, 0, 0, 0, 0));
    twins.add(twins.get(2));
    assertEquals(
        "profiles of other cookers must be of one cooker each, but pit-2 and pit-2 have the readings"
            + " of log made-up in common: leave one of them out",
        message(() -> OtherCookers.of(twins)));
    CookerProfile stopped =
        SampleProfiles.read(
            "pit-0",
            CookerProfileJson.text(sure(0).get(0), "0")
                .replace("\"complete\" : true", "\"complete\" : false"));
    assertFalse(OtherCookers.canTell(stopped));
  }

  private static String message(Runnable of) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, of::run).getMessage());
  }
}
