package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;

/**
 * A logged cook: readings of several channels over time.
 *
 * @param fileName last part of the path, never a folder
 * @param comments comment lines at the top, without their mark; untrusted text
 * @param rows number of rows
 * @param start time of the first row [s]
 * @param end time of the last row [s]
 * @param channels in the order of the columns, at least one
 */
public record CookLog(
    String fileName,
    List<String> comments,
    int rows,
    double start,
    double end,
    List<LogChannel> channels) {

  /** Name of the channel in the middle of the cut. */
  public static final String CORE = "core";

  /** Name of the channel of the chamber air. */
  public static final String CHAMBER = "chamber";

  /** Copies the lists. */
  public CookLog {
    comments = List.copyOf(comments);
    channels = List.copyOf(channels);
  }

  /** Channel of a name, if there is one. */
  public Optional<LogChannel> channel(String name) {
    return channels.stream().filter(channel -> channel.name().equals(name)).findFirst();
  }
}
