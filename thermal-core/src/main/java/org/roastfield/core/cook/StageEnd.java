package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * The rule that ends a stage. Every rule has a bound in time, so that no run can go on for ever.
 */
public sealed interface StageEnd
    permits StageEnd.After, StageEnd.At, StageEnd.Rises, StageEnd.Falls {

  /** Longest duration that a rule may allow [s]: ten days. */
  double LONGEST = 864_000;

  /** Bound on the duration of the stage that starts at {@code stageStart} [s]. */
  double longest(double stageStart);

  /** Rule in words, for messages and reports. */
  String description();

  private static void checkIdeal(Probe probe) {
    if (!probe.instrument().isIdeal()) {
      throw new IllegalArgumentException(
          "probe of an end rule must be ideal, since rules wait for true temperatures, was "
              + probe);
    }
  }

  /** Rounded for messages, since a conversion leaves digits that nobody wrote. */
  private static double rounded(double value) {
    return Math.rint(value * 1e6) / 1e6;
  }

  /** Ends after a duration. */
  static StageEnd after(double duration) {
    return new After(duration);
  }

  /** Ends at a time since the start of the cook, at once if that has passed. */
  static StageEnd at(double time) {
    return new At(time);
  }

  /** Ends when the core has risen to a temperature [K]; fails after {@code longest} [s]. */
  static StageEnd coreRisesTo(double temperature, double longest) {
    return new Rises(Probe.CORE, temperature, longest);
  }

  /**
   * Ends after a duration.
   *
   * @param duration [s], greater than 0 and at most {@link StageEnd#LONGEST}
   */
  record After(double duration) implements StageEnd {

    /**
     * @throws IllegalArgumentException if the duration is outside its range
     */
    public After {
      Check.inRange("duration", duration, Double.MIN_NORMAL, LONGEST);
    }

    @Override
    public double longest(double stageStart) {
      return duration;
    }

    @Override
    public String description() {
      return "after " + duration + " s";
    }
  }

  /**
   * Ends at a time since the start of the cook.
   *
   * @param time [s]
   */
  record At(double time) implements StageEnd {

    /**
     * @throws IllegalArgumentException if the time is outside [0, {@link StageEnd#LONGEST}]
     */
    public At {
      Check.inRange("time", time, 0, LONGEST);
    }

    @Override
    public double longest(double stageStart) {
      return Math.max(0, time - stageStart);
    }

    @Override
    public String description() {
      return "at " + time + " s";
    }
  }

  /**
   * Ends when a probe has risen to a temperature, at once if it is already there.
   *
   * @param probe where
   * @param temperature [K]
   * @param longest when the rule counts as failed, since the start of the stage [s]
   */
  record Rises(Probe probe, double temperature, double longest) implements StageEnd {

    /**
     * @throws IllegalArgumentException if the probe is not ideal, the temperature is not positive
     *     or {@code longest} is outside (0, {@link StageEnd#LONGEST}]
     */
    public Rises {
      checkIdeal(probe);
      Check.positive("temperature", temperature);
      Check.inRange("longest", longest, Double.MIN_NORMAL, LONGEST);
    }

    @Override
    public double longest(double stageStart) {
      return longest;
    }

    @Override
    public String description() {
      return probe.name() + " rises to " + rounded(Temperatures.toCelsius(temperature)) + " °C";
    }
  }

  /**
   * Ends when a probe has fallen to a temperature, at once if it is already there.
   *
   * @param probe where
   * @param temperature [K]
   * @param longest when the rule counts as failed, since the start of the stage [s]
   */
  record Falls(Probe probe, double temperature, double longest) implements StageEnd {

    /**
     * @throws IllegalArgumentException if the probe is not ideal, the temperature is not positive
     *     or {@code longest} is outside (0, {@link StageEnd#LONGEST}]
     */
    public Falls {
      checkIdeal(probe);
      Check.positive("temperature", temperature);
      Check.inRange("longest", longest, Double.MIN_NORMAL, LONGEST);
    }

    @Override
    public double longest(double stageStart) {
      return longest;
    }

    @Override
    public String description() {
      return probe.name() + " falls to " + rounded(Temperatures.toCelsius(temperature)) + " °C";
    }
  }
}
