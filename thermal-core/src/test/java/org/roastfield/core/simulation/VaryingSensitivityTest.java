package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.integration.FrozenPlan;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.FoodKind;
import org.roastfield.core.material.Foodstuff;
import org.roastfield.core.material.Material;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Derivatives where properties depend on temperature: fat melts, proteins denature. */
class VaryingSensitivityTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double TRACE_ALLOWED = 1e-5;
  private static final double EVENT_ALLOWED = 1e-4;

  /**
   * Plain stages stop their iteration within the accuracy. What is left moves the cells in the
   * short first steps after an event, and so the rate there by which a moved event shifts a trace:
   * steps below a second are left out.
   */
  private static final Settings FINE = Bodies.accuracy(1e-6).withCells(12);

  private static final double SHORTEST = 1;

  /** Enough for numbers at the ends of stages. */
  private static final Settings USUAL = Bodies.accuracy(2e-5).withCells(10);

  private static final Probe TIP = Probe.atDepth("tip", 0.012);

  private static ParameterPoint point() {
    return ParameterPoint.empty()
        .with("water", 0.65)
        .with("fat", 0.12)
        .with("size", 0.035)
        .with("start", Temperatures.celsius(6), 10)
        .with("air", Temperatures.celsius(120), 10)
        .with("wetness", 0.4)
        .with("plate", 220)
        .with("target", Temperatures.celsius(52), 10);
  }

  private static ParameterPoint drawn(int seed) {
    Random random = new Random(seed);
    ParameterPoint at = point();
    for (int p = 0; p < at.size(); p++) {
      double share = 0.3 * random.nextDouble() - 0.15;
      at = at.moved(p, at.coordinate(p).value() + share * at.coordinate(p).scale());
    }
    return at;
  }

  private static Material material(ParameterPoint at) {
    double water = at.value("water");
    double fat = at.value("fat");
    Composition meat = Composition.ofMeat(water, 0.99 - water - fat, fat, 0.01);
    return Foodstuff.of("test meat", FoodKind.MEAT, meat).material();
  }

  private static Cook round(ParameterPoint at) {
    Chamber pit = Chamber.steady(at.value("air"), 0.03, PRESSURE);
    return cook(
        at,
        Cylinder.ofRadius(at.value("size")),
        Stage.allRound("gentle", gentle(at, pit), reached(at)),
        Stage.allRound("sear", sear(at, pit), StageEnd.after(90)),
        Stage.allRound("rest", room(), StageEnd.after(1200)));
  }

  private static Cook turned(ParameterPoint at) {
    Chamber pit = Chamber.steady(at.value("air"), 0.03, PRESSURE);
    return cook(
        at,
        Slab.ofThickness(at.value("size")),
        Stage.ofFaces("gentle", gentle(at, pit), gentle(at, pit), reached(at)),
        Stage.ofFaces("sear", room(), sear(at, pit), StageEnd.after(90)),
        Stage.ofFaces("rest", room(), room(), StageEnd.after(600)));
  }

  private static StageEnd reached(ParameterPoint at) {
    return StageEnd.coreRisesTo(at.value("target"), 60_000);
  }

  private static SurfaceLaw gentle(ParameterPoint at, Chamber pit) {
    return pit.around(9, 0.9, at.value("wetness"), 0.98);
  }

  private static SurfaceLaw sear(ParameterPoint at, Chamber pit) {
    Signal plate = Signal.constant(Temperatures.celsius(240));
    return SurfaceLaw.sum(new Contact(at.value("plate"), plate), pit.around(5, 0.9, 0, 0.98));
  }

  private static SurfaceLaw room() {
    return Chamber.steady(Temperatures.celsius(21), 0.008, PRESSURE).around(5, 0.9, 0.1, 0.98);
  }

  private static Cook cook(ParameterPoint at, Shape shape, Stage... stages) {
    return new Cook(new Cut(shape, material(at), at.value("start")), List.of(stages), List.of(TIP));
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void tracesEventsAndWater_agreeWithDifferences(boolean round) {
    Function<ParameterPoint, Cook> cooks =
        round ? VaryingSensitivityTest::round : VaryingSensitivityTest::turned;
    FrozenDifferences differences = new FrozenDifferences(FINE, point(), cooks);
    Sensitivities s = differences.sensitivities();
    for (int p = 0; p < s.point().size(); p++) {
      String what = s.point().coordinate(p).name();
      assertEquals(0, differences.error(p, s.core(), Probe.CORE, SHORTEST), TRACE_ALLOWED, what);
      assertEquals(
          0, differences.error(p, s.upperSurface(), Probe.SURFACE, SHORTEST), TRACE_ALLOWED, what);
      assertEquals(0, differences.error(p, s.probe(TIP), TIP, SHORTEST), TRACE_ALLOWED, what);
      outcomes(differences, p, what);
    }
  }

  private static void outcomes(FrozenDifferences differences, int p, String what) {
    Sensitivities s = differences.sensitivities();
    for (int i = 0; i < 3; i++) {
      int stage = i;
      double end = differences.error(p, s.stageEnd(stage, p), r -> r.end(stage));
      assertEquals(0, end, EVENT_ALLOWED, what);
      double surface =
          differences.scaledError(p, s.upperSurfaceAtEnd(stage, p), r -> r.surface(stage));
      assertEquals(0, surface, 1e-3, what);
    }
    double core = differences.scaledError(p, s.coreAtEnd(2, p), r -> r.core(2));
    assertEquals(0, core, 1e-3, what);
    double water = differences.error(p, s.evaporatedUpper(p), FrozenPlan.Replay::evaporated);
    assertEquals(0, water, 1e-4, what);
  }

  @Test
  void eventsAndTheEnd_agreeWithDifferences_atRandomPoints() {
    for (int seed = 0; seed < 50; seed++) {
      ParameterPoint full = drawn(seed);
      ParameterPoint some = ParameterPoint.empty();
      for (int p = seed % 4; p < full.size(); p += 4) {
        ParameterPoint.Coordinate c = full.coordinate(p);
        some = some.with(c.name(), c.value(), c.scale());
      }
      FrozenDifferences differences =
          new FrozenDifferences(USUAL, some, at -> round(merged(full, at)));
      Sensitivities s = differences.sensitivities();
      for (int p = 0; p < s.point().size(); p++) {
        String what = seed + " " + s.point().coordinate(p).name();
        double end = differences.error(p, s.stageEnd(0, p), r -> r.end(0));
        assertEquals(0, end, EVENT_ALLOWED, what);
        double core = differences.scaledError(p, s.coreAtEnd(2, p), r -> r.core(2));
        assertEquals(0, core, 1e-4, what);
      }
    }
  }

  @Test
  void traces_agreeWithDifferences_atRandomPoints() {
    for (int seed = 0; seed < 50; seed++) {
      ParameterPoint full = drawn(seed);
      ParameterPoint.Coordinate one = full.coordinate(seed % full.size());
      ParameterPoint alone = ParameterPoint.empty().with(one.name(), one.value(), one.scale());
      Function<ParameterPoint, Cook> cooks =
          seed % 2 == 0 ? VaryingSensitivityTest::round : VaryingSensitivityTest::turned;
      FrozenDifferences differences =
          new FrozenDifferences(FINE, alone, at -> cooks.apply(merged(full, at)));
      Sensitivities s = differences.sensitivities();
      String what = seed + " " + one.name();
      assertEquals(0, differences.error(0, s.core(), Probe.CORE, SHORTEST), TRACE_ALLOWED, what);
      assertEquals(
          0, differences.error(0, s.upperSurface(), Probe.SURFACE, SHORTEST), TRACE_ALLOWED, what);
    }
  }

  private static ParameterPoint merged(ParameterPoint full, ParameterPoint some) {
    ParameterPoint merged = full;
    for (int p = 0; p < some.size(); p++) {
      ParameterPoint.Coordinate c = some.coordinate(p);
      merged = merged.moved(merged.index(c.name()), c.value());
    }
    return merged;
  }

  @Test
  void result_isThatWithoutDerivativesBitForBit() {
    Settings settings = Settings.withDefaults();
    Sensitivities s =
        Simulator.with(settings).sensitivities(point(), VaryingSensitivityTest::round);
    SimulationResult plain = Bodies.run(settings, round(point()));
    double[] times = {0, 100, 1000, plain.stages().get(0).end(), plain.endTime()};
    double[] expected = new double[times.length];
    double[] found = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      expected[i] = plain.core().at(times[i]);
      found[i] = s.result().core().at(times[i]);
    }
    assertArrayEquals(expected, found, 0.0);
  }
}
