package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.ensemble.BegunEnsemble;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.ensemble.MemberStatus;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Cooks that go on from a beginning that was computed once. */
class BegunEnsemblePropertiesTest {

  private static final double[] TIMES = {0, 20, 100, 300, 600, 1200, 2400};

  private static final EnsembleSimulator SIMULATOR =
      EnsembleSimulator.with(Settings.withDefaults().withCells(18)).withSampleTimes(TIMES);

  /** Every number of one that goes on is that of one computed whole, wherever it was cut. */
  @Property(tries = 200)
  void aCookThatGoesOn_hasTheBitsOfAWholeOne(@ForAll("cooks") Cook cook) {
    EnsembleResult whole = SIMULATOR.run(cook, 1, i -> cook);
    int stages = cook.stages().size();
    for (int first = 1; first <= stages; first++) {
      Cook beginning = firstStages(cook, first);
      BegunEnsemble begun = SIMULATOR.begin(beginning, 1, i -> beginning);
      assertSame(whole, 0, begun.goOn(cook, 2, i -> 0, i -> cook), 1, stages);
      EnsembleResult unsampled = begun.withoutSamples().goOn(cook, 2, i -> 0, i -> cook);
      assertSameStages(whole, 0, unsampled, 1, stages);
    }
    Statistics.label("completed").collect(whole.status(0) == MemberStatus.COMPLETED);
  }

  @Provide
  static Arbitrary<Cook> cooks() {
    return AnyCookPropertiesTest.cooks();
  }

  @Example
  void theBeginning_isComputedOnce() {
    Counted law = new Counted(new Convection(15, Signal.constant(390)), new AtomicLong());
    Cook cook = cook(law, 600);
    Cook beginning = firstStages(cook, 1);
    BegunEnsemble begun = SIMULATOR.begin(beginning, 1, i -> beginning);
    long once = law.calls().get();
    assertNotEquals(0, once);
    begun.goOn(cook, 50, i -> 0, i -> cook);
    assertEquals(once, law.calls().get());
  }

  @Example
  void aCookThatBeginsOtherwise_isComputedWhole() {
    SurfaceLaw law = new Convection(15, Signal.constant(390));
    Cook longer = cook(law, 700);
    Cook beginning = firstStages(cook(law, 600), 1);
    BegunEnsemble begun = SIMULATOR.begin(beginning, 1, i -> beginning);
    EnsembleResult whole = SIMULATOR.run(longer, 1, i -> longer);
    assertSame(whole, 0, begun.goOn(longer, 1, i -> 0, i -> longer), 0, 2);
  }

  private static Cook cook(SurfaceLaw first, double duration) {
    Cut cut = new Cut(Cylinder.ofDiameter(0.09), SampleCooks.LOIN, Temperatures.celsius(5));
    SurfaceLaw rest = new Convection(5, Signal.constant(295));
    return Cook.of(
        cut,
        Stage.allRound("heat", first, StageEnd.after(duration)),
        Stage.allRound("rest", rest, StageEnd.after(900)));
  }

  private record Counted(SurfaceLaw law, AtomicLong calls) implements SurfaceLaw {

    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
      calls.incrementAndGet();
      law.evaluate(surfaceTemperature, time, flux);
    }
  }

  private static Cook firstStages(Cook cook, int count) {
    return new Cook(cook.cut(), cook.stages().subList(0, count), List.of());
  }

  private static void assertSame(
      EnsembleResult expected, int i, EnsembleResult actual, int j, int stages) {
    assertSameStages(expected, i, actual, j, stages);
    for (int k = 0; k < TIMES.length; k++) {
      assertEquals(expected.coreAt(i, k), actual.coreAt(j, k));
    }
  }

  private static void assertSameStages(
      EnsembleResult expected, int i, EnsembleResult actual, int j, int stages) {
    assertEquals(expected.status(i), actual.status(j));
    assertEquals(expected.lastStage(i), actual.lastStage(j));
    assertEquals(expected.evaporated(i), actual.evaporated(j));
    assertEquals(expected.acceptedSteps(i), actual.acceptedSteps(j));
    assertEquals(expected.rejectedSteps(i), actual.rejectedSteps(j));
    for (int stage = 0; stage < stages; stage++) {
      assertEquals(expected.stageEnd(i, stage), actual.stageEnd(j, stage));
      assertEquals(expected.coreAtEnd(i, stage), actual.coreAtEnd(j, stage));
      assertEquals(expected.surfaceAtEnd(i, stage), actual.surfaceAtEnd(j, stage));
      assertEquals(expected.corePeak(i, stage), actual.corePeak(j, stage));
      assertEquals(expected.corePeakTime(i, stage), actual.corePeakTime(j, stage));
    }
  }
}
