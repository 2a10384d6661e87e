package org.roastfield.core.inference;

/** The models of the problems in resources/nist. */
final class NistModels {

  private NistModels() {}

  /**
   * @param b the unknowns
   * @param row response, then predictors
   */
  static Dual at(String name, Dual[] b, double[] row) {
    double x = row[1];
    return switch (name) {
      case "Bennett5" -> b[0].times(b[1].plus(x).power(one(b).over(b[2]).times(-1)));
      case "BoxBOD", "Misra1a" -> b[0].times(grown(b[1], x));
      case "Chwirut1", "Chwirut2" -> b[0].times(-x).exp().over(b[1].plus(b[2].times(x)));
      case "DanWood" -> b[0].times(b[1].times(StrictMath.log(x)).exp());
      case "ENSO" -> seasons(b, x);
      case "Eckerle4" -> b[0].over(b[1]).times(bell(b[2], b[1], x, 0.5));
      case "Gauss1", "Gauss2", "Gauss3" ->
          b[0].times(b[1].times(-x).exp())
              .plus(b[2].times(bell(b[3], b[4], x, 1)))
              .plus(b[5].times(bell(b[6], b[7], x, 1)));
      case "Hahn1", "Thurber" ->
          polynomial(x, b[0], b[1], b[2], b[3]).over(polynomial(x, one(b), b[4], b[5], b[6]));
      case "Kirby2" -> polynomial(x, b[0], b[1], b[2]).over(polynomial(x, one(b), b[3], b[4]));
      case "Lanczos1", "Lanczos2", "Lanczos3" ->
          decay(b[0], b[1], x).plus(decay(b[2], b[3], x)).plus(decay(b[4], b[5], x));
      case "MGH09" -> b[0].times(b[1].times(x).plus(x * x)).over(polynomial(x, b[3], b[2], one(b)));
      case "MGH10" -> b[0].times(b[1].over(b[2].plus(x)).exp());
      case "MGH17" -> b[0].plus(decay(b[1], b[3], x)).plus(decay(b[2], b[4], x));
      case "Misra1b" -> b[0].times(one(b).minus(b[1].times(x / 2).plus(1).power(-2)));
      case "Misra1c" -> b[0].times(one(b).minus(b[1].times(2 * x).plus(1).power(-0.5)));
      case "Misra1d" -> b[0].times(b[1]).times(x).over(b[1].times(x).plus(1));
      case "Nelson" -> b[0].minus(b[1].times(x).times(b[2].times(-row[2]).exp()));
      case "Rat42" -> b[0].over(b[1].minus(b[2].times(x)).exp().plus(1));
      case "Rat43" -> b[0].over(b[1].minus(b[2].times(x)).exp().plus(1).power(one(b).over(b[3])));
      case "Roszman1" ->
          b[0].minus(b[1].times(x))
              .minus(b[2].over(b[3].times(-1).plus(x)).arctan().times(1 / Math.PI));
      default -> throw new IllegalArgumentException("name must be known, was " + name);
    };
  }

  private static Dual one(Dual[] b) {
    return Dual.constant(1, b.length);
  }

  private static Dual grown(Dual rate, double x) {
    return rate.times(-x).exp().times(-1).plus(1);
  }

  private static Dual decay(Dual size, Dual rate, double x) {
    return size.times(rate.times(-x).exp());
  }

  private static Dual bell(Dual centre, Dual width, double x, double factor) {
    return centre.times(-1).plus(x).over(width).square().times(-factor).exp();
  }

  private static Dual polynomial(double x, Dual... coefficients) {
    Dual sum = coefficients[coefficients.length - 1];
    for (int k = coefficients.length - 2; k >= 0; k--) {
      sum = sum.times(x).plus(coefficients[k]);
    }
    return sum;
  }

  private static Dual seasons(Dual[] b, double x) {
    double year = 2 * Math.PI * x / 12;
    return b[0].plus(b[1].times(StrictMath.cos(year)))
        .plus(b[2].times(StrictMath.sin(year)))
        .plus(wave(b[4], b[5], b[3], x, b))
        .plus(wave(b[7], b[8], b[6], x, b));
  }

  private static Dual wave(Dual cosine, Dual sine, Dual period, double x, Dual[] b) {
    Dual angle = one(b).times(2 * Math.PI * x).over(period);
    return cosine.times(angle.cos()).plus(sine.times(angle.sin()));
  }
}
