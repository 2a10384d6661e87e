package org.roastfield.lab.files;

import java.time.LocalDateTime;
import java.util.Optional;
import org.roastfield.core.outcome.CutKind;

/**
 * What a cook file says beside the cook that is computed.
 *
 * @param serves clock time at which the cut is to be on the table
 * @param wishes for what is served
 * @param cooker profile that the file names
 * @param surface what was done to the surface
 * @param handling what was done to the meat before: intact, tenderised, rolled or ground
 * @param plan for planning alone
 */
public record CookNotes(
    Optional<LocalDateTime> serves,
    Wishes wishes,
    Optional<CookerReference> cooker,
    SurfaceState surface,
    Optional<CutKind> handling,
    PlanWishes plan) {

  private static final CookNotes NONE =
      new CookNotes(
          Optional.empty(),
          Wishes.none(),
          Optional.empty(),
          SurfaceState.unstated(),
          Optional.empty(),
          PlanWishes.none());

  /** Nothing is said. */
  public static CookNotes none() {
    return NONE;
  }
}
