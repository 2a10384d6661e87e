package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Outlines of the region where a field is at least as high as a level, by marching squares.
 *
 * <p>The grid is framed by nodes that count as endlessly low, as do nodes without a number, so
 * every outline closes: inside the grid it follows the level, at the rim it follows the rim.
 * Outlines run with the region on their left (y upwards). Where the corners of a cell leave open
 * how they connect, their mean decides.
 */
final class Contours {

  /**
   * Edges of a cell that its outline enters and leaves by; the index says which corners are inside.
   */
  private static final int[][] CROSSINGS = {
    {},
    {Cell.BOTTOM, Cell.LEFT},
    {Cell.RIGHT, Cell.BOTTOM},
    {Cell.RIGHT, Cell.LEFT},
    {Cell.TOP, Cell.RIGHT},
    {Cell.BOTTOM, Cell.LEFT, Cell.TOP, Cell.RIGHT},
    {Cell.TOP, Cell.BOTTOM},
    {Cell.TOP, Cell.LEFT},
    {Cell.LEFT, Cell.TOP},
    {Cell.BOTTOM, Cell.TOP},
    {Cell.RIGHT, Cell.BOTTOM, Cell.LEFT, Cell.TOP},
    {Cell.RIGHT, Cell.TOP},
    {Cell.LEFT, Cell.RIGHT},
    {Cell.BOTTOM, Cell.RIGHT},
    {Cell.LEFT, Cell.BOTTOM},
    {},
  };

  private static final int SADDLE_RISING = 5;
  private static final int SADDLE_FALLING = 10;
  private static final int[] SADDLE_RISING_JOINED = {Cell.BOTTOM, Cell.RIGHT, Cell.TOP, Cell.LEFT};
  private static final int[] SADDLE_FALLING_JOINED = {Cell.LEFT, Cell.BOTTOM, Cell.RIGHT, Cell.TOP};

  private final Field field;
  private final double level;

  private Contours(Field field, double level) {
    this.field = field;
    this.level = level;
  }

  /**
   * A corner of an outline.
   *
   * @param place in the coordinates of the field
   * @param onRim whether the outline follows the rim of the grid here, rather than the level
   */
  record Vertex(Point place, boolean onRim) {}

  /**
   * Closed outlines of the region at or above {@code level}; the last vertex is joined to the
   * first.
   */
  static List<List<Vertex>> outlines(Field field, double level) {
    return new Contours(field, level).trace();
  }

  /** Lines along which the field has the value {@code level}: the outlines without the rim. */
  static List<List<Point>> lines(Field field, double level) {
    List<List<Point>> lines = new ArrayList<>();
    for (List<Vertex> outline : outlines(field, level)) {
      cutAtRim(outline, lines);
    }
    return lines;
  }

  private static void cutAtRim(List<Vertex> outline, List<List<Point>> lines) {
    int size = outline.size();
    int start = 0;
    while (start < size && !outline.get(start).onRim()) {
      start++;
    }
    List<Point> line = new ArrayList<>();
    if (start == size) {
      outline.forEach(vertex -> line.add(vertex.place()));
      line.add(line.get(0));
    }
    List<Point> current = line;
    for (int k = 1; start < size && k <= size; k++) {
      Vertex vertex = outline.get((start + k) % size);
      if (!vertex.onRim()) {
        current.add(vertex.place());
      } else if (!current.isEmpty()) {
        addIfLong(current, lines);
        current = new ArrayList<>();
      }
    }
    addIfLong(current, lines);
  }

  private static void addIfLong(List<Point> line, List<List<Point>> lines) {
    if (line.size() > 1) {
      lines.add(line);
    }
  }

  private List<List<Vertex>> trace() {
    Map<Long, Long> next = new LinkedHashMap<>();
    for (int column = -1; column < field.columns(); column++) {
      for (int row = -1; row < field.rows(); row++) {
        addCrossings(new Cell(column, row), next);
      }
    }
    List<List<Vertex>> outlines = new ArrayList<>();
    while (!next.isEmpty()) {
      outlines.add(follow(next.keySet().iterator().next(), next));
    }
    return outlines;
  }

  private List<Vertex> follow(long first, Map<Long, Long> next) {
    List<Vertex> outline = new ArrayList<>();
    Long edge = first;
    for (Long after = next.remove(edge); after != null; after = next.remove(edge)) {
      outline.add(crossing(edge));
      edge = after;
    }
    return outline;
  }

  private void addCrossings(Cell cell, Map<Long, Long> next) {
    int[] crossings = crossings(cell);
    for (int k = 0; k < crossings.length; k += 2) {
      next.put(edge(cell, crossings[k]), edge(cell, crossings[k + 1]));
    }
  }

  private int[] crossings(Cell cell) {
    double a = value(cell.column(), cell.row());
    double b = value(cell.column() + 1, cell.row());
    double c = value(cell.column() + 1, cell.row() + 1);
    double d = value(cell.column(), cell.row() + 1);
    int inside = bit(a, 1) | bit(b, 2) | bit(c, 4) | bit(d, 8);
    boolean joined = (a + b + c + d) / 4 >= level;
    if (joined && inside == SADDLE_RISING) {
      return SADDLE_RISING_JOINED;
    }
    return joined && inside == SADDLE_FALLING ? SADDLE_FALLING_JOINED : CROSSINGS[inside];
  }

  private int bit(double value, int bit) {
    return value >= level ? bit : 0;
  }

  private double value(int column, int row) {
    return isKnown(column, row) ? field.value(column, row) : Double.NEGATIVE_INFINITY;
  }

  private boolean isKnown(int column, int row) {
    boolean inside = column >= 0 && row >= 0 && column < field.columns() && row < field.rows();
    return inside && !Double.isNaN(field.value(column, row));
  }

  private int framedColumns() {
    return field.columns() + 2;
  }

  /** Number of an edge: that of its lower left node, doubled, plus one if it points upwards. */
  private long edge(Cell cell, int side) {
    int column = cell.column() + (side == Cell.RIGHT ? 1 : 0);
    int row = cell.row() + (side == Cell.TOP ? 1 : 0);
    boolean upwards = side == Cell.LEFT || side == Cell.RIGHT;
    return 2 * ((row + 1L) * framedColumns() + column + 1L) + (upwards ? 1 : 0);
  }

  private Vertex crossing(long edge) {
    long node = edge / 2;
    int column = (int) (node % framedColumns()) - 1;
    int row = (int) (node / framedColumns()) - 1;
    boolean upwards = edge % 2 == 1;
    int otherColumn = upwards ? column : column + 1;
    int otherRow = upwards ? row + 1 : row;
    if (!isKnown(column, row)) {
      return new Vertex(new Point(field.x(otherColumn), field.y(otherRow)), true);
    }
    if (!isKnown(otherColumn, otherRow)) {
      return new Vertex(new Point(field.x(column), field.y(row)), true);
    }
    double here = field.value(column, row);
    double share = (level - here) / (field.value(otherColumn, otherRow) - here);
    double x = field.x(column) + share * (field.x(otherColumn) - field.x(column));
    double y = field.y(row) + share * (field.y(otherRow) - field.y(row));
    return new Vertex(new Point(x, y), false);
  }

  /**
   * A cell of the framed grid.
   *
   * @param column of its lower left node, from −1
   * @param row of its lower left node, from −1
   */
  private record Cell(int column, int row) {
    static final int BOTTOM = 0;
    static final int RIGHT = 1;
    static final int TOP = 2;
    static final int LEFT = 3;
  }
}
