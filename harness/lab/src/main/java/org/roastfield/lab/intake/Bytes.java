package org.roastfield.lab.intake;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Bytes of a log on their way in: counted, hashed, bounded. */
final class Bytes extends FilterInputStream {

  /** Largest log [bytes]. */
  static final long LARGEST = 512L << 20;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private long count;

  private Bytes(InputStream in) {
    super(in);
  }

  static Bytes open(Path path, MessageDigest digest) throws IOException {
    if (Files.isDirectory(path)) {
      throw new IntakeException(path.getFileName() + ": found a folder, expected a file");
    }
    return new Bytes(new DigestInputStream(Files.newInputStream(path), digest));
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every JVM has SHA-256", e);
    }
  }

  /** Text of bytes; malformed ones are an error, a byte order mark is not part of it. */
  static Reader text(InputStream in, Charset charset) throws IOException {
    PushbackReader reader =
        new PushbackReader(
            new InputStreamReader(
                in,
                charset
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)));
    int first = reader.read();
    if (first >= 0 && first != BYTE_ORDER_MARK) {
      reader.unread(first);
    }
    return reader;
  }

  /** Reads over lines. */
  static void skipLines(Reader text, int lines) throws IOException {
    int left = lines;
    while (left > 0) {
      int c = text.read();
      if (c < 0) {
        return;
      }
      left -= c == '\n' ? 1 : 0;
    }
  }

  @Override
  public int read() throws IOException {
    int one = super.read();
    counted(one < 0 ? 0 : 1);
    return one;
  }

  @Override
  public int read(byte[] buffer, int from, int length) throws IOException {
    int n = super.read(buffer, from, length);
    counted(Math.max(0, n));
    return n;
  }

  private void counted(int n) {
    count += n;
    if (count > LARGEST) {
      throw new IntakeException("found more than " + LARGEST + " bytes, expected a smaller log");
    }
  }

  /** Bytes read so far. */
  long count() {
    return count;
  }
}
