package org.roastfield.lab.replay;

/** A number that a fit may change. */
public enum FitParameter {
  /** Size of the cut over the stated one: what a log tells of R²/α. */
  SIZE("size", 1, 1e-3, 0.3, 3),
  /** Water that the face holds and gets over that of its surface as stated: the surface drive. */
  DRIVE("drive", 1, 1e-2, 1e-3, 10),
  /** Start temperature less the stated one [K]. */
  START("start", 0, 0.05, -40, 40),
  /** Convection over the stated heat transfer coefficient or that by correlation. */
  CONVECTION("convection", 1, 1e-2, 0.05, 20);

  private final String word;
  private final double neutral;
  private final double step;
  private final double lowest;
  private final double highest;

  FitParameter(String word, double neutral, double step, double lowest, double highest) {
    this.word = word;
    this.neutral = neutral;
    this.step = step;
    this.lowest = lowest;
    this.highest = highest;
  }

  /** Name on the command line. */
  public String word() {
    return word;
  }

  /** Value that changes nothing. */
  public double neutral() {
    return neutral;
  }

  /** Half the difference that derivatives are taken over. */
  double step() {
    return step;
  }

  double lowest() {
    return lowest;
  }

  double highest() {
    return highest;
  }

  /** Whether a fit that came to a value was stopped by a bound. */
  public boolean isAtBound(double value) {
    return value <= lowest || value >= highest;
  }

  /**
   * Refuses a value that no fit could come to.
   *
   * @throws IllegalArgumentException if it is out of its bounds
   */
  void check(double value) {
    if (!(value >= lowest && value <= highest)) {
      throw new IllegalArgumentException(
          word + " must be in [" + lowest + ", " + highest + "], was " + value);
    }
  }

  /**
   * The parameter of a name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static FitParameter of(String word) {
    for (FitParameter parameter : values()) {
      if (parameter.word.equals(word)) {
        return parameter;
      }
    }
    throw new IllegalArgumentException(
        "parameter must be size, drive, start or convection, was \"" + word + "\"");
  }
}
