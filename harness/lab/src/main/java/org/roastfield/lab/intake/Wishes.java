package org.roastfield.lab.intake;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What the user states of a log; the rest is proposed from its content.
 *
 * @param charset of the bytes
 * @param separator between cells
 * @param decimalComma whether numbers have a decimal comma
 * @param skipped lines above the header or the first row
 * @param header whether a line names the columns
 * @param time such as "elapsed=min" or "Date+Time=dmy": columns and style
 * @param zone of clock times
 * @param channels such as "core=Probe 1:degC", in a long log "core=probe name:degC"
 * @param names column that names the probe in a long log
 * @param value column of the readings in a long log
 * @param only such as "piece=A"
 * @param noProbe cells that mean there is no reading
 */
public record Wishes(
    Optional<Charset> charset,
    Optional<Character> separator,
    Optional<Boolean> decimalComma,
    Optional<Integer> skipped,
    Optional<Boolean> header,
    Optional<String> time,
    Optional<ZoneId> zone,
    List<String> channels,
    Optional<String> names,
    Optional<String> value,
    Optional<String> only,
    List<String> noProbe) {

  /** Copies the lists. */
  public Wishes {
    channels = List.copyOf(channels);
    noProbe = List.copyOf(noProbe);
  }

  /** No wishes. */
  public static Wishes none() {
    return new Wishes(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** These, and where they say nothing those of {@code others}. */
  public Wishes or(Wishes others) {
    return new Wishes(
        charset.or(others::charset),
        separator.or(others::separator),
        decimalComma.or(others::decimalComma),
        skipped.or(others::skipped),
        header.or(others::header),
        time.or(others::time),
        zone.or(others::zone),
        channels.isEmpty() ? others.channels : channels,
        names.or(others::names),
        value.or(others::value),
        only.or(others::only),
        noProbe.isEmpty() ? others.noProbe : noProbe);
  }

  /** Whether all columns that matter are stated. */
  public boolean areEnough() {
    return time.isPresent() && !channels.isEmpty();
  }
}
