package org.roastfield.lab.files;

/** A cook file or log that cannot be read: says where, what was found and what was expected. */
public final class CookFileException extends RuntimeException {

  private static final long serialVersionUID = 1;

  private final String file;
  private final int line;
  private final int column;
  private final String found;
  private final String expected;

  /**
   * Error at a place.
   *
   * @param file last part of the path
   * @param line from 1
   * @param column from 1, in characters
   * @param found what stands there
   * @param expected what should
   */
  public CookFileException(String file, int line, int column, String found, String expected) {
    super(file + ":" + line + ":" + column + ": found " + found + ", expected " + expected);
    this.file = file;
    this.line = line;
    this.column = column;
    this.found = found;
    this.expected = expected;
  }

  /** Last part of the path. */
  public String file() {
    return file;
  }

  /** Line, from 1. */
  public int line() {
    return line;
  }

  /** Column in characters, from 1. */
  public int column() {
    return column;
  }

  /** What stands there. */
  public String found() {
    return found;
  }

  /** What should stand there. */
  public String expected() {
    return expected;
  }
}
