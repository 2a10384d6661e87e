package org.roastfield.core.simulation;

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
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Radiation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/**
 * Without evaporation and source no temperature leaves the range of start and surroundings by more
 * than the requested accuracy.
 */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class MaximumPrinciplePropertiesTest {

  private static final int TRIES = 60;
  private static final int SAMPLES = 600;

  @Property(tries = TRIES)
  void coreAndFacesOfAHeatedBody_stayBetweenStartAndSurroundings(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.008, max = 0.08) @Scale(4) double radius,
      @ForAll @DoubleRange(min = 5, max = 400) @Scale(4) double h,
      @ForAll @DoubleRange(min = 20, max = 250) @Scale(4) double warmer,
      @ForAll @DoubleRange(min = -4, max = -0.5) @Scale(4) double logAccuracy,
      @ForAll boolean constant) {
    double accuracy = Math.pow(10, logAccuracy);
    Cook cook = heated(mode, radius, h, warmer, constant);
    double excess = excess(cook, Bodies.START + warmer, accuracy, 0, 1);
    assertTrue(excess <= accuracy, () -> "excess " + excess);
  }

  @Property(tries = TRIES)
  void everyDepthOfAHeatedBody_staysBetweenStartAndSurroundings(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 0.008, max = 0.08) @Scale(4) double radius,
      @ForAll @DoubleRange(min = 5, max = 400) @Scale(4) double h,
      @ForAll @DoubleRange(min = 20, max = 250) @Scale(4) double warmer,
      @ForAll @DoubleRange(min = -2, max = -0.5) @Scale(4) double logAccuracy,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double depth) {
    double accuracy = Math.pow(10, logAccuracy);
    Cook cook = heated(mode, radius, h, warmer, true);
    double excess = excess(cook, Bodies.START + warmer, accuracy, depth, 0.1 * depth);
    assertTrue(excess <= accuracy, () -> "excess " + excess);
  }

  @Property(tries = TRIES)
  void coreAndFacesOfASearedSlab_stayBetweenStartAndSurroundings(
      @ForAll @DoubleRange(min = 0.01, max = 0.05) @Scale(4) double thickness,
      @ForAll @DoubleRange(min = 100, max = 1000) @Scale(4) double conductance,
      @ForAll @DoubleRange(min = 100, max = 250) @Scale(4) double plate,
      @ForAll @DoubleRange(min = -4, max = -0.5) @Scale(4) double logAccuracy) {
    double accuracy = Math.pow(10, logAccuracy);
    Cook cook = seared(thickness, conductance, plate);
    double excess = excess(cook, Bodies.START + plate, accuracy, 0, 1, 2);
    assertTrue(excess <= accuracy, () -> "excess " + excess);
  }

  @Property(tries = TRIES)
  void everyDepthOfASearedSlab_staysBetweenStartAndSurroundings(
      @ForAll @DoubleRange(min = 0.01, max = 0.05) @Scale(4) double thickness,
      @ForAll @DoubleRange(min = 100, max = 1000) @Scale(4) double conductance,
      @ForAll @DoubleRange(min = 100, max = 250) @Scale(4) double plate,
      @ForAll @DoubleRange(min = -2, max = -0.5) @Scale(4) double logAccuracy,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(4) double depth) {
    double accuracy = Math.pow(10, logAccuracy);
    Cook cook = seared(thickness, conductance, plate);
    double excess = excess(cook, Bodies.START + plate, accuracy, depth, 0.1 * depth);
    assertTrue(excess <= accuracy, () -> "excess " + excess);
  }

  private static Cook heated(
      RadialMode mode, double radius, double h, double warmer, boolean constant) {
    Signal surroundings = Signal.constant(Bodies.START + warmer);
    return Cook.of(
        new Cut(Bodies.shape(mode, radius), constant ? Bodies.CONSTANT : Bodies.LOIN, Bodies.START),
        Stage.allRound(
            "heat",
            SurfaceLaw.sum(new Convection(h, surroundings), new Radiation(0.9, surroundings)),
            StageEnd.after(1800)));
  }

  private static Cook seared(double thickness, double conductance, double plate) {
    SurfaceLaw hot = new Contact(conductance, Signal.constant(Bodies.START + plate));
    SurfaceLaw cool = new Convection(10, Signal.constant(Bodies.START + 15));
    return Cook.of(
        new Cut(Slab.ofThickness(thickness), Bodies.CONSTANT, Bodies.START),
        Stage.ofFaces("first side", cool, hot, StageEnd.after(120)),
        Stage.ofFaces("second side", hot, cool, StageEnd.after(120)),
        Stage.allRound("rest", cool, StageEnd.after(600)));
  }

  /**
   * How far temperatures leave the range from the start to {@code high} [K], most samples early.
   *
   * @param depths in half thicknesses
   */
  static double excess(Cook cook, double high, double accuracy, double... depths) {
    SimulationResult result = Bodies.run(Bodies.accuracy(accuracy), cook);
    double unit = cook.cut().shape().halfThickness();
    double worst = 0;
    for (double depth : depths) {
      Trace trace = result.probe(Probe.atDepth("depth", depth * unit));
      for (int i = 0; i <= SAMPLES; i++) {
        double share = (double) i / SAMPLES;
        double value = trace.at(result.endTime() * share * share * share);
        worst = Math.max(worst, Math.max(Bodies.START - value, value - high));
      }
    }
    return worst;
  }
}
