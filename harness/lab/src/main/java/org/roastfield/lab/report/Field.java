package org.roastfield.lab.report;

import java.util.Arrays;

/** A quantity over two coordinates, known at the crossings of a grid that need not be even. */
final class Field {

  private final double[] xs;
  private final double[] ys;
  private final double[][] values;

  private Field(double[] xs, double[] ys, double[][] values) {
    this.xs = xs;
    this.ys = ys;
    this.values = values;
  }

  /**
   * Field on a grid.
   *
   * @param xs [columns], at least 2, increasing; not modified
   * @param ys [rows], at least 2, increasing; not modified
   * @param values [columns][rows]; not modified
   * @throws IllegalArgumentException if the sizes do not fit or a coordinate does not increase
   */
  static Field of(double[] xs, double[] ys, double[][] values) {
    requireIncreasing("xs", xs);
    requireIncreasing("ys", ys);
    requireLength("values", values.length, xs.length);
    double[][] copy = new double[values.length][];
    for (int i = 0; i < values.length; i++) {
      requireLength("values[" + i + "]", values[i].length, ys.length);
      copy[i] = values[i].clone();
    }
    return new Field(xs.clone(), ys.clone(), copy);
  }

  int columns() {
    return xs.length;
  }

  int rows() {
    return ys.length;
  }

  double x(int column) {
    return xs[column];
  }

  double y(int row) {
    return ys[row];
  }

  double value(int column, int row) {
    return values[column][row];
  }

  double lowest() {
    return Arrays.stream(values).flatMapToDouble(Arrays::stream).min().orElseThrow();
  }

  double highest() {
    return Arrays.stream(values).flatMapToDouble(Arrays::stream).max().orElseThrow();
  }

  private static void requireIncreasing(String name, double[] coordinates) {
    for (int i = 1; i < coordinates.length; i++) {
      if (!(coordinates[i] > coordinates[i - 1])) {
        throw new IllegalArgumentException(
            name + " must increase, but " + coordinates[i] + " follows " + coordinates[i - 1]);
      }
    }
    if (coordinates.length < 2) {
      throw new IllegalArgumentException(
          name + " must have at least 2 entries, had " + coordinates.length);
    }
  }

  private static void requireLength(String name, int length, int wanted) {
    if (length != wanted) {
      throw new IllegalArgumentException(name + " must have " + wanted + " entries, had " + length);
    }
  }
}
