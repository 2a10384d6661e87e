package org.roastfield.core.integration;

import java.util.List;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.grid.Reading;

/**
 * A member of an ensemble that lanes do not serve, computed by the single cook's driver into the
 * same record.
 */
final class AloneIntegration {

  private AloneIntegration() {}

  static void run(Cook cook, CookIntegration.Accuracy accuracy, int member, MemberRecord record) {
    CookIntegration integration = CookIntegration.of(cook, accuracy);
    Reading core = integration.reading(Probe.CORE);
    Reading surface = integration.reading(Probe.SURFACE);
    Recorder recorder = new Recorder(member, core, record);
    byte code = MemberRecord.COMPLETED;
    int index = 0;
    List<Stage> stages = cook.stages();
    for (; index < stages.size() && code == MemberRecord.COMPLETED; index++) {
      recorder.stage = index;
      record.stageBegins(member, index, integration.time(), integration.now(core));
      code = code(integration.run(stages.get(index), recorder));
      if (code == MemberRecord.COMPLETED) {
        record.stageEnded(
            member, index, integration.time(), integration.now(core), integration.now(surface));
      }
    }
    record.finished(
        member,
        code,
        code == MemberRecord.COMPLETED ? index : index - 1,
        (int) integration.acceptedSteps(),
        (int) integration.rejectedSteps(),
        integration.evaporatedUpper());
  }

  private static byte code(CookIntegration.End end) {
    return switch (end) {
      case RULE_MET -> MemberRecord.COMPLETED;
      case RULE_NOT_MET -> MemberRecord.END_RULE_NOT_MET;
      case TOO_MANY_STEPS -> MemberRecord.TOO_MANY_STEPS;
      case STEP_TOO_SMALL -> MemberRecord.STEP_TOO_SMALL;
      case FACE_UNBALANCED -> MemberRecord.FACE_UNBALANCED;
    };
  }

  private static final class Recorder implements StepListener {

    private final int member;
    private final MemberRecord record;
    private final Reading core;
    private int stage;

    Recorder(int member, Reading core, MemberRecord record) {
      this.member = member;
      this.core = core;
      this.record = record;
    }

    @Override
    public void accepted(DenseStep step) {
      record.step(member, stage, step.start(), step.end(), step.reading(core));
    }
  }
}
