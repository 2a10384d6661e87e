package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class CoverageTest {

  /** Of none or all the ends are powers: (1 − p)ⁿ = α/2. */
  @Test
  void intervalOfNoneAndAll_isInClosedForm() {
    for (int n : new int[] {1, 2, 30, 400}) {
      double root = Math.pow(0.025, 1.0 / n);
      assertEquals(0, coverage(0, n).shareInterval(0.95).low(), 0);
      assertEquals(1 - root, coverage(0, n).shareInterval(0.95).high(), 1e-10);
      assertEquals(root, coverage(n, n).shareInterval(0.95).low(), 1e-10);
      assertEquals(1, coverage(n, n).shareInterval(0.95).high(), 0);
    }
  }

  /** At its ends what was seen, or more, is as improbable as the tail; sums of binomial terms. */
  @Test
  void intervalEnds_solveTheirEquations() {
    for (int n : new int[] {5, 30, 200}) {
      for (int covered = 1; covered < n; covered += Math.max(1, n / 7)) {
        Interval interval = coverage(covered, n).shareInterval(0.9);
        assertEquals(0.05, probability(n, covered, n, interval.low()), 1e-9);
        assertEquals(0.05, probability(n, 0, covered, interval.high()), 1e-9);
      }
    }
  }

  @Test
  void interval_holdsTheShareAtLeastAsOftenAsItSays() {
    int n = 30;
    for (double share = 0.02; share < 1; share += 0.02) {
      double held = 0;
      for (int covered = 0; covered <= n; covered++) {
        boolean holds = coverage(covered, n).shareInterval(0.95).covers(share);
        held += holds ? probability(n, covered, covered, share) : 0;
      }
      assertTrue(held >= 0.95, share + ": " + held);
    }
  }

  @Test
  void fewCooks_sayLittle() {
    Interval interval = coverage(27, 30).shareInterval(0.95);
    assertEquals(0.73, interval.low(), 0.006);
    assertEquals(0.98, interval.high(), 0.006);
  }

  /** Chances of passing to the digits of an independent computation, by true coverage. */
  @Test
  void gates_seeWhatTheyCan() {
    assertChances(100, 0.85, 0.95, 0.936, 0.68, 0.46, 0.26, 0.13, 0.72, 0.37, 0.18);
    assertChances(200, 0.85, 0.95, 0.987, 0.70, 0.39, 0.16, 0.04, 0.77, 0.28, 0.08);
    assertChances(400, 0.86, 0.94, 0.994, 0.54, 0.15, 0.02, 0.001, 0.53, 0.03, 0.001);
    assertChances(1000, 0.88, 0.92, 0.969, 0.04, 0.000, 0, 0, 0.006, 0, 0);
  }

  private static void assertChances(int cooks, double low, double high, double... chances) {
    double[] shares = {0.90, 0.86, 0.84, 0.82, 0.80, 0.94, 0.96, 0.97};
    for (int i = 0; i < shares.length; i++) {
      double chance = new CoverageGate(low, high).chanceOfPassing(cooks, shares[i]);
      assertEquals(chances[i], chance, i == 0 ? 0.0006 : 0.0051, cooks + " at " + shares[i]);
    }
  }

  @Test
  void gate_includesItsEnds() {
    CoverageGate gate = new CoverageGate(0.86, 0.94);
    assertTrue(gate.passes(coverage(344, 400)) && gate.passes(coverage(376, 400)));
    assertFalse(gate.passes(coverage(343, 400)) || gate.passes(coverage(377, 400)));
  }

  @Test
  void wrongCounts_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> coverage(6, 5));
    assertThrows(IllegalArgumentException.class, () -> coverage(0, 0));
    assertThrows(IllegalArgumentException.class, () -> coverage(1, 2).shareInterval(1));
    assertThrows(IllegalArgumentException.class, () -> new CoverageGate(0.9, 0.8));
  }

  private static Coverage coverage(int covered, int cooks) {
    return new Coverage(0.9, covered, cooks, 60);
  }

  /** Probability of {@code from} to {@code to} among n, each with probability p. */
  private static double probability(int n, int from, int to, double p) {
    double sum = 0;
    double logTerm = n * Math.log1p(-p);
    for (int k = 0; k <= to; k++) {
      sum += k >= from ? Math.exp(logTerm) : 0;
      logTerm += Math.log((double) (n - k) / (k + 1)) + Math.log(p / (1 - p));
    }
    return sum;
  }
}
