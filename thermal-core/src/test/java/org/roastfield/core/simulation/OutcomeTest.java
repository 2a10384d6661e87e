package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.support.SampleCooks;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Convection;
import org.roastfield.core.surface.Evaporation;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceLaw;
import org.roastfield.core.units.Temperatures;

/** Cooks that cannot be computed end in a reason, a message and advice; none hangs. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class OutcomeTest {

  private static final SurfaceLaw AIR =
      new Convection(20, Signal.constant(Temperatures.celsius(110)));
  private static final StageEnd HOUR = StageEnd.after(3600);

  @Test
  void targetAboveTheChamber_isNotMet() {
    StageEnd end = StageEnd.coreRisesTo(Temperatures.celsius(120), StageEnd.LONGEST);
    Outcome.Failed failed = failed(Settings.withDefaults(), Stage.allRound("gentle", AIR, end));
    assertEquals(FailureReason.END_RULE_NOT_MET, failed.reason());
    assertEquals("gentle", failed.stage());
    assertEquals(StageEnd.LONGEST, failed.time());
    assertEquals(
        "stage \"gentle\" at 864000 s, core 110.0 °C: the rule \"core rises to 120.0 °C\" was not"
            + " met in the time allowed",
        failed.message());
    assertEquals(
        "raise the chamber temperature, lower the target or allow more time", failed.advice());
    assertTrue(failed.partial().work().acceptedSteps() < 1000);
    assertTrue(failed.partial().stages().isEmpty());
  }

  @Test
  void targetOfAnyFirmness_costsBoundedWork() {
    for (double target : new double[] {109.9, 110, 110.0001, 500}) {
      StageEnd end = StageEnd.coreRisesTo(Temperatures.celsius(target), StageEnd.LONGEST);
      Outcome outcome = run(Settings.withDefaults(), Stage.allRound("gentle", AIR, end));
      long steps =
          outcome instanceof Outcome.Failed failed
              ? failed.partial().work().acceptedSteps()
              : outcome.orElseThrow().work().acceptedSteps();
      assertTrue(steps < 5000, () -> "steps " + steps);
    }
  }

  @Test
  void coreThatNeverFalls_endsTheRuleThatWaitsForIt() {
    StageEnd end =
        new StageEnd.Falls(org.roastfield.core.cook.Probe.CORE, Temperatures.celsius(2), 7200);
    Outcome.Failed failed = failed(Settings.withDefaults(), Stage.allRound("gentle", AIR, end));
    assertEquals(FailureReason.END_RULE_NOT_MET, failed.reason());
    assertEquals(7200, failed.time());
    assertTrue(failed.message().contains("the rule \"core falls to 2.0 °C\" was not met"));
  }

  @Test
  void tooFewSteps_areReported() {
    Settings few = Settings.withDefaults().withMostSteps(10);
    Outcome.Failed failed = failed(few, Stage.allRound("gentle", AIR, HOUR));
    assertEquals(FailureReason.TOO_MANY_STEPS, failed.reason());
    assertTrue(failed.message().startsWith("stage \"gentle\" at "));
    assertTrue(failed.message().endsWith("°C: 10 steps did not suffice"), failed::message);
    assertEquals("ask for less accuracy, or allow more steps", failed.advice());
    assertEquals(
        10, failed.partial().work().acceptedSteps() + failed.partial().work().rejectedSteps());
  }

  @Test
  void lawWithoutAValue_isReported() {
    SurfaceLaw nowhere = (surface, time, flux) -> flux.addHeat(Double.NaN, Double.NaN);
    Outcome.Failed failed =
        failed(Settings.withDefaults(), Stage.allRound("gentle", nowhere, HOUR));
    assertUnbalanced(failed);
    assertEquals(0, failed.time());
  }

  @Test
  void lawThatLosesItsValueInTime_isReported() {
    SurfaceLaw ending =
        (surface, time, flux) -> {
          if (time < 600) {
            AIR.evaluate(surface, time, flux);
          } else {
            flux.addHeat(Double.POSITIVE_INFINITY, Double.NaN);
          }
        };
    Outcome.Failed failed = failed(Settings.withDefaults(), Stage.allRound("gentle", ending, HOUR));
    assertUnbalanced(failed);
    assertEquals(600, failed.time(), 1);
    assertEquals(600, failed.partial().endTime(), 1);
    assertTrue(failed.partial().core().at(500) > failed.partial().core().at(0));
  }

  @Test
  void fluxThatRisesWithoutBound_isReported() {
    SurfaceLaw rising = (surface, time, flux) -> flux.addHeat(5000 * Math.exp(surface / 10), 500);
    Outcome.Failed failed = failed(Settings.withDefaults(), Stage.allRound("gentle", rising, HOUR));
    assertUnbalanced(failed);
  }

  @Test
  void fluxThatJumpsWithTheFaceTemperature_isReportedOrOverstepped() {
    SurfaceLaw jumping = (surface, time, flux) -> flux.addHeat(surface < 320 ? 20_000 : -20_000, 0);
    Outcome outcome = run(Settings.withDefaults(), Stage.allRound("gentle", jumping, HOUR));
    Outcome.Failed failed = assertInstanceOf(Outcome.Failed.class, outcome);
    assertTrue(
        failed.reason() == FailureReason.FACE_UNBALANCED
            || failed.reason() == FailureReason.STEP_TOO_SMALL,
        failed::message);
  }

  @Test
  void fluxThatJumpsInTime_isSteppedOver() {
    SurfaceLaw switched =
        (surface, time, flux) -> flux.addHeat(30 * ((time < 900 ? 400 : 300) - surface), -30);
    SimulationResult result =
        run(Settings.withDefaults(), Stage.allRound("gentle", switched, HOUR)).orElseThrow();
    assertTrue(result.upperSurface().at(890) > result.upperSurface().at(1500));
  }

  @Test
  void wildSignal_costsNoMoreThanTheAllowedSteps() {
    SurfaceLaw wild =
        (surface, time, flux) ->
            flux.addHeat(1000 * (350 + 50 * Math.sin(1e6 * time) - surface), -1000);
    Settings settings = Settings.withDefaults().withMostSteps(2000);
    Outcome outcome = run(settings, Stage.allRound("gentle", wild, HOUR));
    if (outcome instanceof Outcome.Failed failed) {
      assertTrue(
          failed.partial().work().acceptedSteps() + failed.partial().work().rejectedSteps()
              <= 2000);
    } else {
      assertTrue(outcome.orElseThrow().work().acceptedSteps() <= 2000);
    }
  }

  @Test
  void failure_keepsTheStagesThatWereCompleted() {
    StageEnd never = StageEnd.coreRisesTo(Temperatures.celsius(300), 600);
    Outcome.Failed failed =
        failed(
            Settings.withDefaults(),
            Stage.allRound("first", AIR, HOUR),
            Stage.allRound("second", AIR, never),
            Stage.allRound("third", AIR, HOUR));
    assertEquals("second", failed.stage());
    assertEquals(1, failed.partial().stages().size());
    assertEquals(4200, failed.time());
    assertEquals(4200, failed.partial().endTime());
  }

  @Test
  void orElseThrow_saysWhatHappenedAndWhatToTry() {
    StageEnd never = StageEnd.coreRisesTo(Temperatures.celsius(300), 600);
    Outcome.Failed failed = failed(Settings.withDefaults(), Stage.allRound("gentle", AIR, never));
    Exception thrown = assertThrows(IllegalStateException.class, failed::orElseThrow);
    assertEquals(failed.message() + "; " + failed.advice(), thrown.getMessage());
  }

  @Test
  void faceOfASlabThatCannotBeBalanced_isReported() {
    SurfaceLaw nowhere = (surface, time, flux) -> flux.addHeat(Double.NaN, Double.NaN);
    Cut cut = new Cut(Slab.ofThickness(0.05), Bodies.CONSTANT, Bodies.START);
    Cook cook = Cook.of(cut, Stage.ofFaces("sear", AIR, nowhere, HOUR));
    Outcome outcome = Simulator.withDefaults().run(cook);
    assertUnbalanced(assertInstanceOf(Outcome.Failed.class, outcome));
  }

  private static void assertUnbalanced(Outcome.Failed failed) {
    assertEquals(FailureReason.FACE_UNBALANCED, failed.reason(), failed::message);
    assertTrue(
        failed.message().endsWith("°C: no surface temperature balances the laws of the face"),
        failed::message);
    assertEquals(
        "look for a surface law whose flux rises with surface temperature or has no value there;"
            + " air by correlation has none where the mean of face and air is outside 240-800 K",
        failed.advice());
  }

  private static Outcome.Failed failed(Settings settings, Stage... stages) {
    return assertInstanceOf(Outcome.Failed.class, run(settings, stages));
  }

  private static Outcome run(Settings settings, Stage... stages) {
    Cut cut = new Cut(Cylinder.ofRadius(0.03), Bodies.CONSTANT, Bodies.START);
    return Simulator.with(settings).run(Cook.of(cut, stages));
  }

  /** Vapour over ice is not known: a moist face that metal chills below -5 °C is said to freeze. */
  @Test
  void faceThatFreezes_isSaidTo() {
    SurfaceLaw cold =
        SurfaceLaw.sum(
            new Contact(400, Signal.constant(Temperatures.celsius(-12))),
            Evaporation.of(0.5, 6, 0.98, Signal.constant(1000), MoistAir.STANDARD_PRESSURE));
    Cook cook =
        Cook.of(
            new Cut(Slab.ofThickness(0.03), SampleCooks.LOIN, Temperatures.celsius(4)),
            Stage.allRound("on ice", cold, StageEnd.after(3600)));
    Outcome.Failed failed =
        assertInstanceOf(Outcome.Failed.class, Simulator.withDefaults().run(cook));
    assertEquals(FailureReason.FACE_FREEZES, failed.reason());
    assertTrue(failed.message().endsWith("°C: a face freezes"), failed::message);
    assertTrue(failed.partial().endTime() > 0);
  }
}
