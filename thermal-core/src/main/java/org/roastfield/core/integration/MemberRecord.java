package org.roastfield.core.integration;

/**
 * What is kept of the members of an ensemble: a few numbers a stage and, if asked for, the core at
 * given times. Written by the thread that computes a member; members write to places of their own.
 */
public final class MemberRecord {

  /** Codes of {@link #status}. */
  public static final byte NOT_RUN = 0;

  public static final byte COMPLETED = 1;
  public static final byte END_RULE_NOT_MET = 2;
  public static final byte TOO_MANY_STEPS = 3;
  public static final byte STEP_TOO_SMALL = 4;
  public static final byte FACE_UNBALANCED = 5;
  public static final byte NOT_BUILT = 6;

  /** Stages kept of each member. */
  public final int stages;

  /** [members]. */
  public final byte[] status;

  /** Stage in which a member failed [members]; that after the last if it did not. */
  public final int[] lastStage;

  /** [members · stages], NaN where not reached [s]. */
  public final double[] stageEnd;

  /** Core at the end of each stage [members · stages] [K]. */
  public final double[] coreAtEnd;

  /** Surface at the end of each stage [members · stages] [K]. */
  public final double[] surfaceAtEnd;

  /** Highest core of each stage [members · stages] [K]. */
  public final double[] corePeak;

  /** When [members · stages] [s]. */
  public final double[] corePeakTime;

  /** Water evaporated from the upper face [members] [kg/m²]. */
  public final double[] evaporated;

  /** Accepted steps [members]. */
  public final int[] acceptedSteps;

  /** Repeated steps [members]. */
  public final int[] rejectedSteps;

  /** Times at which the core is kept [s], increasing. */
  final double[] sampleTimes;

  /** Core at those times [members · times], NaN after a member's end [K]. */
  public final double[] samples;

  /**
   * @param members how many
   * @param stages of each member at most
   * @param sampleTimes at which the core is kept [s], increasing; not modified
   */
  public MemberRecord(int members, int stages, double[] sampleTimes) {
    this.stages = stages;
    this.sampleTimes = sampleTimes.clone();
    status = new byte[members];
    lastStage = new int[members];
    stageEnd = missing(members * stages);
    coreAtEnd = missing(members * stages);
    surfaceAtEnd = missing(members * stages);
    corePeak = missing(members * stages);
    corePeakTime = missing(members * stages);
    evaporated = missing(members);
    acceptedSteps = new int[members];
    rejectedSteps = new int[members];
    samples = missing(members * sampleTimes.length);
  }

  /** Empties the record, for another run. */
  public void clear() {
    java.util.Arrays.fill(status, NOT_RUN);
    java.util.Arrays.fill(stageEnd, Double.NaN);
    java.util.Arrays.fill(coreAtEnd, Double.NaN);
    java.util.Arrays.fill(surfaceAtEnd, Double.NaN);
    java.util.Arrays.fill(corePeak, Double.NaN);
    java.util.Arrays.fill(corePeakTime, Double.NaN);
    java.util.Arrays.fill(evaporated, Double.NaN);
    java.util.Arrays.fill(samples, Double.NaN);
  }

  private static double[] missing(int length) {
    double[] array = new double[length];
    java.util.Arrays.fill(array, Double.NaN);
    return array;
  }

  /** Keeps the sample at the very start of a cook, if there is one. */
  void begins(int member, double time, double core) {
    if (sampleTimes.length > 0 && sampleTimes[0] <= time) {
      samples[member * sampleTimes.length] = core;
    }
  }

  /** Whether the core is kept at given times. */
  boolean hasSamples() {
    return sampleTimes.length > 0;
  }

  /** Keeps the samples inside a step. */
  void sample(int member, double start, double end, StepReading core) {
    int at = member * sampleTimes.length;
    for (int i = firstAfter(start); i < sampleTimes.length && sampleTimes[i] <= end; i++) {
      samples[at + i] = core.at((sampleTimes[i] - start) / (end - start));
    }
  }

  /**
   * Takes what another keeps of a member's first stages; it has the same sample times, or this has
   * none.
   */
  void copy(int member, MemberRecord other, int otherMember, int first) {
    int to = member * stages;
    int from = otherMember * other.stages;
    System.arraycopy(other.stageEnd, from, stageEnd, to, first);
    System.arraycopy(other.coreAtEnd, from, coreAtEnd, to, first);
    System.arraycopy(other.surfaceAtEnd, from, surfaceAtEnd, to, first);
    System.arraycopy(other.corePeak, from, corePeak, to, first);
    System.arraycopy(other.corePeakTime, from, corePeakTime, to, first);
    int times = sampleTimes.length;
    System.arraycopy(other.samples, otherMember * times, samples, member * times, times);
  }

  int firstAfter(double time) {
    int low = 0;
    int high = sampleTimes.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sampleTimes[middle] > time) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Keeps the peak of a stage, also of one that was not completed. */
  void peaked(int member, int stage, RunningPeak peak) {
    int at = member * stages + stage;
    corePeak[at] = peak.temperature;
    corePeakTime[at] = peak.time;
  }

  void stageEnded(int member, int stage, double time, double core, double surface) {
    int at = member * stages + stage;
    stageEnd[at] = time;
    coreAtEnd[at] = core;
    surfaceAtEnd[at] = surface;
  }

  void finished(
      int member, byte code, int stage, int accepted, int rejected, double evaporatedUpper) {
    status[member] = code;
    lastStage[member] = stage;
    acceptedSteps[member] = accepted;
    rejectedSteps[member] = rejected;
    evaporated[member] = evaporatedUpper;
  }
}
