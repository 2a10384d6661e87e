package org.roastfield.core.integration;

/**
 * Where a stage stands: how long the next attempt shall be, and what follows from one. One object a
 * cook, used by the single cook and by each lane.
 *
 * <p>A threshold that a step passes is located by repeating the step with other lengths: first
 * where its dense output meets the threshold, then by Newton's rule inside a bracket.
 */
final class StageProgress {

  /** What follows from an attempt. */
  enum Verdict {
    /** The step stands; the stage goes on. */
    ACCEPT,
    /** The step stands and ends the stage by its duration. */
    ACCEPT_LAST,
    /** The step stands and ends the stage at its threshold. */
    ACCEPT_THRESHOLD,
    /** Again from the same state. */
    REPEAT,
    /** The step has become too small to mean anything. */
    GIVE_UP
  }

  /** Accuracy for which the first step of a stage is d²/α [K]. */
  private static final double ACCURACY_OF_FIRST_STEP = 0.01;

  /** Longest step in units of the shortest period of the surroundings. */
  static final double PERIOD_SHARE = 1.0 / 3;

  /**
   * Share of what remains by which round-off may miss it. A half whose step was refused is followed
   * by one of the same length: without this, chance would decide whether that is cut in two again.
   */
  private static final double ROUND_OFF = 1e-9;

  private static final double SMALLEST_STEP = 1e-9;
  private static final double SHRINK_AFTER_FAILURE = 0.25;
  private static final double EVENT_TIME_TOLERANCE = 1e-4;

  /** Largest distance from a threshold at which it counts as met [K]. */
  private static final double EVENT_TEMPERATURE_TOLERANCE = 1e-9;

  private static final int MOST_TRIALS = 40;

  private final double tolerance;
  private boolean afterRejection;
  private double end;
  private double longest;
  private double wish;
  private double step;
  private boolean locating;
  private int trials;
  private double low;
  private double missingLow;
  private double high;
  private double missingHigh;

  StageProgress(double tolerance) {
    this.tolerance = tolerance;
  }

  /**
   * First step of a stage in units of the time in which heat crosses the cell at the face, d²/α: it
   * grows with the square root of the accuracy, as the error that a jump leaves does with the step.
   */
  static double firstStep(double accuracy) {
    return Math.sqrt(accuracy / ACCURACY_OF_FIRST_STEP);
  }

  /**
   * Begins a stage.
   *
   * @param end latest time [s]
   * @param period shortest period of the surroundings [s]
   * @param firstStep [s]
   */
  void begin(double end, double period, double firstStep) {
    this.end = end;
    this.longest = PERIOD_SHARE * period;
    this.wish = firstStep;
    this.locating = false;
    this.afterRejection = false;
  }

  /** Latest time of the stage [s]. */
  double end() {
    return end;
  }

  /**
   * Length of the next attempt [s]: it ends with the stage, or leaves at least as much for the
   * next.
   */
  double nextStep(double time) {
    if (locating) {
      return step;
    }
    double remaining = end - time;
    double length = Math.min(wish, longest);
    if (length >= (1 - ROUND_OFF) * remaining) {
      step = remaining;
    } else {
      step = 2 * length > remaining ? remaining / 2 : length;
    }
    return step;
  }

  /** Verdict on an attempt whose stages could not be solved, or whose error is too large. */
  Verdict refuse(boolean solved, double error, double growth) {
    wish = step * (solved && error >= 0 ? factor(error, growth) : SHRINK_AFTER_FAILURE);
    locating = false;
    return wish > SMALLEST_STEP * Math.max(1, end) ? Verdict.REPEAT : Verdict.GIVE_UP;
  }

  boolean accepts(double error) {
    return error <= tolerance;
  }

  private double factor(double error, double growth) {
    boolean rejected = error > tolerance;
    boolean limited = afterRejection || rejected;
    afterRejection = rejected;
    return StepControl.factor(growth, limited);
  }

  /** Verdict on an attempt within the accuracy, without a threshold. */
  Verdict keep(double time, double error, double growth) {
    boolean last = step >= end - time;
    wish = step * factor(error, growth);
    return last ? Verdict.ACCEPT_LAST : Verdict.ACCEPT;
  }

  /**
   * Verdict on an attempt within the accuracy, with a threshold.
   *
   * @param threshold what is waited for
   * @param reading the threshold's place in the attempt
   */
  Verdict keep(double time, double error, double growth, Threshold threshold, StepReading reading) {
    if (locating) {
      return locate(threshold, reading);
    }
    double share = threshold.crossing(reading);
    if (share == Double.POSITIVE_INFINITY) {
      return keep(time, error, growth);
    }
    locating = true;
    trials = 0;
    low = 0;
    missingLow = threshold.missing(reading.start());
    high = step;
    missingHigh = threshold.missing(reading.end());
    if (missingHigh > 0) {
      high = Double.POSITIVE_INFINITY;
    }
    if (share >= 1) {
      return Verdict.ACCEPT_THRESHOLD;
    }
    step *= share;
    return Verdict.REPEAT;
  }

  private Verdict locate(Threshold threshold, StepReading reading) {
    double missing = threshold.missing(reading.end());
    if (missing > 0) {
      low = step;
      missingLow = missing;
    } else {
      high = step;
      missingHigh = missing;
    }
    trials++;
    boolean met = Math.abs(missing) <= EVENT_TEMPERATURE_TOLERANCE;
    if (met || high - low <= EVENT_TIME_TOLERANCE || trials >= MOST_TRIALS) {
      locating = false;
      return Verdict.ACCEPT_THRESHOLD;
    }
    step = nextTrial(missing, threshold.approach(reading));
    return Verdict.REPEAT;
  }

  /**
   * Where the last trial's tangent meets the threshold, if that lies well inside the bracket;
   * otherwise where the secant does.
   *
   * @param missing at the end of the last trial [K]
   * @param approach decrease of what is missing, there [K/s]
   */
  private double nextTrial(double missing, double approach) {
    double tangent = step + missing / approach;
    if (tangent > low && tangent < high) {
      return tangent;
    }
    if (high == Double.POSITIVE_INFINITY) {
      return step * 1.01 + EVENT_TIME_TOLERANCE;
    }
    double secant = low + (high - low) * missingLow / (missingLow - missingHigh);
    double margin = 0.01 * (high - low);
    return Math.max(low + margin, Math.min(high - margin, secant));
  }
}
