package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A rectangle in a drawing, as for a few words.
 *
 * @param left edge
 * @param right edge, greater than {@code left}
 * @param top edge
 * @param bottom edge, greater than {@code top}
 */
record Room(double left, double right, double top, double bottom) {

  private static final double LINE_HEIGHT = 17;
  private static final double STRIDE = 3;
  private static final double[] SHIFTS_UP = {9, -26, 26, -43, 43, -60};
  private static final double[] SHIFTS_ACROSS = {0, -0.5, 0.5};

  static Room around(Point middle, double width, double height) {
    return new Room(
        middle.x() - width / 2,
        middle.x() + width / 2,
        middle.y() - height / 2,
        middle.y() + height / 2);
  }

  /**
   * Room for words near a place, over as little of the lines as can be.
   *
   * @param place what the words belong to
   * @param inside where the room has to be, as far as it is wide enough
   * @param lines through places in the drawing
   */
  static Room beside(Point place, String words, Room inside, List<List<Point>> lines) {
    double width = Letters.width(words) + 6;
    List<Room> rooms = new ArrayList<>();
    for (double up : SHIFTS_UP) {
      for (double across : SHIFTS_ACROSS) {
        double bottom = place.y() - up;
        double middle = place.x() + across * width;
        Room room = new Room(middle - width / 2, middle + width / 2, bottom - LINE_HEIGHT, bottom);
        rooms.add(room.movedInto(inside));
      }
    }
    return rooms.stream()
        .filter(inside::holds)
        .min(Comparator.comparingInt(room -> room.covered(lines)))
        .orElse(rooms.get(0));
  }

  double middle() {
    return (left + right) / 2;
  }

  boolean meets(Room other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }

  boolean holds(Room other) {
    return other.left >= left && other.right <= right && other.top >= top && other.bottom <= bottom;
  }

  private Room movedInto(Room inside) {
    double toTheRight = Math.max(0, inside.left - left + 1);
    double toTheLeft = Math.max(0, right - inside.right + 1);
    double shift = toTheRight - toTheLeft;
    return new Room(left + shift, right + shift, top, bottom);
  }

  /** Length of the lines that lies in this room, in strides. */
  private int covered(List<List<Point>> lines) {
    int covered = 0;
    for (List<Point> line : lines) {
      for (int i = 1; i < line.size(); i++) {
        covered += covered(line.get(i - 1), line.get(i));
      }
    }
    return covered;
  }

  private int covered(Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    int strides = (int) Math.ceil(Math.sqrt(dx * dx + dy * dy) / STRIDE);
    int covered = 0;
    for (int i = 0; i < strides; i++) {
      double x = from.x() + dx * i / strides;
      double y = from.y() + dy * i / strides;
      covered += x > left && x < right && y > top && y < bottom ? 1 : 0;
    }
    return covered;
  }
}
