package org.roastfield.core.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.reference.BesselSeries;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.reference.RobinSeries;

class CoreSeriesTest {

  private static final double[] BIOT_NUMBERS = {0.2, 1, 5, 50, 900};

  @ParameterizedTest
  @EnumSource
  void wholeExponents_areThoseOfTheClosedForms(RadialMode mode) {
    for (double biotNumber : BIOT_NUMBERS) {
      RobinSeries closed = RobinSeries.of(mode, biotNumber);
      CoreSeries series = new CoreSeries(mode.exponent(), biotNumber, 0);
      for (double time = 0.005; time < 3; time *= 1.3) {
        assertEquals(closed.temperature(0, time), series.at(time), 5e-5, "Bi " + biotNumber);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.5, 1.3, 2.6, 4})
  void otherExponents_areThoseOfBesselFunctions(double exponent) {
    for (double biotNumber : BIOT_NUMBERS) {
      BesselSeries exact = new BesselSeries(exponent, biotNumber);
      CoreSeries series = new CoreSeries(exponent, biotNumber, 0.1);
      for (double time = 0.1; time < 3; time *= 1.3) {
        assertEquals(exact.temperature(0, time), series.at(time), 5e-5, "Bi " + biotNumber);
      }
    }
  }
}
