package org.roastfield.core.plan;

import org.roastfield.core.ensemble.EnsembleResult;
import org.roastfield.core.ensemble.EnsembleSensitivities;

/**
 * How a change moves a cook that goes by the rule of a plan, from derivatives by the change at the
 * same reading and by the reading, eq. (99). Coordinate 0 is the change and 1 the reading.
 */
final class Shift {

  private static final int CHANGE = 0;
  private static final int READING = 1;

  /** How far a reading is looked for, in what strides, and how near it is found [K]. */
  private static final double MOST = 12;

  private static final double STRIDE = 0.25;
  private static final double NEAR_ENOUGH = 1e-6;

  private final EnsembleSensitivities by;
  private final int member;
  private final Course course;
  private final Plan plan;
  private final double before;
  private final double amount;

  /**
   * @param by derivatives of some members
   * @param member of them
   * @param before when it is pulled without the change [s]
   * @param amount of the change
   */
  Shift(
      EnsembleSensitivities by,
      int member,
      Course course,
      Plan plan,
      double before,
      double amount) {
    this.member = member;
    this.before = before;
    this.by = by;
    this.course = course;
    this.plan = plan;
    this.amount = amount;
  }

  /** Stages whose ends are told of: nearly there, the pull, the wait, the pause and the sear. */
  private int[] stages() {
    return new int[] {course.near, course.pull, course.wait, course.pause, course.sear};
  }

  /**
   * What the change moves: ends of stages, when it could have rested [s], and the highest core [K].
   */
  double[] moves() {
    double higher = higher();
    int[] stages = stages();
    double[] moves = new double[stages.length + 2];
    for (int s = 0; s < stages.length; s++) {
      moves[s] = shift(stages[s], higher);
    }
    moves[stages.length] = amount * ready(CHANGE) + higher * ready(READING);
    moves[stages.length + 1] = amount * peak(CHANGE) + higher * peak(READING);
    return moves;
  }

  /** The same numbers halfway. */
  double[] halfway() {
    EnsembleResult half = by.result();
    int[] stages = stages();
    double[] numbers = new double[stages.length + 2];
    for (int s = 0; s < stages.length; s++) {
      numbers[s] = half.stageEnd(member, stages[s]);
    }
    double pull = half.stageEnd(member, course.pull);
    double waited = half.stageEnd(member, course.wait) - pull;
    numbers[stages.length] = half.stageEnd(member, course.sear) - waited;
    numbers[stages.length + 1] = half.corePeak(member, hottest());
    return numbers;
  }

  /**
   * By how much the reading moves at which the rule pulls: the root nearest to none, found in
   * strides and then by halves; NaN if there is none within {@link #MOST} [K].
   */
  double higher() {
    for (double low = 0; low < MOST; low += STRIDE) {
      if (above(low) <= 0 && above(low + STRIDE) > 0) {
        return between(low, low + STRIDE);
      }
      if (above(-low) > 0 && above(-low - STRIDE) <= 0) {
        return between(-low - STRIDE, -low);
      }
    }
    return Double.NaN;
  }

  private double between(double from, double to) {
    double low = from;
    double high = to;
    while (high - low > NEAR_ENOUGH) {
      double middle = 0.5 * (low + high);
      if (above(middle) > 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return 0.5 * (low + high);
  }

  /** By how much a display that is drawn on is above its target after the change [K]. */
  private double above(double higher) {
    double pull = shift(course.pull, higher);
    double near = shift(course.near, higher);
    double half =
        by.result().stageEnd(member, course.pull) - by.result().stageEnd(member, course.near);
    double without = half - 0.5 * (pull - near);
    double faster = Plan.AHEAD / (without + pull - near) - Plan.AHEAD / without;
    double target = plan.pull().target(before + pull) - plan.pull().target(before);
    return higher + plan.pull().ahead() * faster - target;
  }

  /** By how much a stage's end moves, at a reading that does too [s]. */
  private double shift(int stage, double higher) {
    return amount * end(stage, CHANGE) + higher * end(stage, READING);
  }

  private double end(int stage, int coordinate) {
    return by.stageEnd(member, stage, coordinate);
  }

  /** Derivative of when it could have rested. */
  private double ready(int coordinate) {
    double waited = end(course.wait, coordinate) - end(course.pull, coordinate);
    return end(course.sear, coordinate) - waited;
  }

  private double peak(int coordinate) {
    return by.corePeak(member, hottest(), coordinate);
  }

  /** Stage of the highest core. */
  private int hottest() {
    int hottest = 0;
    for (int stage = 1; stage <= course.hold; stage++) {
      boolean hotter = by.result().corePeak(member, stage) > by.result().corePeak(member, hottest);
      hottest = hotter ? stage : hottest;
    }
    return hottest;
  }
}
