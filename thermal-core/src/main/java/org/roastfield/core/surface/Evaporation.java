package org.roastfield.core.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.internal.Check;
import org.roastfield.core.internal.Logarithm;

/**
 * Evaporation from a moist face with Stefan flow, eq. (9): ṁ = f h_c 0.622/(c_p Le^⅔) ln[(p −
 * p_v)/(p − a_w p_sat(Ts))], q = −L(Ts) ṁ.
 *
 * <p>h_c is the <em>convective</em> coefficient alone; film temperature cancels between air density
 * and diffusive flux. Negative ṁ is condensation. ṁ grows without bound as a_w p_sat(Ts) nears p,
 * so a wet face never reaches boiling; at or above it the law has no value (NaN).
 *
 * @param wetness f in [0, 1]: share of the vapour flux of a fully wet face
 * @param heatTransferCoefficient h_c [W/(m²·K)], at least 0, convection only
 * @param waterActivity a_w of the face in (0, 1]
 * @param vapourPressure p_v of the air [Pa]
 * @param pressure p [Pa], greater than 0
 * @param lewisNumber Le = α/D of moist air, 0.85-0.90
 */
public record Evaporation(
    double wetness,
    double heatTransferCoefficient,
    double waterActivity,
    Signal vapourPressure,
    double pressure,
    double lewisNumber)
    implements VapourLaw {

  /** Usual Lewis number of moist air. */
  public static final double LEWIS_NUMBER = 0.87;

  private static final double USUAL_LEWIS_FACTOR = StrictMath.cbrt(LEWIS_NUMBER * LEWIS_NUMBER);

  /**
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public Evaporation {
    Check.inRange("wetness", wetness, 0, 1);
    Check.notNegative("heatTransferCoefficient", heatTransferCoefficient);
    Check.inRange("waterActivity", waterActivity, Double.MIN_NORMAL, 1);
    Check.positive("pressure", pressure);
    Check.inRange("lewisNumber", lewisNumber, 0.5, 2);
  }

  /** Evaporation with {@link #LEWIS_NUMBER}. */
  public static Evaporation of(
      double wetness,
      double heatTransferCoefficient,
      double waterActivity,
      Signal vapourPressure,
      double pressure) {
    return new Evaporation(
        wetness, heatTransferCoefficient, waterActivity, vapourPressure, pressure, LEWIS_NUMBER);
  }

  @Override
  public void evaluateIn(double vapour, double surfaceTemperature, double time, SurfaceFlux flux) {
    if (wetness == 0 || heatTransferCoefficient == 0) {
      return;
    }
    double surfacePressure = waterActivity * SaturationPressure.orNaN(surfaceTemperature);
    double dryShare = pressure - surfacePressure;
    if (!(dryShare > 0)) {
      flux.addHeat(Double.NaN, Double.NaN);
      return;
    }
    double strength = massTransferStrength();
    double rate = strength * Logarithm.of((pressure - vapour) / dryShare);
    double rateSlope =
        strength * surfacePressure * SaturationPressure.logSlope(surfaceTemperature) / dryShare;
    double latent = MoistAir.latentHeat(surfaceTemperature);
    double latentSlope = MoistAir.latentHeat(1) - MoistAir.latentHeat(0);
    flux.addHeat(-latent * rate, -latent * rateSlope - latentSlope * rate);
    flux.addEvaporation(rate, rateSlope);
  }

  @Override
  public double highestTemperature() {
    return wetness == 0 || heatTransferCoefficient == 0
        ? Double.POSITIVE_INFINITY
        : SaturationPressure.boilingPoint(pressure, waterActivity);
  }

  @Override
  public double strength(double surfaceTemperature, double time) {
    return massTransferStrength();
  }

  /** Vapour flux per unit of the logarithm [kg/(m²·s)]. */
  double massTransferStrength() {
    return wetness
        * heatTransferCoefficient
        * MoistAir.MOLAR_MASS_RATIO
        / (MoistAir.AIR_HEAT_CAPACITY * lewisFactor(lewisNumber));
  }

  /** Vapour flux of a wet face per unit of the logarithm and of h_c, 0.622/(c_a Le^⅔) [kg·K/J]. */
  static double vapourPerHeat(double lewisNumber) {
    return MoistAir.MOLAR_MASS_RATIO / (MoistAir.AIR_HEAT_CAPACITY * lewisFactor(lewisNumber));
  }

  private static double lewisFactor(double lewisNumber) {
    return lewisNumber == LEWIS_NUMBER
        ? USUAL_LEWIS_FACTOR
        : StrictMath.cbrt(lewisNumber * lewisNumber);
  }

  @Override
  public Evaporation under(Wrap wrap) {
    return new Evaporation(
        wrap.leak() * wetness,
        heatTransferCoefficient,
        waterActivity,
        vapourPressure,
        pressure,
        lewisNumber);
  }

  @Override
  public @Nullable LawRows rows() {
    return StandardRows.of(List.of(this));
  }

  @Override
  public double shortestPeriod() {
    return vapourPressure.shortestPeriod();
  }
}
