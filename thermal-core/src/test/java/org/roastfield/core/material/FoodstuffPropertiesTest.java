package org.roastfield.core.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.DoubleSummaryStatistics;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Heat between temperatures against the integral of the apparent heat capacity. */
class FoodstuffPropertiesTest {

  /** Gauss's four nodes and weights on [−1, 1]: exact for polynomials of degree 7. */
  private static final double[] NODES = {
    -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
  };

  private static final double[] WEIGHTS = {
    0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
  };

  @Property
  void heat_isTheIntegralOfTheApparentHeatCapacity(
      @ForAll @IntRange(max = 15) int food,
      @ForAll @DoubleRange(min = 250, max = 500) double from,
      @ForAll @DoubleRange(min = 250, max = 500) double to) {
    Material material = Materials.all().get(food).material();
    double scale = material.heatBetween(250, 500);
    assertEquals(integral(material, from, to), material.heatBetween(from, to), 1e-12 * scale);
  }

  private static double integral(Material material, double from, double to) {
    double[] ends = pieces(material, Math.min(from, to), Math.max(from, to));
    double sum = 0;
    for (int i = 1; i < ends.length; i++) {
      double half = 0.5 * (ends[i] - ends[i - 1]);
      for (int n = 0; n < NODES.length; n++) {
        double node = 0.5 * (ends[i] + ends[i - 1]) + half * NODES[n];
        sum += half * WEIGHTS[n] * material.apparentHeatCapacity(node);
      }
    }
    return from <= to ? sum : -sum;
  }

  /** Ends of the pieces in which the apparent heat capacity is one polynomial. */
  private static double[] pieces(Material material, double from, double to) {
    DoubleStream curve = DoubleStream.of(from, to, material.lowest(), material.highest());
    Stream<LatentHeat> heats = material.latentHeats().stream();
    DoubleStream latent = heats.flatMapToDouble(h -> DoubleStream.of(h.lowest(), h.highest()));
    return DoubleStream.concat(curve, latent)
        .filter(end -> end >= from && end <= to)
        .sorted()
        .toArray();
  }

  @Property
  void latentHeats_areThoseOfTheirPartsByMass(
      @ForAll @DoubleRange(min = 0, max = 0.5) double fat,
      @ForAll @DoubleRange(min = 0, max = 0.4) double protein) {
    Composition composition = Composition.ofMeat(1 - fat - protein, protein, fat, 0);
    DoubleSummaryStatistics all =
        FoodKind.MEAT.latentHeats(composition).stream()
            .mapToDouble(LatentHeat::heat)
            .summaryStatistics();
    assertEquals(120e3 * fat + 16e3 * protein, all.getSum(), 1e-8);
  }
}
