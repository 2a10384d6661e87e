package org.roastfield.core.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.roastfield.core.reference.BesselSeries;
import org.roastfield.core.reference.CoreProduct;
import org.roastfield.core.support.UniformDraws;

/**
 * Core times of equivalent bodies, by series of Bessel functions, against those of the pieces, by
 * products of the closed series of slab and cylinder: until 0.5, 0.3 and 0.1 of the first
 * difference is left. Proportions are drawn evenly in their logarithm.
 */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class CompactPropertiesTest {

  private static final int TRIES = 60;
  private static final double[] LEFT = {0.5, 0.3, 0.1};

  /** Asked for are 3 % and, for boxes, 6 %. */
  private static final double PROMISED = 0.02;

  private static final double LOG_100 = 4.6;

  @Property(tries = TRIES)
  void finiteCylindersAndDiscs_keepThePromise(
      @ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber,
      @ForAll @DoubleRange(min = -LOG_100, max = LOG_100) double logRatio) {
    double ratio = Math.exp(logRatio);
    double radius = Math.max(1, 1 / ratio);
    double half = Math.max(1, ratio);
    CoreProduct exact = CoreProduct.cylinder(radius, half, biotNumber);
    assertError(PROMISED, Compact.ofCylinder(2 * radius, 2 * half, biotNumber), exact, biotNumber);
  }

  @Property(tries = TRIES)
  void boxes_keepThePromise(
      @ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logWidth,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logLength) {
    double b = Math.exp(logWidth);
    double c = Math.exp(logLength);
    CoreProduct exact = CoreProduct.box(1, b, c, biotNumber);
    assertError(PROMISED, Compact.ofBox(2, 2 * b, 2 * c, biotNumber), exact, biotNumber);
  }

  @Property(tries = TRIES)
  void cubes_keepThePromise(@ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber) {
    CoreProduct exact = CoreProduct.box(1, 1, 1, biotNumber);
    assertError(PROMISED, Compact.ofBox(2, 2, 2, biotNumber), exact, biotNumber);
  }

  /** Outside the Biot numbers of the promise, there is still a body. */
  @Property(tries = TRIES)
  void anyBox_hasAnEquivalent(
      @ForAll @DoubleRange(min = -1.6, max = 3.9) double logBiot,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logWidth,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logLength) {
    double biotNumber = Math.exp(logBiot);
    double b = Math.exp(logWidth);
    double c = Math.exp(logLength);
    Compact box = Compact.ofBox(2, 2 * b, 2 * c, biotNumber);
    assertTrue(box.exponent() < Compact.HIGHEST_EXPONENT, box::toString);
    CoreProduct exact = CoreProduct.box(1, b, c, biotNumber);
    assertError(PROMISED, box, exact, biotNumber);
  }

  /** Half or twice the Biot number that a piece was made for. */
  @Property(tries = TRIES)
  void otherBiotNumbers_costWhatIsStated(
      @ForAll boolean doubled,
      @ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logWidth,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logLength) {
    double other = biotNumber * (doubled ? 2 : 0.5);
    double b = Math.exp(logWidth);
    double c = Math.exp(logLength);
    assertError(
        0.10, Compact.ofBox(2, 2 * b, 2 * c, biotNumber), CoreProduct.box(1, b, c, other), other);
    assertError(
        0.045, Compact.ofCylinder(2, 2 * b, biotNumber), CoreProduct.cylinder(1, b, other), other);
    assertError(0.03, Compact.ofBox(2, 2, 2, biotNumber), CoreProduct.box(1, 1, 1, other), other);
  }

  /** Pieces whose maker states no Biot number keep what is asked for, over all of its range. */
  @Property(tries = 2 * TRIES)
  void noBiotNumber_servesForAll(
      @ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logWidth,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logLength) {
    double b = Math.exp(logWidth);
    double c = Math.exp(logLength);
    assertError(
        0.06, Compact.ofBox(2, 2 * b, 2 * c), CoreProduct.box(1, b, c, biotNumber), biotNumber);
    double flat = Math.min(2, b);
    Compact disc = Compact.ofCylinder(2 * flat, 2);
    assertError(0.03, disc, CoreProduct.cylinder(flat, 1, biotNumber), biotNumber);
    Compact cylinder = Compact.ofCylinder(2, 2 * b);
    assertError(0.03, cylinder, CoreProduct.cylinder(1, b, biotNumber), biotNumber);
    assertError(0.03, Compact.ofBox(2, 2, 2), CoreProduct.box(1, 1, 1, biotNumber), biotNumber);
  }

  /** Flatter discs need theirs stated: no body of one coordinate serves them within 5 %. */
  @Property(tries = TRIES)
  void noBiotNumber_costsFlatDiscsWhatIsStated(
      @ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber,
      @ForAll @DoubleRange(min = 0, max = LOG_100) double logWidth) {
    double radius = Math.exp(logWidth);
    Compact disc = Compact.ofCylinder(2 * radius, 2);
    assertError(0.06, disc, CoreProduct.cylinder(radius, 1, biotNumber), biotNumber);
  }

  @Property(tries = TRIES)
  void largerPieces_takeLonger(
      @ForAll @DoubleRange(min = 0.5, max = 5) double biotNumber,
      @ForAll @DoubleRange(min = 0, max = 2) double logWidth,
      @ForAll @DoubleRange(min = 0, max = 2) double logLength,
      @ForAll @DoubleRange(min = 1.02, max = 1.5) double longer) {
    double b = 2 * Math.exp(logWidth);
    double c = 2 * Math.exp(logLength);
    Compact piece = Compact.ofBox(2, b, c, biotNumber);
    double before = time(piece, biotNumber, 0.3);
    double after = time(Compact.ofBox(2, b, longer * c, biotNumber), biotNumber, 0.3);
    assertTrue(after > before * (1 - 1e-3), () -> after + " after " + before);
    assertTrue(time(piece.scaled(longer), biotNumber, 0.3) > before);
  }

  @Property(tries = TRIES)
  void similarPieces_areScaledCopies(
      @ForAll @DoubleRange(min = 0.2, max = 5) double factor,
      @ForAll @DoubleRange(min = 0, max = 2) double logWidth,
      @ForAll @DoubleRange(min = 0, max = 2) double logLength) {
    double b = Math.exp(logWidth);
    double c = Math.exp(logLength);
    Compact scaled = Compact.ofBox(1, b, c).scaled(factor);
    Compact made = Compact.ofBox(c * factor, factor, b * factor);
    assertEquals(made.exponent(), scaled.exponent(), 1e-7);
    assertEquals(made.equivalentRadius(), scaled.equivalentRadius(), 1e-7 * factor);
    assertEquals(made.halfThickness(), scaled.halfThickness(), 1e-12 * factor);
    assertEquals(made.volume(), scaled.volume(), 1e-12 * made.volume());
    assertEquals(made.area(), scaled.area(), 1e-12 * made.area());
  }

  private static void assertError(
      double allowed, Compact piece, CoreProduct exact, double biotNumber) {
    for (double left : LEFT) {
      double error = time(piece, biotNumber, left) / exact.time(left) - 1;
      assertTrue(
          Math.abs(error) <= allowed,
          () -> "error " + error + " until " + left + " for " + piece + " at Bi " + biotNumber);
    }
  }

  /** Time in units of the piece's half thickness, which is 1. */
  private static double time(Compact piece, double biotNumber, double left) {
    double r = piece.equivalentRadius();
    BesselSeries series = new BesselSeries(piece.exponent(), biotNumber * r);
    return CoreProduct.time(
        time -> {
          double fourierNumber = time / (r * r);
          return fourierNumber < BesselSeries.SMALLEST_FOURIER_NUMBER
              ? 1
              : series.temperature(0, fourierNumber);
        },
        left);
  }
}
