package org.roastfield.core.surface;

import org.roastfield.core.units.Temperatures;

/**
 * Where the model of the surface is known to fail: moist faces in hot air that moves, as in a fan
 * oven (docs/model.md, section 6). A face of constant wetness would go on losing water for hours
 * there, while a real one dries and shrinks.
 */
public final class MovingAir {

  /** Air from which on roasts were computed with far too much loss [K]. */
  private static final double HOT = Temperatures.ZERO_CELSIUS + 150;

  /** Convection beyond what still air gives, 5-8, and a draught [W/(m²·K)]; assumed. */
  private static final double MOVING = 15;

  /** Wetness below which little is lost, whatever the air; assumed. */
  private static final double MOIST = 0.1;

  /** Face temperature at which a correlation is asked [K]. */
  private static final double FACE = Temperatures.ZERO_CELSIUS + 70;

  private MovingAir() {}

  /**
   * Whether a law is one of a moist face in hot air that moves. Laws of a caller's own are taken to
   * be none: they do not say what they are.
   *
   * @param time since the start of the cook [s]
   */
  public static boolean isBeyondTheModel(SurfaceLaw law, double time) {
    if (law instanceof SharedFace shared) {
      return (shared.share() > 0 && isBeyondTheModel(shared.on(), time))
          || (shared.share() < 1 && isBeyondTheModel(shared.off(), time));
    }
    double convection = convection(law, time);
    return convection >= MOVING
        && hottestAir(law, time) >= HOT
        && vapour(law, time) >= MOIST * convection;
  }

  private static double convection(SurfaceLaw law, double time) {
    if (law instanceof Convection c) {
      return c.heatTransferCoefficient();
    }
    if (law instanceof AirExchange exchange) {
      return exchange.film().at(FACE, exchange.airTemperature().at(time));
    }
    if (law instanceof DryingFace face) {
      return convection(face.dry(), time);
    }
    if (law instanceof SharedFace shared) {
      return shared.mean(convection(shared.on(), time), convection(shared.off(), time));
    }
    double sum = 0;
    if (law instanceof SumOfLaws all) {
      for (SurfaceLaw one : all.laws()) {
        sum += convection(one, time);
      }
    }
    return sum;
  }

  private static double hottestAir(SurfaceLaw law, double time) {
    if (law instanceof Convection c) {
      return c.airTemperature().at(time);
    }
    if (law instanceof AirExchange exchange) {
      return exchange.airTemperature().at(time);
    }
    if (law instanceof DryingFace face) {
      return hottestAir(face.dry(), time);
    }
    if (law instanceof SharedFace shared) {
      return Math.max(hottestAir(shared.on(), time), hottestAir(shared.off(), time));
    }
    double hottest = 0;
    if (law instanceof SumOfLaws all) {
      for (SurfaceLaw one : all.laws()) {
        hottest = Math.max(hottest, hottestAir(one, time));
      }
    }
    return hottest;
  }

  /** Wetness times convection, as the law of vapour has them [W/(m²·K)]. */
  private static double vapour(SurfaceLaw law, double time) {
    if (law instanceof VapourLaw wet) {
      return wet.strength(FACE, time) / Evaporation.vapourPerHeat(Evaporation.LEWIS_NUMBER);
    }
    if (law instanceof LoadedEvaporation loaded) {
      return vapour(loaded.unloaded(), time);
    }
    if (law instanceof DryingFace face) {
      return vapour(face.wet(), time);
    }
    if (law instanceof SharedFace shared) {
      return shared.mean(vapour(shared.on(), time), vapour(shared.off(), time));
    }
    double sum = 0;
    if (law instanceof SumOfLaws all) {
      for (SurfaceLaw one : all.laws()) {
        sum += vapour(one, time);
      }
    }
    return sum;
  }
}
