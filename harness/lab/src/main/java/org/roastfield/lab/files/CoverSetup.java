package org.roastfield.lab.files;

import java.util.Optional;
import org.roastfield.core.surface.AirLoad;
import org.roastfield.core.surface.Wrap;

/**
 * What a cook file states beyond the steady surroundings of a bare face.
 *
 * @param wrap around the cut or over it
 * @param lid openings of the chamber
 * @param load what the cut's own vapour does to the air, {@link AirLoad#NONE} where it does not
 *     count
 */
public record CoverSetup(Optional<Wrap> wrap, Optional<LidSetup> lid, AirLoad load) {

  /** A bare face in steady surroundings. */
  public static final CoverSetup NONE =
      new CoverSetup(Optional.empty(), Optional.empty(), AirLoad.NONE);
}
