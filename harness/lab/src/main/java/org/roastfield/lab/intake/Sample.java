package org.roastfield.lab.intake;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The beginning of a log, by which its layout is guessed.
 *
 * @param charset of its bytes, as stated or as they look
 * @param lines of text, without a last one that may be cut off
 * @param whole whether this is all of the file
 */
record Sample(Charset charset, List<String> lines, boolean whole) {

  static final int SIZE = 256 << 10;
  private static final int MOST_LINES = 2000;

  static Sample read(Path path, Charset stated) throws IOException {
    return of(bytes(path), stated);
  }

  static Sample read(Path path) throws IOException {
    byte[] bytes = bytes(path);
    return of(bytes, guess(bytes));
  }

  private static byte[] bytes(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      throw new IntakeException(path.getFileName() + ": found a folder, expected a file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(SIZE);
    }
  }

  private static Sample of(byte[] bytes, Charset charset) {
    String text = new String(bytes, charset);
    text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    boolean whole = bytes.length < SIZE;
    List<String> lines = new ArrayList<>(text.lines().limit(MOST_LINES).toList());
    if (!whole && !lines.isEmpty()) {
      lines.remove(lines.size() - 1);
    }
    return new Sample(charset, lines, whole && lines.size() < MOST_LINES);
  }

  private static Charset guess(byte[] bytes) {
    if (bytes.length > 1 && (bytes[0] & 255) == 0xFF && (bytes[1] & 255) == 0xFE) {
      return StandardCharsets.UTF_16LE;
    }
    if (bytes.length > 1 && (bytes[0] & 255) == 0xFE && (bytes[1] & 255) == 0xFF) {
      return StandardCharsets.UTF_16BE;
    }
    CharBuffer out = CharBuffer.allocate(bytes.length);
    // Not the end: a character may be cut off by the sample's.
    CoderResult result =
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), out, false);
    return result.isError() ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
  }

  /** Cells of the lines after the first {@code skipped}. */
  List<List<String>> rows(char separator, int skipped) {
    String text = String.join("\n", lines.subList(Math.min(skipped, lines.size()), lines.size()));
    List<List<String>> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .fieldSeparator(separator)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text)) {
      for (CsvRecord row : reader) {
        rows.add(row.getFields());
      }
    } catch (CsvParseException e) {
      throw new IntakeException(
          "found no delimited text (" + e.getMessage() + "), expected rows of cells");
    } catch (IOException e) {
      throw new IllegalStateException("text in memory cannot be read", e);
    }
    return rows;
  }
}
