package org.roastfield.core.chamber;

/**
 * Gas in balance, and how wall, coals and fuel change, at one moment: eqs. (75)-(79). Scratch of
 * one run.
 *
 * <p>Symbols: χ radiant share, η air use, e heat of air, c heat capacity of the flue gas, G
 * exchange between gas and wall.
 */
final class FireMoment {

  /** Heat capacity of flue gas [J/(kg·K)]: air at 400-500 K with some vapour. */
  static final double HEAT_CAPACITY = 1050;

  /** Air in a chamber whose lid is open, over that outside [K]: 20-50 K, assumed. */
  static final double OPEN_RISE = 35;

  /** Share of the coals' radiation that still meets walls when the lid is open: assumed. */
  static final double OPEN_RADIATION = 0.5;

  /** Coals are kept so much stronger than they need to be: assumed. */
  static final double RESERVE = 1.25;

  /** A lit bed draws as if its gas were at least so much warmer than the air outside [K]. */
  static final double LEAST_RISE = 20;

  private static final double GRAVITY = 9.80665;
  private static final double ROOT_TOLERANCE = 1e-11;

  private final FirePit pit;
  private final Outside outside;
  private final double exchange;
  private final double loss;
  private final double heatOfAir;
  private Tending tending = Tending.wide(0);

  private double airTemperature;
  private double power;
  private double flueLoss;
  private double wallLoss;
  private double wallGain;
  private double spread;

  FireMoment(FirePit pit, Outside outside) {
    this.pit = pit;
    this.outside = outside;
    exchange = pit.walls().area() * pit.walls().exchange();
    loss = pit.walls().lossTo(outside);
    heatOfAir = pit.vents().heatOfAir();
  }

  void tend(Tending step) {
    tending = step;
  }

  /** Gas temperature [K]. */
  double airTemperature() {
    return airTemperature;
  }

  /** Heat that the coals give [W]. */
  double power() {
    return power;
  }

  /** Heat that goes into what is cooked [W]. */
  double load() {
    return tending.load();
  }

  /** Heat that leaves with the gas [W], and through the opening. */
  double flueLoss() {
    return flueLoss;
  }

  /** Heat that leaves through the wall [W]. */
  double wallLoss() {
    return wallLoss;
  }

  /** Heat that the wall gains [W]. */
  double wallGain() {
    return wallGain;
  }

  /** How fast the coals' strength changes [W/s]. */
  double spread() {
    return spread;
  }

  void at(double wall, double strength, double fuel) {
    FirePit.Bed bed = pit.bed();
    double most = Math.min(bed.power(), bed.strength(Math.max(0, fuel)));
    double now = Math.max(0, Math.min(strength, most));
    if (tending.open()) {
      openLid(wall, now);
      spread = (most - strength) / bed.ignition();
      return;
    }
    double aim;
    double needed = neededPower(wall);
    if (needed <= now && needed <= byAir(tending.setting())) {
      power = needed;
      airTemperature = needed > 0 ? tending.setting() : wall - tending.load() / exchange;
      aim = Math.min(most, RESERVE * needed);
    } else {
      limited(wall, now);
      aim = Math.min(most, byAir(airTemperature));
    }
    spread = (aim - strength) / bed.ignition();
    double radiant = bed.radiantShare() * power;
    double toWall = exchange * (airTemperature - wall);
    flueLoss = power - radiant - toWall - tending.load();
    wallLoss = loss * (wall - outside.temperature());
    wallGain = radiant + toWall - wallLoss;
  }

  private void openLid(double wall, double now) {
    power = now;
    airTemperature = outside.temperature() + OPEN_RISE;
    double radiant = OPEN_RADIATION * pit.bed().radiantShare() * power;
    double toWall = exchange * (airTemperature - wall);
    double rise = wall - outside.temperature();
    double seen = pit.walls().openLoss() * rise;
    flueLoss = power - radiant - toWall + seen - tending.load();
    wallLoss = loss * rise;
    wallGain = radiant + toWall - wallLoss - seen;
  }

  /** Power that holds the air at the setting, eq. (77); infinite if none does. */
  private double neededPower(double wall) {
    double setting = tending.setting();
    double yield =
        1
            - pit.bed().radiantShare()
            - HEAT_CAPACITY * (setting - outside.temperature()) / heatOfAir;
    double wanted = exchange * (setting - wall) + tending.load();
    if (wanted <= 0) {
      return 0;
    }
    return yield > 0 ? wanted / yield : Double.POSITIVE_INFINITY;
  }

  /** Power of the air that open vents draw, eq. (78). */
  private double byAir(double gas) {
    double cold = outside.temperature();
    double warm = Math.max(gas, cold + LEAST_RISE);
    double density = outside.density();
    double drawn = GRAVITY * pit.vents().height() * density * (1 - cold / warm);
    double area = tending.vents() * pit.vents().area();
    return heatOfAir * FirePit.Vents.DISCHARGE * area * Math.sqrt(2 * density * drawn);
  }

  /** Coals give what they can, or what the air allows. */
  private void limited(double wall, double now) {
    double hot = gasAt(now, wall);
    if (byAir(hot) >= now) {
      power = now;
      airTemperature = hot;
      return;
    }
    double low = gasAt(0, wall);
    double high = hot;
    double gas = high;
    while (high - low > ROOT_TOLERANCE * high) {
      gas = 0.5 * (low + high);
      if (gasAt(byAir(gas), wall) > gas) {
        low = gas;
      } else {
        high = gas;
      }
    }
    airTemperature = gas;
    power = byAir(gas);
  }

  /** Gas in balance with a power, eq. (76). */
  private double gasAt(double watt, double wall) {
    double flow = HEAT_CAPACITY * watt / heatOfAir;
    double heat = (1 - pit.bed().radiantShare()) * watt - tending.load();
    return (heat + flow * outside.temperature() + exchange * wall) / (exchange + flow);
  }
}
