package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;

/** Text of a path's {@code d} attribute, without the points that nobody would miss. */
final class PathData {

  /** Greatest distance of a dropped point from the line that is drawn instead. */
  private static final double TOLERANCE = 0.12;

  private final StringBuilder text = new StringBuilder();

  /** Adds a line through places in the drawing. */
  PathData line(List<Point> places) {
    return add(thinned(places), "");
  }

  /** Adds an outline through places in the drawing, closed from the last to the first. */
  PathData outline(List<Point> places) {
    return add(thinned(places), "Z");
  }

  boolean isEmpty() {
    return text.isEmpty();
  }

  @Override
  public String toString() {
    return text.toString();
  }

  private PathData add(List<Point> places, String end) {
    char command = 'M';
    for (Point place : places) {
      text.append(command).append(Numbers.coordinate(place.x()));
      text.append(' ').append(Numbers.coordinate(place.y()));
      command = 'L';
    }
    text.append(end);
    return this;
  }

  /**
   * The line without points nearer than {@link #TOLERANCE} to it, by halving at the farthest point.
   */
  static List<Point> thinned(List<Point> places) {
    boolean[] kept = new boolean[places.size()];
    if (kept.length > 0) {
      kept[0] = true;
      kept[kept.length - 1] = true;
      keepFarthest(places, kept);
    }
    List<Point> thinned = new ArrayList<>();
    for (int i = 0; i < kept.length; i++) {
      if (kept[i]) {
        thinned.add(places.get(i));
      }
    }
    return thinned;
  }

  private static void keepFarthest(List<Point> places, boolean[] kept) {
    List<int[]> spans = new ArrayList<>();
    spans.add(new int[] {0, kept.length - 1});
    while (!spans.isEmpty()) {
      int[] span = spans.remove(spans.size() - 1);
      int farthest = farthest(places, span[0], span[1]);
      if (farthest >= 0) {
        kept[farthest] = true;
        spans.add(new int[] {span[0], farthest});
        spans.add(new int[] {farthest, span[1]});
      }
    }
  }

  private static int farthest(List<Point> places, int first, int last) {
    int farthest = -1;
    double greatest = TOLERANCE;
    for (int i = first + 1; i < last; i++) {
      double distance = distance(places.get(i), places.get(first), places.get(last));
      if (distance > greatest) {
        greatest = distance;
        farthest = i;
      }
    }
    return farthest;
  }

  private static double distance(Point place, Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double px = place.x() - from.x();
    double py = place.y() - from.y();
    double length = Math.sqrt(dx * dx + dy * dy);
    return length > 0 ? Math.abs(dx * py - dy * px) / length : Math.sqrt(px * px + py * py);
  }
}
