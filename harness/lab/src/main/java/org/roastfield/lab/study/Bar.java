package org.roastfield.lab.study;

/**
 * One thing that has to lie in a range.
 *
 * @param what is looked at
 * @param value that came out
 * @param low least that will do
 * @param high most that will do
 * @param counts whether it must be met; where not, why stands with {@code what}
 */
public record Bar(String what, double value, double low, double high, boolean counts) {

  /** One that must be met. */
  public static Bar of(String what, double value, double low, double high) {
    return new Bar(what, value, low, high, true);
  }

  /** Whether the value lies in the range. */
  public boolean isMet() {
    return value >= low && value <= high;
  }
}
