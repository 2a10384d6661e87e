package org.roastfield.core.integration;

/** Work done by an integration, exact and the same on every machine. */
final class Counters {
  long acceptedSteps;
  long rejectedSteps;
  long solves;
  long factorisations;
  long fluxEvaluations;

  void clear() {
    acceptedSteps = 0;
    rejectedSteps = 0;
    solves = 0;
    factorisations = 0;
    fluxEvaluations = 0;
  }
}
