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

  /** Coals are kept so much stronger than what is asked of them: assumed. */
  static final double RESERVE = 1.5;

  /** Coals and air limit each other over some 20 % of the power: n = 4, assumed. */
  private static final int LIMITS = 2;

  /** A setting is reached in a corner rounded over some 3 % of the power: n = 32, assumed. */
  private static final int CORNER = 5;

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
    double needed = neededPower(wall);
    burn(wall, needed, now);
    double wanted = Math.min(needed, byAir(airTemperature));
    spread = (least(most, RESERVE * wanted, LIMITS) - strength) / bed.ignition();
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

  /** Coals give what is needed, if they and the air allow it: a root by Illinois. */
  private void burn(double wall, double needed, double now) {
    double low = gasAt(0, wall);
    double high = gasAt(Math.min(needed, now), wall);
    double below = gasAt(given(needed, now, low), wall) - low;
    double above = gasAt(given(needed, now, high), wall) - high;
    int side = 0;
    double gas = high;
    while (above < -ROOT_TOLERANCE * high && high - low > ROOT_TOLERANCE * high) {
      gas = high - above * (high - low) / (above - below);
      double excess = gasAt(given(needed, now, gas), wall) - gas;
      if (Math.abs(excess) <= ROOT_TOLERANCE * gas) {
        break;
      }
      if (excess > 0) {
        low = gas;
        below = excess;
        above *= side > 0 ? 0.5 : 1;
        side = 1;
      } else {
        high = gas;
        above = excess;
        below *= side < 0 ? 0.5 : 1;
        side = -1;
      }
    }
    power = given(needed, now, gas);
    airTemperature = gasAt(power, wall);
  }

  private double given(double needed, double now, double gas) {
    return least(needed, least(now, byAir(gas), LIMITS), CORNER);
  }

  /**
   * The smaller of two powers, and less where they are close, so that no corner is sharp: (a⁻ⁿ +
   * b⁻ⁿ)^(−1/n) with n = 2 to the power of {@code squares}.
   */
  private static double least(double a, double b, int squares) {
    double small = Math.min(a, b);
    double power = small > 0 ? small / Math.max(a, b) : 0;
    for (int k = 0; k < squares; k++) {
      power *= power;
    }
    double root = 1 + power;
    for (int k = 0; k < squares; k++) {
      root = Math.sqrt(root);
    }
    return small / root;
  }

  /** Gas in balance with a power, eq. (76). */
  private double gasAt(double watt, double wall) {
    double flow = HEAT_CAPACITY * watt / heatOfAir;
    double heat = (1 - pit.bed().radiantShare()) * watt - tending.load();
    return (heat + flow * outside.temperature() + exchange * wall) / (exchange + flow);
  }
}
