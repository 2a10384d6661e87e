package org.roastfield.core.chamber;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * A cooker with a bed of coals, vents and a lid, as one gas, one wall and one bed: eqs. (75)-(81).
 * The gas is in balance at each moment; wall, coals and fuel change with time.
 *
 * @param walls what stores heat and loses it
 * @param vents what lets the air in
 * @param bed what burns
 */
public record FirePit(Walls walls, Vents vents, Bed bed) {

  /**
   * Walls and lid.
   *
   * @param capacity heat capacity that follows the fire [J/K], 1e3 to 1e7
   * @param area [m²], 0.1 to 20
   * @param inner heat capacity of the gas and of what follows it, such as a grate [J/K], 10 to 1e5
   * @param exchange coefficient between gas and wall [W/(m²·K)], 1 to 100: convection, and
   *     radiation of what is as warm as the gas
   * @param loss coefficient from wall to still air outside [W/(m²·K)], 0.1 to 50
   * @param openLoss what the wall loses besides while the lid is open [W/K], 0 to 500
   */
  public record Walls(
      double capacity, double area, double inner, double exchange, double loss, double openLoss) {

    /** More loss for each m/s of wind [W/(m²·K) per m/s]: assumed. */
    public static final double LOSS_BY_WIND = 4;

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Walls {
      Check.inRange("capacity", capacity, 1e3, 1e7);
      Check.inRange("area", area, 0.1, 20);
      Check.inRange("inner", inner, 10, 1e5);
      Check.inRange("exchange", exchange, 1, 100);
      Check.inRange("loss", loss, 0.1, 50);
      Check.inRange("openLoss", openLoss, 0, 500);
    }

    /** Time in which the gas comes to its balance [s]. */
    public double settling() {
      return inner / (area * exchange);
    }

    double lossTo(Outside outside) {
      return area * (loss + LOSS_BY_WIND * outside.wind());
    }
  }

  /**
   * Vents and the height that draws.
   *
   * @param area fully open [m²], 1e-5 to 1
   * @param height of the column of warm gas [m], 0.05 to 20
   * @param airUse share of the air's oxygen that burns, 0.1 to 1
   */
  public record Vents(double area, double height, double airUse) {

    /** Coefficient of discharge of an opening with sharp edges: usual value. */
    public static final double DISCHARGE = 0.6;

    /** Heat that burning makes of air [J/kg], 13.1 MJ for each kg of oxygen [Huggett1980]. */
    public static final double HEAT_OF_AIR = 3.0e6;

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Vents {
      Check.inRange("area", area, 1e-5, 1);
      Check.inRange("height", height, 0.05, 20);
      Check.inRange("airUse", airUse, 0.1, 1);
    }

    /** Heat that the fire makes of the air that passes [J/kg]. */
    double heatOfAir() {
      return airUse * HEAT_OF_AIR;
    }
  }

  /**
   * Coals.
   *
   * @param power of the whole bed when it glows in open air [W], 100 to 1e6
   * @param burnOut heat that coals hold over the power they then give [s], 300 to 36 000
   * @param ignition time constant with which glowing spreads or dies down [s], 30 to 7200
   * @param radiantShare of the power that goes straight to the walls, 0 to 0.8
   * @param heatingValue lower heating value of the fuel [J/kg], 5e6 to 4e7
   * @param usable share of the fuel that burns before the rest is ash and crumbs, 0.3 to 1
   * @param lighting time from striking the match to coals that glow [s], 0 to 7200
   */
  public record Bed(
      double power,
      double burnOut,
      double ignition,
      double radiantShare,
      double heatingValue,
      double usable,
      double lighting) {

    /**
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Bed {
      Check.inRange("power", power, 100, 1e6);
      Check.inRange("burnOut", burnOut, 300, 36_000);
      Check.inRange("ignition", ignition, 30, 7200);
      Check.inRange("radiantShare", radiantShare, 0, 0.8);
      Check.inRange("heatingValue", heatingValue, 5e6, 4e7);
      Check.inRange("usable", usable, 0.3, 1);
      Check.inRange("lighting", lighting, 0, 7200);
    }

    /** Mass of coals that glow so strongly [kg]. */
    public double glowing(double strength) {
      return strength * burnOut / heatingValue;
    }

    /** Power that a mass of coals gives when all of it glows [W]. */
    public double strength(double mass) {
      return mass * heatingValue / burnOut;
    }
  }

  /**
   * A lidded pit of thin steel with lump charcoal: capacity 6-10 kJ/K and loss 10-14 W/(m²·K) are
   * assumed, as is all else: vents for a few kilowatts, a bed of 0.1 m² at 80-110 kW/m².
   */
  public static FirePit thinSteel() {
    return new FirePit(
        new Walls(8e3, 1.1, 1e3, 25, 12, 20), new Vents(25e-4, 0.4, 0.6), charcoal(9.5e3));
  }

  /**
   * A lidded pit of brick and steel with lump charcoal: the inner layer of brick that follows the
   * fire within hours, between thin steel and ceramic; assumed.
   */
  public static FirePit brickAndSteel() {
    return new FirePit(
        new Walls(60e3, 1.6, 2e3, 25, 5, 25), new Vents(40e-4, 0.5, 0.5), charcoal(14e3));
  }

  /** A ceramic pit with lump charcoal: capacity 60-150 kJ/K, loss 2-4 W/(m²·K), assumed. */
  public static FirePit ceramic() {
    return new FirePit(
        new Walls(90e3, 1.2, 1.2e3, 25, 3, 20), new Vents(25e-4, 0.5, 0.6), charcoal(9.5e3));
  }

  /**
   * Lump charcoal: 29 MJ/kg, a kilogram on 0.1 m² gone in 45-60 min, glowing that spreads in 10-20
   * min, a radiant share of 0.3-0.5; all assumed.
   */
  private static Bed charcoal(double power) {
    return new Bed(power, 3100, 900, 0.45, 29e6, 0.9, 1200);
  }

  /** A cold pit into which glowing coals are put, with fuel that does not run out. */
  public FireState cold(Outside outside, double glowing) {
    Check.positive("glowing", glowing);
    double strength = Math.min(bed.power(), bed.strength(glowing));
    return new FireState(
        outside.temperature(), outside.temperature(), strength, Double.POSITIVE_INFINITY);
  }

  /**
   * What the pit comes to when the gas is held at a setting for long, eq. (81).
   *
   * @param outside weather
   * @param setting [K]
   * @param load heat into what is cooked [W]
   * @throws IllegalArgumentException if no power holds it
   */
  public Held held(Outside outside, double setting, double load) {
    double exchange = walls.area() * walls.exchange();
    double loss = walls.lossTo(outside);
    double rise = setting - outside.temperature();
    double radiant = bed.radiantShare();
    double yield = 1 - radiant - FireMoment.HEAT_CAPACITY * rise / vents.heatOfAir();
    double share = exchange / (exchange + loss);
    double each = yield + share * radiant;
    if (!(each > 0)) {
      throw new IllegalArgumentException(
          "setting must be one that a fire with this air can hold, was " + setting);
    }
    double power = Math.max(0, (share * loss * rise + load) / each);
    double wall =
        (radiant * power + exchange * setting + loss * outside.temperature()) / (exchange + loss);
    return new Held(wall, power);
  }

  /**
   * A pit that is held for long.
   *
   * @param wallTemperature [K]
   * @param power of the fire [W]
   */
  public record Held(double wallTemperature, double power) {}

  /**
   * Computes how the fire goes.
   *
   * @param outside weather
   * @param start state at the first step's beginning
   * @param tending what is done, one step after another
   * @param until end [s], after the beginning of the last step
   */
  public FireCourse run(Outside outside, FireState start, List<Tending> tending, double until) {
    return new FireRun(this, outside).run(start, List.copyOf(tending), until);
  }
}
