package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;

/**
 * Something decided by the clock before the cook begins.
 *
 * @param kind one of those before {@link Milestone.Kind#FIRST_SEAR}
 * @param before how long before the cut goes on [s], at least 0
 */
public record Preparation(Milestone.Kind kind, double before) {

  /**
   * @throws IllegalArgumentException if the kind is none of a preparation, or the time negative
   */
  public Preparation {
    if (kind.compareTo(Milestone.Kind.FIRST_SEAR) >= 0) {
      throw new IllegalArgumentException("kind must be that of a preparation, was " + kind);
    }
    Check.notNegative("before", before);
  }
}
