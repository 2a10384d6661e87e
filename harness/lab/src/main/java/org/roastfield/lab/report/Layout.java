package org.roastfield.lab.report;

import java.util.List;

/**
 * Size of a drawing and of the margins around its plot, in units of a letter's size on the screen
 * it is meant for.
 *
 * @param styleName name in the style sheet
 * @param width of the drawing
 * @param height of the drawing
 * @param left margin with the labels of the vertical axis
 * @param right margin with the labels of the curves
 * @param top margin with the stages
 * @param bottom margin with the labels of the horizontal axis
 */
record Layout(
    String styleName,
    double width,
    double height,
    double left,
    double right,
    double top,
    double bottom) {

  private static final Layout WIDE = new Layout("wide", 760, 400, 56, 112, 40, 52);
  private static final Layout NARROW = new Layout("narrow", 360, 330, 44, 82, 38, 48);

  /** Both drawings of a figure. */
  static List<Layout> both() {
    return List.of(WIDE, NARROW);
  }

  /** Both drawings of a panel that is lower than usual, by a share of the usual height. */
  static List<Layout> low(double share) {
    return both().stream()
        .map(layout -> layout.lowered().withHeight(share * layout.height))
        .toList();
  }

  /** Both drawings of a figure without stages. */
  static List<Layout> withoutStages() {
    return both().stream().map(Layout::lowered).toList();
  }

  private Layout lowered() {
    double saved = top - 24;
    return new Layout(styleName, width, height - saved, left, right, 24, bottom);
  }

  private Layout withHeight(double other) {
    return new Layout(styleName, width, Math.round(other), left, right, top, bottom);
  }

  boolean isNarrow() {
    return styleName.equals("narrow");
  }

  double plotLeft() {
    return left;
  }

  double plotRight() {
    return width - right;
  }

  double plotTop() {
    return top;
  }

  double plotBottom() {
    return height - bottom;
  }

  /** The plot inside the margins. */
  Room plot() {
    return new Room(plotLeft(), plotRight(), plotTop(), plotBottom());
  }

  /** How many ticks the horizontal axis has room for. */
  int mostTicksAcross() {
    return (int) ((plotRight() - plotLeft()) / 52);
  }

  /** How many ticks the vertical axis has room for. */
  int mostTicksUp() {
    return Math.max(3, (int) ((plotBottom() - plotTop()) / 32));
  }

  /** How many letters fit beside a curve. */
  int lettersAtRight() {
    return (int) ((right - 12) / Letters.width("x"));
  }
}
