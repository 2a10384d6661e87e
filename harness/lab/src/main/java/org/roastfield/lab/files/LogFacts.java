package org.roastfield.lab.files;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where a log comes from.
 *
 * @param name of the package: lower-case letters, digits and hyphens, at most 80
 * @param title one line for people; untrusted text
 * @param madeUp whether no such cook took place
 * @param licence identifier such as "Apache-2.0"; empty if none was stated, and then it must not be
 *     shipped
 * @param starts clock time with its offset at which the cut went on, if known
 * @param sources files and people it comes from, at least one
 * @param cooker words in lower case joined by hyphens that name the cooker it was on, if it is
 *     named
 */
public record LogFacts(
    String name,
    String title,
    boolean madeUp,
    Optional<String> licence,
    Optional<OffsetDateTime> starts,
    List<Source> sources,
    Optional<String> cooker) {

  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,79}");
  private static final Pattern COOKER = Pattern.compile("[a-z][a-z0-9-]{0,59}");
  private static final Pattern LICENCE = Pattern.compile("[-a-zA-Z0-9._]{1,80}");
  private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");
  private static final int LONGEST_TITLE = 200;

  /**
   * A file or person that a log comes from.
   *
   * @param title name of the file without its folder, or words; untrusted text
   * @param sha256 of the file's bytes, lower-case hexadecimal, if it is one
   */
  public record Source(String title, Optional<String> sha256) {

    /** Checks both. */
    public Source {
      Notes.check("source title", title, LONGEST_TITLE);
      if (title.isEmpty()) {
        throw new IllegalArgumentException("source title must not be empty");
      }
      sha256.ifPresent(hash -> checkMatch("sha256", hash, SHA256, "64 digits 0-9a-f"));
    }
  }

  /** Checks names and copies the list. */
  public LogFacts {
    sources = List.copyOf(sources);
    checkName(name);
    checkTitle(title);
    licence.ifPresent(LogFacts::checkLicence);
    cooker.ifPresent(LogFacts::checkCooker);
    if (sources.isEmpty()) {
      throw new IllegalArgumentException("sources must have at least one entry, were none");
    }
  }

  /** Of a log that does not name its cooker. */
  public LogFacts(
      String name,
      String title,
      boolean madeUp,
      Optional<String> licence,
      Optional<OffsetDateTime> starts,
      List<Source> sources) {
    this(name, title, madeUp, licence, starts, sources, Optional.empty());
  }

  /** The same of a log on a cooker that is named. */
  public LogFacts on(String named) {
    return new LogFacts(name, title, madeUp, licence, starts, sources, Optional.of(named));
  }

  static void checkName(String name) {
    checkMatch("name", name, NAME, "lower-case letters, digits and hyphens, at most 80");
  }

  static void checkTitle(String title) {
    Notes.check("title", title, LONGEST_TITLE);
  }

  static void checkLicence(String licence) {
    checkMatch("licence", licence, LICENCE, "an identifier such as Apache-2.0");
  }

  static void checkCooker(String cooker) {
    checkMatch("cooker", cooker, COOKER, "words in lower case joined by hyphens, at most 60");
  }

  private static void checkMatch(String name, String text, Pattern pattern, String rule) {
    if (!pattern.matcher(text).matches()) {
      throw new IllegalArgumentException(
          name + " must be " + rule + ", was " + SourceText.quoted(text));
    }
  }
}
