package org.roastfield.lab.files;

import java.util.Optional;
import org.roastfield.core.surface.Wrap;

/**
 * What a cook file states beyond the steady surroundings of a bare face.
 *
 * @param wrap around the cut or over it
 * @param lid openings of the chamber
 * @param load surface of the cut over the flow of dry air, where the cut's own vapour counts
 *     [m²·s/kg]; 0 where it does not
 */
public record CoverSetup(Optional<Wrap> wrap, Optional<LidSetup> lid, double load) {

  /** A bare face in steady surroundings. */
  public static final CoverSetup NONE = new CoverSetup(Optional.empty(), Optional.empty(), 0);
}
