package org.roastfield.core.simulation;

/** How a simulation ended: a failed solve is an outcome, not an exception. */
public sealed interface Outcome permits Outcome.Completed, Outcome.Failed {

  /**
   * The result of a completed cook.
   *
   * @throws IllegalStateException with message and advice if the cook failed
   */
  SimulationResult orElseThrow();

  /**
   * The cook was computed to its end.
   *
   * @param result traces, profiles, milestones and balances
   */
  record Completed(SimulationResult result) implements Outcome {

    @Override
    public SimulationResult orElseThrow() {
      return result;
    }
  }

  /**
   * The cook could not be computed to its end.
   *
   * @param reason kind of failure
   * @param stage name of the stage it happened in
   * @param time when, since the start of the cook [s]
   * @param message what happened, with the numbers
   * @param advice one thing to try
   * @param partial what was computed up to then
   */
  record Failed(
      FailureReason reason,
      String stage,
      double time,
      String message,
      String advice,
      SimulationResult partial)
      implements Outcome {

    @Override
    public SimulationResult orElseThrow() {
      throw new IllegalStateException(message + "; " + advice);
    }
  }
}
