package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.FireDemand;
import org.roastfield.core.chamber.FireNeeds;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.chamber.Tending;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;

/** Pits that are found again from the log of a probe in their gas. */
class FireTraceTest {

  private static final Outside OUTSIDE = new Outside(287, 1, 0.007, MoistAir.STANDARD_PRESSURE);
  private static final FirePit BASE = FirePit.thinSteel();
  private static final ParameterSet PARAMETERS = all();
  private static final double END = 4.5 * 3600;
  private static final double STEP = 30;
  private static final double OFF = 3.5 * 3600;

  private static ParameterSet all() {
    ParameterSet all = FireParameters.ofPit().without("fire-heating-value");
    all = all.without("fire-lighting");
    for (Parameter each : FireParameters.ofLog().list()) {
      all = all.with(each);
    }
    return all;
  }

  /** Warming up, two openings, then vents wide open for the sear. */
  private static List<Tending> tending() {
    Tending hold = Tending.hold(0, 388);
    return List.of(
        hold,
        hold.at(5000).withOpenLid(),
        hold.at(5090),
        hold.at(9000).withOpenLid(),
        hold.at(9240),
        Tending.wide(OFF));
  }

  private static double[] times() {
    double[] times = new double[(int) (END / STEP)];
    for (int k = 0; k < times.length; k++) {
      times[k] = STEP * k;
    }
    return times;
  }

  private static FireTrace model() {
    FireTrace.Start start = new FireTrace.Start(287, 0.4, false);
    return FireTrace.of(BASE, PARAMETERS, OUTSIDE, start, tending(), times());
  }

  private static double[] drawn(Random random) {
    double[] z = new double[PARAMETERS.size()];
    for (int p = 0; p < z.length; p++) {
      Parameter each = PARAMETERS.get(p);
      do {
        z[p] = each.centre() + each.spread() * random.nextGaussian();
      } while (z[p] < each.lowest() || z[p] > each.highest());
    }
    return z;
  }

  private static double[] logged(double[] truth, Random random) {
    double[] shown = new double[times().length];
    assertTrue(model().at(truth, shown, null));
    double kept = StrictMath.exp(-STEP / 1500);
    double drift = 5 * random.nextGaussian();
    for (int k = 0; k < shown.length; k++) {
      shown[k] += drift + 0.5 * random.nextGaussian();
      drift = kept * drift + 5 * Math.sqrt(1 - kept * kept) * random.nextGaussian();
    }
    return shown;
  }

  private static MapEstimate estimate(double[] log) {
    Series series = Series.of("gas", times(), log, FireTrace.ERRORS);
    Evidence evidence = new Evidence(List.of(series), List.of());
    return Calibration.of(Prior.of(PARAMETERS), evidence, model()).map();
  }

  private static double pause(double[] coordinates) {
    FireDemand other =
        FireDemand.gentle(OUTSIDE, 0.5, 410, 7200)
            .withSear(new FireDemand.Sear(FireDemand.Sear.Place.COVERED, 500, 600));
    return StrictMath.log(FireNeeds.of(model().pit(coordinates), other).ramp());
  }

  /**
   * Four pits with a drift of 5 K over 25 min and 0.5 K of noise: the pause before a sear at other
   * settings is known better by far than before, and what is learned of what holds for most.
   */
  @Test
  void pits_areFoundAgain() {
    Random random = new Random(73);
    double before = 0;
    double after = 0;
    double distance = 0;
    double[] contraction = new double[PARAMETERS.size()];
    int pits = 4;
    for (int i = 0; i < pits; i++) {
      double[] truth = drawn(random);
      MapEstimate found = estimate(logged(truth, random));
      assertTrue(found.isFound());
      before += Math.abs(pause(PARAMETERS.centre()) - pause(truth)) / pits;
      after += Math.abs(pause(found.mean()) - pause(truth)) / pits;
      for (int p = 0; p < truth.length; p++) {
        double z = (found.mean()[p] - truth[p]) / PARAMETERS.get(p).spread();
        distance += z * z / pits / truth.length;
        contraction[p] += found.contraction(p) / pits;
      }
    }
    assertTrue(after < 0.4 * before, "pause wrong by " + before + " before, " + after + " after");
    assertTrue(distance < 0.7, "1 would be the prior itself, was " + distance);
    for (String told : List.of("fire-wall-capacity", "fire-gas-exchange", "fire-probe-lag")) {
      assertTrue(contraction[PARAMETERS.index(told)] > 0.4, told);
    }
    double lid = contraction[PARAMETERS.index("fire-lid-loss")];
    assertTrue(lid < 0.4, "two openings say little of it, was " + lid);
  }

  /** A warm pit that is held says nothing of its walls. */
  @Test
  void heldPit_tellsNothingOfItsWalls() {
    FireTrace.Start start = new FireTrace.Start(388, 1, true);
    double[] times = {0, 600, 1200, 3600};
    FireTrace held =
        FireTrace.of(BASE, PARAMETERS, OUTSIDE, start, List.of(Tending.hold(0, 388)), times);
    double[] shown = new double[4];
    double[][] slopes = new double[PARAMETERS.size()][4];
    assertTrue(held.at(PARAMETERS.centre(), shown, slopes));
    for (int p = 0; p < slopes.length; p++) {
      double expected = PARAMETERS.get(p).id().equals("fire-setting-offset") ? 1 : 0;
      assertEquals(expected, slopes[p][3], 0.02, PARAMETERS.get(p).id());
    }
    assertArrayEquals(new double[] {388, 388, 388, 388}, shown, 0.01);
  }

  @Test
  void lag_isThatOfAFirstOrderProbe() {
    ParameterSet lag = ParameterSet.of(FireParameters.ofLog().get(2));
    Tending open = Tending.hold(0, 388).withOpenLid();
    double[] times = {0, 10, 60, 200};
    FireTrace.Start start = new FireTrace.Start(388, 1, true);
    FireTrace trace = FireTrace.of(BASE, lag, OUTSIDE, start, List.of(open), times);
    double[] shown = new double[4];
    assertTrue(trace.at(lag.centre(), shown, null));
    for (int k = 0; k < 4; k++) {
      double slow = StrictMath.exp(-times[k] / 45);
      double fast = StrictMath.exp(-times[k] / 5);
      double gas = 287 + 35 + (388 - 287 - 35) * (45 * slow - 5 * fast) / 40;
      assertEquals(gas, shown[k], 0.6, "straight pieces of 5 s, after " + times[k]);
    }
  }

  @Test
  void readingBeforeTheFirstStep_isRefused() {
    FireTrace.Start start = new FireTrace.Start(388, 1, true);
    List<Tending> late = List.of(Tending.hold(100, 388));
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> FireTrace.of(BASE, PARAMETERS, OUTSIDE, start, late, new double[] {0, 200}));
    assertEquals(
        "time of the first reading after the first step must be finite and at least 0, was -100.0",
        refusal.getMessage());
  }
}
