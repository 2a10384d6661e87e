package org.roastfield.core.material;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.internal.Check;
import org.roastfield.core.units.Temperatures;

/**
 * Properties of a food from its composition, valid from −1 to 150 °C, unfrozen.
 *
 * <p>Component polynomials of Choi and Okos [ChoiOkos1986], as repeated in [ASHRAERefrigeration].
 * Mixing, eqs. (4)-(6) of docs/model.md: heat capacity by mass; density by volume; conductivity of
 * the lean part as the mean of the parallel and the series bound, with the fat as dispersed spheres
 * (Maxwell-Eucken). Composition models differ from measured conductivities by about 7 %
 * [BaghekhandanOkos1981].
 */
public final class ChoiOkos {

  /** Lower end of the range [K]: just above the freezing of meat. */
  public static final double LOWEST = Temperatures.ZERO_CELSIUS - 1;

  /** Upper end of the range of the component polynomials [K]. */
  public static final double HIGHEST = Temperatures.ZERO_CELSIUS + 150;

  /**
   * Temperature at which the constant density is taken [K]: the middle of the cooking range, 40 °C.
   */
  public static final double DENSITY_TEMPERATURE = Temperatures.ZERO_CELSIUS + 40;

  private static final int CONDUCTIVITY_DEGREE = 5;

  private static final Component FAT =
      new Component(
          Composition::fat,
          new Quadratic(0.18071, -2.7604e-4, -1.7749e-7),
          new Quadratic(925.59, -0.41757, 0),
          new Quadratic(1984.2, 1.4733, -4.8008e-3));

  private static final List<Component> LEAN =
      List.of(
          new Component(
              Composition::water,
              new Quadratic(0.57109, 1.7625e-3, -6.7036e-6),
              new Quadratic(997.18, 3.1439e-3, -3.7574e-3),
              new Quadratic(4176.2, -9.0864e-2, 5.4731e-3)),
          new Component(
              Composition::protein,
              new Quadratic(0.17881, 1.1958e-3, -2.7178e-6),
              new Quadratic(1329.9, -0.51840, 0),
              new Quadratic(2008.2, 1.2089, -1.3129e-3)),
          new Component(
              Composition::carbohydrate,
              new Quadratic(0.20141, 1.3874e-3, -4.3312e-6),
              new Quadratic(1599.1, -0.31046, 0),
              new Quadratic(1548.8, 1.9625, -5.9399e-3)),
          new Component(
              Composition::fibre,
              new Quadratic(0.18331, 1.2497e-3, -3.1683e-6),
              new Quadratic(1311.5, -0.36589, 0),
              new Quadratic(1845.9, 1.8306, -4.6509e-3)),
          new Component(
              Composition::ash,
              new Quadratic(0.32962, 1.4011e-3, -2.9069e-6),
              new Quadratic(2423.8, -0.28063, 0),
              new Quadratic(1092.6, 1.8896, -3.6817e-3)));

  private ChoiOkos() {}

  /**
   * Material with temperature-dependent conductivity and heat capacity, and the density at 40 °C.
   */
  public static Material material(String name, Composition composition) {
    PropertyCurve conductivity =
        PolynomialFit.of(LOWEST, HIGHEST, CONDUCTIVITY_DEGREE, t -> conductivity(composition, t));
    Quadratic c = FAT.heatCapacity.times(composition.fat());
    for (Component component : LEAN) {
      c = c.plus(component.heatCapacity.times(component.fraction(composition)));
    }
    return new Material(
        name,
        density(composition, DENSITY_TEMPERATURE),
        conductivity,
        PropertyCurve.polynomial(LOWEST, HIGHEST, c.a, c.b, c.c));
  }

  /** Density [kg/m³] at a temperature [K] in the range, without pores. */
  public static double density(Composition composition, double temperature) {
    double t = celsiusInRange(temperature);
    return 1 / (leanVolume(composition, t) + FAT.volume(composition, t));
  }

  /** Conductivity [W/(m·K)] at a temperature [K] in the range, eqs. (5)-(6). */
  public static double conductivity(Composition composition, double temperature) {
    double t = celsiusInRange(temperature);
    double leanVolume = leanVolume(composition, t);
    double fatConductivity = FAT.conductivity.at(t);
    if (leanVolume == 0) {
      return fatConductivity;
    }
    double parallel = 0;
    double resistance = 0;
    for (Component component : LEAN) {
      double k = component.conductivity.at(t);
      double share = component.volume(composition, t) / leanVolume;
      parallel += share * k;
      resistance += share / k;
    }
    double lean = 0.5 * (parallel + 1 / resistance);
    double fatVolume = FAT.volume(composition, t);
    return maxwellEucken(lean, fatConductivity, fatVolume / (fatVolume + leanVolume));
  }

  private static double celsiusInRange(double temperature) {
    return Check.inRange("temperature", temperature, LOWEST, HIGHEST) - Temperatures.ZERO_CELSIUS;
  }

  private static double maxwellEucken(double continuous, double dispersed, double share) {
    double sum = 2 * continuous + dispersed;
    double difference = share * (continuous - dispersed);
    return continuous * (sum - 2 * difference) / (sum + difference);
  }

  /** Volume of all but the fat [m³ per kg of food]. */
  private static double leanVolume(Composition composition, double t) {
    double volume = 0;
    for (Component component : LEAN) {
      volume += component.volume(composition, t);
    }
    return volume;
  }

  /**
   * A component and its polynomials.
   *
   * @param share its mass fraction in a composition
   * @param conductivity [W/(m·K)]
   * @param density [kg/m³]
   * @param heatCapacity [J/(kg·K)]
   */
  private record Component(
      ToDoubleFunction<Composition> share,
      Quadratic conductivity,
      Quadratic density,
      Quadratic heatCapacity) {

    double fraction(Composition composition) {
      return share.applyAsDouble(composition);
    }

    /** Volume [m³ per kg of food]. */
    double volume(Composition composition, double t) {
      return fraction(composition) / density.at(t);
    }
  }

  /** a + b t + c t², t in °C. */
  private record Quadratic(double a, double b, double c) {

    double at(double t) {
      return (c * t + b) * t + a;
    }

    Quadratic times(double factor) {
      return new Quadratic(factor * a, factor * b, factor * c);
    }

    Quadratic plus(Quadratic other) {
      return new Quadratic(a + other.a, b + other.b, c + other.c);
    }
  }
}
