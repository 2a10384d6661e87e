package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.reference.LinearReference;
import org.roastfield.core.reference.RadialMode;
import org.roastfield.core.reference.RobinSeries;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;

/** Bodies with a Robin surface against their series, as shares of the first difference. */
class RobinAccuracyTest {

  private static final double RADIUS = 0.04;
  private static final double AIR = Bodies.START + 100;
  private static final double[] FOURIER_NUMBERS = {0.05, 0.1, 0.2, 0.5, 1, 1.5, 2};
  private static final double[] PLACES = {0, 0.5, 1};
  private static final double ALLOWED = 1e-3;

  static Stream<Arguments> bodies() {
    return Arrays.stream(RadialMode.values())
        .flatMap(
            mode -> DoubleStream.of(0.1, 1, 10, 100).mapToObj(biot -> Arguments.of(mode, biot)));
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void fortyCells_followTheSeriesAtCentreMiddleAndSurface(RadialMode mode, double biotNumber) {
    double error = error(mode, biotNumber, Bodies.accuracy(1e-4));
    assertTrue(error <= ALLOWED, () -> "error " + error);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 10, 100})
  void fortyCellsAcrossBothHalves_followTheSeriesOfTheSlab(double biotNumber) {
    double error = errorOfTwoFaces(biotNumber, Bodies.accuracy(1e-4).withCells(20));
    assertTrue(error <= ALLOWED, () -> "error " + error);
  }

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void fortyCells_followThePublishedLinearCase(RadialMode mode) {
    double error = errorOfLinearCase(mode, Settings.withDefaults());
    assertTrue(error <= ALLOWED, () -> "error " + error);
  }

  @ParameterizedTest
  @EnumSource(RadialMode.class)
  void arrivalsOfThePublishedLinearCase_areMetWithinTwoSeconds(RadialMode mode) {
    LinearReference reference = LinearReference.load(mode);
    for (LinearReference.Arrival arrival : reference.arrivals()) {
      StageEnd rule = StageEnd.coreRisesTo(Temperatures.celsius(arrival.centreCelsius()), 1e5);
      SimulationResult result = Bodies.run(Settings.withDefaults(), cook(reference, rule));
      assertEquals(arrival.seconds(), result.endTime(), 2);
    }
  }

  /** Largest error over places and times, relative to the first difference of temperatures. */
  static double error(RadialMode mode, double biotNumber, Settings settings) {
    double end = Bodies.seconds(2, RADIUS);
    SimulationResult result =
        Bodies.run(
            settings,
            Bodies.oneStage(
                Bodies.shape(mode, RADIUS), Bodies.convection(biotNumber, RADIUS, AIR), end));
    RobinSeries series = RobinSeries.of(mode, biotNumber);
    double worst = 0;
    for (double place : PLACES) {
      Trace trace = result.probe(Probe.atDepth("place", (1 - place) * RADIUS));
      for (double fourierNumber : FOURIER_NUMBERS) {
        double exact = series.temperature(place, fourierNumber);
        worst = Math.max(worst, Math.abs(share(trace, fourierNumber, end) - exact));
      }
    }
    return worst;
  }

  /** The same for a slab computed as one with two faces that happen to see the same. */
  static double errorOfTwoFaces(double biotNumber, Settings settings) {
    double end = Bodies.seconds(2, RADIUS);
    double h = biotNumber * Bodies.CONDUCTIVITY / RADIUS;
    Stage stage =
        Stage.ofFaces(
            "heat",
            new Convection(h, time -> AIR),
            new Convection(h, time -> AIR),
            StageEnd.after(end));
    Cut cut = new Cut(Slab.ofHalfThickness(RADIUS), Bodies.CONSTANT, Bodies.START);
    SimulationResult result = Bodies.run(settings, Cook.of(cut, stage));
    RobinSeries series = RobinSeries.slab(biotNumber);
    double worst = 0;
    for (double place : new double[] {-1, -0.5, 0, 0.5, 1}) {
      Trace trace = result.probe(Probe.atDepth("place", (1 - place) * RADIUS));
      for (double fourierNumber : FOURIER_NUMBERS) {
        double exact = series.temperature(Math.abs(place), fourierNumber);
        worst = Math.max(worst, Math.abs(share(trace, fourierNumber, end) - exact));
      }
    }
    return worst;
  }

  /** The same for a body of {@code linear.json}, from its third minute on. */
  static double errorOfLinearCase(RadialMode mode, Settings settings) {
    LinearReference reference = LinearReference.load(mode);
    LinearReference.State last = reference.states().get(reference.states().size() - 1);
    SimulationResult result = Bodies.run(settings, cook(reference, StageEnd.after(last.seconds())));
    double radius = reference.radiusMetres();
    Trace middle = result.probe(Probe.atDepth("middle", radius / 2));
    double worst = 0;
    for (LinearReference.State state : reference.states()) {
      if (state.seconds() >= 180) {
        double time = Math.min(state.seconds(), result.endTime());
        worst = Math.max(worst, difference(result.core(), time, state.centreCelsius()));
        worst = Math.max(worst, difference(middle, time, state.middleCelsius()));
        worst = Math.max(worst, difference(result.upperSurface(), time, state.surfaceCelsius()));
      }
    }
    return worst / (reference.ambientCelsius() - reference.startCelsius());
  }

  private static Cook cook(LinearReference reference, StageEnd end) {
    Material material =
        Material.constant(
            "linear", reference.conductivity(), 1000, reference.volumetricHeatCapacity() / 1000);
    Convection law =
        new Convection(
            reference.heatTransferCoefficient(),
            Signal.constant(Temperatures.celsius(reference.ambientCelsius())));
    return Cook.of(
        new Cut(
            Bodies.shape(reference.mode(), reference.radiusMetres()),
            material,
            Temperatures.celsius(reference.startCelsius())),
        Stage.allRound("heat", law, end));
  }

  private static double share(Trace trace, double fourierNumber, double end) {
    double time = Math.min(Bodies.seconds(fourierNumber, RADIUS), end);
    return (trace.at(time) - AIR) / (Bodies.START - AIR);
  }

  private static double difference(Trace trace, double time, double celsius) {
    return Math.abs(Temperatures.toCelsius(trace.at(time)) - celsius);
  }
}
