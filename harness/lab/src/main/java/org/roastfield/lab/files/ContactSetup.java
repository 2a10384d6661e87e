package org.roastfield.lab.files;

/**
 * Hot metal against a face.
 *
 * @param plateTemperature [K]
 * @param conductance contact conductance of the touched part [W/(m²·K)]
 * @param share of the face that is touched, in (0, 1]; the rest sees the chamber
 */
public record ContactSetup(double plateTemperature, double conductance, double share) {}
