package org.roastfield.core.simulation;

import org.roastfield.core.cook.Probe;
import org.roastfield.core.reference.Rs1Reference;
import org.roastfield.core.units.Temperatures;

/**
 * Largest differences of a computed cook from the converged reference.
 *
 * @param core at every minute and every listed time of sear and rest [K]
 * @param middle the same at half the radius [K]
 * @param searSurface in the sear, from 3 s after each switch [K]
 * @param surface at every minute of the roast from the third on, and in the rest [K]
 * @param event time of the pull [s]
 */
record Rs1Errors(double core, double middle, double searSurface, double surface, double event) {

  static final double LEG = 30;
  static final double AFTER_SWITCH = 3;

  static Rs1Errors of(Rs1Reference reference, SimulationResult result) {
    Trace core = result.core();
    Trace middle = result.probe(result.cook().probes().get(0));
    Trace surface = result.probe(Probe.SURFACE);
    double pull = result.stage("roast").end();
    double coreError = 0;
    double middleError = 0;
    double searError = 0;
    double surfaceError = 0;
    for (Rs1Reference.MinuteState row : reference.minutes()) {
      if (row.stage().equals("roast") && row.seconds() <= pull) {
        coreError = Math.max(coreError, error(core, row.seconds(), row.centreCelsius()));
        middleError = Math.max(middleError, error(middle, row.seconds(), row.middleCelsius()));
        if (row.seconds() >= 180) {
          surfaceError =
              Math.max(surfaceError, error(surface, row.seconds(), row.surfaceCelsius()));
        }
      }
    }
    for (Rs1Reference.StageState row : reference.searAndRest()) {
      double start = row.stage().equals("sear") ? pull : result.stage("rest").start();
      double time = start + row.secondsInStage();
      coreError = Math.max(coreError, error(core, time, row.centreCelsius()));
      middleError = Math.max(middleError, error(middle, time, row.middleCelsius()));
      double since = row.secondsInStage() % LEG;
      double difference = error(surface, time, row.surfaceCelsius());
      if (row.stage().equals("sear") && (since >= AFTER_SWITCH || since == 0)) {
        searError = Math.max(searError, difference);
      } else if (row.stage().equals("rest") && row.secondsInStage() >= AFTER_SWITCH) {
        surfaceError = Math.max(surfaceError, difference);
      }
    }
    return new Rs1Errors(
        coreError, middleError, searError, surfaceError, pull - reference.eventSeconds());
  }

  private static double error(Trace trace, double time, double celsius) {
    return Math.abs(Temperatures.toCelsius(trace.at(Math.min(time, trace.end()))) - celsius);
  }
}
