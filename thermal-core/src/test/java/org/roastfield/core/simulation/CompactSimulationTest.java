package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSimulator;
import org.roastfield.core.parameter.ParameterPoint;
import org.roastfield.core.reference.BesselSeries;
import org.roastfield.core.reference.CoreProduct;
import org.roastfield.core.shape.Compact;
import org.roastfield.core.surface.SurfaceLaw;

/** Compact pieces through the whole solver. */
class CompactSimulationTest {

  private static final double HALF = 0.03;
  private static final double AIR = Bodies.START + 100;

  static Stream<Arguments> pieces() {
    return Stream.of(0.5, 2.0, 5.0)
        .flatMap(
            biot ->
                Stream.of(
                    Arguments.of(
                        biot,
                        Compact.ofBox(0.06, 0.06, 0.06, biot),
                        CoreProduct.box(1, 1, 1, biot)),
                    Arguments.of(
                        biot,
                        Compact.ofBox(0.15, 0.06, 0.09, biot),
                        CoreProduct.box(1, 1.5, 2.5, biot)),
                    Arguments.of(
                        biot,
                        Compact.ofCylinder(0.06, 0.06, biot),
                        CoreProduct.cylinder(1, 1, biot)),
                    Arguments.of(
                        biot,
                        Compact.ofCylinder(0.06, 0.12, biot),
                        CoreProduct.cylinder(1, 2, biot)),
                    Arguments.of(
                        biot,
                        Compact.ofCylinder(0.18, 0.06, biot),
                        CoreProduct.cylinder(3, 1, biot))));
  }

  @ParameterizedTest
  @MethodSource("pieces")
  void coreTimes_areThoseOfThePiece(double biotNumber, Compact piece, CoreProduct exact) {
    for (double left : new double[] {0.5, 0.3, 0.1}) {
      StageEnd rule = StageEnd.coreRisesTo(AIR - left * (AIR - Bodies.START), 3e5);
      SimulationResult result = heated(piece, biotNumber, rule);
      double time = Bodies.seconds(exact.time(left), HALF);
      assertEquals(time, result.endTime(), 0.02 * time);
    }
  }

  /** The grid between whole exponents, as shares of the first temperature difference. */
  @ParameterizedTest
  @CsvSource({"0.3, 0.5", "0.7, 10", "1.46, 2", "2.6, 1", "3.4, 0.3", "4, 5"})
  void fortyCells_followTheSeriesAtAnyExponent(double exponent, double biotNumber) {
    Compact piece = new Compact(exponent, HALF, HALF, 1e-3, 0.1, 0.4);
    double end = Bodies.seconds(1, HALF);
    SurfaceLaw law = Bodies.convection(biotNumber, HALF, AIR);
    SimulationResult result = Bodies.run(Bodies.accuracy(1e-4), Bodies.oneStage(piece, law, end));
    BesselSeries series = new BesselSeries(exponent, biotNumber);
    for (double place : new double[] {0, 0.5, 1}) {
      Trace trace = result.probe(Probe.atDepth("place", (1 - place) * HALF));
      for (double fourierNumber : new double[] {0.05, 0.1, 0.2, 0.5, 1}) {
        double time = Math.min(end, Bodies.seconds(fourierNumber, HALF));
        double share = (trace.at(time) - AIR) / (Bodies.START - AIR);
        assertEquals(series.temperature(place, fourierNumber), share, 1e-3);
      }
    }
  }

  /** Depths are those of the real piece, whose core lies a half thickness deep. */
  @Test
  void depths_reachFromTheFaceToTheCore() {
    Compact piece = Compact.ofBox(0.06, 0.12, 0.15);
    SimulationResult result = heated(piece, 2, StageEnd.after(1800));
    double time = result.endTime();
    TemperatureProfile profile = result.profile(time);
    assertEquals(HALF, profile.position(profile.size() - 1));
    assertEquals(result.upperSurface().at(time), profile.at(HALF), 1e-9);
    assertEquals(result.core().at(time), profile.at(0), 1e-9);
    Probe core = Probe.atDepth("tip", HALF);
    assertEquals(result.core().at(time), result.probe(core).at(time), 1e-9);
    Probe halfway = Probe.atDepth("halfway", HALF / 2);
    assertEquals(profile.at(HALF / 2), result.probe(halfway).at(time), 1e-9);
  }

  /** Heated through, the piece holds the heat of its true volume. */
  @Test
  void heatOfThePiece_isThatOfItsTrueVolume() {
    Compact piece = Compact.ofCylinder(0.06, 0.09);
    SimulationResult result = heated(piece, 5, StageEnd.after(Bodies.seconds(20, HALF)));
    double expected = Bodies.DENSITY * Bodies.HEAT_CAPACITY * piece.volume() * 100;
    assertEquals(expected, result.energy().stored() * piece.equivalentArea(), 1e-5 * expected);
  }

  @Test
  void lanes_agreeWithTheSingleCook() {
    Settings tight = Bodies.accuracy(1e-6);
    Cook template = roast(Compact.ofBox(0.07, 0.09, 0.15));
    SimulationResult single = Bodies.run(tight, template);
    EnsembleResult lanes = EnsembleSimulator.with(tight).run(template, 1, i -> template);
    assertEquals(single.work().acceptedSteps(), lanes.acceptedSteps(0));
    assertEquals(single.endTime(), lanes.stageEnd(0, 1), 1e-5);
    assertEquals(single.stages().get(1).coreAtEnd(), lanes.coreAtEnd(0, 1), 1e-8);
  }

  /** A change of size keeps the exponent. */
  @Test
  void sensitivityToTheSize_agreesWithADifference() {
    Compact piece = Compact.ofBox(0.07, 0.09, 0.15);
    Simulator simulator = Simulator.with(Bodies.accuracy(1e-6));
    ParameterPoint point = ParameterPoint.empty().with("size", 1);
    double exact =
        simulator.sensitivities(point, at -> roast(piece.scaled(at.value("size")))).stageEnd(0, 0);
    double above = end(simulator, roast(piece.scaled(1.001)));
    double below = end(simulator, roast(piece.scaled(0.999)));
    assertEquals((above - below) / 0.002, exact, 1e-3 * exact);
  }

  private static double end(Simulator simulator, Cook cook) {
    return simulator.run(cook).orElseThrow().stages().get(0).end();
  }

  /** The first stage ends when a probe halfway to the core is warm. */
  private static Cook roast(Compact piece) {
    Probe halfway = Probe.atDepth("halfway", 0.5 * piece.halfThickness());
    return Cook.of(
        new Cut(piece, Bodies.CONSTANT, Bodies.START),
        Stage.allRound(
            "heat",
            Bodies.convection(2, HALF, AIR),
            new StageEnd.Rises(halfway, Bodies.START + 40, 3e5)),
        Stage.allRound("rest", Bodies.convection(0.5, HALF, Bodies.START), StageEnd.after(600)));
  }

  private static SimulationResult heated(Compact piece, double biotNumber, StageEnd rule) {
    return Bodies.run(
        Settings.withDefaults(),
        Cook.of(
            new Cut(piece, Bodies.CONSTANT, Bodies.START),
            Stage.allRound("heat", Bodies.convection(biotNumber, HALF, AIR), rule)));
  }
}
