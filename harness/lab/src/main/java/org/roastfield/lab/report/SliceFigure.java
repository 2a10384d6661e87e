package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.outcome.CrossSection;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Inside;
import org.roastfield.lab.timeline.Station;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * The cross-section of a cut in bands: areas with a number each, so that it reads without colour,
 * and a key with the share of each.
 */
final class SliceFigure {

  private static final int LOOKS = 800;
  private static final double LABEL_ROOM = 15;
  private static final double NARROW_SIZE = 180;

  private final SliceBands bands;
  private final CrossSection values;
  private final Shape shape;

  private SliceFigure(SliceBands bands, Shape shape) {
    this.bands = bands;
    this.values = bands.values();
    this.shape = shape;
  }

  /**
   * One figure with a picture and a table for each scale, and one for the look; none for food that
   * no scale bears on. A taper has a picture for each station.
   *
   * @param shown scale of temperatures in the tables
   */
  static List<Figure> of(ComputedCook cook, TemperatureScale shown) {
    List<Inside> places = new ArrayList<>(List.of(cook.inside()));
    List<String> names = new ArrayList<>(List.of(""));
    List<Shape> shapes = new ArrayList<>(List.of(cook.result().cook().cut().shape()));
    if (!cook.stations().isEmpty()) {
      places = cook.stations().stream().map(Station::inside).toList();
      names = cook.stations().stream().map(Station::name).toList();
      shapes =
          cook.stations().stream()
              .<Shape>map(station -> Cylinder.ofDiameter(station.diameter()))
              .toList();
    }
    List<Figure> figures = new ArrayList<>();
    for (int i = 0; i < cook.inside().doneness().size(); i++) {
      int scale = i;
      DonenessScale named = cook.inside().doneness().get(i).scale();
      figures.add(
          figure(
              "The slice by the highest temperature reached, scale: " + named.name(),
              "Names: "
                  + named.source()
                  + " ("
                  + named.status().word()
                  + "). Other scales use the same names for other temperatures. ",
              places.stream()
                  .map(
                      one ->
                          SliceBands.of(one.doneness().get(scale), one.outcomes().highest(), shown))
                  .toList(),
              names,
              shapes));
    }
    List<SliceBands> looks =
        places.stream()
            .flatMap(one -> one.outcomes().colour().stream())
            .map(SliceBands::of)
            .toList();
    if (!looks.isEmpty()) {
      String source = cook.inside().outcomes().colour().orElseThrow().pigment().source();
      figures.add(
          figure(
              "The slice by its colour, time at temperature",
              "By how much of the red pigment has changed: " + source + ". ",
              looks,
              names,
              shapes));
    }
    return figures;
  }

  private static Figure figure(
      String title,
      String caption,
      List<SliceBands> bands,
      List<String> names,
      List<Shape> shapes) {
    List<Panel> panels = new ArrayList<>();
    List<Table> tables = new ArrayList<>();
    for (int i = 0; i < bands.size(); i++) {
      SliceFigure slice = new SliceFigure(bands.get(i), shapes.get(i));
      String place = names.get(i).isEmpty() ? "" : ", " + names.get(i);
      panels.add(
          Panel.drawn(
              Layout.withoutStages(), layout -> slice.drawing(layout, title + place, place)));
      tables.add(bands.get(i).table(place));
      tables.add(bands.get(i).depths(place));
    }
    String form =
        shapes.get(0) instanceof Slab
            ? "Across the thickness, upper face above."
            : "Through the middle; drawn round, as it is computed.";
    return new Figure(title, caption + form, panels, tables);
  }

  private String drawing(Layout layout, String title, String place) {
    Range unit = new Range(0, 1);
    Plot plot = Plot.start(layout, title, description(), unit, unit);
    Room room = layout.plot();
    List<Area> areas = areas();
    double most = layout.isNarrow() ? NARROW_SIZE : room.right() - room.left();
    double size = Math.min(most, room.bottom() - room.top());
    double left = layout.isNarrow() ? 6 : room.left();
    double pixels = size / (2 * shape.halfThickness());
    for (int i = areas.size() - 1; i >= 0; i--) {
      area(plot, areas.get(i), left, room.top(), size, pixels);
    }
    for (Area area : areas) {
      label(plot, area, left, room.top(), size, pixels);
    }
    String across = Numbers.decimal(2000 * shape.halfThickness(), 0) + " mm across" + place;
    plot.text("axis middle", left + size / 2, room.top() + size + 18, across);
    key(plot, left + size + 14, room.top());
    return plot.finished();
  }

  private void area(Plot plot, Area area, double left, double top, double size, double pixels) {
    String fill = Ramp.colour(place(area.band()));
    String[] form;
    if (shape instanceof Slab) {
      double upper = top + pixels * (shape.halfThickness() - area.to());
      form = rectangle(left, upper, size, pixels * (area.to() - area.from()));
      plot.svg().empty("rect", styled(form, fill));
      if (!isTwoFaced() && area.to() > 0) {
        double mirrored = top + pixels * (shape.halfThickness() + area.from());
        form = rectangle(left, mirrored, size, pixels * (area.to() - area.from()));
        plot.svg().empty("rect", styled(form, fill));
      }
    } else {
      double radius = 0.5 * size * area.to() / end();
      form =
          new String[] {
            "cx",
            Numbers.coordinate(left + size / 2),
            "cy",
            Numbers.coordinate(top + size / 2),
            "r",
            Numbers.coordinate(radius)
          };
      plot.svg().empty("circle", styled(form, fill));
    }
    plot.svg().newLine();
  }

  private void label(Plot plot, Area area, double left, double top, double size, double pixels) {
    double scale = shape instanceof Slab ? pixels : 0.5 * size / end();
    boolean innermost = !isTwoFaced() && area.from() <= 0;
    double thick = scale * (area.to() - area.from()) * (innermost ? 2 : 1);
    if (thick < LABEL_ROOM) {
      return;
    }
    double middle = innermost ? 0 : 0.5 * (area.from() + area.to());
    double y = top + size / 2 - scale * middle + 4;
    plot.text(tone(area.band()) + " middle", left + size / 2, y, number(area.band()));
  }

  private void key(Plot plot, double left, double top) {
    double line = top + 14;
    for (int i = bands.size() - 1; i >= 0; i--) {
      if (bands.shows(i)) {
        plot.svg().empty("rect", styled(rectangle(left, line - 12, 18, 16), Ramp.colour(place(i))));
        plot.text(tone(i) + " middle", left + 9, line, number(i));
        int letters = (int) ((plot.layout().width() - left - 30) / Letters.width("x"));
        plot.text("start", left + 24, line, Letters.shortened(name(i), letters));
        String share = Numbers.decimal(100 * bands.shares().get(i), 1) + " %";
        plot.text("tick start", left + 24, line + 14, share);
        line += 36;
      }
    }
  }

  private String description() {
    StringBuilder text = new StringBuilder("Cross-section of the cut in bands. ");
    for (int i = 0; i < bands.size(); i++) {
      if (bands.shows(i)) {
        text.append(number(i)).append(' ').append(name(i)).append(": ");
        text.append(Numbers.decimal(100 * bands.shares().get(i), 1)).append(" %. ");
      }
    }
    return text.toString().strip();
  }

  /** Runs of places in one band, from the lowest position on. */
  private List<Area> areas() {
    double first = values.position(0);
    List<Area> areas = new ArrayList<>();
    double from = first;
    int band = bands.indexAt(values.at(first));
    for (int i = 1; i <= LOOKS; i++) {
      double position = first + (end() - first) * i / LOOKS;
      int here = bands.indexAt(values.at(Math.min(position, end())));
      if (here != band) {
        areas.add(new Area(band, from, position));
        from = position;
        band = here;
      }
    }
    areas.add(new Area(band, from, end()));
    return areas;
  }

  private double end() {
    return values.position(values.size() - 1);
  }

  private boolean isTwoFaced() {
    return values.position(0) < 0;
  }

  private String name(int band) {
    return bands.names().get(band);
  }

  private static String number(int band) {
    return Integer.toString(band + 1);
  }

  private double place(int band) {
    return (double) band / (bands.size() - 1);
  }

  private String tone(int band) {
    return "isotherm-label " + (Ramp.isPale(place(band)) ? "on-pale" : "on-dark");
  }

  private static String[] rectangle(double left, double top, double width, double height) {
    return new String[] {
      "x", Numbers.coordinate(left),
      "y", Numbers.coordinate(top),
      "width", Numbers.coordinate(width),
      "height", Numbers.coordinate(height)
    };
  }

  private static String[] styled(String[] form, String fill) {
    String[] all = java.util.Arrays.copyOf(form, form.length + 4);
    all[form.length] = "style";
    all[form.length + 1] = "stroke:#6b5d55;stroke-width:0.8";
    all[form.length + 2] = "fill";
    all[form.length + 3] = fill;
    return all;
  }

  /**
   * A run of places.
   *
   * @param band index
   * @param from position [m]
   * @param to position [m]
   */
  private record Area(int band, double from, double to) {}
}
