package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.air.SaturationPressure;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.support.UniformDraws;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

/** A wet face in a chamber whose walls are as warm as its air. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class EvaporatingFacePropertiesTest {

  private static final int TRIES = 60;
  private static final int SAMPLES = 400;
  private static final double DURATION = 3600;
  private static final double WATER_ACTIVITY = 0.98;
  private static final double PRESSURE = MoistAir.STANDARD_PRESSURE;

  /** Faces follow within about this multiple of the accuracy of the volume [K]. */
  private static final double ALLOWED = 0.02;

  @Property(tries = TRIES)
  void face_isNeverColderThanItsStartAndTheBalanceOfTheLaw(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(4) double celsius,
      @ForAll @DoubleRange(min = 0, max = 15) @Scale(4) double swing,
      @ForAll @DoubleRange(min = 0, max = 0.02) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 3, max = 60) @Scale(4) double h,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(4) double wetness) {
    Signal air = new SampleCooks.Swinging(273.15 + celsius, swing, 900);
    SurfaceLaw law = Chamber.of(air, humidity, PRESSURE).around(h, 0.9, wetness, WATER_ACTIVITY);
    SimulationResult result = run(mode, law);
    double lowest = Bodies.START;
    for (int i = 0; i <= SAMPLES; i++) {
      double time = DURATION * i / SAMPLES;
      lowest = Math.min(lowest, balance(law, time));
    }
    for (int i = 0; i <= SAMPLES; i++) {
      double face = face(result, i);
      double bound = lowest;
      assertTrue(face >= bound - ALLOWED, () -> face + " K below " + bound + " K");
    }
  }

  @Property(tries = TRIES)
  void face_isNeverHotterThanItsStartAndTheAir(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 10, max = 200) @Scale(4) double celsius,
      @ForAll @DoubleRange(min = 0, max = 15) @Scale(4) double swing,
      @ForAll @DoubleRange(min = 0, max = 0.1) @Scale(4) double humidity,
      @ForAll @DoubleRange(min = 3, max = 60) @Scale(4) double h,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(4) double wetness) {
    Signal air = new SampleCooks.Swinging(273.15 + celsius, swing, 900);
    double vapour = MoistAir.vapourPressure(humidity, PRESSURE);
    double coldestAir = 273.15 + celsius - swing;
    Assume.that(vapour <= WATER_ACTIVITY * SaturationPressure.at(coldestAir));
    SurfaceLaw law = Chamber.of(air, humidity, PRESSURE).around(h, 0.9, wetness, WATER_ACTIVITY);
    SimulationResult result = run(mode, law);
    double highest = Math.max(Bodies.START, 273.15 + celsius + swing);
    for (int i = 0; i <= SAMPLES; i++) {
      double face = face(result, i);
      assertTrue(face <= highest + ALLOWED, () -> face + " K above " + highest + " K");
    }
  }

  @Property(tries = TRIES)
  void wetterFace_isColderAndLosesMoreWater(
      @ForAll RadialMode mode,
      @ForAll @DoubleRange(min = 60, max = 200) @Scale(4) double celsius,
      @ForAll @DoubleRange(min = 5, max = 40) @Scale(4) double h,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) @Scale(4) double wetness) {
    Chamber chamber = Chamber.steady(273.15 + celsius, 0.01, PRESSURE);
    SimulationResult damp = run(mode, chamber.around(h, 0.9, wetness, WATER_ACTIVITY));
    SimulationResult wet = run(mode, chamber.around(h, 0.9, 2 * wetness, WATER_ACTIVITY));
    assertTrue(face(wet, SAMPLES) < face(damp, SAMPLES));
    assertTrue(wet.water().evaporatedUpper() > damp.water().evaporatedUpper());
  }

  private static SimulationResult run(RadialMode mode, SurfaceLaw law) {
    Cook cook = Bodies.oneStage(Bodies.shape(mode, 0.03), law, DURATION);
    return Bodies.run(Bodies.accuracy(1e-3), cook);
  }

  private static double face(SimulationResult result, int sample) {
    double share = (double) sample / SAMPLES;
    return result.upperSurface().at(DURATION * share * share);
  }

  /** Temperature at which the law lets no heat through, by bisection. */
  private static double balance(SurfaceLaw law, double time) {
    double low = 269;
    double high = 273.15 + 250;
    SurfaceFlux flux = new SurfaceFlux();
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      flux.clear();
      law.evaluate(middle, time, flux);
      if (flux.heatFlux() > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
