package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.shape.Sphere;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Derivatives for every end rule, probes, slabs with two faces, callers' laws, and arguments. */
class SensitivityRulesTest {

  private static final double ALLOWED = 1e-5;

  /** Stops Newton's method early enough for {@link #ALLOWED}. */
  private static final Settings FINE = Bodies.accuracy(1e-3);

  private static final double EVENT_ALLOWED = 1e-4;
  private static final Probe TIP = Probe.atDepth("tip", 0.009);
  private static final Signal PIT = Signal.constant(Temperatures.celsius(120));
  private static final Signal ROOM = Signal.constant(Temperatures.celsius(22));

  /** A chamber that warms; it has no records to compare and no slope that is right. */
  private static SurfaceLaw ramp(double h, double perSecond, double slopeFactor) {
    return new SurfaceLaw() {
      @Override
      public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
        double air = 380 + perSecond * time;
        flux.addHeat(h * (air - surfaceTemperature), -slopeFactor * h);
      }
    };
  }

  private static Material material(double conductivity) {
    return Material.constant("constant", conductivity, Bodies.DENSITY, Bodies.HEAT_CAPACITY);
  }

  private static SurfaceLaw pit(double h, double wetness) {
    return SurfaceLaw.sum(
        new Convection(h, PIT),
        new Radiation(0.9, PIT),
        Evaporation.of(wetness, h, 0.99, Signal.constant(2000), 101_325));
  }

  @Test
  void lumpedBody_followsTheExponential() {
    double half = 1e-3;
    double air = 350;
    ParameterPoint point = ParameterPoint.empty().with("h", 20).with("start", 290).with("air", air);
    Function<ParameterPoint, Cook> cooks =
        at ->
            Cook.of(
                new Cut(
                    Slab.ofHalfThickness(half),
                    Material.constant("copper-like", 400, 1060, 3450),
                    at.value("start")),
                Stage.allRound(
                    "heat",
                    new Convection(at.value("h"), Signal.constant(at.value("air"))),
                    StageEnd.after(300)));
    Sensitivities s = Simulator.with(Bodies.accuracy(1e-7)).sensitivities(point, cooks);
    for (double time : new double[] {10, 100, 300}) {
      double rate = 1 / (1060 * 3450 * half);
      double decay = StrictMath.exp(-20 * rate * time);
      assertEquals(time * rate * (air - 290) * decay, s.core().at(0, time), 1e-3 * 15 * rate * 300);
      assertEquals(decay, s.core().at(1, time), 1e-4);
      assertEquals(1 - decay, s.core().at(2, time), 1e-4);
    }
  }

  @Test
  void endRulesAndProbe_areParameters() {
    ParameterPoint point =
        ParameterPoint.empty()
            .with("soak", 600)
            .with("target", Temperatures.celsius(40), 10)
            .with("tip", TIP.depth())
            .with("serve", 9000)
            .with("cooled", Temperatures.celsius(60), 10)
            .with("radius", 0.03)
            .with("ramp", 0.002);
    FrozenDifferences differences =
        new FrozenDifferences(FINE, point, SensitivityRulesTest::manyRules);
    Sensitivities s = differences.sensitivities();
    assertEquals(5, s.result().stages().size());
    for (int p = 0; p < point.size(); p++) {
      String what = point.coordinate(p).name();
      for (int i = 0; i < 5; i++) {
        int stage = i;
        String where = what + ", stage " + stage;
        double end = differences.error(p, s.stageEnd(stage, p), r -> r.end(stage));
        assertEquals(0, end, EVENT_ALLOWED, where);
      }
      assertEquals(0, differences.error(p, s.core(), Probe.CORE), ALLOWED, what);
      assertEquals(0, differences.error(p, s.probe(TIP), TIP), ALLOWED, what);
    }
    checkSurfacesAtEnds(differences);
    assertEquals(1, s.stageEnd(0, 0));
    assertEquals(1, s.stageEnd(4, point.index("serve")), 1e-9);
    assertEquals(0, s.stageEnd(4, 0), 1e-9);
  }

  /**
   * Each row in kelvin against its largest entry: a long time after an end, hardly anything is left
   * of some parameters. Where the surface is what is waited for, it stays at its target.
   */
  private static void checkSurfacesAtEnds(FrozenDifferences differences) {
    Sensitivities s = differences.sensitivities();
    int cooled = s.point().index("cooled");
    for (int i = 0; i < 5; i++) {
      int stage = i;
      double largest = 0;
      double worst = 0;
      for (int p = 0; p < s.point().size(); p++) {
        double derivative = s.upperSurfaceAtEnd(stage, p);
        double kelvin = derivative * s.point().coordinate(p).scale();
        largest = Math.max(largest, Math.abs(kelvin));
        worst = Math.max(worst, differences.scaledError(p, derivative, r -> r.surface(stage)));
        if (stage == 2 || stage == 3) {
          assertEquals(stage == 3 && p == cooled ? 10 : 0, kelvin, 1e-8);
        }
      }
      if (stage != 2) {
        assertEquals(0, worst / largest, ALLOWED, "stage " + stage);
      }
    }
  }

  private static Cook manyRules(ParameterPoint at) {
    Probe tip = Probe.atDepth(TIP.name(), at.value("tip"));
    double target = at.value("target");
    return new Cook(
        new Cut(Cylinder.ofRadius(at.value("radius")), material(0.48), Bodies.START),
        List.of(
            Stage.allRound("soak", ramp(15, at.value("ramp"), 1), StageEnd.after(at.value("soak"))),
            Stage.allRound(
                "tip", ramp(15, at.value("ramp"), 1), new StageEnd.Rises(tip, target, 20_000)),
            Stage.allRound(
                "crust",
                new Contact(300, Signal.constant(500)),
                new StageEnd.Rises(Probe.SURFACE, 420, 2000)),
            Stage.allRound(
                "cool",
                new Convection(12, ROOM),
                new StageEnd.Falls(Probe.SURFACE, at.value("cooled"), 5000)),
            Stage.allRound("hold", pit(8, 0.2), StageEnd.at(at.value("serve")))),
        List.of(tip));
  }

  @Test
  void slabWithTwoFaces_agreesWithDifferences() {
    ParameterPoint point =
        ParameterPoint.empty()
            .with("top", 18)
            .with("plate", 250)
            .with("thickness", 0.04)
            .with("conductivity", 0.48)
            .with("wetness", 0.3);
    FrozenDifferences differences =
        new FrozenDifferences(FINE, point, SensitivityRulesTest::turned);
    Sensitivities s = differences.sensitivities();
    int top = point.index("top");
    double water = differences.error(top, s.evaporatedUpper(top), r -> r.evaporated());
    assertEquals(0, water, ALLOWED);
    Probe bottom = Probe.atDepth("bottom", 0.03);
    for (int p = 0; p < point.size(); p++) {
      String what = point.coordinate(p).name();
      assertEquals(0, differences.error(p, s.core(), Probe.CORE), ALLOWED, what);
      assertEquals(0, differences.error(p, s.probe(bottom), bottom), ALLOWED, what);
      assertEquals(0, differences.error(p, s.upperSurface(), Probe.SURFACE), ALLOWED, what);
      double end = differences.error(p, s.stageEnd(1, p), r -> r.end(1));
      assertEquals(0, end, EVENT_ALLOWED, what);
      double below = differences.error(p, s.evaporatedLower(p), r -> r.evaporatedLower());
      assertEquals(0, below, ALLOWED, what);
    }
  }

  private static Cook turned(ParameterPoint at) {
    SurfaceLaw air = pit(at.value("top"), at.value("wetness"));
    SurfaceLaw plate = new Contact(at.value("plate"), Signal.constant(440));
    return Cook.of(
        new Cut(
            Slab.ofThickness(at.value("thickness")),
            material(at.value("conductivity")),
            Bodies.START),
        Stage.ofFaces("first", air, plate, StageEnd.after(240)),
        Stage.ofFaces("turned", plate, air, StageEnd.coreRisesTo(310, 20_000)),
        Stage.allRound("rest", new Convection(8, ROOM), StageEnd.after(600)));
  }

  @Test
  void wrongSlopeOfALaw_doesNotSpoilDerivatives() {
    ParameterPoint point = ParameterPoint.empty().with("h", 20).with("ramp", 0.01);
    Sensitivities right = rampedSphere(point, 1);
    Sensitivities wrong = rampedSphere(point, 1.2);
    double time = right.result().endTime();
    for (int p = 0; p < point.size(); p++) {
      double expected = right.upperSurface().at(p, time);
      assertEquals(expected, wrong.upperSurface().at(p, time), 2e-5 * Math.abs(expected));
    }
  }

  private static Sensitivities rampedSphere(ParameterPoint point, double slopeFactor) {
    return Simulator.with(Bodies.accuracy(1e-6))
        .sensitivities(
            point,
            at ->
                Bodies.oneStage(
                    Sphere.ofRadius(0.02),
                    ramp(at.value("h"), at.value("ramp"), slopeFactor),
                    900));
  }

  @Test
  void parameterAtItsBound_isDifferentiatedFromOneSide() {
    ParameterPoint atBound = ParameterPoint.empty().with("wetness", 1);
    ParameterPoint inside = ParameterPoint.empty().with("wetness", 1 - 1e-4);
    double end = 1800;
    double bound = wetSphere(atBound).core().at(0, end);
    assertEquals(wetSphere(inside).core().at(0, end), bound, 1e-3 * Math.abs(bound));
    assertTrue(bound < 0);
  }

  private static Sensitivities wetSphere(ParameterPoint point) {
    return Simulator.withDefaults()
        .sensitivities(
            point,
            at -> Bodies.oneStage(Sphere.ofRadius(0.03), pit(15, at.value("wetness")), 1800));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void tenRandomPoints_agreeWithDifferences(int seed) {
    checkTenPoints(seed, FINE.withCells(24), ALLOWED);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void tenRandomPoints_withDefaultAccuracy_agreeWithDifferences(int seed) {
    checkTenPoints(seed, Settings.withDefaults().withCells(24), ALLOWED);
  }

  private static void checkTenPoints(int seed, Settings settings, double allowed) {
    Random random = new Random(seed);
    for (int i = 0; i < 10; i++) {
      ParameterPoint point =
          ParameterPoint.empty()
              .with("top", 8 + 25 * random.nextDouble())
              .with("plate", 100 + 600 * random.nextDouble())
              .with("thickness", 0.025 + 0.05 * random.nextDouble())
              .with("conductivity", 0.35 + 0.25 * random.nextDouble())
              .with("wetness", 0.05 + 0.9 * random.nextDouble());
      FrozenDifferences differences =
          new FrozenDifferences(settings, point, SensitivityRulesTest::turned);
      Sensitivities s = differences.sensitivities();
      for (int p = 0; p < point.size(); p++) {
        assertEquals(0, differences.error(p, s.core(), Probe.CORE), allowed, point.toString());
        double surface = differences.error(p, s.upperSurface(), Probe.SURFACE);
        assertEquals(0, surface, allowed, point.toString());
        double end = differences.error(p, s.stageEnd(1, p), r -> r.end(1));
        assertEquals(0, end, EVENT_ALLOWED, point.toString());
      }
    }
  }

  @Test
  void failedCook_keepsTheDerivativesOfWhatWasComputed() {
    ParameterPoint point = ParameterPoint.empty().with("h", 15);
    Sensitivities s =
        Simulator.withDefaults()
            .sensitivities(
                point,
                at ->
                    Cook.of(
                        new Cut(Sphere.ofRadius(0.03), material(0.48), Bodies.START),
                        Stage.allRound(
                            "never",
                            new Convection(at.value("h"), PIT),
                            StageEnd.coreRisesTo(400, 1200))));
    assertTrue(s.outcome() instanceof Outcome.Failed);
    assertTrue(s.upperSurface().at(0, 1200) > 0);
    assertThrows(IllegalArgumentException.class, () -> s.stageEnd(0, 0));
  }

  @Test
  void cooksThatDifferInMoreThanNumbers_areRefused() {
    ParameterPoint point = ParameterPoint.empty().with("h", 15);
    IllegalArgumentException stages =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                Simulator.withDefaults()
                    .sensitivities(
                        point, at -> at.value("h") == 15 ? turned(turnedPoint()) : manyStages(at)));
    assertTrue(stages.toString().contains("number of stages"), stages.toString());
  }

  private static ParameterPoint turnedPoint() {
    return ParameterPoint.empty()
        .with("top", 18)
        .with("plate", 250)
        .with("thickness", 0.04)
        .with("conductivity", 0.48)
        .with("wetness", 0.3);
  }

  private static Cook manyStages(ParameterPoint at) {
    SurfaceLaw air = new Convection(at.value("h"), PIT);
    return Cook.of(
        new Cut(Slab.ofThickness(0.04), material(0.48), Bodies.START),
        Stage.ofFaces("only", air, new Convection(5, ROOM), StageEnd.after(60)));
  }

  @Test
  void point_checksItsNumbers() {
    ParameterPoint point = ParameterPoint.empty().with("h", 15).with("start", 278, 10);
    assertEquals(15, point.value("h"));
    assertEquals(1, point.index("start"));
    assertEquals(20, point.moved(0, 20).value("h"));
    assertEquals(10, point.moved(1, 280).coordinate(1).scale());
    assertEquals(point, ParameterPoint.empty().with("h", 15).with("start", 278, 10));
    assertThrows(IllegalArgumentException.class, () -> point.with("h", 3));
    assertThrows(IllegalArgumentException.class, () -> point.with("zero", 0));
    assertThrows(IllegalArgumentException.class, () -> point.with("x", Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> point.value("radius"));
  }
}
