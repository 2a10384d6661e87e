package org.roastfield.core.simulation;

/**
 * Highest temperature at a place during a stage.
 *
 * @param time since the start of the cook [s]
 * @param temperature [K]
 * @param interior whether it is a maximum inside the stage; if not, it was still rising at the end,
 *     or falling from the start
 */
public record Peak(double time, double temperature, boolean interior) {}
