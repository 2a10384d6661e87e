package org.roastfield.lab.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.roastfield.core.units.Temperatures;

/**
 * A table of a log package that people write: comma-separated values in UTF-8 with a fixed header,
 * whose quantities carry their units as in a cook file.
 *
 * @param <T> what a row says
 * @param header names of the columns
 * @param cells of a row's text, as many as the header has
 * @param meaning what a row's text says
 */
record PeopleTable<T>(
    List<String> header, Function<T, List<String>> cells, Function<PeopleTable.Row, T> meaning) {

  /** Largest size of such a table [bytes]. */
  static final int LARGEST = 4 << 20;

  private static final int MOST_ROWS = 20_000;

  /** Text of a table: the header and a line for each row. */
  String text(List<T> rows) {
    if (rows.size() > MOST_ROWS) {
      throw new IllegalArgumentException(
          "rows of "
              + String.join(",", header)
              + " must be at most "
              + MOST_ROWS
              + " to be read back, were "
              + rows.size());
    }
    StringWriter text = new StringWriter();
    try (CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      writer.writeRecord(header);
      rows.forEach(row -> writer.writeRecord(cells.apply(row)));
    } catch (IOException e) {
      throw new IllegalStateException("text in memory cannot be written", e);
    }
    return text.toString();
  }

  /** What each row of a file says. */
  List<T> read(String fileName, byte[] bytes) {
    SourceText source = SourceText.decode(fileName, bytes);
    List<T> all = new ArrayList<>();
    boolean headed = false;
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .allowUnclosedQuote(false)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(source.text())) {
      for (CsvRecord record : reader) {
        LogRow place = new LogRow(source, record);
        if (!headed) {
          checkHeader(place);
          headed = true;
        } else {
          all.add(meaning.apply(row(place, all.size())));
        }
      }
    } catch (CsvParseException e) {
      throw CookLogReader.syntaxError(source, e);
    } catch (IOException e) {
      throw new IllegalStateException("text in memory cannot be read", e);
    }
    if (!headed) {
      throw source.error(0, "nothing", "the header " + String.join(",", header));
    }
    return all;
  }

  private void checkHeader(LogRow place) {
    for (int i = 0; i < header.size(); i++) {
      if (i >= place.size() || !place.cell(i).equals(header.get(i))) {
        String found = i < place.size() ? SourceText.quoted(place.cell(i)) : "no more columns";
        throw place.error(i, found, "the header " + String.join(",", header));
      }
    }
    if (place.size() > header.size()) {
      throw place.error(
          header.size(),
          SourceText.quoted(place.cell(header.size())),
          "the header " + String.join(",", header));
    }
  }

  private Row row(LogRow place, int before) {
    if (place.size() != header.size()) {
      throw place.error(
          0,
          place.size() + (place.size() == 1 ? " cell" : " cells"),
          header.size() + " separated by commas");
    }
    if (before == MOST_ROWS) {
      throw place.error(0, "a row beyond " + MOST_ROWS, "at most that many");
    }
    return new Row(place);
  }

  /** Seconds as a quantity. */
  static String seconds(double time) {
    return plain(time, 6) + " s";
  }

  /** Kelvin as a quantity in degrees Celsius. */
  static String celsius(double kelvin) {
    return plain(Temperatures.toCelsius(kelvin), 6) + " °C";
  }

  /** Number without trailing zeros and without an exponent. */
  static String plain(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** A row with its place. */
  record Row(LogRow place) {

    /** Text of a cell. */
    String text(int i) {
      return place.cell(i).strip();
    }

    /** Quantity of a cell in SI units. */
    double quantity(int i, Dimension dimension) {
      OptionalDouble value = Quantity.parse(text(i), dimension);
      if (value.isEmpty()) {
        throw error(i, dimension.description());
      }
      return value.getAsDouble();
    }

    /** Quantity of a cell, or NaN if it is empty. */
    double quantityOrNaN(int i, Dimension dimension) {
      return text(i).isEmpty() ? Double.NaN : quantity(i, dimension);
    }

    /** Error at a cell. */
    CookFileException error(int i, String expected) {
      return place.error(i, text(i).isEmpty() ? "nothing" : SourceText.quoted(text(i)), expected);
    }

    /** What {@code supplier} gives, its complaint turned into an error at this row. */
    <T> T guard(Supplier<T> supplier) {
      try {
        return supplier.get();
      } catch (IllegalArgumentException e) {
        throw place.error(0, "a row that cannot be", String.valueOf(e.getMessage()));
      }
    }
  }
}
