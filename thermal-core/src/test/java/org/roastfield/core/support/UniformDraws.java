package org.roastfield.core.support;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.arbitraries.DoubleArbitrary;
import net.jqwik.api.configurators.ArbitraryConfiguratorBase;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Draws doubles evenly over their range. jqwik's own draws crowd at small values, where bodies are
 * thin and heat is mild, and miss what happens in the rest of a range.
 */
public final class UniformDraws extends DomainContextBase {

  /** Makes every ranged double uniform. */
  public static final class UniformDoubles extends ArbitraryConfiguratorBase {

    /** Called by jqwik for each parameter with a range. */
    public Arbitrary<Double> configure(DoubleArbitrary arbitrary, DoubleRange range) {
      return arbitrary
          .between(range.min(), range.max())
          .withDistribution(RandomDistribution.uniform());
    }
  }
}
