package org.roastfield.lab.timeline;

/**
 * What came of one cross-section of a tapering piece.
 *
 * @param name such as "thick end"
 * @param position distance from the end that the file names first [m]
 * @param diameter of the piece there [m]
 * @param coreAtLongestEnd core temperature at the end of the longest stage [K]
 * @param warmestCore highest core temperature [K]
 * @param coreAtEnd core temperature at the end of the cook [K]
 * @param evaporated water that left the surface there [kg/m²]
 * @param inside of that cross-section
 */
public record Station(
    String name,
    double position,
    double diameter,
    double coreAtLongestEnd,
    double warmestCore,
    double coreAtEnd,
    double evaporated,
    Inside inside) {}
