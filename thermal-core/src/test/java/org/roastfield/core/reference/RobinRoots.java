package org.roastfield.core.reference;

import java.util.Arrays;

/**
 * Roots β of β (−φ′(β)) = Bi φ(β), the eigenvalues of a body with a Robin surface.
 *
 * <p>Neighbouring roots lie further apart than the scanning step, so that none is missed; each is
 * then refined by Newton's method inside its bracket to the last bits.
 */
final class RobinRoots {
  private static final double SCAN_STEP = Math.PI / 8;
  private static final int MOST_ITERATIONS = 100;

  private final RadialMode mode;
  private final double biot;

  RobinRoots(RadialMode mode, double biot) {
    this.mode = mode;
    this.biot = biot;
  }

  /** All roots in (0, limit], ascending. */
  double[] upTo(double limit) {
    double[] roots = new double[(int) Math.ceil(limit / SCAN_STEP)];
    int count = 0;
    double left = 0;
    double leftValue = residual(left);
    while (left < limit) {
      double right = left + SCAN_STEP;
      double rightValue = residual(right);
      if (leftValue < 0 != rightValue < 0) {
        roots[count++] = refine(left, leftValue < 0, right);
      }
      left = right;
      leftValue = rightValue;
    }
    return Arrays.copyOf(roots, count);
  }

  private double refine(double left, boolean negativeOnTheLeft, double right) {
    double low = left;
    double high = right;
    double root = 0.5 * (low + high);
    for (int i = 0; i < MOST_ITERATIONS; i++) {
      double residual = residual(root);
      if (residual < 0 == negativeOnTheLeft) {
        low = root;
      } else {
        high = root;
      }
      double next = root - residual / slope(root);
      if (!(next >= low && next <= high)) {
        next = 0.5 * (low + high);
      }
      // Round-off in the residual moves the last steps by a few units in the last place.
      if (Math.abs(next - root) <= 4 * Math.ulp(root)) {
        return next;
      }
      root = next;
    }
    throw new IllegalStateException("no root found between " + left + " and " + right);
  }

  private double residual(double z) {
    return z * mode.descent(z) - biot * mode.value(z);
  }

  // With s = −φ′ the mode's equation gives s′ = φ − m s / z.
  private double slope(double z) {
    return (1 - mode.exponent() + biot) * mode.descent(z) + z * mode.value(z);
  }
}
