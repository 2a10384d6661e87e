package org.roastfield.core.shape;

import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * Compact piece that heat enters from every side: a short cylinder, a disc, a box, a cube. Computed
 * as a body of one coordinate whose core warms as the piece's does, eq. (42) of docs/model.md;
 * volume and area stay those of the piece.
 *
 * <p>Core times until 0.5, 0.3 and 0.1 of the first temperature difference is left are within 1.5 %
 * of the exact ones at the Biot number that the piece was made for, 0.5-5, and within 10 % at half
 * or twice that (cylinder 4.5 %, cube 3 %). Made without one, a piece serves for all of 0.5-5:
 * within 3 % (cylinder at least half as long as thick, cube) and 6 % (box, flatter disc; {@code
 * CompactPropertiesTest}). Who knows the coefficient states h a/k.
 *
 * <p>A probe's depth is counted from the nearest face along the shortest way to the core, and read
 * at the same share of R. The surface is that of no place: in an oven it is hotter than the middle
 * of the nearest face and colder than the mean over all faces ({@code CompactPlacesTest}).
 *
 * <p>Heat of the piece [J] is a heat for each square metre of a result times {@link
 * #equivalentArea()}: the mean temperature times the true heat capacity. Water of the piece [kg] is
 * that for each square metre times {@link #area()}.
 *
 * @param exponent m of eq. (1), in [0, {@value #HIGHEST_EXPONENT}]
 * @param equivalentRadius R of eq. (1) [m], greater than 0
 * @param halfThickness least distance from the core to a face of the piece [m], greater than 0
 * @param volume of the piece [m³], greater than 0
 * @param area surface of the piece [m²], greater than 0
 * @param girth way of the air around the piece as it lies [m], greater than 0
 */
public record Compact(
    double exponent,
    double equivalentRadius,
    double halfThickness,
    double volume,
    double area,
    double girth)
    implements Shape {

  /** Largest {@link #exponent()}; pieces of any proportions need up to 3.5. */
  public static final double HIGHEST_EXPONENT = 4;

  /**
   * Biot number of a usual roast: h = 20 W/(m²·K), of which about half is radiation, on a half
   * thickness of 48 mm with k = 0.48 W/(m·K). Status: assumed.
   */
  public static final double TYPICAL_BIOT_NUMBER = 2;

  /** Lowest Biot number that an equivalence is made for. */
  public static final double LOWEST_BIOT_NUMBER = 0.2;

  /** Highest Biot number that an equivalence is made for. */
  public static final double HIGHEST_BIOT_NUMBER = 50;

  /**
   * Biot numbers at which a piece made for all of 0.5-5 keeps pace early and late: chosen among
   * some twenty pairs by the largest errors of cylinders, cubes and boxes.
   */
  private static final double EARLY_BIOT_NUMBER = 2.5;

  private static final double LATE_BIOT_NUMBER = 0.8;

  /**
   * @throws IllegalArgumentException if a number is out of its range
   */
  public Compact {
    Check.inRange("exponent", exponent, 0, HIGHEST_EXPONENT);
    Check.positive("equivalentRadius", equivalentRadius);
    Check.positive("halfThickness", halfThickness);
    Check.positive("volume", volume);
    Check.positive("area", area);
    Check.positive("girth", girth);
  }

  /** Cylinder with two ends, or a disc, for Biot numbers from 0.5 to 5; sizes in m. */
  public static Compact ofCylinder(double diameter, double length) {
    return ofCylinder(diameter, length, EARLY_BIOT_NUMBER, LATE_BIOT_NUMBER);
  }

  /**
   * Cylinder with two ends, or a disc.
   *
   * @param diameter [m], greater than 0
   * @param length [m], greater than 0
   * @param biotNumber h a/k that the equivalence is made for, a the smaller of radius and half
   *     length, in [0.2, 50]
   */
  public static Compact ofCylinder(double diameter, double length, double biotNumber) {
    checkBiot(biotNumber);
    return ofCylinder(diameter, length, biotNumber, biotNumber);
  }

  private static Compact ofCylinder(
      double diameter, double length, double biotEarly, double biotLate) {
    double radius = Check.positive("diameter", diameter) / 2;
    double half = Check.positive("length", length) / 2;
    return of(
        List.of(new Equivalence.Direction(1, radius), new Equivalence.Direction(0, half)),
        Math.PI * radius * radius * length,
        2 * Math.PI * radius * (radius + length),
        length < diameter ? 2 * length + Math.PI * radius : Math.PI * diameter,
        biotEarly,
        biotLate);
  }

  /** Box for Biot numbers from 0.5 to 5; sizes in m, in any order. */
  public static Compact ofBox(double thickness, double width, double length) {
    return ofBox(thickness, width, length, EARLY_BIOT_NUMBER, LATE_BIOT_NUMBER);
  }

  /**
   * Box; the order of its sizes does not matter.
   *
   * @param thickness [m], greater than 0
   * @param width [m], greater than 0
   * @param length [m], greater than 0
   * @param biotNumber h a/k that the equivalence is made for, a half the smallest size, in [0.2,
   *     50]
   */
  public static Compact ofBox(double thickness, double width, double length, double biotNumber) {
    checkBiot(biotNumber);
    return ofBox(thickness, width, length, biotNumber, biotNumber);
  }

  private static Compact ofBox(
      double thickness, double width, double length, double biotEarly, double biotLate) {
    double a = Check.positive("thickness", thickness);
    double b = Check.positive("width", width);
    double c = Check.positive("length", length);
    return of(
        List.of(
            new Equivalence.Direction(0, a / 2),
            new Equivalence.Direction(0, b / 2),
            new Equivalence.Direction(0, c / 2)),
        a * b * c,
        2 * (a * b + b * c + c * a),
        2 * (a + b + c - Math.max(a, Math.max(b, c))),
        biotEarly,
        biotLate);
  }

  private static void checkBiot(double biotNumber) {
    Check.inRange("biotNumber", biotNumber, LOWEST_BIOT_NUMBER, HIGHEST_BIOT_NUMBER);
  }

  private static Compact of(
      List<Equivalence.Direction> directions,
      double volume,
      double area,
      double girth,
      double biotEarly,
      double biotLate) {
    double half = directions.stream().mapToDouble(Equivalence.Direction::half).min().orElseThrow();
    Equivalence body = Equivalence.of(directions, half, biotEarly, biotLate);
    return new Compact(body.exponent(), body.radius(), half, volume, area, girth);
  }

  /**
   * The piece with every length multiplied: its exponent has the same bits, so that draws of its
   * size share a grid.
   */
  @Override
  public Compact scaled(double factor) {
    Check.positive("factor", factor);
    return new Compact(
        exponent,
        factor * equivalentRadius,
        factor * halfThickness,
        factor * factor * factor * volume,
        factor * factor * area,
        factor * girth);
  }

  /**
   * Diameter of the lying cylinder past which air has as far to go [m], eq. (72): the girth over π
   * [Lienhard1973]. A box lies on its largest face and air takes the shorter way across; a disc
   * lies flat, as wide as its mean chord.
   */
  public double roundedDiameter() {
    return girth / Math.PI;
  }

  /** Surface of the body of eq. (1) that has the piece's volume, V (m + 1)/R [m²]. */
  public double equivalentArea() {
    return volume * (exponent + 1) / equivalentRadius;
  }

  @Override
  public double volumePerArea() {
    return volume / area;
  }
}
