package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.material.Material;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.units.Temperatures;

/**
 * Derivatives where contact counts from the beginning of its stage, which moves with the pull: on
 * the frozen step plan, against differences.
 */
class TouchSensitivityTest {

  private static final double ALLOWED = 1e-5;
  private static final double EVENT_ALLOWED = 1e-4;
  private static final Settings FINE = Bodies.accuracy(1e-3);
  private static final Signal PIT = Signal.constant(Temperatures.celsius(120));
  private static final Signal ROOM = Signal.constant(Temperatures.celsius(22));

  private static ParameterPoint point() {
    return ParameterPoint.empty()
        .with("h", 18)
        .with("size", 0.04)
        .with("target", Temperatures.celsius(40), 10)
        .with("metal", Temperatures.celsius(240), 10)
        .with("first", 500)
        .with("settling", 30);
  }

  private static Touch touch(ParameterPoint at) {
    return new Touch(
        1,
        at.value("first"),
        250,
        at.value("settling"),
        Signal.constant(at.value("metal")),
        50,
        60,
        0);
  }

  private static Material lean() {
    return Material.constant("constant", 0.48, Bodies.DENSITY, Bodies.HEAT_CAPACITY);
  }

  /** A slab seared on one face, in two stages of which the second goes on from the first. */
  private static Cook plate(ParameterPoint at) {
    SurfaceLaw air = new Convection(at.value("h"), PIT);
    SurfaceLaw hot = touch(at);
    return new Cook(
        new Cut(Slab.ofThickness(at.value("size")), lean(), Bodies.START),
        List.of(
            Stage.allRound("gentle", air, StageEnd.coreRisesTo(at.value("target"), 20_000)),
            Stage.ofFaces("sear", hot, air, StageEnd.after(20)),
            new Stage("goes on", hot, air, StageEnd.after(40), Wetting.NONE, true),
            Stage.allRound("rest", new Convection(8, ROOM), StageEnd.after(600))),
        List.of());
  }

  /** A cylinder rolled over a hot band. */
  private static Cook rolled(ParameterPoint at) {
    SurfaceLaw air = new Convection(at.value("h"), PIT);
    return new Cook(
        new Cut(Cylinder.ofRadius(at.value("size")), lean(), Bodies.START),
        List.of(
            Stage.allRound("gentle", air, StageEnd.coreRisesTo(at.value("target"), 20_000)),
            Stage.allRound("sear", SurfaceLaw.shared(0.25, touch(at), air), StageEnd.after(120)),
            Stage.allRound("rest", new Convection(8, ROOM), StageEnd.after(600))),
        List.of());
  }

  @Test
  void slabOnAPlate_agreesWithDifferences() {
    check(TouchSensitivityTest::plate, 4);
  }

  @Test
  void rolledCylinder_agreesWithDifferences() {
    check(TouchSensitivityTest::rolled, 3);
  }

  private static void check(Function<ParameterPoint, Cook> cooks, int stages) {
    ParameterPoint point = point();
    FrozenDifferences differences = new FrozenDifferences(FINE, point, cooks);
    Sensitivities s = differences.sensitivities();
    assertEquals(stages, s.result().stages().size());
    for (int p = 0; p < point.size(); p++) {
      String what = point.coordinate(p).name();
      assertEquals(0, differences.error(p, s.core(), Probe.CORE), ALLOWED, what);
      assertEquals(0, differences.error(p, s.upperSurface(), Probe.SURFACE), ALLOWED, what);
      for (int i = 0; i < stages; i++) {
        int stage = i;
        double end = differences.error(p, s.stageEnd(stage, p), r -> r.end(stage));
        assertEquals(0, end, EVENT_ALLOWED, what + ", stage " + stage);
      }
    }
  }
}
