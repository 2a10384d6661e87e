package org.roastfield.lab.intake;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookLog;

/**
 * A log as taken in.
 *
 * @param log its readings
 * @param formats how its channels are written
 * @param starts clock time of time 0, if the log's clock is the world's
 * @param rows of the file, headers and empty ones not counted
 * @param unwanted rows that the declaration left out
 * @param bytes size of the file
 * @param sha256 of the file
 * @param findings what looks wrong, in order of kind and time
 * @param changes what was done to the readings
 * @param asideCounts what did not become readings: reasons with counts
 * @param aside the first of those, word for word
 */
public record Taken(
    CookLog log,
    List<ChannelFormat> formats,
    Optional<OffsetDateTime> starts,
    long rows,
    long unwanted,
    long bytes,
    String sha256,
    List<Finding> findings,
    List<Change> changes,
    List<Change> asideCounts,
    List<SetAside> aside) {

  /** Copies the lists. */
  public Taken {
    formats = List.copyOf(formats);
    findings = List.copyOf(findings);
    changes = List.copyOf(changes);
    asideCounts = List.copyOf(asideCounts);
    aside = List.copyOf(aside);
  }
}
