package org.roastfield.lab.plan;

/** A cook file that is right, but cannot be planned; the message says what to change. */
public final class UnplannableException extends RuntimeException {

  private static final long serialVersionUID = 1;

  /** With what is missing and what to do about it. */
  public UnplannableException(String message) {
    super(message);
  }
}
