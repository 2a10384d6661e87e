package org.roastfield.core.simulation;

/**
 * Work done, the same on every machine.
 *
 * @param acceptedSteps steps kept
 * @param rejectedSteps steps repeated, to meet the accuracy or to end at an event
 * @param solves tridiagonal solves
 * @param factorisations tridiagonal factorisations
 * @param fluxEvaluations evaluations of a face's laws
 */
public record WorkCounters(
    long acceptedSteps,
    long rejectedSteps,
    long solves,
    long factorisations,
    long fluxEvaluations) {}
