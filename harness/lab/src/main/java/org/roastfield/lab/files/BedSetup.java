package org.roastfield.lab.files;

/**
 * Glowing coals below a face.
 *
 * @param temperature [K]
 * @param viewFactor share in [0, 1] of what the face sees; walls fill the rest
 */
public record BedSetup(double temperature, double viewFactor) {}
