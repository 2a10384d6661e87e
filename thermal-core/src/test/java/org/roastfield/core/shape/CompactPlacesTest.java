package org.roastfield.core.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.core.reference.BesselSeries;
import org.roastfield.core.reference.CoreProduct;

/**
 * What equivalent bodies say of other places than the core, and what simpler ones would: section 7
 * of {@code docs/model.md}. All as shares of the first temperature difference.
 */
class CompactPlacesTest {

  private static final double[] BIOT_NUMBERS = {0.5, 2, 5};
  private static final double[] LEFT = {0.7, 0.5, 0.3, 0.1};

  /** A piece whose least half thickness is 1, by its half sizes. */
  private record Piece(boolean round, double a, double b, double c) {

    static Piece round(double radius, double half) {
      return new Piece(true, radius, half, 0);
    }

    Compact body(double biotNumber) {
      return round
          ? Compact.ofCylinder(2 * a, 2 * b, biotNumber)
          : Compact.ofBox(2 * a, 2 * b, 2 * c, biotNumber);
    }

    CoreProduct exact(double biotNumber) {
      return round ? CoreProduct.cylinder(a, b, biotNumber) : CoreProduct.box(a, b, c, biotNumber);
    }

    int nearest() {
      return a <= b ? 0 : 1;
    }
  }

  static Stream<Arguments> pieces() {
    return Stream.of(
        Arguments.of(Piece.round(1, 1), 0.05),
        Arguments.of(Piece.round(1, 2), 0.05),
        Arguments.of(Piece.round(1, 3), 0.05),
        Arguments.of(new Piece(false, 1, 1, 1), 0.075),
        Arguments.of(new Piece(false, 1, 1, 3), 0.06),
        Arguments.of(new Piece(false, 1, 1.5, 3), 0.09),
        Arguments.of(new Piece(false, 1, 2, 2), 0.11),
        Arguments.of(new Piece(false, 1, 3, 5), 0.09),
        Arguments.of(Piece.round(2, 1), 0.11),
        Arguments.of(Piece.round(3, 1), 0.11));
  }

  @ParameterizedTest
  @MethodSource("pieces")
  void placesOnTheWayToTheNearestFace_areAsFarOffAsStated(Piece piece, double stated) {
    double worst = 0;
    for (double biotNumber : BIOT_NUMBERS) {
      Compact body = piece.body(biotNumber);
      CoreProduct exact = piece.exact(biotNumber);
      for (double left : LEFT) {
        double time = exact.time(left);
        for (double place : new double[] {0, 0.25, 0.5, 0.75, 1}) {
          double error =
              at(body, biotNumber, place, time) - exact.onTheWay(piece.nearest(), place, time);
          worst = Math.max(worst, Math.abs(error));
        }
      }
    }
    assertTrue(worst <= stated && worst > 0.5 * stated, "was " + worst);
  }

  /**
   * Places that the stem of a probe passes on its way from a farther face: taken to be as warm as
   * the body at 1/1.4 of the depth, or its whole profile stretched to a shorter way. With 1 or 2
   * instead of 1.4 the worst would be 0.14.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 1.5, 0.085",
    "1, 1, 2, 0.085",
    "1, 1, 4, 0.085",
    "0, 1.5, 3, 0.085",
    "0, 2, 2, 0.085"
  })
  void placesOnTheWayToAFartherFace_areAsFarOffAsStated(
      int round, double b, double far, double stated) {
    Piece piece = round == 1 ? Piece.round(1, far) : new Piece(false, 1, b, far);
    int towards = round == 1 ? 1 : 2;
    double worst = 0;
    for (double biotNumber : BIOT_NUMBERS) {
      Compact body = piece.body(biotNumber);
      CoreProduct exact = piece.exact(biotNumber);
      for (double left : LEFT) {
        double time = exact.time(left);
        for (double depth = 0; depth <= far; depth += far / 8) {
          double place = 1 - Math.min(1, depth / Math.min(1.4, far));
          double there = exact.onTheWay(towards, 1 - depth / far, time);
          worst = Math.max(worst, Math.abs(at(body, biotNumber, place, time) - there));
        }
      }
    }
    assertTrue(worst <= stated && worst > 0.5 * stated, "was " + worst);
  }

  /** In an oven: hotter than the middle of the nearest face, colder than the mean of all faces. */
  @ParameterizedTest
  @MethodSource("pieces")
  void face_isBetweenTheNearestFacesMiddleAndTheMean(Piece piece) {
    for (double biotNumber : BIOT_NUMBERS) {
      Compact body = piece.body(biotNumber);
      CoreProduct exact = piece.exact(biotNumber);
      for (double left : LEFT) {
        double time = exact.time(left);
        double face = at(body, biotNumber, 1, time);
        double mean = exact.meanOfFaces(time);
        assertTrue(face < exact.onTheWay(piece.nearest(), 1, time) + 1e-3);
        assertTrue(face > mean && face < mean + 0.062, () -> face + " against " + mean);
      }
    }
  }

  /** The surface of the body of the same volume, against that of the piece. */
  @ParameterizedTest
  @MethodSource("pieces")
  void equivalentArea_isSmallerThanThePieces(Piece piece) {
    for (double biotNumber : BIOT_NUMBERS) {
      Compact body = piece.body(biotNumber);
      double share = body.equivalentArea() / body.area();
      assertTrue(share > 0.72 && share < 0.98, () -> "was " + share);
    }
  }

  /** m = a A/V − 1 on the half thickness, for a cube and a cylinder one and a half as long. */
  @ParameterizedTest
  @ValueSource(doubles = {1.5, 5})
  void exponentsFromVolumeAndArea_areMuchTooFast(double biotNumber) {
    for (Piece piece : new Piece[] {new Piece(false, 1, 1, 1), Piece.round(1, 1.5)}) {
      Compact body = piece.body(biotNumber);
      double exponent = 1 / body.volumePerArea() - 1;
      Compact simple = new Compact(exponent, 1, 1, body.volume(), body.area(), 1);
      double exact = piece.exact(biotNumber).time(0.3);
      double time =
          CoreProduct.time(
              t -> t < BesselSeries.SMALLEST_FOURIER_NUMBER ? 1 : at(simple, biotNumber, 0, t),
              0.3);
      assertEquals(0.8, time / exact, 0.1);
    }
  }

  private static double at(Compact body, double biotNumber, double place, double time) {
    double r = body.equivalentRadius();
    return new BesselSeries(body.exponent(), biotNumber * r).temperature(place, time / (r * r));
  }
}
