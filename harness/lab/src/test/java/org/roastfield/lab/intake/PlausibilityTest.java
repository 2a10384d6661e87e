package org.roastfield.lab.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.LogChannel;

/** Each rule finds what is put into a smooth cook, where and how large, and nothing else. */
class PlausibilityTest {

  private static final int MINUTES = 240;

  @Test
  void smoothCook_hasNothingButItsResolution() {
    assertEquals(List.of(), findings(PlausibilityTest::chamber, PlausibilityTest::core));
  }

  @Test
  void spike() {
    Finding one = only(PlausibilityTest::chamber, i -> core(i) + (i == 100 ? 9 : 0));
    assertEquals(Finding.Kind.SPIKE, one.kind());
    assertEquals(6000, one.from());
    assertEquals(9, one.size(), 1e-9);
  }

  /** Of 100 000 readings that only wander, none is a spike, a move or a probe in air. */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1, 2, 5})
  void noiseAlone_isNoFinding(double deviation) {
    LogChannel core = noisy(100_000, i -> deviation, 7);
    assertEquals(List.of(), beyondResolution(core));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1, 2, 4})
  void noiseOfAChamber_isNoLid(double deviation) {
    LogChannel noise = noisy(100_000, i -> deviation, 9);
    double[] times = new double[noise.size()];
    double[] kelvin = new double[noise.size()];
    for (int i = 0; i < times.length; i++) {
      times[i] = noise.time(i) / 12;
      kelvin[i] = noise.temperature(i) + 70;
    }
    assertEquals(List.of(), beyondResolution(LogChannel.of("chamber", times, kelvin)));
  }

  /** A quiet trace that becomes noisy for a quarter of its time is judged by each place's noise. */
  @Test
  void noiseOfOnePlace_isNoFindingThere() {
    LogChannel core = noisy(20_000, i -> i / 1000 % 4 == 2 ? 2 : 0.1, 8);
    assertEquals(List.of(), beyondResolution(core));
  }

  /**
   * Twelve deviations, put into noise, are found where they are; the noise sets the size's error.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 2, 5})
  void spikeInNoise_isFoundWithItsPlaceAndSize(double deviation) {
    double height = 12 * deviation;
    int found = 0;
    for (int seed = 0; seed < 50; seed++) {
      LogChannel noise = noisy(400, i -> deviation, seed);
      double[] times = new double[400];
      double[] kelvin = new double[400];
      for (int i = 0; i < 400; i++) {
        times[i] = noise.time(i);
        kelvin[i] = noise.temperature(i) + (i == 200 ? height : 0);
      }
      List<Finding> all = beyondResolution(LogChannel.of("core", times, kelvin));
      assertTrue(all.size() <= 1, all.toString());
      for (Finding one : all) {
        assertEquals(Finding.Kind.SPIKE, one.kind());
        assertEquals(12_000, one.from());
        assertEquals(12_000, one.until());
        assertEquals(height, one.size(), 5 * 1.14 * deviation);
        found++;
      }
    }
    assertEquals(50, found);
  }

  /** A core that stands still and then rises at 30 K/h has not been moved, whatever is missing. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.3, 0.5})
  void riseThatBegins_isNoMove(double missing) {
    for (int seed = 0; seed < 50; seed++) {
      Random random = new Random(seed);
      List<Integer> kept = new ArrayList<>();
      for (int i = 0; i < MINUTES; i++) {
        if (random.nextDouble() >= missing) {
          kept.add(i);
        }
      }
      double[] times = kept.stream().mapToDouble(i -> 60.0 * i).toArray();
      double[] kelvin = kept.stream().mapToDouble(i -> begun(i) + 273.15).toArray();
      List<Finding> all = beyondResolution(LogChannel.of("core", times, kelvin));
      assertTrue(
          all.stream().noneMatch(one -> one.kind() == Finding.Kind.PROBE_MOVED), all.toString());
    }
  }

  /** 10 minutes still, then up to 30 K/h within 10 more; tenths [°C]. */
  private static double begun(int minute) {
    double since = Math.max(0, minute - 10);
    double celsius = 5 + (since < 10 ? 0.025 * since * since : 0.5 * (since - 5));
    return Math.round(10 * celsius) / 10.0;
  }

  /** Where a third of the readings are missing, one that was moved is found all the same. */
  @Test
  void movedProbe_isFoundAmongMissingReadings() {
    List<Integer> kept = IntStream.range(0, MINUTES).filter(i -> i % 3 != 0).boxed().toList();
    double[] times = kept.stream().mapToDouble(i -> 60.0 * i).toArray();
    double[] kelvin =
        kept.stream().mapToDouble(i -> begun(i) - (i >= 120 ? 4 : 0) + 273.15).toArray();
    List<Finding> all = beyondResolution(LogChannel.of("core", times, kelvin));
    assertEquals(List.of(Finding.Kind.PROBE_MOVED), all.stream().map(Finding::kind).toList());
    assertEquals(7200, all.get(0).until(), 180);
    assertEquals(-4, all.get(0).size(), 1);
  }

  private static List<Finding> beyondResolution(LogChannel channel) {
    int rows = channel.size();
    CookLog log =
        new CookLog(
            "readings.csv", List.of(), rows, 0, channel.time(rows - 1), Arrays.asList(channel));
    return Plausibility.of(log).stream()
        .filter(one -> one.kind() != Finding.Kind.RESOLUTION)
        .toList();
  }

  /** Readings a minute apart that wander about a slow rise, to hundredths. */
  private static LogChannel noisy(int rows, IntToDoubleFunction deviation, long seed) {
    Random random = new Random(seed);
    double[] times = new double[rows];
    double[] kelvin = new double[rows];
    for (int i = 0; i < rows; i++) {
      times[i] = 60.0 * i;
      double celsius = 40 + 20.0 * i / rows + deviation.applyAsDouble(i) * random.nextGaussian();
      kelvin[i] = Math.round(100 * celsius) / 100.0 + 273.15;
    }
    return LogChannel.of("core", times, kelvin);
  }

  @Test
  void movedProbe() {
    Finding one = only(PlausibilityTest::chamber, i -> core(i) - (i >= 120 ? 4 : 0));
    assertEquals(Finding.Kind.PROBE_MOVED, one.kind());
    assertEquals(7200, one.until(), 120);
    assertEquals(-4, one.size(), 1);
  }

  @Test
  void openLid() {
    Finding one = only(i -> chamber(i) - (i >= 60 && i < 64 ? 35 : 0), PlausibilityTest::core);
    assertEquals(Finding.Kind.LID_OPENED, one.kind());
    assertEquals(3540, one.from());
    assertEquals(3840, one.until());
    assertEquals(35, one.size(), 3);
  }

  @Test
  void switchOfUnit() {
    List<Finding> found =
        findings(PlausibilityTest::chamber, i -> i < 150 ? core(i) : 1.8 * core(i) + 32);
    assertEquals(List.of(Finding.Kind.UNIT_SWITCH), found.stream().map(Finding::kind).toList());
    assertEquals(9000, found.get(0).until());
  }

  @Test
  void frozenValue() {
    Finding one = only(PlausibilityTest::chamber, i -> i >= 50 && i < 80 ? core(50) : core(i));
    assertTrue(one.kind() == Finding.Kind.FROZEN, one.toString());
    assertEquals(3000, one.from());
    assertEquals(29 * 60, one.size());
  }

  @Test
  void probeInAir() {
    List<Finding> found =
        findings(
            PlausibilityTest::chamber,
            i -> i < 200 ? core(i) : core(i) - 8.0 * Math.min(4, i - 199));
    assertEquals(List.of(Finding.Kind.PROBE_IN_AIR), found.stream().map(Finding::kind).toList());
    assertEquals(199 * 60, found.get(0).from());
    assertEquals(-31, found.get(0).size(), 1.5);
  }

  @Test
  void gap() {
    LogChannel whole = channel("core", PlausibilityTest::core);
    double[] times = new double[MINUTES - 40];
    double[] kelvin = new double[times.length];
    for (int i = 0; i < times.length; i++) {
      int from = i < 100 ? i : i + 40;
      times[i] = whole.time(from);
      kelvin[i] = whole.temperature(from);
    }
    List<Finding> found =
        Plausibility.of(log(LogChannel.of("core", times, kelvin))).stream()
            .filter(one -> one.kind() == Finding.Kind.GAP)
            .toList();
    assertEquals(List.of(new Finding(Finding.Kind.GAP, "core", 5940, 8400, 2460)), found);
  }

  @Test
  void resolution_isFoundInEitherUnit() {
    LogChannel fahrenheit =
        channel("core", i -> Math.round(100 * (Math.round(41 + i / 4.0) - 32) / 1.8) / 100.0);
    Finding one = Plausibility.of(log(fahrenheit)).get(0);
    assertEquals(Finding.Kind.RESOLUTION, one.kind());
    assertEquals(1 / 1.8, one.size(), 1e-12);
  }

  private static double chamber(int i) {
    return 110 + 4 * Math.sin(i / 20.0) + (i * 37 % 11 - 5) / 10.0;
  }

  private static double core(int i) {
    return 5 + i * 0.25;
  }

  private static Finding only(IntToDoubleFunction chamber, IntToDoubleFunction core) {
    List<Finding> found = findings(chamber, core);
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }

  private static List<Finding> findings(IntToDoubleFunction chamber, IntToDoubleFunction core) {
    return Plausibility.of(log(channel("chamber", chamber), channel("core", core))).stream()
        .filter(one -> one.kind() != Finding.Kind.RESOLUTION)
        .toList();
  }

  private static CookLog log(LogChannel... channels) {
    double end = 60.0 * (MINUTES - 1);
    return new CookLog("readings.csv", List.of(), MINUTES, 0, end, Arrays.asList(channels));
  }

  private static LogChannel channel(String name, IntToDoubleFunction celsius) {
    double[] times = new double[MINUTES];
    double[] kelvin = new double[MINUTES];
    for (int i = 0; i < MINUTES; i++) {
      times[i] = 60.0 * i;
      kelvin[i] = Math.round(100 * celsius.applyAsDouble(i)) / 100.0 + 273.15;
    }
    return LogChannel.of(name, times, kelvin);
  }
}
