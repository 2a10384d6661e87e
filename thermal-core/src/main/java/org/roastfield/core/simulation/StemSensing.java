package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.shape.Shape;

/**
 * The temperature that the tip of a probe takes on: that of the food there, or with a stem that
 * carries heat the mean of eq. (54) over the way of the stem, by Gauss-Legendre's rule on panels
 * that grow with the distance from the tip.
 */
final class StemSensing {

  /** Ends of the panels in fin lengths; beyond the last the weight is below round-off. */
  private static final double[] PANELS = {0, 1, 2, 4, 8, 16, 38};

  /** Half of the points of the rule of six points, which is symmetric, and its weights. */
  private static final double[] POINTS = {
    0.2386191860831969, 0.6612093864662645, 0.932469514203152
  };

  private static final double[] WEIGHTS = {
    0.467913934572691, 0.3607615730481386, 0.1713244923791704
  };

  private final List<Reading> readings = new ArrayList<>();
  private final List<Double> weights = new ArrayList<>();
  private double constant;

  StemSensing(CookIntegration integration, Probe probe, Shape shape) {
    Stem stem = probe.instrument().stem();
    Reading tip = integration.reading(probe);
    if (!stem.conducts()) {
      add(tip, 1);
      return;
    }
    double distance = probe.distanceFromMiddle(shape);
    double lengths = probe.insertion(shape) / stem.finLength();
    double decay = StrictMath.exp(-2 * lengths);
    double entry = 2 * StrictMath.exp(-lengths) / (1 + decay);
    for (int i = 1; i < PANELS.length && PANELS[i - 1] < lengths; i++) {
      double from = PANELS[i - 1];
      double half = 0.5 * (Math.min(PANELS[i], lengths) - from);
      for (int j = 0; j < POINTS.length; j++) {
        for (int side = -1; side <= 1; side += 2) {
          double s = from + half * (1 + side * POINTS[j]);
          double kernel =
              (StrictMath.exp(-s) - decay * StrictMath.exp(s)) / (1 + decay) * half * WEIGHTS[j];
          add(integration.readingAt(distance + s * stem.finLength()), kernel);
        }
      }
    }
    normalise(1 - entry);
    double beyond = 2 / (lengths * lengths);
    add(integration.readingAt(shape.halfThickness()), entry * (1 + beyond));
    add(tip, -entry * beyond);
    constant = entry * stem.entryExcess();
  }

  private void add(Reading reading, double weight) {
    readings.add(reading);
    weights.add(weight);
  }

  private void normalise(double sum) {
    double found = weights.stream().mapToDouble(Double::doubleValue).sum();
    weights.replaceAll(weight -> weight * sum / found);
  }

  /** Temperature of the tip at the start, before any step [K]. */
  double atStart(Trajectory trajectory) {
    double value = constant;
    for (int i = 0; i < readings.size(); i++) {
      value += weights.get(i) * trajectory.at(readings.get(i), trajectory.start());
    }
    return value;
  }

  /** Temperature of the tip in a step [K]. */
  double inStep(Trajectory trajectory, int step, double time) {
    double value = constant;
    for (int i = 0; i < readings.size(); i++) {
      value += weights.get(i) * trajectory.inStep(readings.get(i), step, time);
    }
    return value;
  }
}
