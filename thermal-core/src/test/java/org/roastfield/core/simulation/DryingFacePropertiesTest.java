package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.units.Temperatures;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class DryingFacePropertiesTest {

  private static final int TRIES = 60;
  private static final int SAMPLES = 20_000;
  private static final double ROUND_OFF = 1e-12;
  private static final double BOILING = SaturationPressure.boilingPoint(MoistAir.STANDARD_PRESSURE);

  /** Superheat of a face that boils under 100 kW/m², about what the hottest plate here gives. */
  private static final double SUPERHEAT = 0.01;

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  @Property(tries = TRIES)
  void anyThreeStages_conserveHeatAndWater(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.012, max = 0.08) @Scale(4) double radius,
      @ForAll boolean constant,
      @ForAll("faces") SurfaceLaw first,
      @ForAll("faces") SurfaceLaw second,
      @ForAll @IntRange(min = 10, max = 60) int cells) {
    Cut cut =
        new Cut(Bodies.shape(mode, radius), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    assertConserved(
        Cook.of(
            cut,
            Stage.allRound("first", first, StageEnd.after(900)),
            Stage.allRound("second", second, StageEnd.after(90)),
            Stage.allRound("third", first, StageEnd.after(300))),
        cells);
  }

  /** At any time, not only where steps end: above boiling only where a crust has begun. */
  @Property(tries = TRIES)
  void faceThatHoldsWater_isNeverAboveBoiling(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.012, max = 0.08) @Scale(4) double radius,
      @ForAll boolean constant,
      @ForAll("faces") SurfaceLaw first,
      @ForAll("plates") SurfaceLaw second) {
    Cut cut =
        new Cut(Bodies.shape(mode, radius), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    Cook cook =
        Cook.of(
            cut,
            Stage.allRound("first", first, StageEnd.after(600)),
            Stage.allRound("second", second, StageEnd.after(120)),
            Stage.allRound("third", first, StageEnd.after(120)));
    SimulationResult result = Bodies.run(Settings.withDefaults(), cook);
    for (int i = 0; i <= SAMPLES; i++) {
      double time = result.endTime() * i / SAMPLES;
      if (result.upperFaceWaterAt(time) >= 0) {
        double value = result.upperSurface().at(time);
        assertTrue(value <= BOILING + SUPERHEAT, () -> value + " K at " + time + " s");
      }
    }
  }

  /**
   * Stages in which the face dries and stages whose laws say nothing of water, in any order: held
   * water is nowhere above boiling, and heat and water are conserved.
   */
  @Property(tries = 2 * TRIES)
  void stagesThatSayNothingOfWater_keepHeldWaterBelowBoiling(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.012, max = 0.08) @Scale(4) double radius,
      @ForAll boolean constant,
      @ForAll("faces") SurfaceLaw drying,
      @ForAll("dryFaces") SurfaceLaw first,
      @ForAll("dryFaces") SurfaceLaw second,
      @ForAll boolean dryingFirst) {
    Cut cut =
        new Cut(Bodies.shape(mode, radius), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    List<Stage> stages = new ArrayList<>();
    stages.add(Stage.allRound("drying", drying, StageEnd.after(600)));
    stages.add(dryingFirst ? 1 : 0, Stage.allRound("first", first, StageEnd.after(200)));
    stages.add(Stage.allRound("second", second, StageEnd.after(200)));
    stages.add(Stage.allRound("again", drying, StageEnd.after(120)));
    SimulationResult result = Bodies.run(Settings.withDefaults(), new Cook(cut, stages, List.of()));
    double residual = result.energy().relativeResidual();
    assertTrue(Math.abs(residual) <= ROUND_OFF, () -> "relative residual " + residual);
    assertWater(result.upperFaceWater());
    for (int i = 0; i <= SAMPLES; i++) {
      double time = result.endTime() * i / SAMPLES;
      if (result.upperFaceWaterAt(time) > 0) {
        double value = result.upperSurface().at(time);
        assertTrue(value <= BOILING + SUPERHEAT, () -> value + " K at " + time + " s");
      }
    }
  }

  @Provide
  static Arbitrary<SurfaceLaw> dryFaces() {
    Arbitrary<SurfaceLaw> air =
        Combinators.combine(uniform(5, 100), uniform(10, 300))
            .as((h, celsius) -> new Convection(h, Signal.constant(Temperatures.celsius(celsius))));
    Arbitrary<SurfaceLaw> metal =
        Combinators.combine(uniform(60, 300), uniform(0.1, 1))
            .as(
                (celsius, share) ->
                    new Touch(
                        share,
                        500,
                        250,
                        30,
                        Signal.constant(Temperatures.celsius(celsius)),
                        50,
                        60,
                        0));
    return Arbitraries.oneOf(air, metal, Arbitraries.just(SurfaceLaw.insulated()));
  }

  @Property(tries = TRIES)
  void anyTwoFaces_conserveHeatAndWater(
      @ForAll @DoubleRange(min = 0.012, max = 0.08) @Scale(4) double radius,
      @ForAll boolean constant,
      @ForAll("faces") SurfaceLaw upper,
      @ForAll("faces") SurfaceLaw lower,
      @ForAll @IntRange(min = 10, max = 60) int cells) {
    Cut cut =
        new Cut(
            Bodies.shape(RadialMode.SLAB, radius),
            constant ? Bodies.CONSTANT : Bodies.LOIN,
            Bodies.START);
    assertConserved(
        Cook.of(
            cut,
            Stage.ofFaces("first", upper, lower, StageEnd.after(120)),
            Stage.ofFaces("turned", lower, upper, StageEnd.after(120))),
        cells);
  }

  @Provide
  static Arbitrary<SurfaceLaw> faces() {
    return Arbitraries.oneOf(chambers(), plates());
  }

  private static Arbitrary<SurfaceLaw> chambers() {
    return Combinators.combine(uniform(20, 230), uniform(0, 0.1), uniform(5, 40), uniform(0, 3))
        .as((warmer, humidity, h, drive) -> face(warmer, humidity, h, drive, SurfaceLaw.sum()));
  }

  @Provide
  static Arbitrary<SurfaceLaw> plates() {
    return Combinators.combine(uniform(60, 260), uniform(0.1, 1), uniform(0, 1.5))
        .as(
            (warmer, share, drive) ->
                face(
                    60,
                    0.01,
                    10,
                    drive,
                    new Touch(
                        share, 500, 250, 30, Signal.constant(Bodies.START + warmer), 50, 60, 0)));
  }

  private static SurfaceLaw face(
      double warmer, double humidity, double h, double drive, SurfaceLaw more) {
    Signal air = Signal.constant(Bodies.START + warmer);
    Signal vapour = Signal.constant(MoistAir.vapourPressure(humidity, PRESSURE));
    return DryingFace.ofMeat(
        SurfaceLaw.sum(new Convection(h, air), new Radiation(0.9, air), more),
        Evaporation.of(1, h, 0.98, vapour, PRESSURE),
        drive,
        PRESSURE);
  }

  private static void assertConserved(Cook cook, int cells) {
    SimulationResult result = Bodies.run(Settings.withDefaults().withCells(cells), cook);
    double residual = result.energy().relativeResidual();
    assertTrue(Math.abs(residual) <= ROUND_OFF, () -> "relative residual " + residual);
    assertWater(result.upperFaceWater());
    if (!cook.isSymmetric()) {
      assertWater(result.lowerFaceWater());
    }
  }

  private static void assertWater(Optional<FaceWater> water) {
    double residual = water.orElseThrow().relativeResidual();
    assertTrue(Math.abs(residual) <= ROUND_OFF, () -> "relative residual of water " + residual);
  }

  private static Arbitrary<Double> uniform(double low, double high) {
    return Arbitraries.doubles().between(low, high).withDistribution(RandomDistribution.uniform());
  }
}
