package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.integration.ComputedCook;
import org.roastfield.core.integration.Trajectory;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.surface.Signal;

/**
 * The temperature that the tip of a probe takes on: that of the food there, or with a stem that
 * carries heat the mean of eq. (54) over the way of the stem, by Gauss-Legendre's rule on panels
 * that grow with the distance from the tip. On a stated way a panel may end where the way passes
 * the depth of the tip, since the temperature has a kink there.
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
  private final Signal air;
  private double constant;
  private double airWeight;

  /**
   * @param air around the stem [K], asked for only if the stem takes on a share of it
   */
  StemSensing(ComputedCook integration, Probe probe, Shape shape, Signal air) {
    Stem stem = probe.instrument().stem();
    this.air = air;
    Reading tip = integration.reading(probe);
    if (!stem.conducts()) {
      add(tip, 1);
      return;
    }
    double length = stem.finLength();
    StemWay way = StemWay.of(probe, shape);
    double lengths = way.length() / length;
    double decay = StrictMath.exp(-2 * lengths);
    double entry = 2 * StrictMath.exp(-lengths) / (1 + decay);
    double[] ends = ends(way.flatLength() / length, lengths);
    for (int i = 1; i < ends.length; i++) {
      double half = 0.5 * (ends[i] - ends[i - 1]);
      for (int j = 0; j < POINTS.length; j++) {
        for (int side = -1; side <= 1; side += 2) {
          double s = ends[i - 1] + half * (1 + side * POINTS[j]);
          double kernel =
              (StrictMath.exp(-s) - decay * StrictMath.exp(s)) / (1 + decay) * half * WEIGHTS[j];
          add(integration.readingAt(way.distanceFromMiddle(s * length)), kernel);
        }
      }
    }
    normalise(1 - entry);
    double beyond = way.isStated() ? 0 : 2 / (lengths * lengths);
    double ownShare = entry * (1 - stem.airShare());
    add(integration.readingAt(way.distanceFromMiddle(way.length())), ownShare * (1 + beyond));
    add(tip, -ownShare * beyond);
    constant = ownShare * stem.entryExcess();
    airWeight = entry * stem.airShare();
  }

  /** Ends of the panels up to where the stem enters, one of them at the kink if there is one. */
  private static double[] ends(double kink, double lengths) {
    return DoubleStream.concat(DoubleStream.of(PANELS), DoubleStream.of(kink, lengths))
        .filter(end -> end <= Math.min(lengths, PANELS[PANELS.length - 1]))
        .sorted()
        .distinct()
        .toArray();
  }

  private void add(Reading reading, double weight) {
    readings.add(reading);
    weights.add(weight);
  }

  private void normalise(double sum) {
    double found = weights.stream().mapToDouble(Double::doubleValue).sum();
    weights.replaceAll(weight -> weight * sum / found);
  }

  private double besides(double time) {
    return airWeight == 0 ? constant : constant + airWeight * air.at(time);
  }

  /** Temperature of the tip at the start, before any step [K]. */
  double atStart(Trajectory trajectory) {
    double value = besides(trajectory.start());
    for (int i = 0; i < readings.size(); i++) {
      value += weights.get(i) * trajectory.at(readings.get(i), trajectory.start());
    }
    return value;
  }

  /** Temperature of the tip in a step [K]. */
  double inStep(Trajectory trajectory, int step, double time) {
    double value = besides(time);
    for (int i = 0; i < readings.size(); i++) {
      value += weights.get(i) * trajectory.inStep(readings.get(i), step, time);
    }
    return value;
  }
}
