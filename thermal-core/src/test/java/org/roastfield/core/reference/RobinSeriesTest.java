package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RobinSeriesTest {
  // linear.json holds temperatures to 1e-9 K and was itself checked to 1.1e-8 K.
  private static final double FILE_TOLERANCE_KELVIN = 1e-7;

  @Test
  void temperatures_agreeWithLaplaceInversion() {
    Map<String, RobinSeries> known = new HashMap<>();
    for (List<String> row : ReferenceFiles.rows("/exact/robin-series.csv")) {
      RobinSeries series =
          known.computeIfAbsent(row.get(0) + " " + row.get(1), key -> seriesOf(row));
      double fourierNumber = Double.parseDouble(row.get(2));
      String position = row.get(3);
      double computed =
          position.equals("mean")
              ? series.mean(fourierNumber)
              : series.temperature(Double.parseDouble(position), fourierNumber);
      assertEquals(Double.parseDouble(row.get(4)), computed, 1e-13, row.toString());
    }
  }

  @Test
  void roots_areExactToTheLastBits() {
    for (List<String> row : ReferenceFiles.rows("/exact/robin-roots.csv")) {
      double root = seriesOf(row).root(Integer.parseInt(row.get(2)));
      double expected = Double.parseDouble(row.get(3));
      assertEquals(expected, root, 4 * Math.ulp(expected), row.toString());
    }
  }

  @ParameterizedTest
  @EnumSource
  void roots_leaveNoGap_atAnyBiotNumber(RadialMode mode) {
    // The widest gap is that of the sphere at Bi → 0: from 0 to the first root of tan z = z.
    double widestGap = 4.4935;
    for (int tenths = -30; tenths <= 40; tenths++) {
      RobinSeries series = RobinSeries.of(mode, Math.pow(10, 0.1 * tenths));
      for (int n = 1; n < series.terms(); n++) {
        double gap = series.root(n) - series.root(n - 1);
        assertTrue(gap > 2 && gap < widestGap, "gap before root " + n + " was " + gap);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void firstRoots_agreeWithReferenceFile(RadialMode mode) {
    LinearReference reference = LinearReference.load(mode);
    RobinSeries series = RobinSeries.of(mode, reference.biotNumber());
    assertEquals(6, reference.roots().size());
    for (int n = 0; n < reference.roots().size(); n++) {
      double expected = reference.roots().get(n);
      assertEquals(expected, series.root(n), 4 * Math.ulp(expected), "root " + n);
    }
  }

  @ParameterizedTest
  @EnumSource
  void temperatures_agreeWithReferenceFile(RadialMode mode) {
    LinearReference reference = LinearReference.load(mode);
    RobinSeries series = RobinSeries.of(mode, reference.biotNumber());
    assertEquals(150, reference.states().size());
    for (LinearReference.State state : reference.states()) {
      double fourierNumber = reference.fourierNumber(state.seconds());
      assertCelsius(reference, state.centreCelsius(), series.temperature(0, fourierNumber));
      assertCelsius(reference, state.middleCelsius(), series.temperature(0.5, fourierNumber));
      assertCelsius(reference, state.surfaceCelsius(), series.temperature(1, fourierNumber));
    }
  }

  @ParameterizedTest
  @EnumSource
  void arrivalTimes_agreeWithReferenceFile(RadialMode mode) {
    LinearReference reference = LinearReference.load(mode);
    RobinSeries series = RobinSeries.of(mode, reference.biotNumber());
    assertEquals(4, reference.arrivals().size());
    for (LinearReference.Arrival arrival : reference.arrivals()) {
      double fourierNumber = reference.fourierNumber(arrival.seconds());
      assertCelsius(reference, arrival.centreCelsius(), series.temperature(0, fourierNumber));
    }
  }

  @ParameterizedTest
  @EnumSource
  void surface_startsLikeHalfSpace(RadialMode mode) {
    double biotNumber = 10;
    double fourierNumber = RobinSeries.SMALLEST_FOURIER_NUMBER;
    double share = 1 - RobinSeries.of(mode, biotNumber).temperature(1, fourierNumber);
    double halfSpace = HalfSpace.robin(0, biotNumber * biotNumber * fourierNumber);
    // The curvature m / R adds a share of order m √Fo; a slab has none.
    double tolerance = mode == RadialMode.SLAB ? 1e-13 : mode.exponent() * Math.sqrt(fourierNumber);
    assertEquals(halfSpace, share, tolerance);
  }

  @Test
  void argumentsOutsideValidityAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> RobinSeries.slab(0));
    assertThrows(IllegalArgumentException.class, () -> RobinSeries.cylinder(Double.NaN));
    RobinSeries series = RobinSeries.sphere(1);
    assertThrows(IllegalArgumentException.class, () -> series.temperature(0, 0.0009));
    assertThrows(IllegalArgumentException.class, () -> series.temperature(1.01, 1));
    assertThrows(IllegalArgumentException.class, () -> series.mean(Double.NaN));
  }

  private static RobinSeries seriesOf(List<String> row) {
    return RobinSeries.of(RadialMode.of(row.get(0)), Double.parseDouble(row.get(1)));
  }

  private static void assertCelsius(LinearReference reference, double expected, double theta) {
    assertEquals(expected, reference.celsius(theta), FILE_TOLERANCE_KELVIN);
  }
}
