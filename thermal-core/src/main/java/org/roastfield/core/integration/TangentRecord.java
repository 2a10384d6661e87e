package org.roastfield.core.integration;

/**
 * Derivatives of what a {@link MemberRecord} keeps, by some parameters; members write to places of
 * their own.
 */
public final class TangentRecord {

  /** Parameters of each member. */
  public final int parameters;

  /** Stages kept of each member. */
  public final int stages;

  /** Of the ends of stages [members · stages · parameters], NaN where not reached [s]. */
  public final double[] stageEnd;

  /** Of the core at the end of each stage, along with that end [K]. */
  public final double[] coreAtEnd;

  /** Of the surface at the end of each stage, along with that end [K]. */
  public final double[] surfaceAtEnd;

  /** Of the highest core of each stage [K]. */
  public final double[] corePeak;

  /** Of the water evaporated [members · parameters] [kg/m²]. */
  public final double[] evaporated;

  /** Of the core at the sample times [members · times · parameters], NaN after the end [K]. */
  public final double[] samples;

  private final MemberRecord plain;

  /**
   * @param plain record of the members themselves
   * @param members how many
   */
  public TangentRecord(MemberRecord plain, int members, int parameters) {
    this.plain = plain;
    this.parameters = parameters;
    stages = plain.stages;
    stageEnd = missing(members * stages * parameters);
    coreAtEnd = missing(members * stages * parameters);
    surfaceAtEnd = missing(members * stages * parameters);
    corePeak = missing(members * stages * parameters);
    evaporated = missing(members * parameters);
    samples = missing(members * plain.sampleTimes.length * parameters);
  }

  private static double[] missing(int length) {
    double[] array = new double[length];
    java.util.Arrays.fill(array, Double.NaN);
    return array;
  }

  /** Place of a stage's number of a parameter. */
  public int place(int member, int stage, int parameter) {
    return (member * stages + stage) * parameters + parameter;
  }

  /** Keeps the sample at the very start of a cook, if there is one. */
  void begins(int member, int parameter, double time, double core) {
    double[] times = plain.sampleTimes;
    if (times.length > 0 && times[0] <= time) {
      samples[member * times.length * parameters + parameter] = core;
    }
  }

  /** Times of the samples [s]; not to be modified. */
  double[] sampleTimes() {
    return plain.sampleTimes;
  }

  /** Index of the first sample after a time. */
  int firstAfter(double time) {
    return plain.firstAfter(time);
  }

  void sample(int member, int sample, int parameter, double core) {
    samples[(member * plain.sampleTimes.length + sample) * parameters + parameter] = core;
  }

  void peaked(int member, int stage, int parameter, double core) {
    corePeak[place(member, stage, parameter)] = core;
  }

  void stageEnded(int member, int stage, int parameter, double time, double core, double surface) {
    int at = place(member, stage, parameter);
    stageEnd[at] = time;
    coreAtEnd[at] = core;
    surfaceAtEnd[at] = surface;
  }

  void finished(int member, int parameter, double water) {
    evaporated[member * parameters + parameter] = water;
  }
}
