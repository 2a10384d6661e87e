package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Readers say {@code valid} or name a mistake, whatever a file holds; nothing else escapes them.
 *
 * <p>The property {@value #SECONDS} says how long all readers together are tried, with 3 s by
 * default; {@code .ci/run} tries them for 60 s. A failure names the try, which its number and
 * {@value #SEED} make again.
 */
class FuzzTest {

  private static final String SECONDS = "roastfield.fuzz.seconds";
  private static final long SEED = 20_260_613;
  private static final int LEAST_TRIES = 200;

  /** A file that takes longer than this is an attack [ns]. */
  private static final long SLOWEST = 5_000_000_000L;

  static List<String> kinds() {
    return List.copyOf(Readers.ALL.keySet());
  }

  /** A file. */
  private static final class Sample {
    private final String name;
    private final byte[] bytes;
    private final boolean valid;

    private Sample(String name, byte[] bytes, boolean valid) {
      this.name = name;
      this.bytes = bytes;
      this.valid = valid;
    }
  }

  private static List<Sample> samples(String kind) throws IOException {
    List<Sample> samples = new ArrayList<>();
    for (Path path : CorpusTest.files(kind)) {
      boolean valid = CorpusTest.expected(path).equals("valid");
      samples.add(new Sample(SourceText.name(path), Files.readAllBytes(path), valid));
    }
    return samples;
  }

  private static Sample tried(List<Sample> samples, long number) {
    SplittableRandom random = new SplittableRandom(SEED + number);
    List<Sample> valid = samples.stream().filter(sample -> sample.valid).toList();
    Sample sample = pick(random.nextInt(4) > 0 ? valid : samples, random);
    byte[] spoilt = new Mutations(random).spoilt(sample.bytes, pick(samples, random).bytes);
    return new Sample(sample.name, spoilt, false);
  }

  private static Sample pick(List<Sample> samples, SplittableRandom random) {
    return samples.get(random.nextInt(samples.size()));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void spoiltFile_isReadOrRefused_neverFatal(String kind) throws IOException {
    List<Sample> samples = samples(kind);
    long budget = (long) (1e9 * Integer.getInteger(SECONDS, 3) * share(kind));
    long start = System.nanoTime();
    long tries = 0;
    long valid = 0;
    while (tries < LEAST_TRIES || System.nanoTime() - start < budget) {
      valid += check(kind, tries, tried(samples, tries)) ? 1 : 0;
      tries++;
    }
    System.out.printf("fuzz %s: %d spoilt files, of them %d valid%n", kind, tries, valid);
    assertTrue(valid > 0 && valid < tries, kind + ": " + valid + " of " + tries);
  }

  /** Cook files have by far the most to get wrong. */
  private static double share(String kind) {
    return kind.equals("cook") ? 1.0 / 3 : 2.0 / 3 / (kinds().size() - 1);
  }

  /** Whether the file is valid. */
  private static boolean check(String kind, long number, Sample sample) {
    long start = System.nanoTime();
    try {
      String message = Readers.message(kind, sample.name, sample.bytes);
      assertTrue(
          message.equals("valid") || message.matches("(?s)\\S+:[1-9]\\d*:[1-9]\\d*: found .+"),
          message);
      assertTrue(System.nanoTime() - start < SLOWEST, "slow");
      return message.equals("valid");
    } catch (RuntimeException | StackOverflowError | AssertionError e) {
      throw new AssertionError(
          kind + ", try " + number + ": " + HexFormat.of().formatHex(sample.bytes), e);
    }
  }

  @Test
  void sameNumber_isTheSameTry() throws IOException {
    List<Sample> samples = samples("cook");
    assertArrayEquals(tried(samples, 7).bytes, tried(samples, 7).bytes);
  }
}
