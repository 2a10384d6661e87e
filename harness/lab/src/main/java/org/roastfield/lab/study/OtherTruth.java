package org.roastfield.lab.study;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.synthetic.Noise;
import org.roastfield.lab.synthetic.TimedLaw;

/** Models that truths may come from, beside the one that is fitted. */
enum OtherTruth {
  /** The heat transfer coefficient, and with it that of vapour, wanders: 12 % over 45 min. */
  WANDERING_HEAT_TRANSFER {
    @Override
    Cook cook(StudyCook cook, ParameterPoint point, Noise noise) {
      Signal factor = wandering(noise);
      double h = StudyCook.coefficient(point);
      SurfaceLaw law =
          SurfaceLaw.sum(
              new TimedLaw(cook.convection(point, h), factor),
              cook.radiation(point, 0),
              new TimedLaw(wet(point, h), factor));
      return StudyCook.of(StudyCook.shape(point), law, point);
    }
  },
  /** One half of the surface sees a chamber that is 5 to 15 K cooler than its probe says. */
  CHAMBER_GRADIENT {
    @Override
    Cook cook(StudyCook cook, ParameterPoint point, Noise noise) {
      double h = StudyCook.coefficient(point);
      SurfaceLaw dry =
          SurfaceLaw.shared(0.5, cook.dry(point, h, 0), cook.dry(point, h, noise.uniform(5, 15)));
      return StudyCook.of(StudyCook.shape(point), SurfaceLaw.sum(dry, wet(point, h)), point);
    }
  },
  /** Heat enters at the ends too: the cut is 3 to 5 times as long as thick. */
  FINITE_LENGTH {
    @Override
    Cook cook(StudyCook cook, ParameterPoint point, Noise noise) {
      double h = StudyCook.coefficient(point);
      double diameter = 2 * StudyCook.RADIUS * point.value("size");
      Compact shape = Compact.ofCylinder(diameter, noise.uniform(3, 5) * diameter);
      return StudyCook.of(shape, SurfaceLaw.sum(cook.dry(point, h, 0), wet(point, h)), point);
    }
  },
  /** The face dries as its water goes, and is fed from within. */
  DRYING_FACE {
    @Override
    Cook cook(StudyCook cook, ParameterPoint point, Noise noise) {
      double h = StudyCook.coefficient(point);
      double most = StudyCook.STATED_WETNESS * point.value("wetness");
      SurfaceLaw law =
          DryingFace.ofMeat(
              cook.dry(point, h, 0),
              StudyCook.evaporation(h, Math.min(1, 2 * most)),
              point.value("wetness"),
              StudyCook.PRESSURE);
      return StudyCook.of(StudyCook.shape(point), law, point);
    }
  },
  /** The model that is fitted, on four times as many cells with a hundredth of the error. */
  FINER_GRID {
    @Override
    Cook cook(StudyCook cook, ParameterPoint point, Noise noise) {
      return cook.at(point);
    }

    @Override
    Settings settings() {
      return Settings.withDefaults().withAccuracy(1e-4).withCells(160).withSurfaceCell(0.05e-3);
    }
  };

  private static final double WANDER = 0.12;
  private static final double WANDER_TIME = 2700;
  private static final double STEP = 300;

  /** The truth at values of the numbers that it shares with the fitted model. */
  abstract Cook cook(StudyCook cook, ParameterPoint point, Noise noise);

  /** How finely it is computed. */
  Settings settings() {
    return Settings.withDefaults();
  }

  private static SurfaceLaw wet(ParameterPoint point, double h) {
    return StudyCook.evaporation(h, StudyCook.STATED_WETNESS * point.value("wetness"));
  }

  private static Signal wandering(Noise noise) {
    int count = (int) Math.ceil(StudyCook.HORIZON / STEP) + 1;
    double[] factors = noise.correlated(count, STEP, WANDER, WANDER_TIME);
    double[] times = new double[count];
    for (int i = 0; i < count; i++) {
      times[i] = i * STEP;
      factors[i] = StrictMath.exp(factors[i]);
    }
    return SampledSignal.of(times, factors, 4 * STEP);
  }
}
