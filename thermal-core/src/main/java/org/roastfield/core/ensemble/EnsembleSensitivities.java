package org.roastfield.core.ensemble;

import org.roastfield.core.integration.TangentRecord;
import org.roastfield.core.internal.Check;

/**
 * An ensemble and the derivatives of each member's numbers by its parameters. Immutable. Members,
 * stages, parameters and samples count from 0. A derivative has the unit of its number per unit of
 * the parameter, and is NaN where the number is.
 *
 * <p>They are the derivatives of the discrete scheme on each member's own steps, whose lengths stay
 * but for the last of each stage, which moves with the stage's end.
 */
public final class EnsembleSensitivities {

  private final EnsembleResult result;
  private final TangentRecord record;
  private final int sampleCount;

  EnsembleSensitivities(EnsembleResult result, TangentRecord record, int sampleCount) {
    this.result = result;
    this.record = record;
    this.sampleCount = sampleCount;
  }

  /** The members themselves: the same as without derivatives, bit for bit. */
  public EnsembleResult result() {
    return result;
  }

  /** How many parameters each member has. */
  public int parameters() {
    return record.parameters;
  }

  /** Derivative of {@link EnsembleResult#stageEnd} [s]. */
  public double stageEnd(int member, int stage, int parameter) {
    return record.stageEnd[place(member, stage, parameter)];
  }

  /** Derivative of {@link EnsembleResult#coreAtEnd}, along with that end [K]. */
  public double coreAtEnd(int member, int stage, int parameter) {
    return record.coreAtEnd[place(member, stage, parameter)];
  }

  /** Derivative of {@link EnsembleResult#surfaceAtEnd}, along with that end [K]. */
  public double surfaceAtEnd(int member, int stage, int parameter) {
    return record.surfaceAtEnd[place(member, stage, parameter)];
  }

  /** Derivative of {@link EnsembleResult#corePeak} [K]. */
  public double corePeak(int member, int stage, int parameter) {
    return record.corePeak[place(member, stage, parameter)];
  }

  /** Derivative of {@link EnsembleResult#evaporated} [kg/m²]. */
  public double evaporated(int member, int parameter) {
    return record.evaporated[checked(member) * record.parameters + checkedParameter(parameter)];
  }

  /** Derivative of {@link EnsembleResult#coreAt} at its fixed time [K]. */
  public double coreAt(int member, int sample, int parameter) {
    Check.inRange("sample", sample, 0, sampleCount - 1);
    int row = checked(member) * sampleCount + sample;
    return record.samples[row * record.parameters + checkedParameter(parameter)];
  }

  private int place(int member, int stage, int parameter) {
    return record.place(
        checked(member),
        Check.inRange("stage", stage, 0, record.stages - 1),
        checkedParameter(parameter));
  }

  private int checked(int member) {
    return Check.inRange("member", member, 0, result.size() - 1);
  }

  private int checkedParameter(int parameter) {
    return Check.inRange("parameter", parameter, 0, record.parameters - 1);
  }
}
