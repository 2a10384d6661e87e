package org.roastfield.lab.files;

import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.Lid;

/**
 * Openings of a lid as a cook file states them.
 *
 * @param lid when it is open
 * @param air temperature that the air falls to [K]
 * @param walls mean of what the cut then sees [K]
 * @param humidityRatio of the air outside [kg/kg]
 */
public record LidSetup(Lid lid, double air, double walls, double humidityRatio) {

  /** A chamber with this lid. */
  Chamber over(Chamber closed) {
    return closed.withLid(lid, air, walls, humidityRatio);
  }
}
