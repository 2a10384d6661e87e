package org.roastfield.lab.report;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;

/**
 * One picture, drawn once for each layout; the style sheet shows the one that fits the screen.
 *
 * @param drawings SVG, in the order of the layouts
 * @param layouts what they were drawn for
 */
record Panel(List<String> drawings, List<Layout> layouts) {

  Panel {
    drawings = List.copyOf(drawings);
    layouts = List.copyOf(layouts);
  }

  /** Draws a picture for each layout. */
  static Panel drawn(List<Layout> layouts, Function<Layout, String> drawing) {
    return new Panel(layouts.stream().map(drawing).toList(), layouts);
  }

  /** The first drawing as a file of its own, with its styles inside. */
  String standalone() {
    String styles = "</desc><style>" + Page.styles("figure.css") + "</style>";
    return drawings.get(0).replaceFirst("</desc>", Matcher.quoteReplacement(styles));
  }

  /** Writes the drawings. */
  void writeTo(Markup page) {
    for (int i = 0; i < drawings.size(); i++) {
      page.open("div", "class", layouts.get(i).styleName()).newLine();
      page.raw(drawings.get(i)).close().newLine();
    }
  }
}
