package org.roastfield.lab.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.FailureReason;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookTexts;

class FailedRunTest {

  @Test
  void wetFaceAboveBoiling_isAdvisedInWordsOfTheFile() {
    CookFile cook = CookTexts.read(CookTexts.SLAB);
    assertEquals(
        "a face that an earlier stage left hotter than boiling cannot be wet at once: say"
            + " wetness: 0 for stage \"gentle heat\", or sear less",
        FailedRun.advice(cook, failed(cook, FailureReason.FACE_UNBALANCED, "gentle heat")));
  }

  @Test
  void everythingElse_isAdvisedByTheCore() {
    CookFile cook = CookTexts.read(CookTexts.SLAB);
    assertEquals(
        "core's advice",
        FailedRun.advice(cook, failed(cook, FailureReason.FACE_UNBALANCED, "rest")));
    assertEquals(
        "core's advice",
        FailedRun.advice(cook, failed(cook, FailureReason.TOO_MANY_STEPS, "gentle heat")));
  }

  private static Outcome.Failed failed(CookFile cook, FailureReason reason, String stage) {
    SimulationResult result = Simulator.withDefaults().run(cook.cook()).orElseThrow();
    return new Outcome.Failed(reason, stage, 60, "message", "core's advice", result);
  }
}
