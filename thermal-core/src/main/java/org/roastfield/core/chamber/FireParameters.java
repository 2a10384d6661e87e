package org.roastfield.core.chamber;

import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.parameter.Scale;

/**
 * What is not known of a pit, as multipliers on one that is like it, and of how it drifts. All are
 * assumed: ranges of use, no measured source found.
 */
public final class FireParameters {

  private static final String ASSUMED = "assumed: range of lidded pits, no measured source found";

  private static final Parameter CAPACITY = multiplier("fire-wall-capacity", 0.3, 0.3, 3);
  private static final Parameter LOSS = multiplier("fire-wall-loss", 0.25, 0.4, 2.5);
  private static final Parameter EXCHANGE = multiplier("fire-gas-exchange", 0.35, 0.3, 3);
  private static final Parameter VENTS = multiplier("fire-vents", 0.35, 0.3, 3);
  private static final Parameter POWER = multiplier("fire-bed-power", 0.25, 0.4, 2.5);
  private static final Parameter IGNITION = multiplier("fire-ignition", 0.3, 0.4, 2.5);
  private static final Parameter HEATING_VALUE = multiplier("fire-heating-value", 0.08, 0.7, 1.3);
  private static final Parameter OPEN_LOSS = multiplier("fire-lid-loss", 0.5, 0.2, 5);
  private static final Parameter LIGHTING = multiplier("fire-lighting", 0.2, 0.5, 2);

  /** Standard deviation of the air about its setting [K]. */
  public static final Parameter DRIFT =
      new Parameter("fire-drift", "K", Owner.COOKER, Scale.LOGARITHM, 8, 0.3, 1, 30, ASSUMED);

  /** Correlation time of that [s]. */
  public static final Parameter DRIFT_TIME =
      new Parameter(
          "fire-drift-time", "s", Owner.COOKER, Scale.LOGARITHM, 2100, 0.4, 120, 14_400, ASSUMED);

  /** How far the air falls under an open lid, over the fall to {@link Lid#OPEN_AIR}. */
  public static final Parameter LID_DEPTH =
      Parameter.multiplier(
          "lid-depth",
          Owner.COOKER,
          0.2,
          0.3,
          1.3,
          "assumed: air falls to 20-50 K above the outside, 40-70 K of 60 at 110 °C");

  /** Time constant of the air's recovery after an opening, over {@link Lid#RECOVERY}. */
  public static final Parameter LID_RECOVERY =
      Parameter.multiplier(
          "lid-recovery",
          Owner.COOKER,
          0.3,
          0.3,
          3,
          "assumed: warm again after two to four times as long as it was open");

  /** Cooks on one cooker differ by this share of what cookers differ by, as of convection. */
  private static final double SHARE_OF_COOKS = 0.5;

  private static final Parameter GLOWING =
      Parameter.multiplier("fire-glowing", Owner.CUT, 0.4, 0.2, 5, ASSUMED);
  private static final Parameter SETTING =
      Parameter.offset("fire-setting-offset", "K", Owner.PROBE, 5, -25, 25, ASSUMED);
  private static final Parameter LAG =
      new Parameter(
          "fire-probe-lag",
          "s",
          Owner.PROBE,
          Scale.LOGARITHM,
          45,
          0.4,
          5,
          300,
          "assumed: 20-90 s of probes in still air");

  private FireParameters() {}

  private static Parameter multiplier(String id, double spread, double low, double high) {
    return Parameter.multiplier(id, Owner.COOKER, spread, low, high, ASSUMED);
  }

  /** Of the pit itself, in the order of {@link #pit}. */
  public static ParameterSet ofPit() {
    return ParameterSet.of(
        CAPACITY, LOSS, EXCHANGE, VENTS, POWER, IGNITION, HEATING_VALUE, OPEN_LOSS, LIGHTING);
  }

  /** What the air of a cooker does by itself, tended by hand, and under an open lid. */
  public static ParameterSet ofHabit() {
    return ParameterSet.of(DRIFT, DRIFT_TIME, LID_DEPTH, LID_RECOVERY);
  }

  /**
   * Standard deviation from cook to cook of a coordinate of {@link #ofHabit}; assumed half of that
   * over cookers.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  public static double betweenCooks(String id) {
    ParameterSet habit = ofHabit();
    return SHARE_OF_COOKS * habit.get(habit.index(id)).spread();
  }

  /**
   * Of one log: multiplier on the glowing coals that went in, what the setting was meant to be less
   * what the probe showed, and the probe's lag.
   */
  public static ParameterSet ofLog() {
    return ParameterSet.of(GLOWING, SETTING, LAG);
  }

  /**
   * A pit like another with multipliers; those that are not in the set are 1.
   *
   * @param base pit that it is like
   * @param parameters some or all of {@link #ofPit}; others are not looked at
   * @param values of them, as many
   * @throws IllegalArgumentException if the pit leaves the range of its records
   */
  public static FirePit pit(FirePit base, ParameterSet parameters, double[] values) {
    Multipliers by = new Multipliers(parameters, values);
    FirePit.Walls walls = base.walls();
    FirePit.Vents vents = base.vents();
    FirePit.Bed bed = base.bed();
    return new FirePit(
        new FirePit.Walls(
            walls.capacity() * by.of(CAPACITY),
            walls.area(),
            walls.inner(),
            walls.exchange() * by.of(EXCHANGE),
            walls.loss() * by.of(LOSS),
            walls.openLoss() * by.of(OPEN_LOSS)),
        new FirePit.Vents(vents.area() * by.of(VENTS), vents.height(), vents.airUse()),
        new FirePit.Bed(
            bed.power() * by.of(POWER),
            bed.burnOut(),
            bed.ignition() * by.of(IGNITION),
            bed.radiantShare(),
            bed.heatingValue() * by.of(HEATING_VALUE),
            bed.usable(),
            bed.lighting() * by.of(LIGHTING)));
  }

  /** Multipliers by parameter. */
  private static final class Multipliers {

    private final ParameterSet parameters;
    private final double[] values;

    Multipliers(ParameterSet parameters, double[] values) {
      Check.inRange("length of values", values.length, parameters.size(), parameters.size());
      this.parameters = parameters;
      this.values = values;
    }

    double of(Parameter parameter) {
      return parameters.has(parameter.id()) ? values[parameters.index(parameter.id())] : 1;
    }
  }
}
