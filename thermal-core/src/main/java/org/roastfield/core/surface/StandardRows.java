package org.roastfield.core.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.internal.Logarithm;

/**
 * The laws of this package in rows, for surroundings that do not change in time: q = a − b Ts − d
 * Ts⁴ − L(Ts) ṁ with ṁ = e ln[(p − p_v)/(p − a_w p_sat(Ts))].
 *
 * <p>A dry face has e = 0 and a_w = 0, so that its logarithm stays finite at any temperature.
 */
final class StandardRows implements LawRows {

  private static final StandardRows INSTANCE = new StandardRows();

  private static final int SUPPLY = 0;
  private static final int CONDUCTANCE = 1;
  private static final int RADIATION = 2;
  private static final int STRENGTH = 3;
  private static final int WATER_ACTIVITY = 4;
  private static final int DRY_SHARE = 5;
  private static final int PRESSURE = 6;
  private static final int NUMBERS = 7;

  private StandardRows() {}

  /**
   * Rows of a sum of laws, or null if one of them is a caller's, changes in time, or there are two
   * evaporations.
   */
  static @Nullable LawRows of(List<SurfaceLaw> laws) {
    int evaporations = 0;
    for (int i = 0; i < laws.size(); i++) {
      SurfaceLaw law = laws.get(i);
      boolean steady;
      if (law instanceof Convection convection) {
        steady = convection.airTemperature() instanceof ConstantSignal;
      } else if (law instanceof Contact contact) {
        steady = contact.plateTemperature() instanceof ConstantSignal;
      } else if (law instanceof Radiation radiation) {
        steady = radiation.wallTemperature() instanceof ConstantSignal;
      } else if (law instanceof Evaporation evaporation) {
        steady = evaporation.vapourPressure() instanceof ConstantSignal;
        evaporations++;
      } else {
        steady = false;
      }
      if (!steady) {
        return null;
      }
    }
    return evaporations <= 1 ? INSTANCE : null;
  }

  @Override
  public int numbers() {
    return NUMBERS;
  }

  @Override
  public int scratchRows() {
    return 1;
  }

  @Override
  public boolean isSteady() {
    return true;
  }

  @Override
  public void write(SurfaceLaw law, double[][] numbers, int face) {
    for (double[] row : numbers) {
      row[face] = 0;
    }
    numbers[DRY_SHARE][face] = 1;
    numbers[PRESSURE][face] = 1;
    if (law instanceof SumOfLaws sum) {
      for (int i = 0; i < sum.laws().size(); i++) {
        add(sum.laws().get(i), numbers, face);
      }
    } else {
      add(law, numbers, face);
    }
  }

  private static void add(SurfaceLaw law, double[][] numbers, int face) {
    if (law instanceof Convection convection) {
      addConductance(
          convection.heatTransferCoefficient(), convection.airTemperature().at(0), numbers, face);
    } else if (law instanceof Contact contact) {
      addConductance(contact.contactConductance(), contact.plateTemperature().at(0), numbers, face);
    } else if (law instanceof Radiation radiation) {
      double strength = radiation.emissivity() * Radiation.STEFAN_BOLTZMANN;
      double wall = radiation.wallTemperature().at(0);
      numbers[RADIATION][face] += strength;
      numbers[SUPPLY][face] += strength * (wall * wall) * (wall * wall);
    } else if (law instanceof Evaporation evaporation) {
      double strength = evaporation.massTransferStrength();
      if (strength > 0) {
        numbers[STRENGTH][face] = strength;
        numbers[WATER_ACTIVITY][face] = evaporation.waterActivity();
        numbers[PRESSURE][face] = evaporation.pressure();
        numbers[DRY_SHARE][face] = evaporation.pressure() - evaporation.vapourPressure().at(0);
      }
    } else {
      throw new IllegalArgumentException("law must be one of this package, was " + law);
    }
  }

  private static void addConductance(
      double coefficient, double temperature, double[][] numbers, int face) {
    numbers[CONDUCTANCE][face] += coefficient;
    numbers[SUPPLY][face] += coefficient * temperature;
  }

  @Override
  public void evaluate(
      int faces,
      double[] surfaceTemperature,
      double[][] numbers,
      double[][] scratch,
      double[] heatFlux,
      double[] slope,
      double[] evaporation,
      double[] evaporationSlope) {
    double[] pressure = scratch[0];
    double[] strength = numbers[STRENGTH];
    logarithm(faces, surfaceTemperature, strength, pressure);
    saturation(faces, pressure, numbers[WATER_ACTIVITY]);
    remainder(faces, numbers[PRESSURE], pressure, evaporationSlope);
    ratio(faces, numbers[DRY_SHARE], evaporationSlope, evaporation);
    rate(faces, strength, evaporation);
    heat(
        faces,
        surfaceTemperature,
        numbers[SUPPLY],
        numbers[CONDUCTANCE],
        numbers[RADIATION],
        evaporation,
        heatFlux);
    rateSlope(faces, surfaceTemperature, strength, pressure, evaporationSlope);
    slope(
        faces,
        surfaceTemperature,
        numbers[CONDUCTANCE],
        numbers[RADIATION],
        evaporation,
        evaporationSlope,
        slope);
  }

  /**
   * Scaled logarithm of p_sat; NaN on a wet face outside its range, and held there on a dry one,
   * where it has no say.
   */
  private static void logarithm(int faces, double[] temperature, double[] strength, double[] y) {
    for (int l = 0; l < faces; l++) {
      double t = temperature[l];
      double outside =
          Math.min(t - SaturationPressure.LOWEST, 0) + Math.min(SaturationPressure.HIGHEST - t, 0);
      double held = Math.min(Math.max(t, SaturationPressure.LOWEST), SaturationPressure.HIGHEST);
      y[l] = SaturationPressure.scaledLogarithm(held) + Math.sqrt(outside * strength[l]);
    }
  }

  /** a_w p_sat in place. */
  private static void saturation(int faces, double[] y, double[] waterActivity) {
    for (int l = 0; l < faces; l++) {
      y[l] = waterActivity[l] * SaturationPressure.fromScaledLogarithm(y[l]);
    }
  }

  private static void remainder(int faces, double[] total, double[] surface, double[] dryShare) {
    for (int l = 0; l < faces; l++) {
      dryShare[l] = total[l] - surface[l];
    }
  }

  private static void ratio(int faces, double[] air, double[] surface, double[] ratio) {
    for (int l = 0; l < faces; l++) {
      ratio[l] = air[l] / surface[l];
    }
  }

  /** e ln r in place. */
  private static void rate(int faces, double[] strength, double[] ratio) {
    for (int l = 0; l < faces; l++) {
      ratio[l] = strength[l] * Logarithm.of(ratio[l]);
    }
  }

  private static void heat(
      int faces,
      double[] temperature,
      double[] supply,
      double[] conductance,
      double[] radiation,
      double[] rate,
      double[] heatFlux) {
    for (int l = 0; l < faces; l++) {
      double t = temperature[l];
      double t2 = t * t;
      heatFlux[l] =
          supply[l]
              - conductance[l] * t
              - radiation[l] * (t2 * t2)
              - MoistAir.latentHeat(t) * rate[l];
    }
  }

  /**
   * d(ln of the ratio)/dTs times e, from the surface's pressure and dry share, in place of the
   * latter.
   */
  private static void rateSlope(
      int faces, double[] temperature, double[] strength, double[] pressure, double[] dryShare) {
    for (int l = 0; l < faces; l++) {
      dryShare[l] =
          strength[l] * pressure[l] * SaturationPressure.logSlope(temperature[l]) / dryShare[l];
    }
  }

  private static void slope(
      int faces,
      double[] temperature,
      double[] conductance,
      double[] radiation,
      double[] rate,
      double[] rateSlope,
      double[] slope) {
    double latentSlope = MoistAir.latentHeat(1) - MoistAir.latentHeat(0);
    for (int l = 0; l < faces; l++) {
      double t = temperature[l];
      slope[l] =
          -conductance[l]
              - 4 * radiation[l] * (t * t * t)
              - MoistAir.latentHeat(t) * rateSlope[l]
              - latentSlope * rate[l];
    }
  }
}
