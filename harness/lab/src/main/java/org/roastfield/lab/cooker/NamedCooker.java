package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookerReference;
import org.roastfield.lab.files.LogPackage;

/** Which cooker logs are of, as far as they or their cook files name it. */
public final class NamedCooker {

  private NamedCooker() {}

  /**
   * Name of a log's cooker.
   *
   * @throws IllegalArgumentException if the log and its cook file name different ones
   */
  public static Optional<String> of(CookFile file, LogPackage log) {
    Optional<String> logged = log.facts().cooker();
    Optional<String> stated = file.notes().cooker().map(CookerReference::id);
    if (logged.isPresent() && stated.isPresent() && !logged.equals(stated)) {
      throw new IllegalArgumentException(
          "log "
              + log.facts().name()
              + " must be of the cooker that its cook file names, "
              + stated.get()
              + ", was of "
              + logged.get());
    }
    return logged.or(() -> stated);
  }

  /**
   * Checks that all logs may be of one cooker.
   *
   * @param names of their cookers, by log, in their order
   * @return the logs that name none, if there are several logs
   * @throws IllegalArgumentException if two are of different ones
   */
  public static List<String> one(Map<String, Optional<String>> names) {
    Map<String, String> firsts = new LinkedHashMap<>();
    List<String> without = new ArrayList<>();
    names.forEach(
        (log, cooker) -> {
          cooker.ifPresent(id -> firsts.putIfAbsent(id, log));
          if (cooker.isEmpty()) {
            without.add(log);
          }
        });
    if (firsts.size() > 1) {
      List<String> words = new ArrayList<>();
      firsts.forEach((id, log) -> words.add(id + " (log " + log + ")"));
      throw new IllegalArgumentException(
          "logs must be of one cooker, were of "
              + String.join(", ", words)
              + ": calibrate each cooker from its own logs");
    }
    return names.size() > 1 ? without : List.of();
  }
}
