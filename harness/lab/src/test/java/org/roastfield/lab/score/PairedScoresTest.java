package org.roastfield.lab.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PairedScoresTest {

  @Test
  void differenceAndSkill_areOfMeans() {
    PairedScores paired = paired(new double[] {1, 2, 6}, new double[] {4, 4, 4});
    assertEquals(-1, paired.difference(), 1e-15);
    assertEquals(0.25, paired.skill(), 1e-15);
    assertEquals(3, paired.cooks());
  }

  @Test
  void cooks_arePairedByIdNotByPlace() {
    ScoreSummary forecaster = ScoreSummary.of(List.of(score("a", 1), score("b", 5)));
    ScoreSummary reference = ScoreSummary.of(List.of(score("b", 5), score("a", 1)));
    PairedBootstrap bootstrap =
        PairedScores.ofCrps(forecaster, reference).bootstrap(100, new SplittableRandom(1));
    assertEquals(new Interval(0.95, 0, 0), bootstrap.difference(0.95));
  }

  /** Two cooks: both, or one of them twice, with probabilities 1/2, 1/4, 1/4. */
  @Test
  void bootstrapOfTwoCooks_isItsBinomial() {
    PairedScores paired = paired(new double[] {1, 5}, new double[] {2, 2});
    PairedBootstrap bootstrap = paired.bootstrap(40_000, new SplittableRandom(2));
    assertEquals(new Interval(0.9, -1, 3), bootstrap.difference(0.9));
    assertEquals(0.25, bootstrap.shareBetter(), 4 * Math.sqrt(0.25 * 0.75 / 40_000));
    assertEquals(new Interval(0.9, -1.5, 0.5), bootstrap.skill(0.9));
    assertEquals(2, bootstrap.standardError(), 0.03);
  }

  /** Groups count, not cooks: each cook five times tells no more than once. */
  @Test
  void cooksOfOneGroup_areDrawnTogether() {
    SplittableRandom random = new SplittableRandom(5);
    List<CaseScore> once = new ArrayList<>();
    List<CaseScore> references = new ArrayList<>();
    List<CaseScore> fiveTimes = new ArrayList<>();
    List<CaseScore> fiveReferences = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      double crps = 1 + random.nextDouble();
      once.add(score("c" + i, crps));
      references.add(score("c" + i, 1.5));
      for (int k = 0; k < 5; k++) {
        fiveTimes.add(score("c" + i + "." + k, crps));
        fiveReferences.add(score("c" + i + "." + k, 1.5));
      }
    }
    PairedScores single = PairedScores.ofCrps(ScoreSummary.of(once), ScoreSummary.of(references));
    PairedScores grouped =
        PairedScores.ofCrps(
            ScoreSummary.of(fiveTimes),
            ScoreSummary.of(fiveReferences),
            cook -> cook.substring(0, cook.indexOf('.')));
    assertEquals(12, grouped.groups());
    assertEquals(60, grouped.cooks());
    Interval one = single.bootstrap(2000, new SplittableRandom(6)).difference(0.95);
    Interval other = grouped.bootstrap(2000, new SplittableRandom(6)).difference(0.95);
    assertEquals(one.low(), other.low(), 1e-12);
    assertEquals(one.high(), other.high(), 1e-12);
  }

  /**
   * Of ten normal differences a plain percentile interval holds the mean in 2 T₉(1.96 √0.9) − 1 =
   * 0.905 of all cases; the expanded one in 0.95, within four standard errors.
   */
  @Test
  void intervalOfTheDifference_holdsTheMeanAsOftenAsItSays() {
    SplittableRandom random = new SplittableRandom(8);
    int repetitions = 3000;
    int held = 0;
    for (int r = 0; r < repetitions; r++) {
      double[] scores =
          random.doubles(10, 1e-300, 1).map(p -> 9 + Laws.normalQuantile(p)).toArray();
      PairedBootstrap bootstrap = paired(scores, constant(10, 9)).bootstrap(1000, random);
      held += bootstrap.difference(0.95).covers(0) ? 1 : 0;
    }
    double error = Math.sqrt(0.95 * 0.05 / repetitions);
    assertEquals(0.95, (double) held / repetitions, 4 * error);
  }

  @Test
  void standardError_isThatOfTheMean() {
    double[] scores = new SplittableRandom(9).doubles(40).toArray();
    double mean = 0;
    for (double score : scores) {
      mean += score / 40;
    }
    double squares = 0;
    for (double score : scores) {
      squares += (score - mean) * (score - mean);
    }
    double expected = Math.sqrt(squares / 39 / 40);
    PairedBootstrap bootstrap =
        paired(scores, constant(40, 1)).bootstrap(20_000, new SplittableRandom(10));
    assertEquals(expected, bootstrap.standardError(), 4 * expected / Math.sqrt(2 * 20_000));
  }

  @Test
  void whatCannotBeCompared_isRefused() {
    ScoreSummary one = ScoreSummary.of(List.of(score("a", 1), score("b", 2)));
    ScoreSummary other = ScoreSummary.of(List.of(score("a", 1), score("c", 2)));
    ScoreSummary more = ScoreSummary.of(List.of(score("a", 1), score("b", 2), score("c", 2)));
    assertEquals(
        "reference must have a score of each cook, had none of b",
        assertThrows(IllegalArgumentException.class, () -> PairedScores.ofCrps(one, other))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> PairedScores.ofCrps(one, more));
    SplittableRandom random = new SplittableRandom(1);
    PairedScores alone = paired(new double[] {1}, new double[] {2});
    assertThrows(IllegalStateException.class, () -> alone.bootstrap(100, random));
    PairedScores perfect = paired(new double[] {1, 1}, new double[] {0, 0});
    assertThrows(IllegalStateException.class, perfect::skill);
    assertThrows(IllegalStateException.class, () -> perfect.bootstrap(100, random).skill(0.9));
    PairedScores half = paired(new double[] {1, 1}, new double[] {0, 1});
    assertTrue(half.skill() < 0);
    assertThrows(IllegalStateException.class, () -> half.bootstrap(100, random).skill(0.9));
  }

  private static double[] constant(int n, double value) {
    double[] all = new double[n];
    java.util.Arrays.fill(all, value);
    return all;
  }

  private static PairedScores paired(double[] forecaster, double[] reference) {
    return PairedScores.ofCrps(summary(forecaster), summary(reference));
  }

  private static ScoreSummary summary(double[] crps) {
    List<CaseScore> scores = new ArrayList<>();
    for (int i = 0; i < crps.length; i++) {
      scores.add(score("cook-" + i, crps[i]));
    }
    return ScoreSummary.of(scores);
  }

  private static CaseScore score(String cook, double crps) {
    return new CaseScore(cook, 0, crps, crps, crps, List.of(), 0.5);
  }
}
