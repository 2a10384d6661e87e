package org.roastfield.core.ensemble;

/** A wish to stop, given by any thread; a run obeys it before its next step, well within 10 ms. */
public final class Cancellation {

  private volatile boolean cancelled;

  /** A wish not yet given. */
  public Cancellation() {}

  /** Gives the wish; it cannot be taken back. */
  public void cancel() {
    cancelled = true;
  }

  /** Whether the wish has been given. */
  public boolean isCancelled() {
    return cancelled;
  }
}
