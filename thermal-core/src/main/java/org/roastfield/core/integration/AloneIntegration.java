package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.grid.Reading;

/**
 * Cooks one after another in the same memory, by the single cook's driver, into a {@link
 * MemberRecord}. Cooks of the template's kind run on its grid over ξ, others on one of their own.
 */
public final class AloneIntegration {

  private final CookIntegration.Accuracy accuracy;
  private final Recorder recorder = new Recorder();
  private final CookIntegration template;

  /**
   * @param template cook whose shape and size define the grid over ξ
   */
  public AloneIntegration(Cook template, CookIntegration.Accuracy accuracy) {
    this.accuracy = accuracy;
    this.template = CookIntegration.of(template, accuracy);
  }

  /** Computes a cook into a member of a record. */
  public void run(Cook cook, int member, MemberRecord record) {
    run(cook, null, member, record);
  }

  /**
   * The same from where another stood that begins alike.
   *
   * @param from null to compute it whole
   * @return what computed it, which stands where the cook ended
   */
  CookIntegration run(Cook cook, @Nullable Standing from, int member, MemberRecord record) {
    CookIntegration integration = of(cook);
    if (from == null) {
      begin(integration, member, record, null);
      run(integration, cook, 0, member, record);
    } else {
      integration.resume(cook, from);
      recorder.begin(member, integration.reading(Probe.CORE), record, null);
      from.copyInto(record, member);
      run(integration, cook, from.stages(), member, record);
    }
    return integration;
  }

  /**
   * The same with derivatives.
   *
   * @throws IllegalArgumentException if the cook has none
   */
  void run(
      Cook cook,
      List<CookVariation> variations,
      int member,
      MemberRecord record,
      TangentRecord tangents) {
    CookIntegration integration = of(cook);
    AloneTangents along = new AloneTangents(integration, variations, member, tangents);
    begin(integration, member, record, along);
    run(integration, cook, 0, member, record);
  }

  private void begin(
      CookIntegration integration,
      int member,
      MemberRecord record,
      @Nullable AloneTangents tangents) {
    Reading core = integration.reading(Probe.CORE);
    recorder.begin(member, core, record, tangents);
    record.begins(member, integration.time(), integration.now(core));
  }

  private void run(
      CookIntegration integration, Cook cook, int first, int member, MemberRecord record) {
    AloneTangents tangents = recorder.tangents;
    Reading core = integration.reading(Probe.CORE);
    byte code = MemberRecord.COMPLETED;
    int index = first;
    List<Stage> stages = cook.stages();
    while (index < stages.size()) {
      recorder.peak.begin(integration.time(), integration.now(core));
      code = code(integration.run(stages.get(index), recorder));
      record.peaked(member, index, recorder.peak);
      if (tangents != null) {
        tangents.stageRan(index, code == MemberRecord.COMPLETED, recorder.peak);
      }
      if (code != MemberRecord.COMPLETED) {
        break;
      }
      double surface = integration.now(integration.reading(Probe.SURFACE));
      record.stageEnded(member, index, integration.time(), integration.now(core), surface);
      index++;
    }
    if (tangents != null) {
      tangents.finished(integration.time());
    }
    record.finished(
        member,
        code,
        index,
        (int) integration.acceptedSteps(),
        (int) integration.rejectedSteps(),
        integration.evaporatedUpper());
  }

  /**
   * The template's memory and grid if they fit, or else new ones: never those of a cook in between,
   * so that the order of cooks does not matter.
   */
  private CookIntegration of(Cook cook) {
    if (!template.fits(cook)) {
      return CookIntegration.of(cook, accuracy);
    }
    template.reset(cook);
    return template;
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

    private int member;
    private final RunningPeak peak = new RunningPeak();
    private @Nullable Reading core;
    private @Nullable MemberRecord record;
    private @Nullable AloneTangents tangents;

    void begin(int member, Reading core, MemberRecord record, @Nullable AloneTangents tangents) {
      this.member = member;
      this.core = core;
      this.record = record;
      this.tangents = tangents;
    }

    @Override
    public void accepted(DenseStep step) {
      if (tangents != null) {
        tangents.accepted(step);
      }
      if (record != null && core != null) {
        StepReading reading = step.reading(core);
        peak.step(step.start(), step.end(), reading);
        if (record.hasSamples()) {
          record.sample(member, step.start(), step.end(), reading);
        }
      }
    }
  }
}
