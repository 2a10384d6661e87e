package org.roastfield.lab.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;

/** Reads a delimited log row by row as declared. Holds its numbers, never its text. */
public final class TakeIn {

  /** Most rows. */
  public static final int MOST_ROWS = 3_000_000;

  /** Most columns. */
  public static final int MOST_COLUMNS = 500;

  /** Longest cell [characters]. */
  public static final int LONGEST_CELL = 1 << 16;

  private static final double COLDEST = 173.15;
  private static final double HOTTEST = 1773.15;
  private static final double LONGEST = 2_592_000;

  private final String file;
  private final Declaration declared;
  private final Ledger ledger = new Ledger();
  private final TimeReader times;
  private final CellReader cells;
  private final List<Column> columns = new ArrayList<>();
  private final int needed;
  private long rows;
  private long unwanted;

  private TakeIn(String file, Declaration declared) {
    this.file = file;
    this.declared = declared;
    boolean comma = declared.layout().decimalComma();
    this.times = new TimeReader(declared.style(), comma, declared.zone(), ledger);
    this.cells = new CellReader(comma, declared.noProbe());
    declared.channels().forEach(rule -> columns.add(new Column(rule)));
    int most = declared.names();
    for (int column : declared.time()) {
      most = Math.max(most, column);
    }
    for (ChannelRule rule : declared.channels()) {
      most = Math.max(most, rule.column());
    }
    this.needed = most + 1;
  }

  /**
   * Takes a log in.
   *
   * @param cutOn when the cut went on: on the log's own count of time if it has one, else seconds
   *     after the first row [s]; if absent the beginning of the count, or the first row
   * @throws IOException if the file cannot be read
   * @throws IntakeException if it is not as declared
   */
  public static Taken read(Path path, Declaration declared, OptionalDouble cutOn)
      throws IOException {
    String name = String.valueOf(path.getFileName());
    TakeIn intake = new TakeIn(name, declared);
    MessageDigest digest = Bytes.sha256();
    try (Bytes bytes = Bytes.open(path, digest)) {
      intake.rows(bytes);
      return intake.taken(cutOn, bytes.count(), HexFormat.of().formatHex(digest.digest()));
    } catch (CharacterCodingException e) {
      throw new IntakeException(
          name
              + ": found bytes that are no "
              + declared.layout().charset().name()
              + ", expected text in that encoding; another can be stated with --encoding");
    }
  }

  private void rows(InputStream in) throws IOException {
    Layout layout = declared.layout();
    Reader text = Bytes.text(new BufferedInputStream(in, 1 << 16), layout.charset());
    Bytes.skipLines(text, layout.skipped());
    boolean headed = !layout.header();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(layout.separator())
            .maxBufferSize(LONGEST_CELL)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      for (CsvRecord row : reader) {
        if (headed) {
          row(row, row.getStartingLineNumber() + layout.skipped());
        } else {
          headed = true;
        }
      }
    } catch (CsvParseException e) {
      throw new IntakeException(
          file + ": found no delimited text (" + e.getMessage() + "), expected rows of cells");
    }
  }

  private void row(CsvRecord row, long line) {
    if (++rows > MOST_ROWS) {
      throw IntakeException.at(
          file, line, 0, "a row beyond " + MOST_ROWS, "at most that many in one log");
    }
    if (rows == 1 && declared.layout().header() && Units.areUnits(row.getFields())) {
      ledger.setAside(line, String.join(",", row.getFields()), "a line of units below the header");
      return;
    }
    int size = row.getFieldCount();
    if (size < needed || hasMore(row)) {
      ledger.setAside(
          line,
          size + " cells",
          "a row of another number of cells than " + declared.columns().size());
      return;
    }
    if (declared.only().isPresent() && !isWanted(row, declared.only().get())) {
      unwanted++;
      return;
    }
    String time = timeText(row);
    double seconds = times.read(time, line);
    if (Double.isNaN(seconds)) {
      throw IntakeException.at(
          file,
          line,
          declared.time().get(0),
          time.isBlank() ? "nothing" : IntakeException.quoted(time),
          "a time written as " + declared.style().word());
    }
    for (Column column : columns) {
      if (isOf(row, column.rule())) {
        reading(row, column, seconds, line);
      }
    }
  }

  /** Whether there is anything in cells beyond the columns. */
  private boolean hasMore(CsvRecord row) {
    for (int i = declared.columns().size(); i < row.getFieldCount(); i++) {
      if (!row.getField(i).isBlank()) {
        return true;
      }
    }
    return false;
  }

  private static boolean isWanted(CsvRecord row, Declaration.Only only) {
    return row.getFieldCount() > only.column()
        && row.getField(only.column()).strip().equals(only.value());
  }

  private boolean isOf(CsvRecord row, ChannelRule rule) {
    return declared.names() < 0 || row.getField(declared.names()).strip().equals(rule.probe());
  }

  private String timeText(CsvRecord row) {
    List<Integer> time = declared.time();
    String first = row.getField(time.get(0));
    return time.size() == 1 ? first : first.strip() + " " + row.getField(time.get(1)).strip();
  }

  private void reading(CsvRecord row, Column column, double seconds, long line) {
    ChannelRule rule = column.rule();
    String cell = row.getField(rule.column());
    if (!cells.read(cell, rule.unit())) {
      throw IntakeException.at(
          file,
          line,
          rule.column(),
          IntakeException.quoted(cell),
          "a number, nothing, or a sign for no probe that --no-probe states");
    }
    if (cells.isMissing() && !cell.isBlank()) {
      ledger.change(rule.channel() + ": " + IntakeException.quoted(cell) + " means no probe", line);
    }
    if (cells.isConverted()) {
      ledger.change(
          rule.channel() + ": a cell with another unit, converted to " + rule.unit().word(), line);
    }
    double kelvin = rule.unit().si(cells.value());
    if (!cells.isMissing() && !(kelvin >= COLDEST && kelvin <= HOTTEST)) {
      ledger.setAside(
          line, cell.strip(), rule.channel() + ": no temperature from -100 °C to 1500 °C");
      column.add(seconds, Double.NaN, 0, line);
      return;
    }
    column.add(seconds, cells.value(), cells.decimals(), line);
  }

  private Taken taken(OptionalDouble cutOn, long bytes, String sha256) {
    double first = Double.POSITIVE_INFINITY;
    for (Column column : columns) {
      for (int i = 0; i < column.size(); i++) {
        first = Math.min(first, column.time(i));
      }
      if (column.size() == 0) {
        throw new IntakeException(
            file + ": found no row of the channel " + column.rule().channel() + ", expected some");
      }
    }
    boolean elapsed = declared.style().isElapsed();
    double zero = elapsed ? cutOn.orElse(0) : first + cutOn.orElse(0);
    columns.forEach(column -> column.startAt(zero, ledger));
    columns.forEach(column -> column.order(ledger));
    CookLog log = log();
    List<Finding> findings = new ArrayList<>(ledger.findings());
    findings.addAll(Plausibility.of(log));
    return new Taken(
        log,
        columns.stream().map(Column::format).toList(),
        times.isAbsolute() ? Optional.of(starts(zero)) : Optional.empty(),
        rows,
        unwanted,
        bytes,
        sha256,
        findings,
        ledger.changes(),
        ledger.asideCounts(),
        ledger.kept());
  }

  private OffsetDateTime starts(double zero) {
    Instant instant = Instant.ofEpochMilli(Math.round(zero * 1000));
    return OffsetDateTime.ofInstant(instant, declared.zone().orElse((ZoneId) ZoneOffset.UTC));
  }

  private CookLog log() {
    double[] all = new double[columns.stream().mapToInt(Column::size).sum()];
    int next = 0;
    for (Column column : columns) {
      for (int i = 0; i < column.size(); i++) {
        all[next++] = column.time(i);
      }
    }
    Arrays.sort(all);
    int distinct = 0;
    for (int i = 0; i < all.length; i++) {
      distinct += i == 0 || all[i] > all[i - 1] ? 1 : 0;
    }
    if (distinct == 0) {
      throw new IntakeException(file + ": found no reading after the cut went on, expected some");
    }
    double end = all[all.length - 1];
    if (end > LONGEST) {
      throw new IntakeException(
          file + ": found a time of " + end + " s, expected a log of at most thirty days");
    }
    List<LogChannel> channels = columns.stream().map(Column::channel).toList();
    return new CookLog("readings.csv", List.of(), distinct, all[0], end, channels);
  }
}
