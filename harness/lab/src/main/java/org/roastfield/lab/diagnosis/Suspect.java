package org.roastfield.lab.diagnosis;

import java.util.Locale;

/**
 * What may be wrong with a log, its cook file or a profile. How likely each is before the log is
 * seen, relative to all being as stated, is assumed: what was stated wrong, and which log it is,
 * alike.
 */
public enum Suspect {
  /** Nothing is: what is free differs as far as its priors say. */
  NONE(1),
  /** The cut is not as thick as stated. */
  SIZE(0.05),
  /** The probe is far from where it is said to be. */
  PROBE_PLACE(0.05),
  /** The probe slipped on the way; odds an hour. */
  PROBE_SLIPPED(0.03),
  /** The lid was open for ten minutes or so, and no chamber reading shows it; odds an hour. */
  LID_OPEN(0.1),
  /** Size, shape, start and kind of the cut are not those stated: the log is of another cut. */
  OTHER_CUT(0.05),
  /** The logs are of another cooker than the profile's, or it has changed. */
  OTHER_COOKER(0.05);

  private final double odds;

  Suspect(double odds) {
    this.odds = odds;
  }

  /** As files write it, such as "lid-open". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Odds before the log is seen. */
  double odds() {
    return odds;
  }
}
