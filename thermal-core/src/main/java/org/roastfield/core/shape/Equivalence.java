package org.roastfield.core.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The body of one coordinate that warms like a finite piece: its exponent m and radius R are those
 * with which its core has {@value #EARLY} and {@value #LATE} of the first temperature difference
 * left at the same times as the piece's, eq. (42), at one Biot number, or at two so that it serves
 * for all between and somewhat beyond. The piece's core is the product of those of its directions
 * [CarslawJaeger1959].
 *
 * @param exponent m
 * @param radius R [m]
 */
record Equivalence(double exponent, double radius) {

  static final double EARLY = 0.5;
  static final double LATE = 0.15;

  private static final double WIDENING = 1.25;
  private static final double PRECISION = 1e-12;
  private static final int MOST_STEPS = 200;

  /**
   * One direction of a piece: heat flows along it as through an endless slab or cylinder.
   *
   * @param exponent 0 between two faces, 1 from an axis
   * @param half half thickness or radius [m]
   */
  record Direction(double exponent, double half) {}

  /**
   * Equivalence of a piece, at one Biot number h half/k or between two.
   *
   * @param half least half thickness [m]
   * @param biotEarly that of the time at which {@value #EARLY} is left
   * @param biotLate that of the time at which {@value #LATE} is left
   */
  static Equivalence of(
      List<Direction> directions, double half, double biotEarly, double biotLate) {
    DoubleUnaryOperator coreEarly = core(directions, half, biotEarly);
    DoubleUnaryOperator coreLate = core(directions, half, biotLate);
    double early = rootNear(1, time -> EARLY - coreEarly.applyAsDouble(time));
    double late = rootNear(early, time -> LATE - coreLate.applyAsDouble(time));
    DoubleUnaryOperator radius = m -> rootNear(1, r -> core(m, r, biotEarly, early, early) - EARLY);
    DoubleUnaryOperator ahead = m -> LATE - core(m, radius.applyAsDouble(m), biotLate, early, late);
    double m = ahead.applyAsDouble(0) >= 0 ? 0 : root(ahead, 0, Compact.HIGHEST_EXPONENT);
    return new Equivalence(m, half * radius.applyAsDouble(m));
  }

  /** Core of a piece over α t/half². */
  private static DoubleUnaryOperator core(
      List<Direction> directions, double half, double biotNumber) {
    double[] ratios = directions.stream().mapToDouble(one -> one.half() / half).toArray();
    List<CoreSeries> series = new ArrayList<>();
    for (int i = 0; i < ratios.length; i++) {
      series.add(new CoreSeries(directions.get(i).exponent(), biotNumber * ratios[i], 0));
    }
    return time -> {
      double product = 1;
      for (int i = 0; i < ratios.length; i++) {
        product *= series.get(i).at(time / (ratios[i] * ratios[i]));
      }
      return product;
    };
  }

  /** Core of the body of exponent m and radius r · half at a time over half²/α. */
  private static double core(double m, double r, double biotNumber, double earliest, double time) {
    return new CoreSeries(m, biotNumber * r, earliest / (r * r)).at(time / (r * r));
  }

  /** Root of a rising function of a positive number. */
  private static double rootNear(double guess, DoubleUnaryOperator rising) {
    double low = guess;
    double high = guess;
    while (rising.applyAsDouble(low) > 0) {
      low /= WIDENING;
    }
    while (rising.applyAsDouble(high) < 0) {
      high *= WIDENING;
    }
    return root(rising, low, high);
  }

  /** Root of a rising function between two places, by regula falsi; an end kept twice is halved. */
  private static double root(DoubleUnaryOperator rising, double low, double high) {
    double a = low;
    double b = high;
    double fa = rising.applyAsDouble(a);
    double fb = rising.applyAsDouble(b);
    if (!(fa <= 0 && fb >= 0)) {
      throw new IllegalStateException("no root between " + low + " and " + high);
    }
    double before = 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      double c = fb > fa ? b - fb * (b - a) / (fb - fa) : a;
      double fc = rising.applyAsDouble(c);
      if (Math.abs(fc) <= PRECISION || c <= a || c >= b) {
        return c;
      }
      if (fc < 0) {
        a = c;
        fa = fc;
        fb *= before < 0 ? 0.5 : 1;
      } else {
        b = c;
        fb = fc;
        fa *= before > 0 ? 0.5 : 1;
      }
      before = fc;
    }
    throw new IllegalStateException("no root found between " + low + " and " + high);
  }
}
