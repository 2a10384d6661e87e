package org.roastfield.core.integration;

import java.util.List;
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

  /** Whether to stop as soon as possible. */
  boolean isCancelled();
}
