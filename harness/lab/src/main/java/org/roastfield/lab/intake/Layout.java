package org.roastfield.lab.intake;

import java.nio.charset.Charset;

/**
 * How a delimited file is written.
 *
 * @param charset of its bytes
 * @param separator between cells
 * @param decimalComma whether numbers have a comma where others have a point
 * @param skipped lines above the header or the first row
 * @param header whether a line names the columns
 */
public record Layout(
    Charset charset, char separator, boolean decimalComma, int skipped, boolean header) {

  /** Checks that a cell cannot end in the middle of a number. */
  public Layout {
    if (decimalComma && separator == ',') {
      throw new IllegalArgumentException(
          "separator must not be a comma when numbers have a decimal comma, was \",\"");
    }
    if (skipped < 0) {
      throw new IllegalArgumentException("skipped must be at least 0, was " + skipped);
    }
  }
}
