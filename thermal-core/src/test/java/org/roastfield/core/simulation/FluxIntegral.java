package org.roastfield.core.simulation;

import java.util.function.UnaryOperator;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Heat and water through the faces of a cook, integrated from the surface laws over the dense
 * output: it shares no sum with the balances of the integration.
 *
 * @param heatUpper [J/m²]
 * @param heatLower [J/m²]; 0 where the cut is treated alike all round
 * @param waterUpper [kg/m²]
 * @param waterLower [kg/m²]
 * @param cook the integration itself, to compare with
 */
record FluxIntegral(
    double heatUpper,
    double heatLower,
    double waterUpper,
    double waterLower,
    CookIntegration cook) {

  private static final double[] NODES = {
    -0.9061798459386640, -0.5384693101056831, 0, 0.5384693101056831, 0.9061798459386640
  };
  private static final double[] WEIGHTS = {
    0.2369268850561891,
    0.4786286704993665,
    0.5688888888888889,
    0.4786286704993665,
    0.2369268850561891
  };

  static FluxIntegral of(Cook cook, double accuracy, int cells) {
    return of(cook, accuracy, cells, law -> law);
  }

  /**
   * Integrates a cook, and {@code planted} versions of its laws over what came out.
   *
   * @param planted changes the laws that are integrated, not those that are computed with
   */
  static FluxIntegral of(Cook cook, double accuracy, int cells, UnaryOperator<SurfaceLaw> planted) {
    CookIntegration integration =
        CookIntegration.of(cook, new CookIntegration.Accuracy(accuracy, cells, 0.5e-3, 200_000));
    Trajectory trajectory = integration.newTrajectory();
    double[] upper = new double[2];
    double[] lower = new double[2];
    Reading top = integration.reading(Probe.SURFACE);
    Reading bottom = integration.readingAt(-cook.cut().shape().halfThickness());
    for (Stage stage : cook.stages()) {
      int first = trajectory.steps();
      CookIntegration.End end = integration.run(stage, trajectory);
      if (end != CookIntegration.End.RULE_MET) {
        throw new IllegalStateException("stage " + stage.name() + " ended as " + end);
      }
      add(trajectory, top, planted.apply(stage.upper()), first, upper);
      if (!cook.isSymmetric()) {
        add(trajectory, bottom, planted.apply(stage.lower()), first, lower);
      }
    }
    return new FluxIntegral(upper[0], lower[0], upper[1], lower[1], integration);
  }

  /** Largest difference of heat from the balances, relative to the turnover. */
  double heatDiscrepancy() {
    double upper = Math.abs(heatUpper - cook.throughUpper());
    double lower = Math.abs(heatLower - cook.throughLower());
    return Math.max(upper, lower) / cook.turnover();
  }

  /** Largest difference of water from the balances, relative to the larger evaporation. */
  double waterDiscrepancy() {
    double upper = Math.abs(waterUpper - cook.evaporatedUpper());
    double lower = Math.abs(waterLower - cook.evaporatedLower());
    double scale = Math.max(Math.abs(cook.evaporatedUpper()), Math.abs(cook.evaporatedLower()));
    return scale == 0 ? Math.max(upper, lower) : Math.max(upper, lower) / scale;
  }

  private static void add(
      Trajectory trajectory, Reading reading, SurfaceLaw law, int firstStep, double[] sums) {
    SurfaceFlux flux = new SurfaceFlux();
    for (int step = firstStep; step < trajectory.steps(); step++) {
      double middle = 0.5 * (trajectory.stepStart(step) + trajectory.stepEnd(step));
      double half = 0.5 * (trajectory.stepEnd(step) - trajectory.stepStart(step));
      for (int j = 0; j < NODES.length; j++) {
        double time = middle + half * NODES[j];
        flux.clear();
        law.evaluate(trajectory.inStep(reading, step, time), time, flux);
        sums[0] += half * WEIGHTS[j] * flux.heatFlux();
        sums[1] += half * WEIGHTS[j] * flux.evaporation();
      }
    }
  }
}
