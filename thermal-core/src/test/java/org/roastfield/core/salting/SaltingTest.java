package org.roastfield.core.salting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;

class SaltingTest {

  private static final double D = Salting.COLD_MEAT;
  private static final double DOSE = 0.3;

  /** M/√(πDt) exp(−x²/4Dt): a dose of a minute is an instant one after hours. */
  @Test
  void thickSlab_isTheInstantaneousSource() {
    Salting salting = Salting.of(Slab.ofThickness(0.1), DOSE, D, 60, 24 * 3600);
    for (double hours : new double[] {6, 12, 24}) {
      double t = hours * 3600;
      double most = DOSE / Math.sqrt(Math.PI * D * (t - 30));
      for (double depth : new double[] {0, 0.002, 0.004, 0.008, 0.012}) {
        double exact = most * Math.exp(-depth * depth / (4 * D * (t - 30)));
        assertEquals(exact, salting.at(0.05 - depth, t), 0.01 * most, hours + " h " + depth);
      }
    }
  }

  /** C = M/L [1 + 2 Σ (−1)ⁿ cos(nπx/L) exp(−n²π²Dt/L²)] over the half thickness L. */
  @Test
  void thinSlab_isTheSeries() {
    double half = 0.015;
    Salting salting = Salting.of(Slab.ofThickness(2 * half), DOSE, D, 60, 200 * 3600);
    for (double hours : new double[] {24, 48, 100, 200}) {
      double t = hours * 3600 - 30;
      for (double x : new double[] {0, 0.005, 0.01, 0.015}) {
        double sum = 1;
        for (int n = 1; n < 60; n++) {
          double decay = Math.exp(-n * n * Math.PI * Math.PI * D * t / (half * half));
          sum += 2 * (n % 2 == 0 ? 1 : -1) * Math.cos(n * Math.PI * x / half) * decay;
        }
        double mean = DOSE / half;
        assertEquals(mean * sum, salting.at(x, hours * 3600), 0.005 * mean, hours + " h " + x);
      }
    }
  }

  @Test
  void salt_isConserved() {
    Salting salting = Salting.of(Cylinder.ofDiameter(0.096), DOSE, D, 3600, 48 * 3600);
    assertEquals(0, salting.residual(), 1e-12);
    assertEquals(DOSE / 0.024, salting.mean(), 1e-12);
  }

  @Test
  void hoursBefore_areThoseOfTheWantedEvenness() {
    Salting salting = Salting.of(Slab.ofThickness(0.03), DOSE, D, 60, 230 * 3600);
    double hours = salting.hoursBefore(0.5).orElseThrow();
    assertEquals(0.5, salting.evenness(hours * 3600), 0.01);
    assertTrue(salting.hoursBefore(0.8).orElseThrow() > hours);
    assertTrue(salting.hoursBefore(1 - 1e-12).isEmpty());
  }

  /** From the source: exp(−x²/4Dt) is a half at t = x²/(4 D ln 2). */
  @Test
  void hoursBefore_atADepthOfAThickCut_areThoseOfTheSource() {
    Salting salting = Salting.of(Slab.ofThickness(0.1), DOSE, D, 60, 120 * 3600);
    for (double depth : new double[] {0.005, 0.01}) {
      double exact = depth * depth / (4 * D * Math.log(2)) / 3600;
      assertEquals(exact, salting.hoursBefore(0.5, depth).orElseThrow(), 0.02 * exact);
    }
    assertTrue(salting.hoursBefore(0.5).isEmpty());
    assertThrows(IllegalArgumentException.class, () -> salting.hoursBefore(0.5, 0.051));
    assertThrows(IllegalArgumentException.class, () -> salting.hoursBefore(0.5, 0));
  }

  @Test
  void salt_lowersWaterActivity() {
    assertEquals(0.98 * (1 - 0.6 * 15 / 750), Salting.waterActivity(0.98, 15, 750), 1e-15);
  }

  @Test
  void wrongArguments_areRefused() {
    Slab slab = Slab.ofThickness(0.03);
    assertThrows(IllegalArgumentException.class, () -> Salting.of(slab, 0, D, 60, 3600));
    assertThrows(IllegalArgumentException.class, () -> Salting.of(slab, 1, Double.NaN, 60, 3600));
    assertThrows(IllegalArgumentException.class, () -> Salting.of(slab, 1, D, 60, 60));
  }
}
