package org.roastfield.lab.files;

/**
 * A spot reading: what an instant-read probe showed at one place and time.
 *
 * @param time since the cut went on [s], at least 0
 * @param place where, such as "core" or "thick-end": a name as of a channel
 * @param temperature shown [K]
 * @param note anything in words, perhaps empty; untrusted text
 */
public record Spot(double time, String place, double temperature, String note) {

  /** Checks all of them. */
  public Spot {
    if (!(time >= 0 && time <= LogRows.LONGEST)) {
      throw new IllegalArgumentException("time must be from 0 to thirty days [s], was " + time);
    }
    if (!ChannelFormat.isName(place)) {
      throw new IllegalArgumentException(
          "place must be lower-case letters, digits and hyphens, at most 40, was "
              + SourceText.quoted(place));
    }
    Notes.checkTemperature("temperature", temperature);
    Notes.check("note", note, LogEvent.LONGEST_NOTE);
  }
}
