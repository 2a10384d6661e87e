package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LastComputedTest {

  private int calls;

  /** x² and its derivative; none below 0. */
  private boolean square(double[] x, double[] predicted, double @Nullable [][] derivatives) {
    calls++;
    predicted[0] = x[0] * x[0];
    if (derivatives != null) {
      derivatives[0][0] = 2 * x[0];
    }
    return x[0] >= 0;
  }

  private final LastComputed model = new LastComputed(this::square);
  private final double[] predicted = new double[1];
  private final double[][] derivatives = new double[1][1];

  @Test
  void pointWithDerivatives_isComputedOnce() {
    assertTrue(model.at(new double[] {3}, predicted, derivatives));
    double[] again = new double[1];
    double[][] slopes = new double[1][1];
    assertTrue(model.at(new double[] {3}, again, slopes));
    assertTrue(model.at(new double[] {3}, again, null));
    assertArrayEquals(new double[] {9}, again);
    assertArrayEquals(new double[] {6}, slopes[0]);
    assertEquals(1, calls);
  }

  @Test
  void pointWithoutDerivatives_isNotTakenForOneWithThem() {
    assertTrue(model.at(new double[] {3}, predicted, null));
    assertTrue(model.at(new double[] {3}, predicted, derivatives));
    assertEquals(6, derivatives[0][0]);
    assertEquals(2, calls);
  }

  /** Another point in between, which a search tries and may leave, does not wipe the last. */
  @Test
  void pointThatFailedOrWasTried_leavesTheLastOne() {
    assertTrue(model.at(new double[] {3}, predicted, derivatives));
    assertFalse(model.at(new double[] {-1}, predicted, derivatives));
    assertTrue(model.at(new double[] {4}, predicted, null));
    assertTrue(model.at(new double[] {3}, predicted, derivatives));
    assertEquals(9, predicted[0]);
    assertEquals(6, derivatives[0][0]);
    assertEquals(3, calls);
  }
}
