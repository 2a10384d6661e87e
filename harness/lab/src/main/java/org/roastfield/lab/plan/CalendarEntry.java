package org.roastfield.lab.plan;

/**
 * One entry of a calendar.
 *
 * @param id of the step, stable from plan to plan
 * @param summary in a few words (untrusted text)
 * @param description in whole sentences (untrusted text)
 * @param from when it begins, after the clock's zero [s]
 * @param to when it ends at the latest, no earlier [s]
 * @param alarm whether it is called out when it begins
 */
public record CalendarEntry(
    String id, String summary, String description, double from, double to, boolean alarm) {

  /**
   * @throws IllegalArgumentException if it ends before it begins
   */
  public CalendarEntry {
    if (!(to >= from)) {
      throw new IllegalArgumentException("to must be at least from " + from + ", was " + to);
    }
  }
}
