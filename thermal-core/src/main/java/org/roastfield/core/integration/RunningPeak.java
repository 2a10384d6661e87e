package org.roastfield.core.integration;

/** Highest core so far in a stage; one object a running cook. */
final class RunningPeak {

  double temperature;
  double time;

  void begin(double time, double core) {
    this.time = time;
    temperature = core;
  }

  void step(double start, double end, StepReading core) {
    double last = core.end();
    if (last > temperature) {
      temperature = last;
      time = end;
    }
    if (core.upperBound() > temperature) {
      inside(start, end, core);
    }
  }

  private void inside(double start, double end, StepReading core) {
    double theta = core.peak();
    if (theta > 0 && core.at(theta) > temperature) {
      temperature = core.at(theta);
      time = start + theta * (end - start);
    }
  }
}
