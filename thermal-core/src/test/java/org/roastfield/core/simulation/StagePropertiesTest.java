package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class StagePropertiesTest {

  private static final int TRIES = 40;

  /** A core rises by less than a kelvin in a second, and events are located to 1e-4 s [K]. */
  private static final double EVENT_ALLOWED = 1e-4;

  private static final double DURATION = 3600;

  @Property(tries = TRIES)
  void stageSplitInTwo_changesNothingBeyondTheAccuracy(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 10, max = 3000) @Scale(4) double split,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(4) double h,
      @ForAll @DoubleRange(min = -5, max = -2) @Scale(4) double logAccuracy) {
    double accuracy = Math.pow(10, logAccuracy);
    Signal air = new SampleCooks.Swinging(Bodies.START + 100, 5, 1500);
    SurfaceLaw law = new Convection(h, air);
    Cut cut = new Cut(Bodies.shape(mode, 0.035), Bodies.CONSTANT, Bodies.START);
    SimulationResult whole =
        Bodies.run(
            Bodies.accuracy(accuracy),
            Cook.of(cut, Stage.allRound("heat", law, StageEnd.after(DURATION))));
    SimulationResult parts =
        Bodies.run(
            Bodies.accuracy(accuracy),
            Cook.of(
                cut,
                Stage.allRound("one", law, StageEnd.after(split)),
                Stage.allRound("two", law, StageEnd.at(DURATION))));
    assertEquals(DURATION, parts.endTime());
    assertEquals(whole.core().at(DURATION), parts.core().at(DURATION), 5 * accuracy);
    double wholeFace = whole.upperSurface().at(DURATION);
    assertEquals(wholeFace, parts.upperSurface().at(DURATION), 20 * accuracy);
  }

  @Property(tries = TRIES)
  void pull_isWhereTheTraceMeetsTheTemperature(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 1, max = 70) @Scale(4) double rise,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(4) double h) {
    double target = Bodies.START + rise;
    SurfaceLaw law = new Convection(h, Signal.constant(Bodies.START + 100));
    Cut cut = new Cut(Bodies.shape(mode, 0.03), Bodies.CONSTANT, Bodies.START);
    SimulationResult result =
        Bodies.run(
            Settings.withDefaults(),
            Cook.of(
                cut,
                Stage.allRound("heat", law, StageEnd.coreRisesTo(target, 200_000)),
                Stage.allRound("on", law, StageEnd.after(60))));
    StageResult stage = result.stage("heat");
    assertEquals(target, stage.coreAtEnd(), EVENT_ALLOWED);
    assertEquals(target, result.core().at(stage.end()), EVENT_ALLOWED);
    assertTrue(result.core().at(0.999 * stage.end()) < target);
    assertTrue(result.core().at(stage.end() + 30) > target);
  }

  @Property(tries = TRIES)
  void pull_doesNotDependOnTheAccuracyBeyondASecond(
      @ForAll RadialMode mode, @ForAll @DoubleRange(min = 10, max = 60) @Scale(4) double rise) {
    SurfaceLaw law = new Convection(40, Signal.constant(Bodies.START + 100));
    Cut cut = new Cut(Bodies.shape(mode, 0.03), Bodies.CONSTANT, Bodies.START);
    StageEnd end = StageEnd.coreRisesTo(Bodies.START + rise, 200_000);
    Cook cook = Cook.of(cut, Stage.allRound("heat", law, end));
    double usual = Bodies.run(Settings.withDefaults(), cook).endTime();
    double tight = Bodies.run(Bodies.accuracy(1e-6), cook).endTime();
    assertEquals(tight, usual, 1);
  }

  @Property(tries = TRIES)
  void pull_doesNotDependOnOtherProbes(
      @ForAll @DoubleRange(min = 0, max = 0.03) @Scale(4) double depth,
      @ForAll @DoubleRange(min = 10, max = 60) @Scale(4) double rise) {
    SurfaceLaw law = new Convection(40, Signal.constant(Bodies.START + 100));
    Cut cut = new Cut(Bodies.shape(RadialMode.CYLINDER, 0.03), Bodies.LOIN, Bodies.START);
    Stage stage = Stage.allRound("heat", law, StageEnd.coreRisesTo(Bodies.START + rise, 200_000));
    Cook plain = Cook.of(cut, stage);
    Cook probed = new Cook(cut, plain.stages(), java.util.List.of(Probe.atDepth("extra", depth)));
    assertEquals(
        Bodies.run(Settings.withDefaults(), plain).endTime(),
        Bodies.run(Settings.withDefaults(), probed).endTime());
  }

  @Property(tries = TRIES)
  void thickerCut_takesLonger(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.01, max = 0.06) @Scale(4) double radius,
      @ForAll @DoubleRange(min = 1.02, max = 1.5) @Scale(4) double factor,
      @ForAll @DoubleRange(min = 10, max = 60) @Scale(4) double rise,
      @ForAll boolean constant) {
    double thin = pull(Bodies.shape(mode, radius), rise, constant);
    double thick = pull(Bodies.shape(mode, radius * factor), rise, constant);
    assertTrue(thick > thin, () -> thick + " s after " + thin + " s");
  }

  @Property(tries = TRIES)
  void sphereIsQuickerThanCylinder_andCylinderThanSlab(
      @ForAll @DoubleRange(min = 0.01, max = 0.06) @Scale(4) double radius,
      @ForAll @DoubleRange(min = 10, max = 60) @Scale(4) double rise) {
    double sphere = pull(Bodies.shape(RadialMode.SPHERE, radius), rise, true);
    double cylinder = pull(Bodies.shape(RadialMode.CYLINDER, radius), rise, true);
    double slab = pull(Bodies.shape(RadialMode.SLAB, radius), rise, true);
    assertTrue(sphere < cylinder && cylinder < slab);
  }

  @Property(tries = TRIES)
  void tighterAccuracy_converges(
      @ForAll RadialMode mode, @ForAll @DoubleRange(min = 20, max = 300) @Scale(4) double h) {
    Shape shape = Bodies.shape(mode, 0.03);
    SurfaceLaw law = new Convection(h, new SampleCooks.Swinging(Bodies.START + 100, 10, 900));
    Cook cook = Bodies.oneStage(shape, law, DURATION);
    double exact = Bodies.run(Bodies.accuracy(1e-8), cook).core().at(DURATION);
    for (double accuracy : new double[] {1e-2, 1e-4, 1e-6}) {
      double core = Bodies.run(Bodies.accuracy(accuracy), cook).core().at(DURATION);
      assertEquals(exact, core, 2 * accuracy);
    }
  }

  private static double pull(Shape shape, double rise, boolean constant) {
    SurfaceLaw law = new Convection(40, Signal.constant(Bodies.START + 100));
    Cut cut = new Cut(shape, constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    StageEnd end = StageEnd.coreRisesTo(Bodies.START + rise, 400_000);
    return Bodies.run(Settings.withDefaults(), Cook.of(cut, Stage.allRound("heat", law, end)))
        .endTime();
  }
}
