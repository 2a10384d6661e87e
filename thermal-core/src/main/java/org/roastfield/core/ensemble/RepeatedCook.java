package org.roastfield.core.ensemble;

import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.AloneIntegration;
import org.roastfield.core.integration.CookIntegration;
import org.roastfield.core.integration.MemberRecord;
import org.roastfield.core.internal.Check;
import org.roastfield.core.simulation.Settings;

/**
 * One cook after another in the same memory, for a caller who needs the next answer now: a run
 * allocates nothing if its cook has the template's kind of shape and of properties and waits for
 * core or surface only. Holds the last run's numbers; not for several threads at once.
 */
public final class RepeatedCook {

  private final AloneIntegration integration;
  private final MemberRecord record;
  private final int stages;

  private RepeatedCook(Settings settings, Cook template) {
    this.stages = template.stages().size();
    this.record = new MemberRecord(1, stages, new double[0]);
    this.integration =
        new AloneIntegration(
            template,
            new CookIntegration.Accuracy(
                settings.accuracy(),
                settings.cells(),
                settings.surfaceCell(),
                settings.mostSteps()));
  }

  /**
   * Memory for cooks like a template.
   *
   * @param template defines the grid over relative depth and the largest number of stages
   */
  public static RepeatedCook of(Settings settings, Cook template) {
    return new RepeatedCook(settings, template);
  }

  /**
   * Computes a cook; its numbers replace those of the last.
   *
   * @param cook has at most as many stages as the template
   */
  public MemberStatus run(Cook cook) {
    Check.inRange("number of stages", cook.stages().size(), 1, stages);
    record.clear();
    integration.run(cook, 0, record);
    return MemberStatus.of(record.status[0]);
  }

  /** End of a stage since the start of the cook [s]; NaN if it was not reached. */
  public double stageEnd(int stage) {
    return record.stageEnd[checked(stage)];
  }

  /** Core at the end of a stage [K]; NaN if it was not reached. */
  public double coreAtEnd(int stage) {
    return record.coreAtEnd[checked(stage)];
  }

  /** Surface, or upper face, at the end of a stage [K]; NaN if it was not reached. */
  public double surfaceAtEnd(int stage) {
    return record.surfaceAtEnd[checked(stage)];
  }

  /** Highest core of a stage [K]; NaN if it was not reached. */
  public double corePeak(int stage) {
    return record.corePeak[checked(stage)];
  }

  /** When the core was highest in a stage [s]; NaN if it was not reached. */
  public double corePeakTime(int stage) {
    return record.corePeakTime[checked(stage)];
  }

  /** Water evaporated from the surface or upper face [kg/m²]. */
  public double evaporated() {
    return record.evaporated[0];
  }

  private int checked(int stage) {
    return Check.inRange("stage", stage, 0, stages - 1);
  }
}
