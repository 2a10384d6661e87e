package org.roastfield.core.integration;

/** Told of every accepted step, in order. */
@FunctionalInterface
interface StepListener {

  void accepted(DenseStep step);
}
