package org.roastfield.core.simulation;

/** Why a cook could not be computed to its end. */
public enum FailureReason {
  /** A stage's end rule was not met within its bound. */
  END_RULE_NOT_MET,
  /** More steps than the settings allow. */
  TOO_MANY_STEPS,
  /** The step had to be made smaller than round-off allows. */
  STEP_TOO_SMALL,
  /** No face temperature balances the laws of a face. */
  FACE_UNBALANCED,
  /** A moist face came to where vapour over ice would be asked for. */
  FACE_FREEZES
}
