package org.roastfield.core.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.units.Temperatures;

/**
 * How much of the natural convection the vapour that leaves a face takes away, which correlations
 * leave out: moist air at the face is lighter than dry. Densities of ideal gases, h as the quarter
 * power of their difference.
 */
class VapourBuoyancyTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @ParameterizedTest(name = "air {0} °C, face {1} °C, w {2}, wetness {3}")
  @CsvSource({
    "95, 45, 0.035, 1, -2.9",
    "95, 45, 0.035, 0.3, -0.9",
    "110, 50, 0.035, 1, -4.4",
    "110, 60, 0.035, 1, -12.5",
    "110, 60, 0.035, 0.3, -3.3",
    "110, 66, 0.035, 0.3, -5.5",
    "150, 60, 0.035, 1, -7.0",
    "150, 60, 0.035, 0.3, -2.0",
    "200, 65, 0.035, 1, -7.1",
    "110, 60, 0.06, 1, -9.0"
  })
  void vapour_takesAwayFewPercent(
      double air, double face, double humidityRatio, double wetness, double percent) {
    double hot = Temperatures.celsius(air);
    double cold = Temperatures.celsius(face);
    double far = MoistAir.vapourPressure(humidityRatio, PRESSURE);
    double near = far + wetness * (0.98 * SaturationPressure.at(cold) - far);
    double dry = molarMass(far) * (1 / cold - 1 / hot);
    double moist = molarMass(near) / cold - molarMass(far) / hot;
    double change = 100 * (Math.pow(moist / dry, 0.25) - 1);
    assertEquals(percent, change, 0.06);
  }

  private static double molarMass(double vapourPressure) {
    return 28.964 * (1 - (1 - MoistAir.MOLAR_MASS_RATIO) * vapourPressure / PRESSURE);
  }
}
