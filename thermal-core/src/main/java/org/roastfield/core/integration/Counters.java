package org.roastfield.core.integration;

/** Work done by an integration, exact and the same on every machine. */
final class Counters {
  long acceptedSteps;
  long rejectedSteps;
  long solves;
  long factorisations;
  long fluxEvaluations;

  void copy(Counters other) {
    acceptedSteps = other.acceptedSteps;
    rejectedSteps = other.rejectedSteps;
    solves = other.solves;
    factorisations = other.factorisations;
    fluxEvaluations = other.fluxEvaluations;
  }

  void clear() {
    acceptedSteps = 0;
    rejectedSteps = 0;
    solves = 0;
    factorisations = 0;
    fluxEvaluations = 0;
  }
}
