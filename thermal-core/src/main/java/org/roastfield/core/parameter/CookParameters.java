package org.roastfield.core.parameter;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * The numbers of a cook that may be unknown, and what is believed of them before a log is seen:
 * medians, spreads and bounds. All are assumed, from the ranges of the literature that stand with
 * each. A multiplier of 1 and an offset of 0 are the cook as it is stated.
 */
public final class CookParameters {

  /** Heat transfer by convection, and vapour with it, over the stated one, on one cooker. */
  public static final Parameter CONVECTION =
      Parameter.multiplier(
          "convection",
          Owner.COOKER,
          0.3,
          0.4,
          3,
          "assumed: natural convection by correlation is 20-30 % low in moving gas, ± 30 %");

  /** What the walls are warmer than stated [K]. */
  public static final Parameter WALLS =
      Parameter.offset(
          "walls", "K", Owner.COOKER, 8, -25, 25, "assumed: walls within 25 K of the air");

  /** What the chamber's probe shows too much [K]: the air is the log less this. */
  public static final Parameter AIR_BIAS =
      Parameter.offset(
          "air-bias",
          "K",
          Owner.COOKER,
          4,
          -15,
          15,
          "assumed: probes near food or walls show 5-15 K less or more");

  /** Humidity ratio over the stated one. */
  public static final Parameter HUMIDITY =
      Parameter.multiplier(
          "humidity",
          Owner.COOKER,
          0.5,
          0.2,
          4.5,
          "assumed: 0.008-0.15 kg/kg around 0.035 in a closed chamber");

  /** Heat by contact with hot metal over the stated one: grate, share and conductance together. */
  public static final Parameter CONTACT =
      Parameter.multiplier(
          "contact",
          Owner.COOKER,
          0.35,
          0.3,
          3,
          "assumed: grates ± 40 K around 260 °C and 0.22 ± 0.06 of the face touched");

  /** Convection of one cook over that of its cooker: wind, load and place. */
  public static final Parameter CONVECTION_OF_COOK =
      Parameter.multiplier(
          "convection-of-cook",
          Owner.CUT,
          0.15,
          0.5,
          2,
          "assumed: cooks on one cooker differ by a half of what cookers differ by");

  /** Heat transfer in the rest over the stated one. */
  public static final Parameter REST =
      Parameter.multiplier(
          "rest", Owner.CUT, 0.2, 0.6, 1.8, "assumed: 7-20 W/(m²·K) around 11 in a room");

  /** Every length of the cut over the stated one. */
  public static final Parameter SIZE =
      Parameter.multiplier(
          "size", Owner.CUT, 0.07, 0.75, 1.25, "assumed: a ruler on a soft cut is 6-8 % off");

  /** Thermal diffusivity over that of the material, made by the heat capacity of a volume. */
  public static final Parameter DIFFUSIVITY =
      Parameter.multiplier(
          "diffusivity",
          Owner.CUT,
          0.07,
          0.75,
          1.25,
          "assumed: lean meat 1.05-1.55e-7 m²/s around 1.30e-7, ± 7 %");

  /**
   * Wetness of the face over the stated one, or the water that a drying face holds and gets over
   * the default.
   */
  public static final Parameter WETNESS =
      Parameter.multiplier(
          "wetness",
          Owner.CUT,
          0.4,
          0.1,
          3,
          "assumed: 0.6 on bare meat, 0.15 under fat, ± 40 %; a nine-hour cook 1.1");

  /** What the cut starts warmer than stated [K]; 3 K where it has stood in a room. */
  public static final Parameter START =
      Parameter.offset(
          "start", "K", Owner.CUT, 1.5, -10, 15, "assumed: 1.5 K out of a fridge, 3 K tempered");

  /** How far the tip of a probe that is meant for the middle misses it [m]. */
  public static final Parameter PROBE_OFFSET =
      new Parameter(
          "probe-offset",
          "m",
          Owner.PROBE,
          Scale.PLAIN,
          0.004,
          0.003,
          0,
          0.015,
          "assumed: 4 ± 3 mm from the middle, 15 mm at most");

  /** How much deeper a probe sits than its stated depth [m]. */
  public static final Parameter PROBE_DEPTH =
      Parameter.offset(
          "probe-offset",
          "m",
          Owner.PROBE,
          0.003,
          -0.015,
          0.015,
          "assumed: ± 3 mm from the stated depth, 15 mm at most");

  /** What a probe shows too much [K]. */
  public static final Parameter PROBE_BIAS =
      new Parameter(
          "probe-bias",
          "K",
          Owner.PROBE,
          Scale.PLAIN,
          0.3,
          0.5,
          -2.5,
          3,
          "assumed: stems carry heat inwards; classes of accuracy are ± 0.5 to 2 K");

  private static final List<Parameter> ALL =
      List.of(
          CONVECTION,
          WALLS,
          AIR_BIAS,
          HUMIDITY,
          CONTACT,
          CONVECTION_OF_COOK,
          REST,
          SIZE,
          DIFFUSIVITY,
          WETNESS,
          START,
          PROBE_OFFSET,
          PROBE_BIAS);

  private CookParameters() {}

  /** All of them, a cooker's first, as for a probe meant for the middle. */
  public static ParameterSet all() {
    return ParameterSet.of(ALL.toArray(new Parameter[0]));
  }

  /**
   * One by its id.
   *
   * @throws IllegalArgumentException if there is none of that id
   */
  public static Parameter named(String id) {
    ParameterSet all = all();
    return all.get(all.index(Check.notBlank("id", id)));
  }

  /** Value that changes nothing: 1 of a multiplier, 0 of an offset. */
  public static double neutral(String id) {
    return named(id).scale() == Scale.LOGARITHM ? 1 : 0;
  }

  /**
   * Standard deviation of a cooker's coordinate from cook to cook, beside what is not known of the
   * cooker: of convection that of {@link #CONVECTION_OF_COOK}; of the others 0, which lets what
   * differs between cooks stand in the cut's own numbers. Assumed.
   */
  public static double betweenCooks(String id) {
    return id.equals(CONVECTION.id()) ? CONVECTION_OF_COOK.spread() : 0;
  }
}
