package org.roastfield.core.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.simulation.Settings;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.simulation.StageResult;

/**
 * Every member of ensembles of RS-1 at the settings of the speed targets, against its own converged
 * single cook.
 */
class EnsembleAccuracyTest {

  private static final int MEMBERS = 100;
  private static final Settings FAST =
      Settings.withDefaults().withCells(18).withSurfaceCell(0.35e-3).withAccuracy(0.02);

  /** Within 0.002 K at the core and 0.03 K at the face, at the ends of stages, of 640 cells. */
  private static final Settings CONVERGED =
      Settings.withDefaults().withCells(160).withAccuracy(1e-4).withSurfaceCell(0.1e-3);

  private static final double CORE_ALLOWED = 0.05;
  private static final double SEAR_ALLOWED = 0.5;
  private static final double PULL_ALLOWED = 1.5;

  @ParameterizedTest
  @ValueSource(strings = {"C1", "S1", "P1"})
  void everyMember_isItsOwnConvergedCook(String name) {
    Rs1Members members = new Rs1Members(Rs1Reference.load(name));
    EnsembleResult result =
        EnsembleSimulator.with(FAST).run(members.template(), MEMBERS, members::member);
    assertEquals(MEMBERS, result.completed());
    Worst worst = new Worst(0, 0, 0);
    for (int i = 0; i < MEMBERS; i++) {
      worst = worst.and(errors(result, i, converged(members, i)));
    }
    assertTrue(worst.core() <= CORE_ALLOWED, name + ": " + worst);
    assertTrue(worst.sear() <= SEAR_ALLOWED, name + ": " + worst);
    assertTrue(worst.pull() <= PULL_ALLOWED, name + ": " + worst);
  }

  private static List<StageResult> converged(Rs1Members members, int index) {
    return Simulator.with(CONVERGED).run(members.member(index)).orElseThrow().stages();
  }

  private static Worst errors(EnsembleResult result, int member, List<StageResult> exact) {
    double core = 0;
    double sear = 0;
    for (int i = 0; i < exact.size(); i++) {
      StageResult stage = exact.get(i);
      core = Math.max(core, Math.abs(stage.coreAtEnd() - result.coreAtEnd(member, i)));
      if (stage.name().equals("sear")) {
        double face = result.surfaceAtEnd(member, i);
        sear = Math.max(sear, Math.abs(stage.upperSurfaceAtEnd() - face));
      }
    }
    return new Worst(core, sear, Math.abs(exact.get(0).end() - result.stageEnd(member, 0)));
  }

  /**
   * Largest errors.
   *
   * @param core at the ends of stages [K]
   * @param sear of the face at the ends of the legs [K]
   * @param pull [s]
   */
  private record Worst(double core, double sear, double pull) {

    /** The larger of each; a NaN stays, and fails. */
    Worst and(Worst other) {
      return new Worst(
          Math.max(core, other.core), Math.max(sear, other.sear), Math.max(pull, other.pull));
    }
  }
}
