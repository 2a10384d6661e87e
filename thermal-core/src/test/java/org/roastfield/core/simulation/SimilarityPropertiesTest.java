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
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.HalfSpace;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class SimilarityPropertiesTest {

  private static final int TRIES = 40;
  private static final double STEP = 90;

  /** Round-off, through the sizes of the steps [K]. */
  private static final double MIRRORED = 1e-7;

  private static final double AIR = Bodies.START + STEP;

  @Property(tries = TRIES)
  void equalFourierAndBiotNumbers_giveTheSameCurve(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.02, max = 0.08) @Scale(4) double radius,
      @ForAll @DoubleRange(min = 0.3, max = 0.7) @Scale(4) double conductivity,
      @ForAll @DoubleRange(min = 900, max = 1200) @Scale(4) double density,
      @ForAll @DoubleRange(min = -1, max = 1.5) @Scale(4) double logBiot) {
    double biot = Math.pow(10, logBiot);
    Material other = Material.constant("other", conductivity, density, 3300);
    Settings settings = Bodies.accuracy(1e-4);
    SimulationResult one = heated(mode, 0.04, Bodies.CONSTANT, biot, settings);
    SimulationResult two =
        heated(mode, radius, other, biot, settings.withSurfaceCell(0.5e-3 * radius / 0.04));
    for (double share : new double[] {0.1, 0.3, 1}) {
      double first = one.core().at(share * one.endTime());
      assertEquals(first, two.core().at(share * two.endTime()), 2e-3 * STEP);
      double face = one.upperSurface().at(share * one.endTime());
      assertEquals(face, two.upperSurface().at(share * two.endTime()), 2e-3 * STEP);
    }
  }

  @Property(tries = TRIES)
  void doubledTemperatureDifference_doublesTheCurve(
      @ForAll RadialMode mode, @ForAll @DoubleRange(min = 5, max = 300) @Scale(4) double h) {
    Shape shape = Bodies.shape(mode, 0.04);
    Settings settings = Bodies.accuracy(1e-5);
    SimulationResult one = heatedBy(shape, h, STEP, settings);
    SimulationResult two = heatedBy(shape, h, 2 * STEP, settings);
    for (double time : new double[] {60, 600, 3600}) {
      double rise = one.core().at(time) - Bodies.START;
      assertEquals(2 * rise, two.core().at(time) - Bodies.START, 1e-2);
      double faceRise = one.upperSurface().at(time) - Bodies.START;
      assertEquals(2 * faceRise, two.upperSurface().at(time) - Bodies.START, 1e-2);
    }
  }

  /** The excess over the half space is m times the depth that heat has reached, over R. */
  @Property(tries = TRIES)
  void surfaceOfALargeBody_startsAsThatOfAHalfSpace(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.08, max = 0.2) @Scale(4) double radius,
      @ForAll @DoubleRange(min = 20, max = 200) @Scale(4) double h,
      @ForAll @DoubleRange(min = 10, max = 60) @Scale(4) double time) {
    Settings settings = new Settings(1e-4, 100, 0.2e-3, 200_000);
    SimulationResult result = heatedBy(Bodies.shape(mode, radius), h, STEP, settings);
    double ratio = h / Bodies.CONDUCTIVITY;
    double exact = HalfSpace.robin(0, ratio * ratio * Bodies.DIFFUSIVITY * time);
    double share = (result.upperSurface().at(time) - Bodies.START) / STEP;
    double curvature = mode.exponent() * Math.sqrt(Bodies.DIFFUSIVITY * time) / radius;
    assertTrue(
        Math.abs(share - exact) <= 1.5e-3 + curvature * exact, () -> share + " against " + exact);
  }

  @Property(tries = TRIES)
  void equalFaces_areTwiceTheSymmetricHalf(
      @ForAll @DoubleRange(min = 0.01, max = 0.08) @Scale(4) double thickness,
      @ForAll @DoubleRange(min = 5, max = 300) @Scale(4) double h,
      @ForAll boolean constant) {
    Cut cut =
        new Cut(
            Slab.ofThickness(thickness), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START);
    SurfaceLaw one = new Convection(h, time -> AIR);
    SurfaceLaw other = new Convection(h, time -> AIR);
    StageEnd end = StageEnd.after(1800);
    Settings settings = Bodies.accuracy(1e-4);
    SimulationResult half = Bodies.run(settings, Cook.of(cut, Stage.allRound("heat", one, end)));
    SimulationResult whole =
        Bodies.run(settings.withCells(80), Cook.of(cut, Stage.ofFaces("heat", one, other, end)));
    for (double time : new double[] {60, 600, 1800}) {
      assertEquals(half.core().at(time), whole.core().at(time), 2e-3 * STEP);
      assertEquals(half.upperSurface().at(time), whole.upperSurface().at(time), 2e-3 * STEP);
      assertEquals(whole.lowerSurface().at(time), whole.upperSurface().at(time), 1e-8);
      double near = whole.probe(Probe.atDepth("near", 0.23 * thickness)).at(time);
      double far = whole.probe(Probe.atDepth("far", 0.77 * thickness)).at(time);
      assertEquals(near, far, 1e-8);
    }
    assertEquals(
        half.energy().throughUpper(),
        whole.energy().throughLower(),
        2e-3 * Math.abs(half.energy().throughUpper()));
  }

  @Property(tries = TRIES)
  void changedOverFaces_mirrorTheProfile(
      @ForAll @DoubleRange(min = 0.01, max = 0.08) @Scale(4) double thickness,
      @ForAll @DoubleRange(min = 5, max = 300) @Scale(4) double upper,
      @ForAll @DoubleRange(min = 5, max = 300) @Scale(4) double lower) {
    Cut cut = new Cut(Slab.ofThickness(thickness), Bodies.CONSTANT, Bodies.START);
    SurfaceLaw a = new Convection(upper, time -> AIR);
    SurfaceLaw b = new Convection(lower, time -> AIR - 30);
    Settings settings = Bodies.accuracy(1e-3);
    StageEnd end = StageEnd.after(1200);
    SimulationResult up = Bodies.run(settings, Cook.of(cut, Stage.ofFaces("heat", a, b, end)));
    SimulationResult down = Bodies.run(settings, Cook.of(cut, Stage.ofFaces("heat", b, a, end)));
    double near = up.probe(Probe.atDepth("near", 0.23 * thickness)).at(1200);
    double far = down.probe(Probe.atDepth("far", 0.77 * thickness)).at(1200);
    assertEquals(near, far, MIRRORED);
    assertEquals(up.core().at(1200), down.core().at(1200), MIRRORED);
    assertEquals(up.upperSurface().at(1200), down.lowerSurface().at(1200), MIRRORED);
    assertEquals(
        up.energy().throughUpper(), down.energy().throughLower(), 1e-8 * up.energy().turnover());
  }

  private static SimulationResult heated(
      RadialMode mode, double radius, Material material, double biot, Settings settings) {
    double diffusivity = material.diffusivity(Bodies.START);
    double h = biot * material.conductivity().at(Bodies.START) / radius;
    Cut cut = new Cut(Bodies.shape(mode, radius), material, Bodies.START);
    StageEnd end = StageEnd.after(radius * radius / diffusivity);
    SurfaceLaw law = new Convection(h, Signal.constant(AIR));
    return Bodies.run(settings, Cook.of(cut, Stage.allRound("heat", law, end)));
  }

  private static SimulationResult heatedBy(Shape shape, double h, double step, Settings settings) {
    SurfaceLaw law = new Convection(h, Signal.constant(Bodies.START + step));
    return Bodies.run(settings, Bodies.oneStage(shape, law, 3600));
  }
}
