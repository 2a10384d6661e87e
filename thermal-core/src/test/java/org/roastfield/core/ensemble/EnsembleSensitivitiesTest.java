package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.simulation.Sensitivities;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Derivatives in lanes against those of single cooks, and whatever the company. */
class EnsembleSensitivitiesTest {

  private static final Settings SETTINGS = Settings.withDefaults().withCells(16);
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double RADIUS = 0.045;
  private static final double[] SAMPLES = {0, 600, 3000, 7000, 9000};
  private static final EnsembleSimulator SIMULATOR =
      EnsembleSimulator.with(SETTINGS).withSampleTimes(SAMPLES);

  /** Radius as the template's, so that a single cook has the same grid over relative depth. */
  private static ParameterPoint point(int member) {
    SplittableRandom random = new SplittableRandom(member);
    return ParameterPoint.empty()
        .with("conductivity", 0.48 * factor(random))
        .with("radius", RADIUS)
        .with("air", 388 * (1 + 0.1 * (factor(random) - 1)))
        .with("wetness", 0.3 * factor(random))
        .with("transfer", 6 * factor(random))
        .with("target", Temperatures.celsius(50 + 5 * factor(random)), 10)
        .with("sear", 120 * factor(random))
        .with("depth", 0.02 * factor(random));
  }

  private static double factor(SplittableRandom random) {
    return 1 + 0.1 * (2 * random.nextDouble() - 1);
  }

  private static Cook cook(ParameterPoint at, Function<ParameterPoint, SurfaceLaw> gentle) {
    Chamber room = Chamber.steady(Temperatures.celsius(22), 0.008, PRESSURE);
    SurfaceLaw sear =
        SurfaceLaw.sum(
            new Contact(200, Signal.constant(Temperatures.celsius(230))),
            room.around(10, 0.9, 0, 0.98));
    Probe probe = Probe.atDepth("awaited", at.value("depth"));
    double target = at.value("target");
    return Draws.cook(
        at.value("radius"),
        at.value("conductivity"),
        Stage.allRound("gentle", gentle.apply(at), new StageEnd.Rises(probe, target, 40_000)),
        Stage.allRound("sear", sear, StageEnd.after(at.value("sear"))),
        Stage.allRound("rest", room.around(5, 0.9, 0.1, 0.98), StageEnd.after(1800)));
  }

  static Cook steady(ParameterPoint at) {
    return cook(
        at,
        p ->
            Chamber.steady(p.value("air"), 0.03, PRESSURE)
                .around(p.value("transfer"), 0.92, p.value("wetness"), 0.98));
  }

  private static Cook fluctuating(ParameterPoint at) {
    return cook(at, p -> new Draws.OwnLaw(p.value("transfer") + 8, p.value("air"), 5, 1500));
  }

  private static EnsembleSensitivities run(
      int members, IntFunction<ParameterPoint> points, Function<ParameterPoint, Cook> cooks) {
    return SIMULATOR.sensitivities(steady(point(0)), members, points, cooks);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void derivatives_areThoseOfTheSingleCook(boolean steady) {
    Function<ParameterPoint, Cook> cooks =
        steady ? EnsembleSensitivitiesTest::steady : EnsembleSensitivitiesTest::fluctuating;
    EnsembleSensitivities lanes = run(30, EnsembleSensitivitiesTest::point, cooks);
    for (int i = 0; i < 30; i += 7) {
      Sensitivities one = Simulator.with(SETTINGS).sensitivities(point(i), cooks);
      assertEquals(MemberStatus.COMPLETED, lanes.result().status(i));
      for (int p = 0; p < lanes.parameters(); p++) {
        String what = "member " + i + ", " + one.point().coordinate(p).name();
        double scale = one.point().coordinate(p).scale();
        for (int stage = 0; stage < 3; stage++) {
          agree(one.stageEnd(stage, p), lanes.stageEnd(i, stage, p), 1000 / scale, what + " end");
          agree(one.coreAtEnd(stage, p), lanes.coreAtEnd(i, stage, p), 10 / scale, what + " core");
          agree(
              one.upperSurfaceAtEnd(stage, p),
              lanes.surfaceAtEnd(i, stage, p),
              10 / scale,
              what + " surface");
          agree(
              one.corePeak(stage, p).temperature(),
              lanes.corePeak(i, stage, p),
              10 / scale,
              what + " peak of " + stage);
        }
        agree(one.evaporatedUpper(p), lanes.evaporated(i, p), 1 / scale, what + " water");
        for (int s = 0; s < SAMPLES.length; s++) {
          if (SAMPLES[s] < one.result().endTime()) {
            agree(
                one.core().at(p, SAMPLES[s]), lanes.coreAt(i, s, p), 10 / scale, what + " at " + s);
          }
        }
      }
    }
  }

  /** Within 1e-6 of the larger of the derivative and what the parameter's scale makes usual. */
  private static void agree(double expected, double found, double usual, String what) {
    assertEquals(expected, found, 1e-6 * Math.max(Math.abs(expected), usual), what);
  }

  @Test
  void members_areThoseWithoutDerivativesToTheBit() {
    EnsembleSensitivities with =
        run(150, EnsembleSensitivitiesTest::point, EnsembleSensitivitiesTest::steady);
    EnsembleResult without = SIMULATOR.run(steady(point(0)), 150, i -> steady(point(i)));
    for (int i = 0; i < 150; i++) {
      for (int stage = 0; stage < 3; stage++) {
        assertEquals(without.stageEnd(i, stage), with.result().stageEnd(i, stage));
        assertEquals(without.corePeak(i, stage), with.result().corePeak(i, stage));
        assertEquals(without.surfaceAtEnd(i, stage), with.result().surfaceAtEnd(i, stage));
      }
      assertEquals(without.evaporated(i), with.result().evaporated(i));
      assertEquals(without.acceptedSteps(i), with.result().acceptedSteps(i));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 63, 64, 65, 200})
  void derivatives_areTheSameToTheBit_inABatchOfAnySizeAndOrder(int size) {
    EnsembleSensitivities batch =
        run(size, i -> point(size - 1 - i), EnsembleSensitivitiesTest::steady);
    for (int i = 0; i < size; i += 1 + size / 5) {
      int member = size - 1 - i;
      EnsembleSensitivities alone =
          run(1, ignored -> point(member), EnsembleSensitivitiesTest::steady);
      assertSame(alone, 0, batch, i);
    }
  }

  @Test
  void derivatives_areTheSameToTheBit_amongOtherLawsAndOnWorkers() {
    EnsembleSensitivities alone = run(1, i -> point(3), EnsembleSensitivitiesTest::steady);
    ExecutorService executor = Executors.newFixedThreadPool(3);
    try {
      EnsembleSensitivities mixed =
          SIMULATOR.sensitivities(
              steady(point(0)),
              150,
              EnsembleSensitivitiesTest::point,
              at ->
                  at.value("conductivity") == point(3).value("conductivity")
                          || Math.abs(at.value("conductivity") - point(3).value("conductivity"))
                              < 1e-4
                      ? steady(at)
                      : fluctuating(at),
              executor,
              3,
              new Cancellation());
      assertSame(alone, 0, mixed, 3);
    } finally {
      executor.shutdown();
    }
  }

  private static void assertSame(EnsembleSensitivities a, int i, EnsembleSensitivities b, int j) {
    for (int p = 0; p < a.parameters(); p++) {
      for (int stage = 0; stage < 3; stage++) {
        assertEquals(a.stageEnd(i, stage, p), b.stageEnd(j, stage, p));
        assertEquals(a.coreAtEnd(i, stage, p), b.coreAtEnd(j, stage, p));
        assertEquals(a.surfaceAtEnd(i, stage, p), b.surfaceAtEnd(j, stage, p));
        assertEquals(a.corePeak(i, stage, p), b.corePeak(j, stage, p));
      }
      assertEquals(a.evaporated(i, p), b.evaporated(j, p));
      for (int s = 0; s < SAMPLES.length; s++) {
        assertEquals(a.coreAt(i, s, p), b.coreAt(j, s, p));
      }
    }
  }

  @Test
  void membersThatLanesDoNotTake_haveThoseOfTheSingleCook() {
    Function<ParameterPoint, Cook> twoFaces =
        at -> {
          Cook round = steady(at);
          Stage first = round.stages().get(0);
          return new Cook(
              new org.roastfield.core.cook.Cut(
                  org.roastfield.core.shape.Slab.ofThickness(2 * at.value("radius")),
                  round.cut().material(),
                  round.cut().startTemperature()),
              java.util.List.of(
                  new Stage("gentle", first.upper(), SurfaceLaw.insulated(), StageEnd.after(3000)),
                  round.stages().get(1),
                  round.stages().get(2)),
              java.util.List.of());
        };
    EnsembleSensitivities ensemble =
        SIMULATOR.sensitivities(steady(point(0)), 2, EnsembleSensitivitiesTest::point, twoFaces);
    Sensitivities one = Simulator.with(SETTINGS).sensitivities(point(1), twoFaces);
    for (int p = 0; p < ensemble.parameters(); p++) {
      for (int stage = 0; stage < 3; stage++) {
        assertEquals(one.stageEnd(stage, p), ensemble.stageEnd(1, stage, p));
        assertEquals(one.coreAtEnd(stage, p), ensemble.coreAtEnd(1, stage, p));
        assertEquals(one.upperSurfaceAtEnd(stage, p), ensemble.surfaceAtEnd(1, stage, p));
      }
      assertEquals(one.core().at(p, SAMPLES[2]), ensemble.coreAt(1, 2, p));
      assertEquals(one.evaporatedUpper(p), ensemble.evaporated(1, p));
    }
  }

  @Test
  void aMemberThatFails_isAnOutcomeOfItsOwn() {
    EnsembleSensitivities result =
        run(
            20,
            i ->
                i == 4
                    ? point(i).moved(5, Temperatures.celsius(150))
                    : i == 9 ? ParameterPoint.empty().with("alone", 1) : point(i),
            EnsembleSensitivitiesTest::steady);
    assertEquals(MemberStatus.END_RULE_NOT_MET, result.result().status(4));
    assertTrue(Double.isNaN(result.stageEnd(4, 0, 0)));
    assertEquals(MemberStatus.NOT_BUILT, result.result().status(9));
    assertFalse(result.result().message(9).isEmpty());
    assertEquals(18, result.result().completed());
  }
}
