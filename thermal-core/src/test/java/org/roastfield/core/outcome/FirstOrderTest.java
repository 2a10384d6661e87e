package org.roastfield.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.units.Temperatures;

class FirstOrderTest {

  @Test
  void constantTemperature_isTheClosedForm() {
    for (FirstOrder change :
        List.of(
            FirstOrder.MYOGLOBIN,
            FirstOrder.MYOGLOBIN_OF_LAMB,
            FirstOrder.ACTIN,
            FirstOrder.COLLAGEN)) {
      for (double celsius : new double[] {50, 60, 70}) {
        double kelvin = Temperatures.celsius(celsius);
        TemperatureHistory hold =
            TemperatureHistory.through(
                new double[] {0, 100, 1800}, new double[] {kelvin, kelvin, kelvin});
        double expected =
            1
                - Math.exp(
                    -1800
                        * change.rate()
                        * Math.exp(
                            -change.activationEnergy()
                                / 8.314462618
                                * (1 / kelvin - 1 / change.reference())));
        assertEquals(expected, change.changed(hold), 1e-12);
      }
    }
  }

  /** Half lives of the published law, in minutes, worked out apart from it. */
  @ParameterizedTest
  @CsvSource({"55, 127", "60, 26", "63, 10", "65, 5.5", "70, 1.2"})
  void myoglobin_hasThePublishedHalfLives(double celsius, double minutes) {
    double rate = FirstOrder.MYOGLOBIN.rateAt(Temperatures.celsius(celsius));
    assertEquals(minutes, Math.log(2) / rate / 60, 0.04 * minutes);
  }

  @ParameterizedTest
  @CsvSource({"60, 0.0072", "65, 0.027", "70, 0.10", "75, 0.35", "80, 1.2"})
  void actin_hasThePublishedRates(double celsius, double perMinute) {
    double rate = FirstOrder.ACTIN.rateAt(Temperatures.celsius(celsius));
    assertEquals(perMinute, 60 * rate, 0.04 * perMinute);
  }

  /** Against a sum of a million mean values. */
  @Test
  void ramp_agreesWithASum() {
    double from = Temperatures.celsius(20);
    double to = Temperatures.celsius(80);
    int parts = 1_000_000;
    double sum = 0;
    for (int i = 0; i < parts; i++) {
      sum += FirstOrder.MYOGLOBIN.rateAt(from + (to - from) * (i + 0.5) / parts) * 600 / parts;
    }
    TemperatureHistory ramp =
        TemperatureHistory.through(new double[] {0, 600}, new double[] {from, to});
    assertEquals(sum, ramp.integral(FirstOrder.MYOGLOBIN::rateAt), 1e-6 * sum);
  }
}
