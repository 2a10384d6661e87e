package org.roastfield.lab.trial;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.surface.SampledSignal;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.synthetic.Noise;
import org.roastfield.lab.synthetic.TimedLaw;

/** Models that truths come from: the one that plans use, and others. */
enum TrialTruth {
  /** The model of the plans. */
  AS_PLANNED {
    @Override
    Cook of(VariedCook cook, ParameterPoint point, long seed) {
      return cook.apply(point);
    }
  },
  /** One half of the surface sees a chamber that is 5 to 15 K cooler. */
  GRADIENT {
    @Override
    Cook of(VariedCook cook, ParameterPoint point, long seed) {
      double cooler = Noise.ofSeed(seed, STREAM).uniform(5, 15);
      int bias = point.index(CookParameters.AIR_BIAS.id());
      Cook near = cook.apply(point);
      Cook far = cook.apply(point.moved(bias, point.coordinate(bias).value() + cooler));
      return withGentle(near, SurfaceLaw.shared(0.5, gentle(near), gentle(far)));
    }
  },
  /** Heat enters at the ends too. */
  ENDS {
    @Override
    Cook of(VariedCook cook, ParameterPoint point, long seed) {
      Cook endless = cook.apply(point);
      double thick = endless.cut().shape().thickness();
      double length = 1e-3 * TrialKind.LENGTH_MM * point.value(CookParameters.SIZE.id());
      Cut cut =
          new Cut(
              Compact.ofCylinder(thick, length, Compact.TYPICAL_BIOT_NUMBER),
              endless.cut().material(),
              endless.cut().startTemperature());
      return new Cook(cut, endless.stages(), endless.probes());
    }
  },
  /** The face dries as its water goes, and is fed from within. */
  DRYING {
    @Override
    Cook of(VariedCook cook, ParameterPoint point, long seed) {
      return cook.apply(point);
    }
  },
  /** The heat transfer coefficient, and with it that of vapour, wanders: 12 % over 45 min. */
  WANDERING {
    @Override
    Cook of(VariedCook cook, ParameterPoint point, long seed) {
      int at = point.index(CookParameters.CONVECTION_OF_COOK.id());
      double usual = point.coordinate(at).value();
      Cook weak = cook.apply(point.moved(at, WEAK * usual));
      Cook strong = cook.apply(point.moved(at, STRONG * usual));
      SurfaceLaw law =
          SurfaceLaw.sum(
              new TimedLaw(gentle(weak), wander(seed, STRONG, -1)),
              new TimedLaw(gentle(strong), wander(seed, -WEAK, 1)));
      return withGentle(cook.apply(point), law);
    }
  };

  /** Models that plans do not use. */
  static final List<TrialTruth> OTHERS = List.of(GRADIENT, ENDS, DRYING, WANDERING);

  private static final int STREAM = 11;

  /** Laws are linear in convection: one that wanders is a mixture of a weak and a strong one. */
  private static final double WEAK = 0.25;

  private static final double STRONG = 2;

  private static final double STEP = 300;
  private static final int STEPS = 160;

  abstract Cook of(VariedCook cook, ParameterPoint point, long seed);

  /** The truth at values of the numbers, in air as it is. */
  Cook cook(TrialKind kind, ParameterPoint point, long seed) {
    return of(varied(kind).withRoughAir(seed), point, seed);
  }

  /** The same in smooth air, as plans have it. */
  Cook smooth(TrialKind kind, ParameterPoint point, long seed) {
    return of(varied(kind), point, seed);
  }

  private VariedCook varied(TrialKind kind) {
    return this == DRYING ? kind.drying() : kind.planned();
  }

  private static SurfaceLaw gentle(Cook cook) {
    return cook.stages().get(0).upper();
  }

  private static Cook withGentle(Cook cook, SurfaceLaw law) {
    List<Stage> stages = new ArrayList<>(cook.stages());
    Stage first = stages.get(0);
    stages.set(0, Stage.allRound(first.name(), law, first.end()));
    return new Cook(cook.cut(), stages, cook.probes());
  }

  /** Weight of a law, (constant + sign · factor) / (strong − weak). */
  private static Signal wander(long seed, double constant, double sign) {
    double[] values = Noise.ofSeed(seed, STREAM).correlated(STEPS, STEP, 0.12, 2700);
    double[] times = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      times[i] = i * STEP;
      values[i] = (constant + sign * StrictMath.exp(values[i])) / (STRONG - WEAK);
    }
    return SampledSignal.of(times, values, 4 * STEP);
  }
}
