package org.roastfield.core.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.reference.RobinSeries;

/**
 * What one space coordinate costs, section 6 of {@code docs/model.md}: the exact solution of a
 * finite body is the product of those of the directions.
 */
class NeglectedEdgesTest {

  private static final double EARLIEST = 2e-3;
  private static final double LATEST = 100;

  @ParameterizedTest
  @CsvSource({"0.5, 0.8", "0.5, 0.5", "1, 0.5", "2, 0.5", "5, 0.5", "20, 0.5"})
  void endsOfACylinderOfThreeDiameters_shortenTheCoreTimeByAtMostTheStatedShare(
      double biotNumber, double left) {
    assertTrue(saving(RadialMode.CYLINDER, biotNumber, 3, 1, left) <= 0.013);
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.8", "0.5, 0.5", "1, 0.5", "2, 0.5", "5, 0.5", "20, 0.5"})
  void edgesOfASquareSlab_shortenTheCoreTimeByAtMostTheStatedShare(double biotNumber, double left) {
    assertTrue(saving(RadialMode.SLAB, biotNumber, 3, 2, left) <= 0.135);
    assertTrue(saving(RadialMode.SLAB, biotNumber, 5, 2, left) <= 0.01);
  }

  /** A station of a taper, which sees no end: {@code Taper}. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.18", "0.75, 0.11", "1, 0.075", "1.5, 0.032"})
  void nearEnd_shortensTheCoreTimeOfACylinderByAtMostTheStatedShare(
      double diameters, double share) {
    double worst = 0;
    for (double biotNumber : new double[] {0.5, 1, 2, 5}) {
      for (double left : new double[] {0.5, 0.3, 0.1}) {
        worst = Math.max(worst, tooLong(biotNumber, diameters, left));
      }
    }
    assertTrue(worst <= share, "was " + worst);
    assertTrue(worst >= 0.9 * share, "was " + worst);
  }

  /**
   * Share by which the core time of an endless cylinder is too long where an end is near.
   *
   * @param diameters distance of the end
   */
  private static double tooLong(double biotNumber, double diameters, double left) {
    double half = 8;
    double place = (half - 2 * diameters) / half;
    RobinSeries through = RobinSeries.cylinder(biotNumber);
    RobinSeries along = RobinSeries.slab(biotNumber * half);
    double endless = time(fo -> core(through, fo), left);
    double near =
        time(
            fo -> {
              double alongTime = fo / (half * half);
              return core(through, fo)
                  * (alongTime < RobinSeries.SMALLEST_FOURIER_NUMBER
                      ? 1
                      : along.temperature(place, alongTime));
            },
            left);
    return endless / near - 1;
  }

  @ParameterizedTest
  @CsvSource({"CYLINDER, 1, 0.012", "SLAB, 2, 0.130"})
  void theStatedShares_areReached(RadialMode mode, int directions, double share) {
    assertEquals(share, saving(mode, 0.5, 3, directions, 0.5), 5e-4);
  }

  /**
   * Share of the time until {@code left} of the first difference is left in the core by which
   * further directions shorten it.
   *
   * @param ratio width over thickness
   * @param directions how many besides the one that is computed
   */
  private static double saving(
      RadialMode mode, double biotNumber, double ratio, int directions, double left) {
    RobinSeries through = RobinSeries.of(mode, biotNumber);
    RobinSeries along = RobinSeries.slab(biotNumber * ratio);
    double one = time(fo -> core(through, fo), left);
    double all =
        time(
            fo -> core(through, fo) * Math.pow(core(along, fo / (ratio * ratio)), directions),
            left);
    return 1 - all / one;
  }

  private static double core(RobinSeries series, double fourierNumber) {
    return fourierNumber < RobinSeries.SMALLEST_FOURIER_NUMBER
        ? 1
        : series.temperature(0, fourierNumber);
  }

  /** Fourier number at which a falling function reaches a value. */
  private static double time(DoubleUnaryOperator function, double value) {
    double low = EARLIEST;
    double high = LATEST;
    for (int i = 0; i < 60; i++) {
      double middle = Math.sqrt(low * high);
      if (function.applyAsDouble(middle) > value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
