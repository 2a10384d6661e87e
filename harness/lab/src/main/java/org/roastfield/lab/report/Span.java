package org.roastfield.lab.report;

/**
 * A named stretch of time.
 *
 * @param name such as "rest"
 * @param start [s]
 * @param end [s]
 */
record Span(String name, double start, double end) {

  double duration() {
    return end - start;
  }
}
