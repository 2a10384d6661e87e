package org.roastfield.core.surface;

import org.roastfield.core.internal.Check;

/**
 * Contact with hot metal that begins with its stage, eqs. (50)-(51): the conductance falls from its
 * first value to a lasting one, while the metal cools under the load.
 *
 * <p>q = φ h(t) (T_p(t) − Ts), h = h_∞ + (h_0 − h_∞) e^(−t/τ), T_p less by d (1 − e^(−t/τ_p)), t
 * from the beginning of contact.
 *
 * @param share φ of the face that touches: 1 on a plate, 0.15-0.30 on bars
 * @param first h_0 [W/(m²·K)]
 * @param lasting h_∞ [W/(m²·K)]
 * @param settling τ [s], greater than 0
 * @param metal temperature of the metal without load [K]
 * @param drop d by which the load cools it in the end [K], at least 0
 * @param cooling τ_p [s], greater than 0
 * @param begin when contact began, since the start of the cook [s]; set by {@link #from}
 */
public record Touch(
    double share,
    double first,
    double lasting,
    double settling,
    Signal metal,
    double drop,
    double cooling,
    double begin)
    implements SurfaceLaw {

  private static final double FIRST = 500;
  private static final double LASTING = 250;
  private static final double SETTLING = 30;
  private static final double DROP = 50;
  private static final double COOLING = 60;
  private static final double BARS = 0.22;

  /**
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public Touch {
    Check.inRange("share", share, 0, 1);
    Check.notNegative("first", first);
    Check.notNegative("lasting", lasting);
    Check.positive("settling", settling);
    Check.notNegative("drop", drop);
    Check.positive("cooling", cooling);
    Check.finite("begin", begin);
  }

  /**
   * A plate or pan: conductance from 500 to 250 W/(m²·K) in 30 s, assumed within the 250-650 that
   * [Wichchukit2001] measured; it cools by 50 K in about a minute, as pans were seen to by the
   * first turn, time assumed.
   */
  public static Touch ofPlate(Signal metal) {
    return new Touch(1, FIRST, LASTING, SETTLING, metal, DROP, COOLING, 0);
  }

  /**
   * Bars of a grate, which touch 22 % of the face (15-30 %, assumed) and are kept hot by the fire;
   * conductance as of {@link #ofPlate}.
   */
  public static Touch ofBars(Signal metal) {
    return new Touch(BARS, FIRST, LASTING, SETTLING, metal, 0, COOLING, 0);
  }

  /** As of {@link Contact}: a wrap between metal and food is pressed thin. */
  @Override
  public Touch under(Wrap wrap) {
    return this;
  }

  @Override
  public Touch from(double time) {
    return new Touch(share, first, lasting, settling, metal, drop, cooling, time);
  }

  @Override
  public boolean remembers() {
    return true;
  }

  @Override
  public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {
    double h = share * (lasting + (first - lasting) * StrictMath.exp(-(time - begin) / settling));
    double cooled = drop * (1 - StrictMath.exp(-(time - begin) / cooling));
    flux.addHeat(h * (metal.at(time) - cooled - surfaceTemperature), -h);
  }

  @Override
  public double shortestPeriod() {
    return metal.shortestPeriod();
  }
}
