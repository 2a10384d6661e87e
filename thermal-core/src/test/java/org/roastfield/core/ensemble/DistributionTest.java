package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DistributionTest {

  private static final double[] UNEVEN = {3, 1, 4, 1, 5, 9, 2, 6};

  /** By hand from the definition: rank 1 + 7 p among 1, 1, 2, 3, 4, 5, 6, 9. */
  @ParameterizedTest
  @CsvSource({
    "0, 1",
    "0.1, 1",
    "0.25, 1.75",
    "0.3, 2.1",
    "0.5, 3.5",
    "0.75, 5.25",
    "0.9, 6.9",
    "1, 9"
  })
  void quantile_isTheSeventhDefinition(double probability, double expected) {
    assertEquals(expected, Distribution.of(UNEVEN).quantile(probability), 1e-14);
  }

  /** 1 … 10 at 10, 25, 50 and 90 %: where the nine definitions differ. */
  @ParameterizedTest
  @CsvSource({"0.1, 1.9", "0.25, 3.25", "0.5, 5.5", "0.9, 9.1"})
  void quantile_ofTenEvenValuesIsTheSeventhDefinition(double probability, double expected) {
    double[] values = {10, 9, 8, 7, 6, 5, 4, 3, 2, 1};
    assertEquals(expected, Distribution.of(values).quantile(probability), 1e-14);
  }

  @Test
  void quantile_atAnOrderStatisticIsThatValue() {
    double[] values = {0.1, 0.3, 0.7, 1.1, 1.3};
    for (int i = 0; i < values.length; i++) {
      assertEquals(values[i], Distribution.of(values).quantile(i / 4.0));
    }
  }

  @Test
  void median_isTheMiddleOfAnOddNumberAndTheMeanOfTheTwoMiddleOnesOfAnEven() {
    assertEquals(3, Distribution.of(new double[] {9, 1, 3}).median());
    assertEquals(2.5, Distribution.of(new double[] {9, 2, 1, 3}).median());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.4, 1})
  void oneMember_isEveryQuantile(double probability) {
    assertEquals(7, Distribution.of(new double[] {7}).quantile(probability));
  }

  @Test
  void membersThatDidNotGetThere_doNotCount() {
    double[] values = {
      Double.NaN, 2, Double.POSITIVE_INFINITY, 1, Double.NEGATIVE_INFINITY, Double.NaN
    };
    Distribution distribution = Distribution.of(values);
    assertEquals(2, distribution.size());
    assertEquals(1, distribution.quantile(0));
    assertEquals(2, distribution.quantile(1));
  }

  @Test
  void values_areNotModified() {
    double[] values = UNEVEN.clone();
    Distribution distribution = Distribution.of(values);
    assertArrayEquals(UNEVEN, values);
    values[5] = 1e9;
    assertEquals(9, distribution.quantile(1));
  }

  /** Sorted: 1, 1, 2, 3, 4, 5, 6, 9. */
  @ParameterizedTest
  @CsvSource({"0.9, 0", "1, 2", "1.5, 2", "2, 3", "8.9, 7", "9, 8", "1e9, 8", "Infinity, 8"})
  void shareUpTo_countsMembersAtOrBelow(double value, int count) {
    assertEquals(count / 8.0, Distribution.of(UNEVEN).shareUpTo(value));
  }

  @Test
  void noMember_hasNoQuantileAndNoShare() {
    Distribution nobody = Distribution.of(new double[] {Double.NaN});
    assertEquals(0, nobody.size());
    Exception refused = assertThrows(IllegalStateException.class, nobody::median);
    assertEquals("no member reached this outcome", refused.getMessage());
    assertTrue(Double.isNaN(nobody.shareUpTo(1)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
  void probabilitiesOutsideTheirRange_areRefused(double probability) {
    Distribution distribution = Distribution.of(UNEVEN);
    Exception refused =
        assertThrows(IllegalArgumentException.class, () -> distribution.quantile(probability));
    assertEquals("probability must be in [0.0, 1.0], was " + probability, refused.getMessage());
  }
}
