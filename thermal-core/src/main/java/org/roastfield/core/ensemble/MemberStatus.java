package org.roastfield.core.ensemble;

import java.util.List;
import org.roastfield.core.integration.MemberRecord;

/** How a member of an ensemble ended. */
public enum MemberStatus {
  /** Not computed: the run was cancelled before its end. */
  NOT_RUN(MemberRecord.NOT_RUN),
  /** Computed to the end of its last stage. */
  COMPLETED(MemberRecord.COMPLETED),
  /** A stage's end rule was not met within its bound. */
  END_RULE_NOT_MET(MemberRecord.END_RULE_NOT_MET),
  /** More steps than the settings allow. */
  TOO_MANY_STEPS(MemberRecord.TOO_MANY_STEPS),
  /** The step had to be made smaller than round-off allows. */
  STEP_TOO_SMALL(MemberRecord.STEP_TOO_SMALL),
  /** No face temperature balanced the laws of a face. */
  FACE_UNBALANCED(MemberRecord.FACE_UNBALANCED),
  /** The caller's code could not build its cook. */
  NOT_BUILT(MemberRecord.NOT_BUILT);

  private static final List<MemberStatus> ALL = List.of(values());

  private final byte code;

  MemberStatus(byte code) {
    this.code = code;
  }

  static MemberStatus of(byte code) {
    for (int i = 0; i < ALL.size(); i++) {
      if (ALL.get(i).code == code) {
        return ALL.get(i);
      }
    }
    throw new IllegalArgumentException("code must be that of a status, was " + code);
  }
}
