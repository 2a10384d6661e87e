package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BesselSeriesTest {

  @ParameterizedTest
  @EnumSource
  void wholeExponents_areThoseOfTheClosedForms(RadialMode mode) {
    for (double biotNumber : new double[] {0.05, 0.5, 5, 500}) {
      BesselSeries series = new BesselSeries(mode.exponent(), biotNumber);
      RobinSeries closed = RobinSeries.of(mode, biotNumber);
      for (double fourierNumber : new double[] {0.01, 0.05, 0.3, 1}) {
        for (double position : new double[] {0, 0.4, 1}) {
          double exact = closed.temperature(position, fourierNumber);
          assertEquals(exact, series.temperature(position, fourierNumber), 1e-9);
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"0.3, 0.5", "0.9, 20", "1.46, 2", "3.2, 1", "4, 5"})
  void otherExponents_satisfyTheHeatEquation(double exponent, double biotNumber) {
    BesselSeries series = new BesselSeries(exponent, biotNumber);
    for (double position : new double[] {0.2, 0.7}) {
      double rate = Differences.first(time -> series.temperature(position, time), 0.2, 2e-4);
      double gradient = Differences.first(x -> series.temperature(x, 0.2), position, 2e-3);
      double curvature = Differences.second(x -> series.temperature(x, 0.2), position, 2e-3);
      assertEquals(rate, curvature + exponent * gradient / position, 1e-6);
    }
    double outwards = Differences.first(x -> series.temperature(x, 0.2), 0.99, 1e-3);
    double change = Differences.second(x -> series.temperature(x, 0.2), 0.99, 1e-3);
    assertEquals(-biotNumber * series.temperature(1, 0.2), outwards + 0.01 * change, 2e-3);
  }
}
