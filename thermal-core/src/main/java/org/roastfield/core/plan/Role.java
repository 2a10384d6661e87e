package org.roastfield.core.plan;

/** What a stage of a cook is for. */
public enum Role {
  /** Heat that cooks the cut through; the last of these stages ends by a reading. */
  GENTLE,
  /** Waiting while the fire is raised for the sear. */
  PAUSE,
  /** High heat that browns the surface. */
  SEAR,
  /** Away from the heat, before carving. */
  REST,
  /** Kept warm until it is served. */
  HOLD
}
