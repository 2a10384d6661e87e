package org.roastfield.core.ensemble;

import java.util.Map;
import org.roastfield.core.integration.MemberRecord;
import org.roastfield.core.internal.Check;

/**
 * A few numbers of each member of an ensemble, and their distributions. Immutable. Members count
 * from 0, and so do stages.
 */
public final class EnsembleResult {

  private final int members;
  private final MemberRecord record;
  private final int sampleCount;
  private final Map<Integer, String> notBuilt;

  EnsembleResult(int members, MemberRecord record, int sampleCount, Map<Integer, String> notBuilt) {
    this.members = members;
    this.record = record;
    this.sampleCount = sampleCount;
    this.notBuilt = Map.copyOf(notBuilt);
  }

  /** How many members were asked for. */
  public int size() {
    return members;
  }

  /** How many were computed to their end. */
  public int completed() {
    int count = 0;
    for (int i = 0; i < members; i++) {
      if (record.status[i] == MemberRecord.COMPLETED) {
        count++;
      }
    }
    return count;
  }

  /** How a member ended. */
  public MemberStatus status(int member) {
    return MemberStatus.of(record.status[checked(member)]);
  }

  /** Why a member could not be built, or an empty text. */
  public String message(int member) {
    return notBuilt.getOrDefault(checked(member), "");
  }

  /** Index of the stage in which a member stopped; the number of its stages if it completed. */
  public int lastStage(int member) {
    return record.lastStage[checked(member)];
  }

  /** End of a member's stage since the start of its cook [s]; NaN if it did not get there. */
  public double stageEnd(int member, int stage) {
    return record.stageEnd[place(member, stage)];
  }

  /** Core of a member at the end of a stage [K]; NaN if it did not get there. */
  public double coreAtEnd(int member, int stage) {
    return record.coreAtEnd[place(member, stage)];
  }

  /** Surface of a member at the end of a stage [K]; NaN if it did not get there. */
  public double surfaceAtEnd(int member, int stage) {
    return record.surfaceAtEnd[place(member, stage)];
  }

  /** Highest core of a member in a stage [K]; NaN if it did not get there. */
  public double corePeak(int member, int stage) {
    return record.corePeak[place(member, stage)];
  }

  /** When the core of a member was highest in a stage [s]; NaN if it did not get there. */
  public double corePeakTime(int member, int stage) {
    return record.corePeakTime[place(member, stage)];
  }

  /** Water evaporated from a member's surface or upper face [kg/m²]. */
  public double evaporated(int member) {
    return record.evaporated[checked(member)];
  }

  /** Core of a member at the sample time of an index [K]; NaN after its end. */
  public double coreAt(int member, int sample) {
    Check.inRange("sample", sample, 0, sampleCount - 1);
    return record.samples[checked(member) * sampleCount + sample];
  }

  /** Steps kept of a member. */
  public int acceptedSteps(int member) {
    return record.acceptedSteps[checked(member)];
  }

  /** Steps of a member that were repeated. */
  public int rejectedSteps(int member) {
    return record.rejectedSteps[checked(member)];
  }

  /** Distribution of the end of a stage [s]. */
  public Distribution stageEnds(int stage) {
    return column(record.stageEnd, record.stages, checkedStage(stage));
  }

  /** Distribution of the core at the end of a stage [K]. */
  public Distribution coresAtEnd(int stage) {
    return column(record.coreAtEnd, record.stages, checkedStage(stage));
  }

  /** Distribution of the highest core of a stage [K], over members that finished it. */
  public Distribution corePeaks(int stage) {
    int at = checkedStage(stage);
    double[] values = new double[members];
    for (int i = 0; i < members; i++) {
      int place = i * record.stages + at;
      values[i] = Double.isNaN(record.stageEnd[place]) ? Double.NaN : record.corePeak[place];
    }
    return Distribution.of(values);
  }

  /**
   * Distribution of the core at the sample time of an index [K], over members not yet at their end.
   */
  public Distribution coresAt(int sample) {
    Check.inRange("sample", sample, 0, sampleCount - 1);
    return column(record.samples, sampleCount, sample);
  }

  private Distribution column(double[] values, int stride, int at) {
    double[] column = new double[members];
    for (int i = 0; i < members; i++) {
      column[i] = values[i * stride + at];
    }
    return Distribution.of(column);
  }

  private int checked(int member) {
    return Check.inRange("member", member, 0, members - 1);
  }

  private int checkedStage(int stage) {
    return Check.inRange("stage", stage, 0, record.stages - 1);
  }

  private int place(int member, int stage) {
    return checked(member) * record.stages + checkedStage(stage);
  }
}
