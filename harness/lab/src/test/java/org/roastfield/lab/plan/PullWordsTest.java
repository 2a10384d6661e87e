package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.roastfield.core.plan.Pull;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.timeline.TemperatureScale;

/** What is said of a pull's rule is the rule. */
class PullWordsTest {

  private static final double LEAD = 9000;
  private static final LocalDateTime ZERO = LocalDateTime.parse("2026-06-13T18:20");

  private static final Pattern READING =
      Pattern.compile(
          "([\\d.]+) °C (until|at|from) (\\d\\d):(\\d\\d)( on)?(?: \\(([\\d.]+) °C (?:just )?before\\))?");

  /** A told minute [min after the start] with the readings up to it and from it on [°C]. */
  private record Told(double minute, double before, double after) {}

  private static String words(Pull pull) {
    return new PullWords(
            pull, LEAD, 0, PlanClock.of(ZERO, Optional.empty()), TemperatureScale.CELSIUS)
        .text();
  }

  private static Pull pull(double... minutesAndTargets) {
    List<Double> times = new ArrayList<>();
    List<Double> targets = new ArrayList<>();
    for (int i = 0; i < minutesAndTargets.length; i += 2) {
      times.add(60 * minutesAndTargets[i]);
      targets.add(Temperatures.celsius(minutesAndTargets[i + 1]));
    }
    return new Pull(times, targets, 0);
  }

  /** 15:50 is the start, so that minute 10 is 16:00. */
  @Example
  void shapes_haveTheirSentences() {
    assertEquals("at 60.2 °C whenever that is", words(pull(10, 60, 10, 60.1, 70, 60.2)));
    assertEquals(
        "at 60.0 °C at 16:00 (61.0 °C before), 57.0 °C at 17:00, 51.0 °C from 17:15 on, evenly"
            + " between",
        words(pull(10, 61, 10, 60, 70, 57, 85, 51)));
    assertEquals(
        "at 60.0 °C at 16:00 (58.0 °C before), 57.0 °C at 17:00, 61.0 °C from 17:15 on, evenly"
            + " between",
        words(pull(10, 58, 10, 60, 70, 57, 85, 61)));
    assertEquals(
        "at 60.0 °C until 16:00, 62.0 °C from 17:00 on (57.0 °C just before), evenly between",
        words(pull(10, 60, 70, 57, 70, 62)));
    assertEquals("at 57.0 °C from 16:00 on (61.0 °C before)", words(pull(10, 61, 10, 57, 70, 57)));
  }

  @Provide
  Arbitrary<Pull> pulls() {
    Arbitrary<List<Integer>> gaps =
        Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(1, Arbitraries.just(0)),
                net.jqwik.api.Tuple.of(2, Arbitraries.integers().between(1, 90)))
            .list()
            .ofMinSize(1)
            .ofMaxSize(5);
    Arbitrary<List<Double>> targets =
        Arbitraries.oneOf(
                Arbitraries.doubles().between(50, 65), Arbitraries.of(55.0, 55.03, 55.2, 58.0))
            .list()
            .ofSize(5);
    return Combinators.combine(gaps, targets).as(PullWordsTest::pull);
  }

  private static Pull pull(List<Integer> gaps, List<Double> targets) {
    double[] both = new double[2 * gaps.size()];
    double minute = 0;
    for (int i = 0; i < gaps.size(); i++) {
      minute += gaps.get(i);
      both[2 * i] = minute;
      both[2 * i + 1] = targets.get(i);
    }
    return pull(both);
  }

  /** At each minute, and just before it, the said reading is the rule's as near as it is told. */
  @Property
  void words_areTheRule(@ForAll("pulls") Pull pull) {
    List<Told> told = told(words(pull));
    for (int minute = -5; minute <= 460; minute++) {
      assertNear(pull.target(60.0 * minute), said(told, minute), minute, pull);
      assertNear(pull.target(60.0 * minute - 0.01), said(told, minute - 1e-4), minute, pull);
    }
  }

  private static void assertNear(double target, double said, int minute, Pull pull) {
    double error = Math.abs(Temperatures.toCelsius(target) - said);
    assertTrue(
        error <= PullWords.ALIKE + 0.051, minute + ": " + said + " of " + pull + words(pull));
  }

  private static List<Told> told(String words) {
    List<Told> told = new ArrayList<>();
    if (words.endsWith(" whenever that is")) {
      double always = Double.parseDouble(words.split(" ", -1)[1]);
      return List.of(new Told(0, always, always));
    }
    Matcher matcher = READING.matcher(words);
    while (matcher.find()) {
      double minute =
          60 * Integer.parseInt(matcher.group(3)) + Integer.parseInt(matcher.group(4)) - 950;
      double after = Double.parseDouble(matcher.group(1));
      String before = matcher.group(6);
      told.add(
          new Told(
              minute < 0 ? minute + 1440 : minute,
              before == null ? after : Double.parseDouble(before),
              after));
      assertEquals(matcher.group(2).equals("from"), matcher.group(5) != null, words);
    }
    assertTrue(told.size() < 2 || words.endsWith(", evenly between"), words);
    return told;
  }

  /** By what the words say of the times between, before and after. */
  private static double said(List<Told> told, double minute) {
    if (minute < told.get(0).minute()) {
      return told.get(0).before();
    }
    for (int i = 1; i < told.size(); i++) {
      Told from = told.get(i - 1);
      Told to = told.get(i);
      if (minute < to.minute()) {
        double share = (minute - from.minute()) / (to.minute() - from.minute());
        return from.after() + share * (to.before() - from.after());
      }
    }
    return told.get(told.size() - 1).after();
  }
}
