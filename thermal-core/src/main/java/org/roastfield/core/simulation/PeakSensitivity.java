package org.roastfield.core.simulation;

/**
 * Derivatives of a {@link Peak} by one parameter.
 *
 * @param time of its time [s per unit of the parameter]
 * @param temperature of its temperature [K per unit of the parameter]
 */
public record PeakSensitivity(double time, double temperature) {}
