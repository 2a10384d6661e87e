package org.roastfield.lab.command;

/** Input that is well formed but cannot be used as asked. */
final class BadInputException extends RuntimeException {

  private static final long serialVersionUID = 1;

  BadInputException(String message) {
    super(message);
  }
}
