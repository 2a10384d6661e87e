package org.roastfield.core.parameter;

/** What a parameter belongs to, and so what may learn from what. */
public enum Owner {
  /** One number for all cooks on one cooker: a profile keeps it. */
  COOKER,
  /** One number a cut of meat: it varies from cook to cook. */
  CUT,
  /** One number a probe in its place: it varies from cook to cook. */
  PROBE
}
