package org.roastfield.core.integration;

/** Work done by an integration, exact and the same on every machine. */
final class Counters {
  long acceptedSteps;
  long rejectedSteps;
  long solves;
  long factorisations;
  long fluxEvaluations;
}
