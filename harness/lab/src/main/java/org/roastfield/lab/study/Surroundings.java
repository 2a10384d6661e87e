package org.roastfield.lab.study;

import org.roastfield.core.air.MoistAir;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.HeatTransfer;

/**
 * What surrounds the cut of a {@link StudyCook}, law by law, for truths that change one of them.
 *
 * @param shown air as the chamber's probe shows it [K]
 * @param point of the cook's numbers
 */
record Surroundings(Signal shown, ParameterPoint point) {

  private static final FaceSetup FACE = StudyCook.FILE.stages().get(0).upper();

  private double value(Parameter parameter) {
    return point.value(parameter.id());
  }

  private Signal air(double cooler) {
    return shown.plus(-value(CookParameters.AIR_BIAS) - cooler);
  }

  private double coefficient() {
    if (FACE.heatTransfer() instanceof HeatTransfer.Stated stated) {
      return stated.coefficient()
          * value(CookParameters.CONVECTION)
          * value(CookParameters.CONVECTION_OF_COOK);
    }
    throw new IllegalStateException("heat-transfer of the studies' cook must be a coefficient");
  }

  /**
   * Convection alone.
   *
   * @param cooler by how much the chamber is cooler than at its probe [K]
   */
  SurfaceLaw convection(double cooler) {
    return new Convection(coefficient(), air(cooler));
  }

  /** Radiation alone, see {@link #convection}. */
  SurfaceLaw radiation(double cooler) {
    double warmer = FACE.walls() - FACE.air() + value(CookParameters.WALLS);
    return new Radiation(FACE.emissivity(), air(cooler).plus(warmer));
  }

  /** Both. */
  SurfaceLaw dry(double cooler) {
    return SurfaceLaw.sum(convection(cooler), radiation(cooler));
  }

  /**
   * Evaporation alone.
   *
   * @param times how many times as wet as the fitted face, at most wet
   */
  SurfaceLaw vapour(double times) {
    double pressure = StudyCook.FILE.pressure();
    return Evaporation.of(
        Math.min(1, times * FACE.wetness() * value(CookParameters.WETNESS)),
        coefficient(),
        FACE.waterActivity(),
        Signal.constant(MoistAir.vapourPressure(FACE.humidityRatio(), pressure)),
        pressure);
  }
}
