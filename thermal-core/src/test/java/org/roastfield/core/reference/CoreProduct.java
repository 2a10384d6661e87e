package org.roastfield.core.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Core of a finite cylinder or box at uniform start, heated alike through all faces: the product of
 * the cores of its directions.
 *
 * <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, 2nd ed., 1959, section 1.15. Time is
 * α t/a² and the Biot number h a/k, with a the length whose ratio is 1. A direction's core is 1
 * below its Fourier number {@value RobinSeries#SMALLEST_FOURIER_NUMBER}.
 */
public final class CoreProduct {

  private record Direction(RobinSeries series, double ratio) {}

  private final List<Direction> directions = new ArrayList<>();

  private CoreProduct() {}

  /** Cylinder of radius {@code radius} and half length {@code half}, in units of a. */
  public static CoreProduct cylinder(double radius, double half, double biotNumber) {
    return new CoreProduct()
        .with(RadialMode.CYLINDER, radius, biotNumber)
        .with(RadialMode.SLAB, half, biotNumber);
  }

  /** Box of the given half sizes in units of a. */
  public static CoreProduct box(double a, double b, double c, double biotNumber) {
    return new CoreProduct()
        .with(RadialMode.SLAB, a, biotNumber)
        .with(RadialMode.SLAB, b, biotNumber)
        .with(RadialMode.SLAB, c, biotNumber);
  }

  private CoreProduct with(RadialMode mode, double ratio, double biotNumber) {
    directions.add(new Direction(RobinSeries.of(mode, biotNumber * ratio), ratio));
    return this;
  }

  /** Share of the first temperature difference left in the core. */
  public double core(double time) {
    return onTheWay(0, 0, time);
  }

  /**
   * Share left on the straight way from the core to a face.
   *
   * @param towards direction of the face, 0 or 1 (cylinder: 0 round, 1 end; box: 0, 1, 2)
   * @param place distance from the core over that to the face, in [0, 1]
   */
  public double onTheWay(int towards, double place, double time) {
    double product = 1;
    for (int i = 0; i < directions.size(); i++) {
      product *= at(directions.get(i), i == towards ? place : 0, time);
    }
    return product;
  }

  /** Share left in the mean over all faces. */
  public double meanOfFaces(double time) {
    double sum = 0;
    double area = 0;
    for (int i = 0; i < directions.size(); i++) {
      Direction facing = directions.get(i);
      double share = (facing.series().mode().exponent() + 1) / facing.ratio();
      double product = share * at(facing, 1, time);
      for (int j = 0; j < directions.size(); j++) {
        Direction other = directions.get(j);
        product *= i == j ? 1 : other.series().mean(time / (other.ratio() * other.ratio()));
      }
      sum += product;
      area += share;
    }
    return sum / area;
  }

  private static double at(Direction direction, double place, double time) {
    double fourierNumber = time / (direction.ratio() * direction.ratio());
    return fourierNumber < RobinSeries.SMALLEST_FOURIER_NUMBER && place == 0
        ? 1
        : direction.series().temperature(place, fourierNumber);
  }

  /** Time at which the core has the share {@code left}. */
  public double time(double left) {
    return time(this::core, left);
  }

  /** Time at which a falling function of time reaches a value. */
  public static double time(DoubleUnaryOperator falling, double value) {
    double low = 1e-3;
    double high = 1e3;
    for (int i = 0; i < 60; i++) {
      double middle = Math.sqrt(low * high);
      if (falling.applyAsDouble(middle) > value) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
