package org.roastfield.core.integration;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Cook;

/** Where lanes get their cooks from. */
public interface LaneMembers {

  /**
   * Index of the next member to compute, or −1 if there is none; also −1 once the run is cancelled.
   */
  int next();

  /**
   * Builds a member's cook.
   *
   * @throws RuntimeException whatever the caller's code throws; the member then counts as not built
   */
  Cook cook(int member);

  /**
   * How a member's cook changes with each parameter; asked for where derivatives are wanted.
   *
   * @throws RuntimeException whatever the caller's code throws; the member then counts as not built
   */
  List<CookVariation> variations(int member, Cook cook);

  /** Keeps why a member could not be built. */
  void notBuilt(int member, RuntimeException cause);

  /** Where another cook stood from which this member's may go on, or null if it is none. */
  default @Nullable Standing standing(int member) {
    return null;
  }

  /**
   * Told of each member that was computed by itself to its end.
   *
   * @param at where it ended; stands there only until this returns
   */
  default void ended(int member, CookIntegration at, MemberRecord record) {}

  /** Whether to stop as soon as possible. */
  boolean isCancelled();
}
