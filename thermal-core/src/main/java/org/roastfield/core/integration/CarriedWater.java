package org.roastfield.core.integration;

/**
 * Water of one face over a whole cook [kg/m²].
 *
 * @param drawn out of the cut: what the face held at first and was fed, what its crust misses, and
 *     what evaporated under laws that carry no water along, less what condensed under them
 * @param poured put on by basting or spritzing
 * @param ranOff run off the face
 * @param held on the face now, or below 0 what its crust misses; 0 if no law carried water along
 */
public record CarriedWater(double drawn, double poured, double ranOff, double held) {}
