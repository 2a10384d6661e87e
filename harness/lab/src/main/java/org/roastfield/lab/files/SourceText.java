package org.roastfield.lab.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Text of a file: UTF-8 without exception, of bounded size, without a byte order mark.
 *
 * @param fileName last part of the path
 * @param text whole content
 */
record SourceText(String fileName, String text) {

  private static final String BYTE_ORDER_MARK = "\uFEFF";
  private static final int LONGEST_QUOTE = 60;

  /** Reads at most {@code limit} bytes; a file without an end is read no further. */
  static byte[] bytes(Path path, int limit) throws IOException {
    if (Files.isDirectory(path)) {
      throw new CookFileException(name(path), 1, 1, "a folder", "a file");
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] bytes = in.readNBytes(limit + 1);
      if (bytes.length > limit) {
        throw new CookFileException(
            name(path), 1, 1, "more than " + limit + " bytes", "a file of at most that size");
      }
      return bytes;
    }
  }

  /** Last part of a path, fit for messages. */
  static String name(Path path) {
    Path last = path.getFileName();
    return last == null ? path.toString() : last.toString();
  }

  /** Decodes; malformed UTF-8 is an error with its place. */
  static SourceText decode(String fileName, byte[] bytes) {
    if (isWide(bytes)) {
      throw new CookFileException(
          fileName, 1, 1, "text in UTF-16", "text in UTF-8: save the file in that encoding");
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(in, out, true);
    String decoded = out.flip().toString();
    if (result.isError()) {
      SourceText before = new SourceText(fileName, decoded);
      String found = String.format("byte 0x%02X", bytes[in.position()]);
      throw before.error(decoded.length(), found, "text in UTF-8");
    }
    return new SourceText(
        fileName, decoded.startsWith(BYTE_ORDER_MARK) ? decoded.substring(1) : decoded);
  }

  /** Whether a byte order mark of UTF-16 begins the file, or every other byte is 0. */
  private static boolean isWide(byte[] bytes) {
    if (bytes.length < 2) {
      return false;
    }
    int mark = ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF);
    boolean everyOther = bytes.length >= 4 && isHalfZero(bytes, 0) && isHalfZero(bytes, 2);
    return mark == 0xFEFF || mark == 0xFFFE || everyOther;
  }

  private static boolean isHalfZero(byte[] bytes, int i) {
    return (bytes[i] == 0) != (bytes[i + 1] == 0);
  }

  /** Error at a character of the text. */
  CookFileException error(int index, String found, String expected) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < index; i++) {
      if (text.charAt(i) == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    int column = text.codePointCount(lineStart, index) + 1;
    return new CookFileException(fileName, line, column, found, expected);
  }

  /** Text of a file in quotes for a message: shortened, and control characters made visible. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    int shown = Math.min(text.length(), LONGEST_QUOTE);
    for (int i = 0; i < shown; i++) {
      char c = text.charAt(i);
      quoted.append(Character.isISOControl(c) ? String.format("\\u%04x", (int) c) : c);
    }
    return quoted.append(shown < text.length() ? "…\"" : "\"").toString();
  }
}
