package org.roastfield.core.shape;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.internal.Check;

/**
 * Long round piece whose diameter changes along its length (a rolled leg, a tenderloin), computed
 * at stations: cross-sections that are cooks of their own, as if each went on for ever. Not a
 * {@link Shape}: one coordinate cannot hold it.
 *
 * <p>Right within 1.5 % of the core time two diameters from an end. Nearer to it heat comes through
 * the end too, and computed core times are too long: at one and a half diameters by up to 3 %, at
 * one by 7 %, at three quarters by 11 %, at a half by 18 %, at Biot numbers from 0.5 to 5 ({@code
 * NeglectedEdgesTest}); so in the end thirds of most pieces. Heat that flows from the thin to the
 * thick end is left out as well.
 *
 * @param diameters at equal spacings from one end to the other [m], at least 2, each greater than
 *     0; straight between them
 * @param length from end to end [m], greater than 0
 */
public record Taper(List<Double> diameters, double length) {

  /** Number of stations that says what the ends and the middle are like. */
  public static final int THIRDS = 3;

  private static final int MOST_STATIONS = 1000;

  /**
   * @throws IllegalArgumentException if there are fewer than 2 diameters, or a size is not finite
   *     and positive
   */
  public Taper {
    diameters = List.copyOf(diameters);
    Check.inRange("number of diameters", diameters.size(), 2, MOST_STATIONS);
    for (double diameter : diameters) {
      Check.positive("diameter", diameter);
    }
    Check.positive("length", length);
  }

  /**
   * A place along a taper.
   *
   * @param position distance from the first end [m]
   * @param crossSection the piece there, as a cut
   */
  public record Station(double position, Cylinder crossSection) {}

  /** Taper from one diameter to another [m]. */
  public static Taper between(double firstDiameter, double lastDiameter, double length) {
    return new Taper(List.of(firstDiameter, lastDiameter), length);
  }

  /**
   * Stations in the middles of equal parts of the length, from the first end on: of 3, the first
   * end, the middle and the last end, each for its third of the length.
   *
   * @param count 1 … {@value #MOST_STATIONS}
   */
  public List<Station> stations(int count) {
    Check.inRange("count", count, 1, MOST_STATIONS);
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double position = length * (i + 0.5) / count;
      stations.add(new Station(position, Cylinder.ofDiameter(diameterAt(position))));
    }
    return List.copyOf(stations);
  }

  /**
   * Diameter at a place [m].
   *
   * @param position distance from the first end [m], in [0, {@link #length()}]
   */
  public double diameterAt(double position) {
    double share = Check.inRoundedRange("position", position, 0, length) / length;
    int pieces = diameters.size() - 1;
    int piece = Math.min(pieces - 1, (int) (share * pieces));
    double within = share * pieces - piece;
    return (1 - within) * diameters.get(piece) + within * diameters.get(piece + 1);
  }

  /** Volume [m³]. */
  public double volume() {
    double piece = length / (diameters.size() - 1);
    double sum = 0;
    for (int i = 1; i < diameters.size(); i++) {
      double a = diameters.get(i - 1);
      double b = diameters.get(i);
      sum += Math.PI / 12 * piece * (a * a + a * b + b * b);
    }
    return sum;
  }

  /** Surface with both ends [m²]. */
  public double area() {
    double piece = length / (diameters.size() - 1);
    double first = diameters.get(0);
    double last = diameters.get(diameters.size() - 1);
    double sum = Math.PI / 4 * (first * first + last * last);
    for (int i = 1; i < diameters.size(); i++) {
      double a = diameters.get(i - 1);
      double b = diameters.get(i);
      double half = 0.5 * (a - b);
      sum += Math.PI / 2 * (a + b) * Math.sqrt(piece * piece + half * half);
    }
    return sum;
  }
}
