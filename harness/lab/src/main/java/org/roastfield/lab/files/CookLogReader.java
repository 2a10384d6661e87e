package org.roastfield.lab.files;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads logs: comma-separated values in UTF-8, whose header names each column and its unit.
 *
 * <p>{@code time_s}, {@code time_min} or {@code time_h}; then {@code core_degC}, {@code
 * chamber_degF}, or any other name in lower case with {@code _degC}, {@code _degF} or {@code _K}.
 * Time increases from row to row, counted from the moment the cut went on. An empty cell is a
 * missing reading. Comment lines that start with # may stand above the header.
 */
public final class CookLogReader {

  /** Largest size of a log [bytes]. */
  public static final int LARGEST = 32 << 20;

  private static final Pattern LINE = Pattern.compile("starting at line (\\d{1,9})");

  private final SourceText source;
  private final List<String> comments = new ArrayList<>();
  private final List<LogColumn> columns = new ArrayList<>();

  private CookLogReader(SourceText source) {
    this.source = source;
  }

  /**
   * Reads a file.
   *
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is no log
   */
  public static CookLog read(Path path) throws IOException {
    return parse(SourceText.name(path), SourceText.bytes(path, LARGEST));
  }

  /**
   * Bytes of a file, for {@link #parse}.
   *
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is larger than {@link #LARGEST}
   */
  public static byte[] bytes(Path path) throws IOException {
    return SourceText.bytes(path, LARGEST);
  }

  /**
   * Reads the bytes of a file.
   *
   * @param fileName last part of its path, for messages
   * @param bytes content; not modified
   * @throws CookFileException if it is no log
   */
  public static CookLog parse(String fileName, byte[] bytes) {
    return readings(fileName, bytes).log();
  }

  /** Reads the bytes of a file and says which columns it has. */
  static Readings readings(String fileName, byte[] bytes) {
    CookLogReader reader = new CookLogReader(SourceText.decode(fileName, bytes));
    return new Readings(reader.log(), List.copyOf(reader.columns));
  }

  /**
   * A log with its columns.
   *
   * @param log what it says
   * @param columns in order, time included
   */
  record Readings(CookLog log, List<LogColumn> columns) {}

  private CookLog log() {
    LogRows rows = null;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.READ)
            .allowUnclosedQuote(false)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(source.text())) {
      for (CsvRecord row : reader) {
        LogRow place = new LogRow(source, row);
        if (row.isComment()) {
          comment(place, rows != null);
        } else if (rows == null) {
          header(place);
          rows = new LogRows(columns);
        } else {
          rows.add(place);
        }
      }
    } catch (CsvParseException e) {
      throw syntaxError(source, e);
    } catch (IOException e) {
      throw new IllegalStateException("text in memory cannot be read", e);
    }
    if (rows == null || rows.size() == 0) {
      throw source.error(source.text().length(), "the end", "a header and at least one row");
    }
    return rows.log(source.fileName(), comments);
  }

  /** Error of text that is no comma-separated values. */
  static CookFileException syntaxError(SourceText source, CsvParseException e) {
    String problem = String.valueOf(e.getMessage());
    Matcher line = LINE.matcher(problem);
    return new CookFileException(
        source.fileName(),
        line.find() ? Integer.parseInt(line.group(1)) : 1,
        1,
        "no comma-separated values (" + problem + ")",
        "rows of numbers");
  }

  private void comment(LogRow place, boolean belowHeader) {
    if (belowHeader) {
      throw place.error(0, "a comment", "readings, since comments stand above the header");
    }
    comments.add(place.cell(0).strip());
  }

  private void header(LogRow place) {
    for (int i = 0; i < place.size(); i++) {
      String text = place.cell(i);
      int index = i;
      LogColumn column =
          LogColumn.of(text)
              .orElseThrow(
                  () ->
                      place.error(
                          index,
                          SourceText.quoted(text),
                          "time_s, time_min or time_h, or a name with its unit such as core_degC"
                              + " or chamber_degF"));
      if (columns.stream().anyMatch(other -> other.name().equals(column.name()))) {
        throw place.error(i, "a second column " + column.name(), "each only once");
      }
      columns.add(column);
    }
    if (columns.stream().noneMatch(LogColumn::isTime)) {
      throw place.error(0, "no time column", "time_s, time_min or time_h");
    }
    if (columns.size() == 1) {
      throw place.error(0, "no temperature column", "one such as core_degC");
    }
  }
}
