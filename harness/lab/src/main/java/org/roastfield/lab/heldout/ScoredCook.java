package org.roastfield.lab.heldout;

import org.roastfield.core.inference.Evidence;
import org.roastfield.core.inference.ForwardModel;
import org.roastfield.core.inference.Prior;

/** A logged cook that can be fitted up to a time and foretold from there. */
public interface ScoredCook {

  /** Its name, unlike that of any other. */
  String name();

  /** What it was cooked on: cooks of one cooker share its profile. */
  String cooker();

  /** Times of the core readings, increasing [s]. */
  double[] times();

  /** The core readings [K]. */
  double[] readings();

  /** Reading of the core that is waited for [K]. */
  double target();

  /** After which nobody waits any more [s]; does not depend on how the cook went. */
  double horizon();

  /** What is believed of its parameters without any log; its cooker's are of that owner. */
  Prior prior();

  /** What was measured up to a time [s]; its first series is the core's. */
  Evidence evidence(double until);

  /** What a computation says of that evidence. */
  ForwardModel model(double until);

  /**
   * What the core's probe shows, without noise, in the chamber as it was logged.
   *
   * @param coordinates of the parameters
   * @param times increasing, up to the horizon [s]
   */
  double[] shown(double[] coordinates, double[] times);
}
