package org.roastfield.core.inference;

/**
 * A calibration around an estimate to first order, under the estimate's errors and weights: what
 * cheap diagnostics are computed from. Making it costs one evaluation of the model with its
 * derivatives. Immutable.
 */
public final class FirstOrder {

  private final Calibration calibration;
  private final MapEstimate estimate;
  private final Linearisation linear;

  private FirstOrder(Calibration calibration, MapEstimate estimate, Linearisation linear) {
    this.calibration = calibration;
    this.estimate = estimate;
    this.linear = linear;
  }

  /**
   * Around an estimate.
   *
   * @param estimate of that calibration, found
   * @throws IllegalArgumentException if nothing was found
   */
  public static FirstOrder of(Calibration calibration, MapEstimate estimate) {
    if (!estimate.isFound()) {
      throw new IllegalArgumentException(
          "estimate must be one that was found, ended with " + estimate.status());
    }
    return new FirstOrder(calibration, estimate, calibration.linearised(estimate));
  }

  /** The calibration. */
  public Calibration calibration() {
    return calibration;
  }

  /** The estimate. */
  public MapEstimate estimate() {
    return estimate;
  }

  Linearisation linear() {
    return linear;
  }
}
