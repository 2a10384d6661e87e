package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Instrument;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Stem;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** What a probe shows against closed forms evaluated here. */
class ProbeTraceTest {

  /** A constant heat flux: after a while the profile is a parabola that only climbs. */
  private record Flux(double heatFlux) implements SurfaceLaw {
    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
      flux.addHeat(heatFlux, 0);
    }
  }

  /**
   * A core probe in a slab of half thickness X, and ΔT between face and core: the profile is
   * exactly the parabola of the closed form 2 ΔT (L/X)².
   */
  @ParameterizedTest(name = "fin length {0} mm, {1} mm deep")
  @CsvSource({
    "4, 40", "7, 40", "8.4, 40", "9.8, 40", "12, 40", "4, 20", "7, 20", "8.4, 20", "9.8, 20",
    "12, 20"
  })
  void stemError_isThatOfAFinInAParabola(double finLength, double depth) {
    double length = finLength / 1000;
    double half = depth / 1000;
    SimulationResult result = climbing(Slab.ofHalfThickness(half), 40);
    double time = result.endTime();
    double difference = result.upperSurface().at(time) - result.core().at(time);
    assertEquals(40, difference, 0.05);
    Probe probe = core(Instrument.IDEAL.withStem(Stem.ofFinLength(length)));
    double error = result.shownBy(probe).at(time) - result.core().at(time);
    double closedForm = 2 * difference * (length / half) * (length / half);
    assertEquals(closedForm, error, 2e-3 * closedForm);
  }

  @Test
  void warmerStem_addsItsExcessOverTheHyperbolicCosine() {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.03), 20);
    double time = result.endTime();
    Probe plain = core(Instrument.IDEAL.withStem(Stem.ofFinLength(0.009)));
    Probe warmer = core(Instrument.IDEAL.withStem(new Stem(0.009, 50)));
    double added = result.shownBy(warmer).at(time) - result.shownBy(plain).at(time);
    assertEquals(50 / StrictMath.cosh(0.03 / 0.009), added, 1e-9);
  }

  /**
   * From an end, food is as at the tip and then, over 1.4 times its depth or the whole way, the
   * parabola of the side. Eq. (54) over both, S and a the lengths of the stem and of the parabola
   * in fin lengths, gives the difference times 2 (cosh a − 1)/(a² cosh S).
   */
  @ParameterizedTest(name = "fin length {0} mm, {1} mm of the stem in a slab of 60 mm")
  @CsvSource({"8, 30", "8, 46", "8, 90", "4, 45", "12, 200", "19, 45"})
  void stemFromAnEnd_feelsTheParabolaOfTheSideOnlyNearTheEnd(double finLength, double inserted) {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.03), 40);
    double time = result.endTime();
    double difference = result.upperSurface().at(time) - result.core().at(time);
    Stem stem = Stem.ofFinLength(finLength / 1000).inserted(inserted / 1000);
    Probe probe = core(Instrument.IDEAL.withStem(stem));
    double error = result.shownBy(probe).at(time) - result.core().at(time);
    double a = Math.min(inserted, 42) / finLength;
    double ends = StrictMath.cosh(a) - 1;
    double closedForm = difference * 2 * ends / (a * a * StrictMath.cosh(inserted / finLength));
    assertEquals(closedForm, error, 2e-3 * closedForm + 1e-6);
  }

  /** A share s of the air adds s (air − what the stem would have there) over cosh S. */
  @Test
  void stemInAir_takesOnAShareOfItsTemperatureWhereItEnters() {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.03), 20);
    double time = result.endTime();
    Stem stem = new Stem(0.009, 5);
    Signal air = Signal.constant(450);
    Probe bare = core(Instrument.IDEAL.withStem(stem));
    Probe warmed = core(Instrument.IDEAL.withStem(stem.inAir(0.4)));
    double face = result.upperSurface().at(time);
    double beyond = 2 * (face - result.core().at(time)) * (0.009 / 0.03) * (0.009 / 0.03);
    double own = face + beyond + 5;
    double added = result.shownBy(warmed, air).at(time) - result.shownBy(bare, air).at(time);
    assertEquals(0.4 * (450 - own) / StrictMath.cosh(0.03 / 0.009), added, 1e-3);
    assertRefused(
        "airShare of probe probe must be 0 where no air is given, was 0.4",
        () -> result.shownBy(warmed));
    assertRefused("airShare must be in [0.0, 1.0]", () -> stem.inAir(1.1));
  }

  /**
   * A probe that lags comes from the food, not from what its stem would make of the air at once.
   */
  @Test
  void laggingProbe_startsAtTheFoodsTemperature() {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.03), 20);
    Signal air = Signal.constant(450);
    Instrument stem = Instrument.IDEAL.withStem(Stem.ofFinLength(0.009).inAir(0.4));
    Probe lagging = core(stem.withResponseTime(60));
    assertEquals(Bodies.START, result.shownBy(lagging, air).at(0), 1e-9);
    double atOnce = result.shownBy(core(stem), air).at(0) - Bodies.START;
    assertTrue(atOnce > 2, () -> "at once " + atOnce);
    double after = result.shownBy(lagging, air).at(120);
    assertEquals(result.shownBy(core(stem), air).at(120), after, 0.25 * atOnce);
  }

  /** In a gradient g, as off the core, a fin reads g L high: here within what the far end adds. */
  @Test
  void stemOfAShallowProbe_readsTheGradientTimesItsLength() {
    Slab slab = Slab.ofHalfThickness(0.05);
    SurfaceLaw cold = new Convection(1e5, Signal.constant(Bodies.START));
    SurfaceLaw warm = new Convection(1e5, Signal.constant(Bodies.START + 50));
    Cook cook =
        Cook.of(
            new Cut(slab, Bodies.CONSTANT, Bodies.START),
            Stage.ofFaces("steady", warm, cold, StageEnd.after(400_000)));
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-5), cook);
    double time = result.endTime();
    Probe probe =
        Probe.atDepth("tip", 0.06).with(Instrument.IDEAL.withStem(Stem.ofFinLength(0.006)));
    double error = result.shownBy(probe).at(time) - result.probe(probe).at(time);
    assertEquals(500 * 0.006, error, 0.01);
  }

  /** Fin lengths of the table, by tube diameter; and its errors at 40 K, each within 10 %. */
  @ParameterizedTest(name = "tube of {0} mm")
  @CsvSource({
    "1.5, 4, 7, 0.8, 2.5, 3.4, 10",
    "3, 6.6, 8.4, 2.2, 3.6, 9, 14",
    "4, 8.4, 9.8, 3.6, 4.8, 14, 19",
    "6, 11, 12, 6, 7, 24, 28"
  })
  void tubes_haveTheFinLengthsAndErrorsOfTheTable(
      double diameter,
      double shortest,
      double longest,
      double least40,
      double most40,
      double least20,
      double most20) {
    double length = Stem.ofTube(diameter / 1000).finLength();
    assertTrue(length >= 0.001 * shortest && length <= 0.001 * longest, () -> "length " + length);
    assertWithin(least40, most40, tubeError(length, 0.04));
    assertWithin(least20, most20, tubeError(length, 0.02));
  }

  private static double tubeError(double finLength, double half) {
    SimulationResult result = climbing(Slab.ofHalfThickness(half), 40);
    double time = result.endTime();
    Probe probe = core(Instrument.IDEAL.withStem(Stem.ofFinLength(finLength)));
    return result.shownBy(probe).at(time) - result.core().at(time);
  }

  private static void assertWithin(double least, double most, double error) {
    assertTrue(error >= 0.9 * least && error <= 1.1 * most, () -> "error " + error);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.01})
  void offsetProbe_readsHighByTheSquareOfItsShare(double offset) {
    SimulationResult result = climbing(Cylinder.ofRadius(0.03), 40);
    double time = result.endTime();
    double difference = result.upperSurface().at(time) - result.core().at(time);
    double error =
        result.shownBy(Probe.besideCore("off", offset)).at(time) - result.core().at(time);
    double closedForm = difference * (offset / 0.03) * (offset / 0.03);
    assertEquals(closedForm, error, 0.05 * closedForm);
  }

  /**
   * In a roast the profile is that of the slowest mode, J0(μ r/R): the square is too low by 8 % at
   * a Biot number of 0.94, and the offset is that of the mode.
   */
  @Test
  void offsetInARoast_isThatOfTheSlowestMode() {
    double biot = 0.94;
    SurfaceLaw law = Bodies.convection(biot, 0.03, Temperatures.celsius(110));
    double time = Bodies.seconds(1, 0.03);
    SimulationResult result =
        Bodies.run(Settings.withDefaults(), Bodies.oneStage(Cylinder.ofRadius(0.03), law, time));
    double mode = slowestMode(biot);
    double difference = result.upperSurface().at(time) - result.core().at(time);
    double error = result.shownBy(Probe.besideCore("off", 0.01)).at(time) - result.core().at(time);
    double share = (1 - j0(mode / 3)) / (1 - j0(mode));
    assertEquals(share * difference, error, 5e-3 * share * difference);
    assertTrue(share * 9 > 1.07 && share * 9 < 1.09, () -> "share of the square " + share * 9);
  }

  /** Least root of μ J1(μ) = Bi J0(μ). */
  private static double slowestMode(double biot) {
    double low = 0;
    double high = 2.4;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (-middle * slope(middle) < biot * j0(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** J0 by its power series. */
  private static double j0(double x) {
    double term = 1;
    double sum = 1;
    for (int k = 1; k < 30; k++) {
      term *= -0.25 * x * x / (k * k);
      sum += term;
    }
    return sum;
  }

  /** Derivative of J0. */
  private static double slope(double x) {
    return (j0(x + 1e-5) - j0(x - 1e-5)) / 2e-5;
  }

  @Test
  void laggingProbe_followsARampByItsResponseTime() {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.02), 30);
    double tau = 140;
    double time = result.endTime();
    ProbeTrace shown = result.shownBy(core(Instrument.IDEAL.withResponseTime(tau)));
    double ramp = (result.core().at(time) - result.core().at(time - 300)) / 300;
    assertEquals(ramp * tau, result.core().at(time) - shown.at(time), 1e-3 * ramp * tau);
  }

  /** At a jump of the face the reading answers by 1 − exp(−t/τ) of what the tip did. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 20, 400})
  void laggingProbe_answersADropByTheExponential(double tau) {
    Cut cut = new Cut(Slab.ofHalfThickness(0.02), Bodies.CONSTANT, Bodies.START);
    SurfaceLaw fixed = new Convection(1e9, Signal.constant(Bodies.START + 60));
    Cook cook = Cook.of(cut, Stage.allRound("heat", fixed, StageEnd.after(600)));
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-4), cook);
    Probe probe = Probe.SURFACE.with(Instrument.IDEAL.withResponseTime(tau));
    ProbeTrace shown = result.shownBy(new Probe("face", 0, 0, probe.instrument()));
    for (double time : new double[] {tau / 10, tau, Math.min(600, 3 * tau)}) {
      double start = result.upperSurface().at(0) - Bodies.START;
      assertEquals(60, result.upperSurface().at(time) - Bodies.START, 1e-3);
      double expected = 60 + (start - 60) * StrictMath.exp(-time / tau);
      assertEquals(expected, shown.at(time) - Bodies.START, 2e-3);
    }
  }

  /** The convolution of the dense output by a rule of many points, over stages and jumps. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 30, 300, 4000})
  void lag_isTheConvolutionOfTheTrace(double tau) {
    SimulationResult result =
        Bodies.run(Settings.withDefaults(), SampleCooks.roast(Slab.ofThickness(0.03), Bodies.LOIN));
    ProbeTrace shown = result.shownBy(core(Instrument.IDEAL.withResponseTime(tau)));
    double end = result.endTime();
    double before = result.core().at(0);
    double expected = before;
    int points = 400_000;
    double step = end / points;
    double left = StrictMath.exp(-step / tau);
    for (int i = 0; i < points; i++) {
      expected = left * expected + (1 - left) * result.core().at((i + 0.5) * step);
    }
    assertEquals(expected, shown.at(end), 2e-5);
  }

  @Test
  void biasAndResolution_areAddedAndRoundedInThatOrder() {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.02), 30);
    Instrument instrument = Instrument.IDEAL.withBias(0.3).withResolution(0.5);
    ProbeTrace shown = result.shownBy(core(instrument));
    for (double time = 0; time <= result.endTime(); time += 97) {
      double steps = (shown.at(time) - Temperatures.ZERO_CELSIUS) / 0.5;
      assertEquals(Math.rint(steps), steps, 1e-9);
      assertTrue(Math.abs(shown.at(time) - 0.3 - result.core().at(time)) <= 0.25 + 1e-9);
    }
    ProbeTrace unrounded = result.shownBy(core(Instrument.IDEAL.withBias(0.3)));
    assertEquals(result.core().at(500) + 0.3, unrounded.at(500), 1e-12);
  }

  @Test
  void idealProbe_showsItsTip() {
    SimulationResult result = climbing(Slab.ofHalfThickness(0.02), 30);
    Probe probe = Probe.atDepth("p", 0.007);
    for (double time = 0; time <= result.endTime(); time += 97) {
      assertEquals(result.probe(probe).at(time), result.shownBy(probe).at(time), 0);
    }
  }

  @Test
  void probes_thatDoNotFitAreRefused() {
    Stem thick = Stem.ofFinLength(0.012);
    Probe shallow = Probe.atDepth("shallow", 0.01).with(Instrument.IDEAL.withStem(thick));
    assertRefused(
        "insertion of probe shallow must be at least 1.5 fin lengths",
        () -> shallow.insertion(Slab.ofThickness(0.05)));
    assertRefused(
        "offset of probe off must be in [0.0, 0.03]",
        () -> Probe.besideCore("off", -0.001).distanceFromMiddle(Cylinder.ofRadius(0.03)));
    Stem longWay = Stem.ofFinLength(0.004).inserted(0.02);
    assertRefused(
        "inserted of probe probe must be at least the depth of its tip, 0.03 m, was 0.02 m",
        () -> core(Instrument.IDEAL.withStem(longWay)).insertion(Cylinder.ofRadius(0.03)));
    assertRefused("inserted must", () -> longWay.inserted(0));
    assertRefused("offset must be 0", () -> new Probe("p", 0.01, 0.002, Instrument.IDEAL));
    assertRefused("offset must be finite", () -> Probe.besideCore("p", Double.NaN));
    assertRefused("responseTime must", () -> Instrument.IDEAL.withResponseTime(-1));
    assertRefused("bias must", () -> Instrument.IDEAL.withBias(Double.NaN));
    assertRefused("resolution must", () -> Instrument.IDEAL.withResolution(-0.1));
    assertRefused("finLength must", () -> Stem.ofFinLength(-1));
    assertRefused("diameter must", () -> Stem.ofTube(0.02));
    Probe biased = core(Instrument.IDEAL.withBias(1));
    assertRefused(
        "probe of an end rule must be ideal", () -> new StageEnd.Rises(biased, 330, 3600));
    assertRefused(
        "probe of an end rule must be ideal", () -> new StageEnd.Falls(biased, 330, 3600));
  }

  private static void assertRefused(String start, Runnable action) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, action::run);
    assertTrue(String.valueOf(e.getMessage()).startsWith(start), e::getMessage);
  }

  private static Probe core(Instrument instrument) {
    return new Probe("probe", Double.POSITIVE_INFINITY, 0, instrument);
  }

  /** A cut that climbs evenly with a difference [K] between surface and core. */
  private static SimulationResult climbing(Shape shape, double difference) {
    double radius = shape.halfThickness();
    double flux = 2 * Bodies.CONDUCTIVITY * difference / radius;
    return Bodies.run(
        Bodies.accuracy(1e-5), Bodies.oneStage(shape, new Flux(flux), Bodies.seconds(1.2, radius)));
  }
}
