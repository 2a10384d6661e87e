package org.roastfield.core.integration;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.grid.Reading;

/** Where the member in one lane stands, besides what the {@link LaneStepper} has in rows. */
final class Lane {

  /** Cook of the member. */
  Cook cook;

  /** Index of the member. */
  int member;

  /** Index of its stage; that after the last once it is done. */
  int stage;

  /** Whether the stage waits for a threshold. */
  boolean awaiting;

  /** What it waits for. */
  final Threshold threshold;

  /** ξ of what it waits for. */
  double place;

  /** Progress in the stage. */
  final StageProgress progress;

  /** What followed from the last attempt. */
  StageProgress.Verdict verdict = StageProgress.Verdict.REPEAT;

  /** Highest core so far in the stage. */
  final RunningPeak peak = new RunningPeak();

  /** First step of a stage [s]. */
  double firstStep;

  /** Half thickness [m]. */
  double length;

  /** Water evaporated so far [kg/m²]. */
  double evaporated;

  /** Steps that stand. */
  int accepted;

  /** Steps that were repeated. */
  int rejected;

  Lane(Cook template, Reading core, double accuracy) {
    cook = template;
    threshold = new Threshold(core, 0, true);
    progress = new StageProgress(accuracy);
  }

  /** Takes another member. */
  void begin(Cook next, int index) {
    cook = next;
    member = index;
    stage = -1;
    evaporated = 0;
    accepted = 0;
    rejected = 0;
  }

  /** End rule of the stage. */
  StageEnd rule() {
    return cook.stages().get(stage).end();
  }

  /** Whether the last attempt was one that stands. */
  boolean stands() {
    return verdict != StageProgress.Verdict.REPEAT && verdict != StageProgress.Verdict.GIVE_UP;
  }

  /** Whether the last attempt meets the stage's end rule. */
  boolean meetsRule() {
    return verdict == StageProgress.Verdict.ACCEPT_THRESHOLD
        || (verdict == StageProgress.Verdict.ACCEPT_LAST && !awaiting);
  }
}
