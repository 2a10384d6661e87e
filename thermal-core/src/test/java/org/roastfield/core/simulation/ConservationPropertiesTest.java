package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class ConservationPropertiesTest {

  private static final int TRIES = 60;
  private static final double ROUND_OFF = 1e-12;

  @Property(tries = TRIES)
  void anyTwoStages_conserveHeat(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.01, max = 0.08) @Scale(4) double radius,
      @ForAll boolean constant,
      @ForAll("laws") SurfaceLaw first,
      @ForAll("laws") SurfaceLaw second,
      @ForAll @IntRange(min = 6, max = 60) int cells) {
    Cut cut =
        new Cut(Bodies.shape(mode, radius), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    assertConserved(
        Cook.of(
            cut,
            Stage.allRound("first", first, StageEnd.after(1200)),
            Stage.allRound("second", second, StageEnd.after(600))),
        cells);
  }

  @Property(tries = TRIES)
  void anyTwoFaces_conserveHeat(
      @ForAll @DoubleRange(min = 0.01, max = 0.08) @Scale(4) double radius,
      @ForAll boolean constant,
      @ForAll("laws") SurfaceLaw upper,
      @ForAll("laws") SurfaceLaw lower,
      @ForAll @IntRange(min = 6, max = 60) int cells) {
    Cut cut =
        new Cut(
            Bodies.shape(RadialMode.SLAB, radius),
            constant ? Bodies.CONSTANT : Bodies.LOIN,
            Bodies.START);
    assertConserved(
        Cook.of(
            cut,
            Stage.ofFaces("first", upper, lower, StageEnd.after(600)),
            Stage.ofFaces("second", lower, upper, StageEnd.after(600))),
        cells);
  }

  @Provide
  static Arbitrary<SurfaceLaw> laws() {
    return Arbitraries.oneOf(contacts(), chambers());
  }

  private static Arbitrary<SurfaceLaw> contacts() {
    return Combinators.combine(uniform(5, 400), uniform(20, 250))
        .as((h, warmer) -> new Contact(h, Signal.constant(Bodies.START + warmer)));
  }

  private static Arbitrary<SurfaceLaw> chambers() {
    return Combinators.combine(uniform(30, 230), uniform(0, 0.1), uniform(5, 40), uniform(0, 1))
        .as(
            (warmer, humidity, h, wetness) ->
                Chamber.steady(Bodies.START + warmer, humidity, MoistAir.STANDARD_PRESSURE)
                    .around(h, 0.9, wetness, 0.99));
  }

  private static void assertConserved(Cook cook, int cells) {
    SimulationResult result = Bodies.run(Settings.withDefaults().withCells(cells), cook);
    double residual = result.energy().relativeResidual();
    assertTrue(Math.abs(residual) <= ROUND_OFF, () -> "relative residual " + residual);
  }

  private static Arbitrary<Double> uniform(double low, double high) {
    return Arbitraries.doubles().between(low, high).withDistribution(RandomDistribution.uniform());
  }
}
