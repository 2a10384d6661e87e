package org.roastfield.core.inference;

/** A number and its derivatives by a few unknowns, exact to round-off. */
final class Dual {

  private final double value;
  private final double[] slopes;

  private Dual(double value, double[] slopes) {
    this.value = value;
    this.slopes = slopes;
  }

  double value() {
    return value;
  }

  double slope(int unknown) {
    return slopes[unknown];
  }

  static Dual constant(double value, int unknowns) {
    return new Dual(value, new double[unknowns]);
  }

  static Dual unknown(double value, int index, int unknowns) {
    double[] slopes = new double[unknowns];
    slopes[index] = 1;
    return new Dual(value, slopes);
  }

  private Dual of(double result, double bySelf) {
    double[] s = new double[slopes.length];
    for (int i = 0; i < s.length; i++) {
      s[i] = bySelf * slopes[i];
    }
    return new Dual(result, s);
  }

  private Dual of(double result, double bySelf, Dual other, double byOther) {
    double[] s = new double[slopes.length];
    for (int i = 0; i < s.length; i++) {
      s[i] = bySelf * slopes[i] + byOther * other.slopes[i];
    }
    return new Dual(result, s);
  }

  Dual plus(Dual o) {
    return of(value + o.value, 1, o, 1);
  }

  Dual plus(double c) {
    return of(value + c, 1);
  }

  Dual minus(Dual o) {
    return of(value - o.value, 1, o, -1);
  }

  Dual times(Dual o) {
    return of(value * o.value, o.value, o, value);
  }

  Dual times(double c) {
    return of(c * value, c);
  }

  Dual over(Dual o) {
    double q = value / o.value;
    return of(q, 1 / o.value, o, -q / o.value);
  }

  Dual exp() {
    double e = StrictMath.exp(value);
    return of(e, e);
  }

  Dual log() {
    return of(StrictMath.log(value), 1 / value);
  }

  Dual sin() {
    return of(StrictMath.sin(value), StrictMath.cos(value));
  }

  Dual cos() {
    return of(StrictMath.cos(value), -StrictMath.sin(value));
  }

  Dual arctan() {
    return of(StrictMath.atan(value), 1 / (1 + value * value));
  }

  Dual power(double exponent) {
    return of(StrictMath.pow(value, exponent), exponent * StrictMath.pow(value, exponent - 1));
  }

  Dual power(Dual exponent) {
    return log().times(exponent).exp();
  }

  Dual square() {
    return times(this);
  }
}
