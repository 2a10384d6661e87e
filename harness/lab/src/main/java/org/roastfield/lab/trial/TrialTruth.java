package org.roastfield.lab.trial;

import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.plan.FollowedCook;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/** Models that truths come from: the one that plans use, and others. */
enum TrialTruth {
  /** The model of the plans; the lid's openings as they are. */
  AS_PLANNED {
    @Override
    Cook cook(TrialCook cook, ParameterPoint point, Signal air) {
      return cook.cook(point, air);
    }
  },
  /** One half of the surface sees air that is 10 K cooler. */
  GRADIENT {
    @Override
    Cook cook(TrialCook cook, ParameterPoint point, Signal air) {
      return cook.cook(
          point,
          air,
          new Other() {
            @Override
            public SurfaceLaw gentle(ParameterPoint at, Signal around) {
              SurfaceLaw dry =
                  SurfaceLaw.shared(0.5, cook.dry(at, around), cook.dry(at, around.plus(-10)));
              return SurfaceLaw.sum(dry, cook.wet(at, around));
            }
          });
    }
  },
  /** Heat enters at the ends too. */
  ENDS {
    @Override
    Cook cook(TrialCook cook, ParameterPoint point, Signal air) {
      return cook.cook(
          point,
          air,
          new Other() {
            @Override
            public SurfaceLaw gentle(ParameterPoint at, Signal around) {
              return SurfaceLaw.sum(cook.dry(at, around), cook.wet(at, around));
            }

            @Override
            public Shape shape(double diameter) {
              return Compact.ofCylinder(diameter, TrialCook.LENGTH);
            }
          });
    }
  },
  /** The face dries as its water goes, and is fed from within. */
  DRYING {
    @Override
    Cook cook(TrialCook cook, ParameterPoint point, Signal air) {
      return cook.cook(
          point,
          air,
          new Other() {
            @Override
            public SurfaceLaw gentle(ParameterPoint at, Signal around) {
              return DryingFace.ofMeat(
                  cook.dry(at, around),
                  cook.soaked(at, around),
                  at.value("wetness"),
                  TrialCook.PRESSURE);
            }
          });
    }
  };

  /** Models that plans do not use. */
  static final List<TrialTruth> OTHERS = List.of(GRADIENT, ENDS, DRYING);

  private abstract static class Other implements TrialCook.Laws {

    @Override
    public Shape shape(double diameter) {
      return Cylinder.ofDiameter(diameter);
    }
  }

  abstract Cook cook(TrialCook cook, ParameterPoint point, Signal air);

  /** A truth with readings of some noise. */
  FollowedCook.Truth truth(TrialCook kind, ParameterPoint point, ReadingNoise noise) {
    Signal air = TrialWeather.sharp(kind.air(point), point);
    Cook cook = cook(kind, point, air);
    return new FollowedCook.Truth(
        cook, TrialCook.ROLES, cook.probes().get(0), air, noise::at, Settings.withDefaults());
  }
}
