package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class DistributionPropertiesTest {

  @Property
  void quantiles_riseAndStayBetweenTheExtremes(
      @ForAll @Size(min = 1, max = 50) List<@DoubleRange(min = -1e6, max = 1e6) @Scale(3) Double> values,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double one,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double two) {
    Distribution distribution = of(values);
    double lower = distribution.quantile(Math.min(one, two));
    double upper = distribution.quantile(Math.max(one, two));
    double roundOff = 1e-15 * 2e6;
    assertTrue(lower <= upper + roundOff);
    assertTrue(Collections.min(values) <= lower);
    assertTrue(upper <= Collections.max(values) + roundOff);
  }

  /** Seventh definition: the members of rank up to 1 + (n − 1) p are at or below the quantile. */
  @Property
  void shareUpToAQuantile_isAtLeastItsRank(
      @ForAll @Size(min = 1, max = 50) List<@DoubleRange(min = -1e6, max = 1e6) @Scale(3) Double> values,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double probability) {
    Distribution distribution = of(values);
    double rank = 1 + Math.floor(probability * (values.size() - 1));
    double share = distribution.shareUpTo(distribution.quantile(probability));
    assertTrue(share >= rank / values.size(), () -> share + " of rank " + rank);
  }

  @Property
  void orderOfTheMembers_changesNoBit(
      @ForAll @Size(min = 1, max = 50) List<@DoubleRange(min = -1e6, max = 1e6) @Scale(3) Double> values,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double probability) {
    List<Double> shuffled = new ArrayList<>(values);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(of(values).quantile(probability), of(shuffled).quantile(probability));
    double value = values.get(0);
    assertEquals(of(values).shareUpTo(value), of(shuffled).shareUpTo(value));
  }

  private static Distribution of(List<Double> values) {
    return Distribution.of(values.stream().mapToDouble(Double::doubleValue).toArray());
  }
}
