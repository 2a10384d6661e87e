package org.roastfield.lab.report;

/**
 * A place in a diagram, in the units of its axes.
 *
 * @param x across
 * @param y up
 */
record Point(double x, double y) {

  boolean isFinite() {
    return Double.isFinite(x) && Double.isFinite(y);
  }
}
