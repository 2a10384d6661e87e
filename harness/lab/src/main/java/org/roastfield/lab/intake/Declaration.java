package org.roastfield.lab.intake;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the columns of a log are: all that is needed to take it in.
 *
 * @param layout how the file is written
 * @param columns names of its columns, or their numbers such as "#1"
 * @param time columns of the time: one, or a date and a clock time
 * @param style how they write it
 * @param zone of clock times without an offset, if known
 * @param channels at least one
 * @param names column that names the probe in a long log, or -1
 * @param only the rows that are wanted, if not all
 * @param noProbe cells that mean there is no reading, besides an empty one
 */
public record Declaration(
    Layout layout,
    List<String> columns,
    List<Integer> time,
    TimeStyle style,
    Optional<ZoneId> zone,
    List<ChannelRule> channels,
    int names,
    Optional<Only> only,
    Set<String> noProbe) {

  /**
   * Rows that are wanted.
   *
   * @param column from 0
   * @param value that its cell must have
   */
  public record Only(int column, String value) {}

  /** Copies the lists. */
  public Declaration {
    columns = List.copyOf(columns);
    time = List.copyOf(time);
    channels = List.copyOf(channels);
    noProbe = Set.copyOf(noProbe);
    if (channels.isEmpty()) {
      throw new IllegalArgumentException("channels must have at least one entry, had none");
    }
    List<String> distinct = channels.stream().map(ChannelRule::channel).distinct().toList();
    if (distinct.size() != channels.size()) {
      throw new IllegalArgumentException("channels must have different names, were " + channels);
    }
  }
}
