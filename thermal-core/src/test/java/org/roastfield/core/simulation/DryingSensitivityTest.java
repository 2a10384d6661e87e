package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.integration.FrozenPlan;
import org.roastfield.core.material.Composition;
import org.roastfield.core.material.FoodKind;
import org.roastfield.core.material.Foodstuff;
import org.roastfield.core.material.Material;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.material.WaterHolding;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Crust;
import org.roastfield.core.surface.DryingFace;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.SurfaceWater;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.surface.Wrap;
import org.roastfield.core.units.Temperatures;

/**
 * Derivatives where faces carry water along: dry out, boil, grow a crust, are basted, wrapped, laid
 * on metal and uncovered; on the frozen step plan, against differences.
 */
class DryingSensitivityTest {

  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;
  private static final double TRACE_ALLOWED = 1e-5;
  private static final double EVENT_ALLOWED = 1e-4;

  /** Where a time hardly depends on a parameter, for the whole of its scale [s]. */
  private static final double TIME_ALLOWED = 1e-3;

  /**
   * Plain stages leave faces next to boiling, and fronts, within the accuracy of where they are. In
   * the first seconds after an event that shows in its shift: 1.6e-5 of a trace's largest at 1e-6
   * K, 2e-6 at 1e-7 K, but 3e-5 where one front happens to settle otherwise in one of two runs,
   * 7e-7 at 3e-8 K.
   */
  private static final Settings FINE = Bodies.accuracy(3e-8).withCells(14);

  private static final Settings USUAL = Bodies.accuracy(1e-5).withCells(12);

  private static final double SHORTEST = 1;
  private static final Probe TIP = Probe.atDepth("tip", 0.008);

  /** Cooks of which each has events of its own. */
  private enum Sample {
    ROUND,
    MELTING,
    LOADED,
    TURNED,
    WRAPPED,
    ENDING;

    Cook cook(ParameterPoint at) {
      return switch (this) {
        case ROUND -> round(at);
        case MELTING -> melting(at);
        case LOADED -> loaded(at);
        case TURNED -> turned(at);
        case WRAPPED -> wrapped(at);
        case ENDING -> ending(at);
      };
    }
  }

  private static ParameterPoint point() {
    return ParameterPoint.empty()
        .with("h", 25)
        .with("air", Temperatures.celsius(190), 10)
        .with("vapour", 4000)
        .with("drive", 0.83)
        .with("conductivity", 0.48)
        .with("crust", 0.12)
        .with("size", 0.03)
        .with("start", Temperatures.celsius(8), 10)
        .with("target", Temperatures.celsius(46), 10)
        .with("basting", 0.25);
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

  private static Material constant(ParameterPoint at) {
    return Material.constant(
        "constant", at.value("conductivity"), Bodies.DENSITY, Bodies.HEAT_CAPACITY);
  }

  private static DryingFace face(ParameterPoint at, double air, double strength) {
    double h = strength * at.value("h");
    Signal gas = Signal.constant(air);
    return new DryingFace(
        SurfaceLaw.sum(new Convection(h, gas), new Radiation(0.9, gas)),
        Evaporation.of(1, h, 0.98, Signal.constant(at.value("vapour")), PRESSURE),
        SurfaceWater.ofMeat().times(at.value("drive")),
        new Crust(at.value("crust"), 760),
        Temperatures.celsius(99.98));
  }

  private static DryingFace hot(ParameterPoint at) {
    return face(at, at.value("air") + 60, 2.5);
  }

  private static DryingFace gentle(ParameterPoint at) {
    return face(at, at.value("air"), 1);
  }

  private static DryingFace room(ParameterPoint at) {
    return face(at, Temperatures.celsius(21), 0.3);
  }

  private static StageEnd reached(ParameterPoint at) {
    return StageEnd.coreRisesTo(at.value("target"), 60_000);
  }

  private static Stage basted(String name, SurfaceLaw law, StageEnd end, double water) {
    return new Stage(name, law, law, end, new Wetting(water, water), false);
  }

  private static List<Stage> stages(ParameterPoint at) {
    return List.of(
        Stage.allRound("hot", hot(at), StageEnd.after(700)),
        Stage.allRound("lid open", room(at), StageEnd.after(40)),
        basted("basted", gentle(at), reached(at), at.value("basting")),
        Stage.allRound("sear", hot(at), StageEnd.after(240)),
        Stage.allRound("rest", room(at), StageEnd.after(900)));
  }

  private static Cook cook(ParameterPoint at, Material material, List<Stage> stages) {
    Cut cut = new Cut(Cylinder.ofRadius(at.value("size")), material, at.value("start"));
    return new Cook(cut, stages, List.of(TIP));
  }

  private static Cook round(ParameterPoint at) {
    return cook(at, constant(at), stages(at));
  }

  /** In a chamber that fills with the vapour of the cut, then in one in balance with it. */
  private static Cook loaded(ParameterPoint at) {
    DryingFace face = gentle(at);
    AirLoad slow = new AirLoad(300 * at.value("drive"), 0.4);
    return cook(
        at,
        constant(at),
        List.of(
            Stage.allRound("fills", face.into(slow), StageEnd.after(900)),
            Stage.allRound("lid open", room(at), StageEnd.after(40)),
            Stage.allRound("fills anew", face.into(slow), reached(at)),
            Stage.allRound("in balance", hot(at).into(new AirLoad(200, 0)), StageEnd.after(240)),
            Stage.allRound("rest", room(at), StageEnd.after(900))));
  }

  /** Of little water, which comes to its end: the face is fed with some nine tenths of it. */
  private static Cook ending(ParameterPoint at) {
    double content = 500 * at.value("conductivity");
    Moisture moisture = new Moisture(content, 0.3, Optional.of(WaterHolding.BEEF));
    return cook(at, constant(at).withMoisture(moisture), stages(at));
  }

  private static Cook melting(ParameterPoint at) {
    double fat = 0.25 * at.value("conductivity");
    Composition meat = Composition.ofMeat(0.65, 0.34 - fat, fat, 0.01);
    return cook(at, Foodstuff.of("test meat", FoodKind.MEAT, meat).material(), stages(at));
  }

  /** A slab on a hot plate, whose faces dry apart. */
  private static Cook turned(ParameterPoint at) {
    Touch plate = new Touch(1, 500, 250, 30, Signal.constant(at.value("air") + 60), 50, 60, 0);
    DryingFace below = hot(at);
    SurfaceLaw laid =
        new DryingFace(
            SurfaceLaw.sum(below.dry(), plate),
            below.wet(),
            below.water(),
            below.crust(),
            below.boilingPoint());
    return new Cook(
        new Cut(Slab.ofThickness(at.value("size")), constant(at), at.value("start")),
        List.of(
            Stage.ofFaces("gentle", gentle(at), room(at), reached(at)),
            Stage.ofFaces("sear", room(at), laid, StageEnd.after(90)),
            new Stage("goes on", room(at), laid, StageEnd.after(60), Wetting.NONE, true),
            Stage.ofFaces("turned", laid, gentle(at), StageEnd.after(120)),
            Stage.ofFaces("rest", room(at), room(at), StageEnd.after(300))),
        List.of(TIP));
  }

  /** Wrapped at a reading, once its face has dried. */
  private static Cook wrapped(ParameterPoint at) {
    return cook(
        at,
        constant(at),
        List.of(
            Stage.allRound("bare", gentle(at), reached(at)),
            Stage.allRound("in paper", gentle(at).under(Wrap.PAPER), StageEnd.after(900)),
            Stage.allRound("in foil", gentle(at).under(Wrap.FOIL), StageEnd.after(600)),
            Stage.allRound(
                "rest",
                room(at),
                new StageEnd.Falls(Probe.CORE, at.value("target") + 10, 60_000))));
  }

  @ParameterizedTest
  @EnumSource
  void tracesEventsAndWater_agreeWithDifferences(Sample sample) {
    FrozenDifferences differences = new FrozenDifferences(FINE, point(), sample::cook);
    Sensitivities s = differences.sensitivities();
    assertTrue(s.outcome() instanceof Outcome.Completed);
    for (int p = 0; p < s.point().size(); p++) {
      String what = sample + " " + s.point().coordinate(p).name();
      assertEquals(0, differences.error(p, s.core(), Probe.CORE, SHORTEST), TRACE_ALLOWED, what);
      assertEquals(
          0, differences.error(p, s.upperSurface(), Probe.SURFACE, SHORTEST), TRACE_ALLOWED, what);
      assertEquals(0, differences.error(p, s.probe(TIP), TIP, SHORTEST), TRACE_ALLOWED, what);
      ends(differences, p, what);
    }
  }

  private static void ends(FrozenDifferences differences, int p, String what) {
    Sensitivities s = differences.sensitivities();
    for (int i = 0; i < s.result().stages().size(); i++) {
      int stage = i;
      double relative = differences.error(p, s.stageEnd(stage, p), r -> r.end(stage));
      double seconds = differences.scaledError(p, s.stageEnd(stage, p), r -> r.end(stage));
      assertTrue(
          relative <= EVENT_ALLOWED || seconds <= TIME_ALLOWED,
          what + ", stage " + stage + ": " + relative + ", " + seconds + " s");
    }
    double water = differences.error(p, s.evaporatedUpper(p), FrozenPlan.Replay::evaporated);
    assertEquals(0, water, EVENT_ALLOWED, what);
  }

  @Test
  void eventsAndWater_agreeWithDifferences_atRandomPoints() {
    for (int seed = 0; seed < 50; seed++) {
      ParameterPoint full = drawn(seed);
      ParameterPoint some = ParameterPoint.empty();
      for (int p = seed % 5; p < full.size(); p += 5) {
        ParameterPoint.Coordinate c = full.coordinate(p);
        some = some.with(c.name(), c.value(), c.scale());
      }
      Sample sample = Sample.values()[seed % Sample.values().length];
      FrozenDifferences differences =
          new FrozenDifferences(USUAL, some, at -> sample.cook(merged(full, at)));
      for (int p = 0; p < some.size(); p++) {
        ends(differences, p, seed + " " + some.coordinate(p).name());
      }
    }
  }

  /** Three of these cooks have a front that ceases to boil within a difference of a stage. */
  @Test
  void traces_agreeWithDifferences_atRandomPoints() {
    for (int seed = 0; seed < 50; seed++) {
      ParameterPoint full = drawn(seed);
      ParameterPoint.Coordinate one = full.coordinate(seed % full.size());
      ParameterPoint alone = ParameterPoint.empty().with(one.name(), one.value(), one.scale());
      Sample sample = Sample.values()[seed % Sample.values().length];
      FrozenDifferences differences =
          new FrozenDifferences(FINE, alone, at -> sample.cook(merged(full, at)));
      Sensitivities s = differences.sensitivities();
      String what = seed + " " + sample + " " + one.name();
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
}
