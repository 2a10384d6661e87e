package org.roastfield.core.chamber;

import org.roastfield.core.air.DryAir;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.internal.Check;
import org.roastfield.core.surface.AirLoad;

/**
 * Air that is drawn through a chamber and takes up the water of the fuel, and with {@link #load}
 * that of the cut, eqs. (58) and (59). In balance at each moment, since gas stays in a chamber for
 * a minute or two and water in a cut for hours; {@link #airLoad} also takes the time in which a
 * chamber fills.
 *
 * @param dryFlow dry part of the flue gas [kg/s], greater than 0
 * @param outsideHumidityRatio of the air that is drawn in [kg/kg], at least 0
 * @param fuelWater that burning makes or drives out [kg/s], at least 0
 */
public record Draught(double dryFlow, double outsideHumidityRatio, double fuelWater) {

  /** What burns. */
  public enum Fuel {
    /** Air 10.3 kg/kg and water 0.31 kg/kg: calculated from carbon, hydrogen and moisture. */
    CHARCOAL(10.3, 0.31),
    /** Air-dry wood: air 5.7-6 kg/kg and water 0.6 kg/kg, calculated. */
    WOOD(5.85, 0.6);

    private final double air;
    private final double water;

    Fuel(double air, double water) {
      this.air = air;
      this.water = water;
    }

    /** Air that burning just needs [kg air / kg fuel]. */
    public double air() {
      return air;
    }

    /** Water in the flue gas [kg water / kg fuel]. */
    public double water() {
      return water;
    }
  }

  /**
   * @throws IllegalArgumentException if a number is outside its range
   */
  public Draught {
    Check.positive("dryFlow", dryFlow);
    Check.notNegative("outsideHumidityRatio", outsideHumidityRatio);
    Check.notNegative("fuelWater", fuelWater);
  }

  /**
   * Draught of a fire. The dry flue gas is air and fuel less the water; ash is neglected.
   *
   * @param fuel what burns
   * @param burnRate [kg/s], greater than 0
   * @param excessAir λ: air over the air that burning just needs, 1 to 50
   * @param outsideHumidityRatio of the air that is drawn in [kg/kg]
   */
  public static Draught ofFire(
      Fuel fuel, double burnRate, double excessAir, double outsideHumidityRatio) {
    Check.positive("burnRate", burnRate);
    Check.inRange("excessAir", excessAir, 1, 50);
    double dryFlow = burnRate * (excessAir * fuel.air() + 1 - fuel.water());
    return new Draught(dryFlow, outsideHumidityRatio, burnRate * fuel.water());
  }

  /** Humidity ratio without the vapour of the cut [kg/kg], eq. (58). */
  public double humidityRatio() {
    return humidityRatio(0);
  }

  /** Humidity ratio with a vapour flow of the cut [kg/s], eq. (58). */
  public double humidityRatio(double vapourOfTheCut) {
    return outsideHumidityRatio + (fuelWater + vapourOfTheCut) / dryFlow;
  }

  /**
   * Surface over the flow of dry air [m²·s/kg], for {@link Chamber#around(double, double, double,
   * double, double)}.
   *
   * @param surface of all that evaporates as the cut does [m²]
   */
  public double load(double surface) {
    return Check.positive("surface", surface) / dryFlow;
  }

  /**
   * What the cut does to the air of a chamber, eq. (94).
   *
   * @param surface of all that evaporates as the cut does [m²]
   * @param volume of air in the chamber [m³]; 0 takes it to be in balance at each moment
   * @param temperature of that air [K]
   * @param pressure [Pa]
   */
  public AirLoad airLoad(double surface, double volume, double temperature, double pressure) {
    double ratio = MoistAir.MOLAR_MASS_RATIO;
    double dryShare = ratio / (ratio + humidityRatio());
    double dryAir = Check.notNegative("volume", volume) * dryShare;
    double held = dryAir == 0 ? 0 : dryAir * DryAir.density(temperature, pressure) / surface;
    return new AirLoad(load(surface), held);
  }
}
