package org.roastfield.core.simulation;

/**
 * Something a reader of a result must know.
 *
 * @param subject what it is about, in one or two words
 * @param text a sentence with the numbers
 */
public record Note(String subject, String text) {

  /** Subject where a moist face was in hot air that moves, as in a fan oven. */
  public static final String HOT_MOVING_AIR = "hot moving air";
}
