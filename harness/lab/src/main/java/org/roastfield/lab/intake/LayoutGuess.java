package org.roastfield.lab.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Guesses how a log is laid out, and says why. */
final class LayoutGuess {

  private static final char[] SEPARATORS = {';', '\t', ',', '|'};
  private static final Pattern COMMA_NUMBER = Pattern.compile("[+-]?\\d{1,6},\\d{1,6}");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?\\s*[°º]?\\s*[CFK]?");

  private final Sample sample;
  private final Wishes wishes;
  private final List<String> reasons;

  LayoutGuess(Sample sample, Wishes wishes, List<String> reasons) {
    this.sample = sample;
    this.wishes = wishes;
    this.reasons = reasons;
  }

  Layout layout() {
    if (wishes.charset().isEmpty()) {
      reasons.add("encoding " + sample.charset().name() + ": its bytes are valid as that");
    }
    char separator = wishes.separator().orElseGet(this::separator);
    int skipped = wishes.skipped().orElseGet(() -> skipped(separator));
    List<List<String>> rows = sample.rows(separator, skipped);
    if (rows.isEmpty()) {
      throw new IntakeException("found no rows, expected some");
    }
    boolean header = wishes.header().orElseGet(() -> header(rows.get(0)));
    boolean comma = wishes.decimalComma().orElseGet(() -> separator != ',' && comma(rows));
    return new Layout(sample.charset(), separator, comma, skipped, header);
  }

  private char separator() {
    char best = ',';
    long most = 0;
    for (char candidate : SEPARATORS) {
      long agreeing = agreeing(candidate);
      if (agreeing > most) {
        most = agreeing;
        best = candidate;
      }
    }
    if (most == 0) {
      throw new IntakeException(
          "found no separator, expected columns with ; , | or a tab between them; another can be"
              + " stated with --separator");
    }
    String name = best == '\t' ? "a tab" : "\"" + best + "\"";
    reasons.add(
        "separator " + name + ": " + most + " of " + sample.lines().size() + " lines have as many");
    return best;
  }

  /** Lines that have the number of cells that most have, if that is more than one. */
  private long agreeing(char separator) {
    int usual = usualCount(separator);
    return usual == 0
        ? 0
        : sample.lines().stream().filter(line -> count(line, separator) == usual).count();
  }

  private int usualCount(char separator) {
    Map<Integer, Integer> counts = new HashMap<>();
    for (String line : sample.lines()) {
      counts.merge(count(line, separator), 1, Integer::sum);
    }
    return counts.entrySet().stream()
        .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  private static int count(String line, char separator) {
    int count = 0;
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      quoted ^= line.charAt(i) == '"';
      count += line.charAt(i) == separator && !quoted ? 1 : 0;
    }
    return count;
  }

  private int skipped(char separator) {
    int usual = usualCount(separator);
    int skipped = 0;
    while (skipped < sample.lines().size() - 1
        && (count(sample.lines().get(skipped), separator) != usual
            || sample.lines().get(skipped).startsWith("#"))) {
      skipped++;
    }
    if (skipped > 0) {
      reasons.add(skipped + " lines skipped: they have another number of cells than the rows");
    }
    return skipped;
  }

  private boolean header(List<String> first) {
    boolean header =
        first.stream().noneMatch(cell -> NUMBER.matcher(cell.strip()).matches())
            && first.stream().anyMatch(cell -> !cell.isBlank());
    reasons.add(
        header
            ? "a header: no cell of the first line is a number"
            : "no header: the first line has numbers");
    return header;
  }

  private boolean comma(List<List<String>> rows) {
    boolean comma =
        rows.stream()
            .flatMap(List::stream)
            .anyMatch(cell -> COMMA_NUMBER.matcher(cell.strip()).matches());
    if (comma) {
      reasons.add("decimal comma: there are cells such as 12,5");
    }
    return comma;
  }
}
