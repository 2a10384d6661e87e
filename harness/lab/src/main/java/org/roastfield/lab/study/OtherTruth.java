package org.roastfield.lab.study;

import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Shape;
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
    Cook cook(Cook fitted, Signal air, ParameterPoint point, Noise noise) {
      Signal factor = wandering(noise);
      Surroundings around = new Surroundings(air, point);
      return with(
          fitted,
          fitted.cut().shape(),
          SurfaceLaw.sum(
              new TimedLaw(around.convection(0), factor),
              around.radiation(0),
              new TimedLaw(around.vapour(1), factor)));
    }
  },
  /** One half of the surface sees a chamber that is 5 to 15 K cooler than its probe says. */
  CHAMBER_GRADIENT {
    @Override
    Cook cook(Cook fitted, Signal air, ParameterPoint point, Noise noise) {
      Surroundings around = new Surroundings(air, point);
      SurfaceLaw dry = SurfaceLaw.shared(0.5, around.dry(0), around.dry(noise.uniform(5, 15)));
      return with(fitted, fitted.cut().shape(), SurfaceLaw.sum(dry, around.vapour(1)));
    }
  },
  /** Heat enters at the ends too: the cut is 3 to 5 times as long as thick. */
  FINITE_LENGTH {
    @Override
    Cook cook(Cook fitted, Signal air, ParameterPoint point, Noise noise) {
      double diameter = 2 * fitted.cut().shape().halfThickness();
      Compact shape =
          Compact.ofCylinder(diameter, noise.uniform(3, 5) * diameter, Compact.TYPICAL_BIOT_NUMBER);
      Surroundings around = new Surroundings(air, point);
      return with(fitted, shape, SurfaceLaw.sum(around.dry(0), around.vapour(1)));
    }
  },
  /** The face dries as its water goes, and is fed from within. */
  DRYING_FACE {
    @Override
    Cook cook(Cook fitted, Signal air, ParameterPoint point, Noise noise) {
      Surroundings around = new Surroundings(air, point);
      return with(
          fitted,
          fitted.cut().shape(),
          DryingFace.ofMeat(
              around.dry(0),
              around.vapour(2),
              point.value(CookParameters.WETNESS.id()),
              StudyCook.FILE.pressure()));
    }
  },
  /** The model that is fitted, on four times as many cells with a hundredth of the error. */
  FINER_GRID {
    @Override
    Cook cook(Cook fitted, Signal air, ParameterPoint point, Noise noise) {
      return fitted;
    }

    @Override
    Settings settings() {
      return Settings.withDefaults().withAccuracy(1e-4).withCells(160).withSurfaceCell(0.05e-3);
    }
  };

  private static final double WANDER = 0.12;
  private static final double WANDER_TIME = 2700;
  private static final double STEP = 300;

  /**
   * The truth at values of the numbers that it shares with the fitted model.
   *
   * @param fitted the cook of the fitted model there
   * @param air as the chamber's probe shows it [K]
   */
  abstract Cook cook(Cook fitted, Signal air, ParameterPoint point, Noise noise);

  /** How finely it is computed. */
  Settings settings() {
    return Settings.withDefaults();
  }

  private static Cook with(Cook fitted, Shape shape, SurfaceLaw law) {
    Cut cut = fitted.cut();
    Stage stage = fitted.stages().get(0);
    return new Cook(
        new Cut(shape, cut.material(), cut.startTemperature()),
        List.of(Stage.allRound(stage.name(), law, stage.end())),
        fitted.probes());
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
