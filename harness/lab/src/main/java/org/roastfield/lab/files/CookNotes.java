package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.util.Optional;

/**
 * What a cook file says beside the cook that is computed.
 *
 * @param serves clock time at which the cut is to be on the table
 * @param wishes for what is served
 * @param cooker profile that the file names
 * @param surface what was done to the surface
 */
public record CookNotes(
    Optional<LocalDateTime> serves,
    Wishes wishes,
    Optional<CookerReference> cooker,
    SurfaceState surface) {

  private static final CookNotes NONE =
      new CookNotes(Optional.empty(), Wishes.none(), Optional.empty(), SurfaceState.unstated());

  /** Nothing is said. */
  public static CookNotes none() {
    return NONE;
  }
}
