package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.reference.HalfSpace;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;

/** Thick bodies in the first minutes, against the half space. */
class HalfSpaceAccuracyTest {

  private static final double RADIUS = 0.1;
  private static final double DURATION = 600;
  private static final double STEP = 100;
  private static final double SURROUNDINGS = Bodies.START + STEP;
  private static final double ALLOWED = 1e-3;
  private static final Settings SETTINGS = new Settings(1e-4, 120, 0.1e-3, 200_000);

  @ParameterizedTest
  @ValueSource(doubles = {20, 100, 500})
  void thickSlab_followsTheHalfSpaceUnderARobinSurface(double conductance) {
    double error = errorUnderRobin(RadialMode.SLAB, conductance, SETTINGS);
    assertTrue(error <= ALLOWED, () -> "error " + error);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e6, 1e8})
  void thickSlab_followsTheHalfSpaceUnderAFixedTemperature(double conductance) {
    double error = errorUnderFixedTemperature(conductance, SETTINGS);
    assertTrue(error <= ALLOWED, () -> "error " + error);
  }

  @Test
  void refinement_bringsTheHalfSpaceNearer() {
    Settings coarse = new Settings(1e-5, 60, 0.4e-3, 200_000);
    Settings fine = new Settings(1e-5, 240, 0.1e-3, 200_000);
    double ratio =
        errorUnderRobin(RadialMode.SLAB, 500, coarse) / errorUnderRobin(RadialMode.SLAB, 500, fine);
    assertTrue(ratio > 2, () -> "ratio " + ratio);
  }

  /** A large cylinder and sphere heat a little faster; the excess is about m δ/R of the depth δ. */
  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void surfaceOfALargeBody_startsAsThatOfAHalfSpace(RadialMode mode) {
    SimulationResult result =
        Bodies.run(SETTINGS, Bodies.oneStage(Bodies.shape(mode, RADIUS), law(100), DURATION));
    for (double time : new double[] {5, 20, 60}) {
      double depth = Math.sqrt(Bodies.DIFFUSIVITY * time);
      double exact = HalfSpace.robin(0, robinTime(100, time));
      double share = (result.upperSurface().at(time) - Bodies.START) / STEP;
      double allowed = ALLOWED + mode.exponent() * depth / RADIUS * exact;
      assertTrue(Math.abs(share - exact) <= allowed, () -> share + " against " + exact);
    }
  }

  static double errorUnderRobin(RadialMode mode, double conductance, Settings settings) {
    SimulationResult result =
        Bodies.run(
            settings, Bodies.oneStage(Bodies.shape(mode, RADIUS), law(conductance), DURATION));
    double worst = 0;
    for (double depth : new double[] {0, 0.002, 0.01}) {
      Trace trace = result.probe(Probe.atDepth("depth", depth));
      for (double time : new double[] {10, 60, 300, 600}) {
        double distance = conductance * depth / Bodies.CONDUCTIVITY;
        double exact = HalfSpace.robin(distance, robinTime(conductance, time));
        double share = (trace.at(time) - Bodies.START) / STEP;
        worst = Math.max(worst, Math.abs(share - exact));
      }
    }
    return worst;
  }

  static double errorUnderFixedTemperature(double conductance, Settings settings) {
    SimulationResult result =
        Bodies.run(
            settings,
            Bodies.oneStage(Bodies.shape(RadialMode.SLAB, RADIUS), law(conductance), DURATION));
    double worst = 0;
    for (double depth : new double[] {0.002, 0.01, 0.03}) {
      Trace trace = result.probe(Probe.atDepth("depth", depth));
      for (double time : new double[] {30, 60, 300, 600}) {
        double exact = HalfSpace.dirichlet(depth, Bodies.DIFFUSIVITY * time);
        double share = (trace.at(time) - Bodies.START) / STEP;
        worst = Math.max(worst, Math.abs(share - exact));
      }
    }
    return worst;
  }

  private static SurfaceLaw law(double conductance) {
    return new Contact(conductance, Signal.constant(SURROUNDINGS));
  }

  private static double robinTime(double conductance, double time) {
    double ratio = conductance / Bodies.CONDUCTIVITY;
    return ratio * ratio * Bodies.DIFFUSIVITY * time;
  }
}
