package org.roastfield.lab.files;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Spoils files: bytes, words, lines, and pieces of other files. The same seed spoils alike. */
final class Mutations {

  /** Words that readers may stumble over. */
  private static final List<String> WORDS =
      List.of(
          "",
          " ",
          "\n",
          "\r",
          "\t",
          ":",
          ": ",
          "- ",
          "#",
          "&a ",
          "*a",
          "!t ",
          "!!",
          "---\n",
          "...",
          "|",
          ">",
          "{",
          "}",
          "[",
          "]",
          "'",
          "\"",
          "\\",
          "\\u0000",
          "%",
          "@",
          "`",
          "?",
          "<<: ",
          "~",
          "null",
          "true",
          "NaN",
          ".inf",
          "-.inf",
          "0x1p3",
          "1e999",
          "-0",
          "1/0",
          "½",
          "9".repeat(400),
          "1e-99",
          ",",
          ";",
          "1,5",
          "°C",
          "K",
          "−",
          "\u00a0",
          "\u0000",
          "\u0007",
          "\u0085",
          "\u2028",
          "\uFEFF",
          "\uFFFF",
          "🥩",
          "\u202e",
          "a".repeat(5000),
          "<script>",
          "../",
          "{{",
          "[[[[[[[[[[[[[",
          "\n".repeat(100),
          "  ",
          "2026-06-13T18:00",
          "+999999999-01-01T00:00",
          "0 mm",
          "1e25 m",
          "-273.15 °C",
          "1e99 kg",
          "\"a\":",
          "null,",
          "[]",
          "{}");

  private final SplittableRandom random;

  Mutations(SplittableRandom random) {
    this.random = random;
  }

  /** A file spoilt in one to five ways, with pieces of another among them. */
  byte[] spoilt(byte[] file, byte[] other) {
    byte[] bytes = file;
    for (int i = 1 + random.nextInt(random.nextInt(1, 6)); i > 0; i--) {
      bytes = once(bytes, other);
    }
    return bytes;
  }

  private byte[] once(byte[] bytes, byte[] other) {
    return switch (random.nextInt(9)) {
      case 0 -> flipped(bytes);
      case 1 -> replaced(bytes, 1, new byte[] {(byte) random.nextInt(256)});
      case 2 -> replaced(bytes, 0, word());
      case 3 -> replaced(bytes, random.nextInt(1, 12), word());
      case 4 -> replaced(bytes, random.nextInt(1, 1 + Math.max(1, bytes.length / 2)), new byte[0]);
      case 5 -> replaced(bytes, 0, piece(bytes));
      case 6 -> replaced(bytes, random.nextInt(40), piece(other));
      case 7 -> token(bytes);
      default -> lines(bytes);
    };
  }

  private byte[] word() {
    return WORDS.get(random.nextInt(WORDS.size())).getBytes(StandardCharsets.UTF_8);
  }

  private byte[] flipped(byte[] bytes) {
    if (bytes.length == 0) {
      return bytes;
    }
    byte[] flipped = bytes.clone();
    flipped[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    return flipped;
  }

  private byte[] piece(byte[] bytes) {
    int from = random.nextInt(bytes.length + 1);
    return Arrays.copyOfRange(bytes, from, from + random.nextInt(bytes.length - from + 1));
  }

  private byte[] replaced(byte[] bytes, int most, byte[] by) {
    int from = random.nextInt(bytes.length + 1);
    return replaced(bytes, from, Math.min(bytes.length, from + most), by);
  }

  private static byte[] replaced(byte[] bytes, int from, int to, byte[] by) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, from);
    out.writeBytes(by);
    out.write(bytes, to, bytes.length - to);
    return out.toByteArray();
  }

  /** A number or word of the file gives way to another. */
  private byte[] token(byte[] bytes) {
    int from = random.nextInt(bytes.length + 1);
    while (from > 0 && isWord(bytes[from - 1])) {
      from--;
    }
    int to = from;
    while (to < bytes.length && isWord(bytes[to])) {
      to++;
    }
    return replaced(bytes, from, to, word());
  }

  private static boolean isWord(byte b) {
    return Character.isLetterOrDigit(b) || b == '.' || b == '-';
  }

  /** Two lines change places, or one is moved in or out. */
  private byte[] lines(byte[] bytes) {
    String[] lines = new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1);
    int a = random.nextInt(lines.length);
    int b = random.nextInt(lines.length);
    String moved = lines[a];
    lines[a] = random.nextBoolean() ? lines[b] : " ".repeat(random.nextInt(6)) + moved.strip();
    lines[b] = random.nextBoolean() ? moved : lines[b];
    return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
  }
}
