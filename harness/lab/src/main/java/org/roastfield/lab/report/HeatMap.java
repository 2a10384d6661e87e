package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Temperature over depth and time as bands of colour between isotherms, the lines labelled in
 * degrees Celsius so that it reads in grey.
 */
final class HeatMap {

  private static final double KEY_WIDTH = 12;
  private static final double KEY_LABEL_HEIGHT = 13;

  private final Field field;
  private final List<Span> stages;
  private final TimeBase base;
  private final List<Double> levels;

  /**
   * A map of a field.
   *
   * @param field temperature [°C] over time [s] and depth [mm]
   * @param levels where lines are drawn and colours change [°C], increasing
   * @param stages at least one
   */
  HeatMap(Field field, List<Double> levels, List<Span> stages, TimeBase base) {
    this.field = field;
    this.stages = List.copyOf(stages);
    this.base = base;
    this.levels = List.copyOf(levels);
  }

  /** The picture. */
  Panel panel(String title) {
    return Panel.drawn(Layout.both(), layout -> drawing(layout, title));
  }

  private String drawing(Layout layout, String title) {
    Range across = new Range(field.x(0), field.x(field.columns() - 1));
    Range down = new Range(field.y(0), field.y(field.rows() - 1));
    Plot plot = Plot.startDownwards(layout, title, description(), across, down);
    bands(plot);
    IsothermLines.draw(
        plot, field, levels, this::isPale, stages.stream().map(Span::start).toList());
    plot.ticks(
        base.ticks(across.low(), across.high(), layout.mostTicksAcross()),
        Tick.decimal(down.low(), down.high(), layout.mostTicksUp()));
    StageStrip.draw(plot, stages);
    plot.frame(base.axisTitle(), "depth below the surface, mm");
    key(plot);
    return plot.finished();
  }

  private void bands(Plot plot) {
    Layout layout = plot.layout();
    rectangle(
        plot,
        layout.plotLeft(),
        layout.plotTop(),
        layout.plotRight() - layout.plotLeft(),
        layout.plotBottom() - layout.plotTop(),
        Ramp.colour(placeOfBand(0)));
    for (int i = 0; i < levels.size(); i++) {
      PathData data = new PathData();
      for (List<Contours.Vertex> outline : Contours.outlines(field, levels.get(i))) {
        data.outline(outline.stream().map(vertex -> plot.place(vertex.place())).toList());
      }
      if (!data.isEmpty()) {
        String colour = Ramp.colour(placeOfBand(i + 1));
        plot.svg()
            .empty("path", "fill", colour, "fill-rule", "evenodd", "d", data.toString())
            .newLine();
      }
    }
  }

  private void key(Plot plot) {
    Layout layout = plot.layout();
    double left = layout.plotRight() + (layout.isNarrow() ? 14 : 24);
    double height = (layout.plotBottom() - layout.plotTop()) / (levels.size() + 1);
    for (int i = 0; i <= levels.size(); i++) {
      double top = layout.plotBottom() - (i + 1) * height;
      rectangle(plot, left, top, KEY_WIDTH, height, Ramp.colour(placeOfBand(i)));
    }
    int every = (int) Math.ceil(KEY_LABEL_HEIGHT / height);
    for (int i = 0; i < levels.size(); i += every) {
      double place = layout.plotBottom() - (i + 1) * height + 4;
      plot.text("tick start", left + KEY_WIDTH + 5, place, Isotherms.text(levels, i));
    }
    plot.text("axis start", left, layout.plotTop() - 7, "°C");
  }

  private boolean isPale(int level) {
    return Ramp.isPale(placeOfBand(level));
  }

  private double placeOfBand(int band) {
    return levels.isEmpty() ? 0 : (double) band / levels.size();
  }

  private String description() {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < levels.size(); i++) {
      words.add(Isotherms.text(levels, i));
    }
    return "Temperature inside the cut over time (across) and depth (downwards), from "
        + Numbers.decimal(field.lowest(), 1)
        + " °C to "
        + Numbers.decimal(field.highest(), 1)
        + " °C. Isotherms at "
        + String.join(", ", words)
        + " °C. Darker is hotter. The table below holds the numbers.";
  }

  private static void rectangle(
      Plot plot, double left, double top, double width, double height, String fill) {
    plot.svg()
        .empty(
            "rect",
            "x",
            Numbers.coordinate(left),
            "y",
            Numbers.coordinate(top),
            "width",
            Numbers.coordinate(width),
            "height",
            Numbers.coordinate(height),
            "fill",
            fill);
  }
}
