package org.roastfield.core.inference;

import org.jspecify.annotations.Nullable;

/** What a model computes for each measured number. */
@FunctionalInterface
public interface ForwardModel {

  /**
   * Computes all predictions, and derivatives if asked.
   *
   * @param coordinates of the parameters, not modified
   * @param predicted out: one number a measured one, in the order of the {@link Evidence}
   * @param derivatives out, or null if not wanted: one row a parameter, by its coordinate
   * @return false if the cook cannot be computed there
   */
  boolean at(double[] coordinates, double[] predicted, double @Nullable [][] derivatives);
}
