package org.roastfield.lab.command;

import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.roastfield.lab.intake.Wishes;
import picocli.CommandLine.Option;

/** Options that say how a delimited log is written and what its columns are. */
final class LayoutOptions {

  @Option(names = "--encoding", paramLabel = "NAME", description = "Such as UTF-8 or windows-1252.")
  private Optional<String> encoding = Optional.empty();

  @Option(names = "--separator", paramLabel = "MARK", description = "One character, or tab.")
  private Optional<String> separator = Optional.empty();

  @Option(names = "--decimal-mark", paramLabel = "MARK", description = "A point or a comma.")
  private Optional<String> decimalMark = Optional.empty();

  @Option(names = "--skip", paramLabel = "N", description = "Lines above the header or first row.")
  private Optional<Integer> skip = Optional.empty();

  @Option(names = "--header", paramLabel = "yes|no", description = "Whether a line names columns.")
  private Optional<String> header = Optional.empty();

  @Option(
      names = "--time",
      paramLabel = "COLUMN=STYLE",
      description =
          "Column of the time, or DATE+TIME; s, min, h, ms, h:m:s, epoch-s, epoch-ms, clock, ymd,"
              + " dmy or mdy. Columns by name, or by number such as #1.")
  private Optional<String> time = Optional.empty();

  @Option(names = "--zone", paramLabel = "ZONE", description = "Of clock times: Europe/Lisbon.")
  private Optional<String> zone = Optional.empty();

  @Option(
      names = "--channel",
      paramLabel = "NAME=COLUMN:UNIT",
      description = "A channel, such as core='Probe 1':degF; in a long log by the probe's name.")
  private List<String> channels = List.of();

  @Option(names = "--by", paramLabel = "COLUMN", description = "Names of probes in a long log.")
  private Optional<String> names = Optional.empty();

  @Option(names = "--value", paramLabel = "COLUMN", description = "Readings in a long log.")
  private Optional<String> value = Optional.empty();

  @Option(names = "--rows", paramLabel = "COLUMN=VALUE", description = "Take only these rows.")
  private Optional<String> only = Optional.empty();

  @Option(names = "--no-probe", paramLabel = "TEXT", description = "Cell that is no reading.")
  private List<String> noProbe = List.of();

  LayoutOptions() {}

  Wishes wishes() {
    return new Wishes(
        encoding.map(LayoutOptions::charset),
        separator.map(LayoutOptions::mark),
        decimalMark.map(mark -> choice("--decimal-mark", mark, ",", ".")),
        skip,
        header.map(word -> choice("--header", word, "yes", "no")),
        time,
        zone.map(LayoutOptions::zone),
        channels,
        names,
        value,
        only,
        noProbe);
  }

  private static Charset charset(String name) {
    try {
      return Charset.forName(name);
    } catch (IllegalArgumentException e) {
      throw new BadInputException("--encoding must be one that is known, was " + name);
    }
  }

  private static ZoneId zone(String name) {
    try {
      return ZoneId.of(name);
    } catch (DateTimeException e) {
      throw new BadInputException("--zone must be one such as Europe/Lisbon, was " + name);
    }
  }

  private static char mark(String text) {
    if (text.equals("tab")) {
      return '\t';
    }
    if (text.length() != 1 || text.charAt(0) == '"' || text.charAt(0) < ' ') {
      throw new BadInputException("--separator must be one character or tab, was " + text);
    }
    return text.charAt(0);
  }

  private static boolean choice(String option, String text, String yes, String no) {
    if (!text.equals(yes) && !text.equals(no)) {
      throw new BadInputException(option + " must be " + yes + " or " + no + ", was " + text);
    }
    return text.equals(yes);
  }
}
