package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.surface.Touch;
import org.roastfield.core.units.Temperatures;

/** Stages of no length, rules already met, and rules that wait for a fall. */
class StageEdgesTest {

  private static final SurfaceLaw HOT = air(110);
  private static final SurfaceLaw COOL = air(20);
  private static final StageEnd HALF_HOUR = StageEnd.after(1800);

  @Test
  void ruleAlreadyMet_endsTheStageAtOnce() {
    StageEnd met = StageEnd.coreRisesTo(Bodies.START - 1, 600);
    SimulationResult result =
        run(Stage.allRound("met", HOT, met), Stage.allRound("on", HOT, HALF_HOUR));
    assertEquals(0, result.stage("met").duration());
    assertEquals(Bodies.START, result.stage("met").coreAtEnd(), 1e-9);
    assertEquals(1800, result.endTime());
    assertEquals(run(Stage.allRound("on", HOT, HALF_HOUR)).core().at(1800), core(result, 1800));
  }

  @Test
  void ruleMetExactlyAtTheStart_endsTheStageAtOnce() {
    StageEnd met = StageEnd.coreRisesTo(Bodies.START, 600);
    assertEquals(0, run(Stage.allRound("met", HOT, met)).endTime());
  }

  @Test
  void cookOfNoLength_hasASingleTemperature() {
    StageEnd met = StageEnd.coreRisesTo(Bodies.START - 1, 600);
    SimulationResult result = run(Stage.allRound("met", HOT, met));
    assertEquals(0, result.endTime());
    assertEquals(Bodies.START, result.core().at(0), 1e-9);
    assertEquals(0, result.energy().turnover());
    assertEquals(0, result.energy().relativeResidual());
    Peak peak = result.corePeak(result.stage("met"));
    assertEquals(0, peak.time());
    assertEquals(Bodies.START, peak.temperature(), 1e-9);
    assertFalse(peak.interior());
    assertEquals(Bodies.START, result.profile(0).at(0.01), 1e-9);
  }

  @Test
  void clockThatHasPassed_givesAStageOfNoLength() {
    SimulationResult result =
        run(
            Stage.allRound("first", HOT, HALF_HOUR),
            Stage.allRound("late", HOT, StageEnd.at(600)),
            Stage.allRound("last", COOL, HALF_HOUR));
    assertEquals(1800, result.stage("late").start());
    assertEquals(1800, result.stage("late").end());
    assertEquals(1800, result.stage("last").start());
    assertEquals(3600, result.endTime());
    Peak peak = result.corePeak(result.stage("late"));
    assertEquals(1800, peak.time());
    assertEquals(result.stage("first").coreAtEnd(), peak.temperature(), 1e-9);
  }

  @Test
  void clockOfTheCook_endsTheFirstStageToo() {
    SimulationResult result =
        run(
            Stage.allRound("first", HOT, StageEnd.at(600)),
            Stage.allRound("second", HOT, StageEnd.at(1000)));
    assertEquals(600, result.stage("first").end());
    assertEquals(1000, result.endTime());
    assertEquals(400, result.stage("second").duration());
  }

  @Test
  void firstStageOfNoLength_leavesTracesAndPeaksOfTheOthers() {
    SimulationResult result =
        run(
            Stage.allRound("none", HOT, StageEnd.at(0)),
            Stage.allRound("heat", HOT, HALF_HOUR),
            Stage.allRound("rest", COOL, HALF_HOUR));
    assertEquals(3, result.stages().size());
    assertEquals(0, result.core().start());
    assertEquals(3600, result.core().end());
    assertEquals(Bodies.START, core(result, 0), 1e-9);
    Peak none = result.corePeak(result.stage("none"));
    assertEquals(0, none.time());
    assertEquals(Bodies.START, none.temperature(), 1e-9);
    assertTrue(result.corePeak(result.stage("rest")).temperature() > core(result, 1800));
  }

  @Test
  void fallsRule_waitsUntilTheSurfaceHasCooled() {
    double target = Temperatures.celsius(40);
    SimulationResult result =
        run(
            Stage.allRound("heat", HOT, StageEnd.after(3600)),
            Stage.allRound("cool", COOL, new StageEnd.Falls(Probe.SURFACE, target, 86_400)),
            Stage.allRound("on", COOL, StageEnd.after(60)));
    StageResult cool = result.stage("cool");
    assertTrue(result.stage("heat").upperSurfaceAtEnd() > target);
    assertEquals(target, cool.upperSurfaceAtEnd(), 1e-3);
    assertTrue(cool.duration() > 10);
    assertTrue(result.upperSurface().at(cool.end() - 5) > target);
    assertTrue(result.upperSurface().at(cool.end() + 5) < target);
  }

  @Test
  void fallsRuleAlreadyMet_endsTheStageAtOnce() {
    StageEnd met = new StageEnd.Falls(Probe.CORE, Bodies.START + 1, 600);
    assertEquals(0, run(Stage.allRound("met", HOT, met)).endTime());
  }

  @Test
  void coreThatPeaksBelowTheTarget_doesNotMeetTheRule() {
    StageEnd end = StageEnd.coreRisesTo(Temperatures.celsius(70), 20_000);
    Cook cook = cook(Stage.allRound("heat", HOT, HALF_HOUR), Stage.allRound("rest", COOL, end));
    Outcome outcome = Simulator.withDefaults().run(cook);
    assertTrue(outcome instanceof Outcome.Failed);
  }

  @Test
  void carryoverThatPassesTheTarget_isCaughtOnTheWayUp() {
    SimulationResult long1 =
        run(Stage.allRound("heat", HOT, HALF_HOUR), Stage.allRound("rest", COOL, HALF_HOUR));
    Peak peak = long1.corePeak(long1.stage("rest"));
    assertTrue(peak.interior());
    double target = peak.temperature() - 0.05;
    StageEnd end = StageEnd.coreRisesTo(target, 20_000);
    SimulationResult caught =
        run(Stage.allRound("heat", HOT, HALF_HOUR), Stage.allRound("rest", COOL, end));
    assertTrue(caught.endTime() < peak.time());
    assertEquals(target, caught.stage("rest").coreAtEnd(), 1e-3);
  }

  @Test
  void shortestStage_isComputed() {
    SimulationResult result =
        run(
            Stage.allRound("blink", HOT, StageEnd.after(1e-6)),
            Stage.allRound("heat", HOT, HALF_HOUR));
    assertEquals(1e-6, result.stage("blink").end(), 1e-15);
    assertEquals(
        run(Stage.allRound("heat", HOT, HALF_HOUR)).core().at(1800), core(result, 1800), 0.01);
  }

  @Test
  void placesAndTimesOutsideTheCook_areRefused() {
    SimulationResult result = run(Stage.allRound("heat", HOT, HALF_HOUR));
    assertRefused("time must be in [0.0, 1800.0], was 1801.0", () -> result.core().at(1801));
    assertRefused("time must be in [0.0, 1800.0], was NaN", () -> result.profile(Double.NaN));
    assertRefused("position must be in [0.0, 0.03], was 0.031", () -> result.profile(60).at(0.031));
    assertRefused(
        "name must be that of a completed stage, was \"sear\"", () -> result.stage("sear"));
    assertRefused(
        "depth of probe p must be in [0.0, 0.03], was 0.04",
        () -> result.probe(Probe.atDepth("p", 0.04)));
  }

  private static void assertRefused(
      String message, org.junit.jupiter.api.function.Executable call) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  private static double core(SimulationResult result, double time) {
    return result.core().at(time);
  }

  private static SurfaceLaw air(double celsius) {
    return new Convection(25, Signal.constant(Temperatures.celsius(celsius)));
  }

  private static SimulationResult run(Stage... stages) {
    return Bodies.run(Settings.withDefaults(), cook(stages));
  }

  private static Cook cook(Stage... stages) {
    return Cook.of(new Cut(Cylinder.ofRadius(0.03), Bodies.CONSTANT, Bodies.START), stages);
  }

  /** Contact goes on where a stage is cut, and begins again in a stage of its own. */
  @Test
  void contactInAStageThatIsCut_isThatOfTheWholeStage() {
    SurfaceLaw plate = Touch.ofPlate(Signal.constant(500));
    Stage whole = Stage.allRound("sear", plate, StageEnd.at(120));
    Cut cut = new Cut(Slab.ofThickness(0.04), Bodies.CONSTANT, Bodies.START);
    Settings fine = Bodies.accuracy(1e-5);
    SimulationResult one = Bodies.run(fine, Cook.of(cut, whole));
    SimulationResult legs = Bodies.run(fine, new Cook(cut, whole.cutAt(40, 80), List.of()));
    assertEquals(3, legs.stages().size());
    assertEquals(one.upperSurface().at(120), legs.upperSurface().at(120), 1e-3);
    Stage first = Stage.allRound("first", plate, StageEnd.at(60));
    SimulationResult again = Bodies.run(fine, Cook.of(cut, first, whole));
    assertTrue(again.upperSurface().at(65) > one.upperSurface().at(65) + 5);
  }
}
