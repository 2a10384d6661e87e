package org.roastfield.core.simulation;

/**
 * Water that left the faces as vapour [kg/m² of face], integrated by the same scheme as the
 * temperatures; negative where more condensed.
 *
 * @param evaporatedUpper from the surface, or the upper face
 * @param evaporatedLower from the lower face; 0 where the cut is treated alike all round
 */
public record WaterBalance(double evaporatedUpper, double evaporatedLower) {}
