package org.roastfield.core.surface;

import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.air.DryAir;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.internal.Check;

/**
 * Convective heat-transfer coefficient by correlation: h(Ts, T∞) of still or windy air past a face,
 * eqs. (27)-(35). Immutable.
 *
 * <p>Natural and forced convection add as Nu³ = Nu_n³ + Nu_f³, for flows that help or cross each
 * other. In still air the difference of temperature that drives the flow is √((T∞ − Ts)² + (3 K)²):
 * the correlations have no slope at no difference, where air that is moist at the face keeps
 * moving. At 10 K that raises h by 1.1 % at most, at 30 K by 0.13 %. Humidity is otherwise left
 * out: the vapour over a wet face of 60 °C in a pit of 115 °C takes about 10 % off h.
 *
 * <p>Horizontal faces follow their formula below Ra = 1e4 too, where it was not fitted: down to 200
 * it is a tenth below the fit of [GoldsteinSparrowJones1973] to faces that stir the air.
 */
public final class FilmCoefficient {

  /**
   * Difference of temperature [K] that stands for the buoyancy of moist air near none: assumed, 1 %
   * of vapour by volume weighs as 1.2 K.
   */
  static final double LEAST_DIFFERENCE = 3;

  /**
   * Bound on Ra/(L³ (p/101325 Pa)²) [1/m³]: 9.2e9 is the most for air of −20 … 700 °C and faces of
   * −8 … 325 °C.
   */
  private static final double LARGEST_RAYLEIGH = 1e10;

  private final FaceForm form;
  private final double length;
  private final double windSpeed;
  private final double pressure;
  private final double multiplier;

  /** L³ (p/p₀)². */
  private final double volume;

  private final @Nullable FilmCurve wind;

  private FilmCoefficient(
      FaceForm form, double length, double windSpeed, double pressure, double multiplier) {
    this.form = Objects.requireNonNull(form, "form");
    this.length = Check.positive("length", length);
    this.windSpeed = Check.notNegative("windSpeed", windSpeed);
    this.pressure = Check.inRange("pressure", pressure, 2e4, 2e5);
    this.multiplier = Check.notNegative("multiplier", multiplier);
    double share = pressure / MoistAir.STANDARD_PRESSURE;
    this.volume = length * length * length * share * share;
    checkLength();
    checkWind();
    this.wind = windSpeed == 0 ? null : FilmCurve.of(this::windCoefficient);
  }

  /**
   * Still air.
   *
   * @param form of the face
   * @param length as {@code form} says [m]: at most about 0.1 for a horizontal face, 2 for a ball
   * @param pressure [Pa], 20-200 kPa
   * @throws IllegalArgumentException if the correlation does not reach so far
   */
  public static FilmCoefficient stillAir(FaceForm form, double length, double pressure) {
    return new FilmCoefficient(form, length, 0, pressure, 1);
  }

  /**
   * Air that moves past the face, with the flow that heat itself causes.
   *
   * @param form of the face
   * @param length as {@code form} says [m]
   * @param windSpeed [m/s], 0 for still air; a draught in a lidded pit is 0.05-0.3 (assumed)
   * @param pressure [Pa], 20-200 kPa
   * @throws IllegalArgumentException if a correlation does not reach so far
   */
  public static FilmCoefficient windyAir(
      FaceForm form, double length, double windSpeed, double pressure) {
    return new FilmCoefficient(form, length, windSpeed, pressure, 1);
  }

  /**
   * The same times a factor, for what a correlation does not know: rough surfaces, narrow chambers,
   * turbulence.
   */
  public FilmCoefficient times(double factor) {
    return new FilmCoefficient(form, length, windSpeed, pressure, multiplier * factor);
  }

  /**
   * The same air past a face that is larger.
   *
   * @param factor of the length, greater than 0
   * @throws IllegalArgumentException if a correlation does not reach so far
   */
  public FilmCoefficient scaled(double factor) {
    return new FilmCoefficient(form, length * factor, windSpeed, pressure, multiplier);
  }

  /** Form of the face. */
  public FaceForm form() {
    return form;
  }

  /** Length that the form is measured by [m]. */
  public double length() {
    return length;
  }

  /** Speed of the air [m/s]. */
  public double windSpeed() {
    return windSpeed;
  }

  /** Pressure of the air [Pa]. */
  public double pressure() {
    return pressure;
  }

  /** Factor on what the correlations say. */
  public double multiplier() {
    return multiplier;
  }

  private void checkLength() {
    NaturalCorrelation natural = form.natural();
    if (!(LARGEST_RAYLEIGH * volume <= natural.highestRayleigh())) {
      double largest = StrictMath.cbrt(natural.highestRayleigh() / LARGEST_RAYLEIGH);
      throw new IllegalArgumentException(
          "length of the "
              + words()
              + " must be at most about "
              + largest
              + " m, since its correlation ends at Ra = "
              + natural.highestRayleigh()
              + " (state a coefficient instead), was "
              + length);
    }
  }

  private void checkWind() {
    ForcedCorrelation forced = form.forced();
    if (windSpeed > 0
        && !(reynolds(DryAir.HIGHEST) >= forced.lowestReynolds()
            && reynolds(DryAir.LOWEST) <= forced.highestReynolds())) {
      throw new IllegalArgumentException(
          "windSpeed past the "
              + words()
              + " must be 0 or keep Re in ["
              + forced.lowestReynolds()
              + ", "
              + forced.highestReynolds()
              + "] for films of 240-800 K (take still air below, state a coefficient above), was "
              + windSpeed);
    }
  }

  private String words() {
    return form.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private double reynolds(double film) {
    double viscosity = DryAir.viscosity(film) / DryAir.density(film, pressure);
    return windSpeed * length * form.windLengths() / viscosity;
  }

  private double windCoefficient(double film) {
    double nusselt = form.forced().nusselt(reynolds(film), DryAir.prandtl(film));
    return nusselt * DryAir.conductivity(film) / (length * form.windLengths());
  }

  /**
   * Coefficient h [W/(m²·K)].
   *
   * @param surfaceTemperature Ts [K]
   * @param airTemperature T∞ [K]
   * @return NaN where the film (Ts + T∞)/2 is outside the range of {@link DryAir}
   */
  public double at(double surfaceTemperature, double airTemperature) {
    double film = 0.5 * (surfaceTemperature + airTemperature);
    if (!(film >= DryAir.LOWEST && film <= DryAir.HIGHEST)) {
      return Double.NaN;
    }
    double still = still(film, airTemperature - surfaceTemperature);
    return multiplier * (wind == null ? still : StrictMath.cbrt(cubes(still, wind.at(film))));
  }

  /**
   * Slope ∂h/∂Ts [W/(m²·K²)].
   *
   * @param surfaceTemperature Ts [K]
   * @param airTemperature T∞ [K]
   * @return NaN where the film is outside the range of {@link DryAir}
   */
  public double slope(double surfaceTemperature, double airTemperature) {
    double film = 0.5 * (surfaceTemperature + airTemperature);
    if (!(film >= DryAir.LOWEST && film <= DryAir.HIGHEST)) {
      return Double.NaN;
    }
    double difference = airTemperature - surfaceTemperature;
    double stillSlope = stillSlope(film, difference);
    if (wind == null) {
      return multiplier * stillSlope;
    }
    double still = still(film, difference);
    double windy = wind.at(film);
    double both = StrictMath.cbrt(cubes(still, windy));
    double sum = still * still * stillSlope + windy * windy * 0.5 * wind.slope(film);
    return multiplier * sum / (both * both);
  }

  private static double cubes(double still, double windy) {
    return still * still * still + windy * windy * windy;
  }

  private double still(double film, double difference) {
    NaturalCorrelation natural = form.natural();
    double driving = driving(difference);
    double factor = form.meanFactor() + form.halfFactorDifference() * difference / driving;
    double rise = factor * natural.rooted(volume * driving);
    double sum = natural.baseCurve().at(film) + natural.riseCurve().at(film) * rise;
    return (natural.power() == 2 ? sum * sum : sum) / length;
  }

  private double stillSlope(double film, double difference) {
    NaturalCorrelation natural = form.natural();
    double driving = driving(difference);
    double side = difference / driving;
    double factor = form.meanFactor() + form.halfFactorDifference() * side;
    double factorSlope = -form.halfFactorDifference() * (1 - side * side) / driving;
    double rooted = natural.rooted(volume * driving);
    double rise = factor * rooted;
    double riseSlope = rooted * (factorSlope - factor * side / (natural.root() * driving));
    double curve = natural.riseCurve().at(film);
    double sumSlope =
        0.5 * (natural.baseCurve().slope(film) + natural.riseCurve().slope(film) * rise)
            + curve * riseSlope;
    double outer = natural.power() == 2 ? 2 * (natural.baseCurve().at(film) + curve * rise) : 1;
    return outer * sumSlope / length;
  }

  /** √(ΔT² + (3 K)²). */
  private static double driving(double difference) {
    return Math.sqrt(difference * difference + LEAST_DIFFERENCE * LEAST_DIFFERENCE);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FilmCoefficient that
        && form == that.form
        && length == that.length
        && windSpeed == that.windSpeed
        && pressure == that.pressure
        && multiplier == that.multiplier;
  }

  @Override
  public int hashCode() {
    return Objects.hash(form, length, windSpeed, pressure, multiplier);
  }

  @Override
  public String toString() {
    return "FilmCoefficient["
        + words()
        + ", length "
        + length
        + " m, wind "
        + windSpeed
        + " m/s, "
        + pressure
        + " Pa, times "
        + multiplier
        + "]";
  }
}
