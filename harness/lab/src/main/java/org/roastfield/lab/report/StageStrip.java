package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/**
 * The stages of a cook along a time axis: tinted stretches, lines where one gives way to the next,
 * names or at least numbers above.
 */
final class StageStrip {

  private static final double NUMBER_GAP = 15;

  private StageStrip() {}

  /** Tints every other stage; to be drawn first. */
  static void tint(Plot plot, List<Span> stages) {
    Layout layout = plot.layout();
    for (int i = 1; i < stages.size(); i += 2) {
      Span seen = seen(plot, stages.get(i));
      if (seen.duration() > 0) {
        double left = plot.x().at(seen.start());
        plot.svg()
            .empty(
                "rect",
                "class",
                "tint",
                "x",
                Numbers.coordinate(left),
                "y",
                Numbers.coordinate(layout.plotTop()),
                "width",
                Numbers.coordinate(plot.x().at(seen.end()) - left),
                "height",
                Numbers.coordinate(layout.plotBottom() - layout.plotTop()));
      }
    }
  }

  /** Lines at the boundaries and names above the plot. */
  static void draw(Plot plot, List<Span> stages) {
    for (Span stage : stages.subList(1, stages.size())) {
      if (plot.x().holds(stage.start())) {
        plot.upright("boundary-ground", stage.start()).upright("boundary", stage.start());
      }
    }
    List<String> words = new ArrayList<>();
    List<Double> middles = new ArrayList<>();
    for (int i = 0; i < stages.size(); i++) {
      Span seen = seen(plot, stages.get(i));
      double room = plot.x().at(seen.end()) - plot.x().at(seen.start());
      if (room > 0) {
        words.add(words(i + 1, stages.get(i).name(), room));
        middles.add((plot.x().at(seen.start()) + plot.x().at(seen.end())) / 2);
      }
    }
    Layout layout = plot.layout();
    List<Double> places =
        Letters.spread(middles, NUMBER_GAP, layout.plotLeft(), layout.plotRight());
    for (int i = 0; i < words.size(); i++) {
      plot.text("stage middle", places.get(i), layout.plotTop() - 7, words.get(i));
    }
  }

  /** The stages in words: "1 gentle 14:05 to 17:20; 2 …". */
  static String inWords(List<Span> stages, TimeBase base) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < stages.size(); i++) {
      Span stage = stages.get(i);
      words.append(i == 0 ? "" : "; ").append(i + 1).append(' ').append(stage.name());
      words.append(' ').append(base.text(stage.start()));
      words.append(" to ").append(base.text(stage.end()));
    }
    return words.toString();
  }

  private static String words(int number, String name, double room) {
    String full = number + " " + name;
    return Letters.width(full) < room - 8 ? full : Integer.toString(number);
  }

  private static Span seen(Plot plot, Span stage) {
    double start = Math.max(stage.start(), plot.x().low());
    return new Span(stage.name(), start, Math.min(stage.end(), plot.x().high()));
  }
}
