package org.roastfield.core.integration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Order conditions of the tableau (Hairer, Norsett, Wanner, Solving ODEs I, II.2). */
class Esdirk4Test {

  private static final double ROUND_OFF = 1e-14;

  @Test
  void rowsAddUpToTheAbscissas() {
    for (int i = 0; i < Esdirk4.STAGES; i++) {
      assertEquals(Esdirk4.c(i), product(i, j -> 1), ROUND_OFF);
      assertTrue(Esdirk4.c(i) >= 0 && Esdirk4.c(i) <= 1);
    }
  }

  @Test
  void everyStageAfterTheFirstIsOfSecondOrder() {
    for (int i = 1; i < Esdirk4.STAGES; i++) {
      double c = Esdirk4.c(i);
      assertEquals(c * c / 2, product(i, Esdirk4::c), ROUND_OFF);
    }
  }

  @Test
  void weights_meetTheConditionsUpToOrderFour() {
    assertConditionsUpToThree(Esdirk4::b);
    IntToDoubleFunction c = Esdirk4::c;
    assertEquals(1.0 / 4, sum(Esdirk4::b, i -> cube(Esdirk4.c(i))), ROUND_OFF);
    assertEquals(1.0 / 8, sum(Esdirk4::b, i -> Esdirk4.c(i) * product(i, c)), ROUND_OFF);
    assertEquals(1.0 / 12, sum(Esdirk4::b, i -> product(i, Esdirk4Test::square)), ROUND_OFF);
    assertEquals(1.0 / 24, sum(Esdirk4::b, i -> product(i, j -> product(j, c))), ROUND_OFF);
  }

  @Test
  void embeddedWeights_meetTheConditionsUpToOrderThreeOnly() {
    IntToDoubleFunction embedded = i -> Esdirk4.b(i) - Esdirk4.errorWeight(i);
    assertConditionsUpToThree(embedded);
    assertTrue(Math.abs(sum(embedded, i -> cube(Esdirk4.c(i))) - 0.25) > 1e-3);
  }

  @Test
  void lastStageIsTheStep() {
    int last = Esdirk4.STAGES - 1;
    assertEquals(1, Esdirk4.c(last));
    assertEquals(Esdirk4.GAMMA, Esdirk4.a(last, last));
    for (int j = 0; j <= last; j++) {
      assertEquals(Esdirk4.b(j), Esdirk4.a(last, j));
    }
  }

  @Test
  void diagonalIsTheSameInEveryImplicitStage() {
    assertEquals(0, Esdirk4.a(0, 0));
    for (int i = 1; i < Esdirk4.STAGES; i++) {
      assertEquals(Esdirk4.GAMMA, Esdirk4.a(i, i));
    }
  }

  @Test
  void veryStiffDecayIsDampedAtOnce() {
    assertTrue(Math.abs(stability(-1e8)) < 1e-6);
    assertEquals(Math.exp(-0.1), stability(-0.1), 1e-7);
  }

  private static void assertConditionsUpToThree(IntToDoubleFunction weights) {
    assertEquals(1, sum(weights, i -> 1), ROUND_OFF);
    assertEquals(1.0 / 2, sum(weights, Esdirk4::c), ROUND_OFF);
    assertEquals(1.0 / 3, sum(weights, Esdirk4Test::square), ROUND_OFF);
    assertEquals(1.0 / 6, sum(weights, i -> product(i, Esdirk4::c)), ROUND_OFF);
  }

  /** Growth of y over one step of y′ = z y. */
  private static double stability(double z) {
    double[] stage = new double[Esdirk4.STAGES];
    for (int i = 0; i < Esdirk4.STAGES; i++) {
      double known = 1;
      for (int j = 0; j < i; j++) {
        known += z * Esdirk4.a(i, j) * stage[j];
      }
      stage[i] = known / (1 - z * Esdirk4.a(i, i));
    }
    return stage[Esdirk4.STAGES - 1];
  }

  private static double product(int row, IntToDoubleFunction f) {
    double sum = 0;
    for (int j = 0; j <= row; j++) {
      sum += Esdirk4.a(row, j) * f.applyAsDouble(j);
    }
    return sum;
  }

  private static double sum(IntToDoubleFunction weights, IntToDoubleFunction f) {
    double sum = 0;
    for (int i = 0; i < Esdirk4.STAGES; i++) {
      sum += weights.applyAsDouble(i) * f.applyAsDouble(i);
    }
    return sum;
  }

  private static double square(int i) {
    return Esdirk4.c(i) * Esdirk4.c(i);
  }

  private static double cube(double c) {
    return c * c * c;
  }
}
