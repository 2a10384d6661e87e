package org.roastfield.lab.report;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A picture of a caller's own numbers, drawn as the reports draw theirs: curves, bands and rings
 * over an axis of numbers. Notebooks use it.
 */
public final class Chart {

  private static final List<Curve.Role> ROLES =
      List.of(Curve.Role.FIRST, Curve.Role.SECOND, Curve.Role.THIRD, Curve.Role.FOURTH);

  private final String title;
  private final String across;
  private final String up;
  private final List<Curve> curves;
  private final List<Band> bands;
  private final List<List<Point>> rings;

  /** What is tinted between two lines. */
  private record Band(List<Point> low, List<Point> high) {}

  private Chart(
      String title,
      String across,
      String up,
      List<Curve> curves,
      List<Band> bands,
      List<List<Point>> rings) {
    this.title = title;
    this.across = across;
    this.up = up;
    this.curves = curves;
    this.bands = bands;
    this.rings = rings;
  }

  /**
   * A picture with nothing in it.
   *
   * @param title what it shows
   * @param across quantity from left to right, with its unit
   * @param up quantity from bottom to top, with its unit
   */
  public static Chart of(String title, String across, String up) {
    return new Chart(title, across, up, List.of(), List.of(), List.of());
  }

  /**
   * The same with one more curve, of at most four.
   *
   * @param name written at its end
   * @param x increasing
   * @param y as many; what is not finite is a gap
   */
  public Chart curve(String name, List<Double> x, List<Double> y) {
    if (curves.size() == ROLES.size()) {
      throw new IllegalArgumentException("curves must be at most 4, " + name + " was the fifth");
    }
    Curve curve = new Curve(name, ROLES.get(curves.size()), points(x, y));
    return new Chart(title, across, up, with(curves, curve), bands, rings);
  }

  /**
   * The same with what lies between two lines tinted.
   *
   * @param x increasing
   * @param low as many, finite
   * @param high as many, finite
   */
  public Chart band(List<Double> x, List<Double> low, List<Double> high) {
    Band band = new Band(points(x, low), points(x, high));
    return new Chart(title, across, up, curves, with(bands, band), rings);
  }

  /**
   * The same with a ring at each point.
   *
   * @param x in any order
   * @param y as many; what is not finite is left out
   */
  public Chart rings(List<Double> x, List<Double> y) {
    return new Chart(title, across, up, curves, bands, with(rings, points(x, y)));
  }

  /** The picture as an SVG file. */
  public String svg() {
    return Panel.drawn(Layout.withoutStages(), this::drawing).standalone();
  }

  /** The picture as an HTML image that needs no other file. */
  public String html() {
    byte[] svg = svg().getBytes(StandardCharsets.UTF_8);
    String data = "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(svg);
    String words = title + ". " + description();
    return new Markup()
        .empty("img", "style", "width: 100%; max-width: 48rem", "alt", words, "src", data)
        .finished();
  }

  private String drawing(Layout layout) {
    Range wide = across();
    Range high = Curves.range(all().map(points -> new Curve("", ROLES.get(0), points)).toList());
    Plot plot = Plot.start(layout, title, description(), wide, high);
    bands.forEach(band -> plot.band(band.high(), band.low()));
    plot.rules(
        Tick.decimal(wide.low(), wide.high(), layout.mostTicksAcross()),
        Tick.decimal(high.low(), high.high(), layout.mostTicksUp()));
    rings.forEach(plot::points);
    curves.forEach(plot::curve);
    return plot.frame(across, up).names(curves).finished();
  }

  private Range across() {
    double[] sorted =
        all()
            .flatMap(List::stream)
            .filter(Point::isFinite)
            .mapToDouble(Point::x)
            .sorted()
            .toArray();
    if (sorted.length == 0) {
      throw new IllegalArgumentException("chart must have a point, had none: " + title);
    }
    return new Range(sorted[0], sorted[sorted.length - 1]);
  }

  private Stream<List<Point>> all() {
    return Stream.of(
            curves.stream().map(Curve::points),
            bands.stream().flatMap(band -> Stream.of(band.low(), band.high())),
            rings.stream())
        .flatMap(part -> part);
  }

  private String description() {
    StringBuilder words = new StringBuilder(up + " over " + across + ".");
    for (Curve curve : curves) {
      List<Point> known = curve.points().stream().filter(Point::isFinite).toList();
      words.append(' ').append(curve.name()).append(": ");
      words.append(known.isEmpty() ? "no values" : ends(known)).append('.');
    }
    return words.toString();
  }

  private static String ends(List<Point> known) {
    Point first = known.get(0);
    Point last = known.get(known.size() - 1);
    return "from "
        + Numbers.decimal(first.y(), 1)
        + " at "
        + Numbers.decimal(first.x(), 1)
        + " to "
        + Numbers.decimal(last.y(), 1)
        + " at "
        + Numbers.decimal(last.x(), 1);
  }

  private static List<Point> points(List<Double> x, List<Double> y) {
    if (x.size() != y.size()) {
      throw new IllegalArgumentException(
          "y must be as many as x, which are " + x.size() + ", were " + y.size());
    }
    return IntStream.range(0, x.size()).mapToObj(i -> new Point(x.get(i), y.get(i))).toList();
  }

  private static <T> List<T> with(List<T> some, T one) {
    return Stream.concat(some.stream(), Stream.of(one)).toList();
  }
}
