package org.roastfield.core.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WhitenessTest {

  @Test
  void portmanteau_isItsSum() {
    // Worked by hand: mean 1, deviations 1 -1 1 -1 1 -1 1 -1; lags 1 and 2 of eight numbers.
    Whiteness found = Whiteness.of(2, 0, 2, 0, 2, 0, 2, 0);
    assertEquals(8, found.count());
    assertEquals(1, found.mean());
    assertEquals(16, found.squares());
    assertEquals(2, found.lags());
    double first = -7.0 / 8;
    double second = 6.0 / 8;
    assertEquals(8 * 10 * (first * first / 7 + second * second / 6), found.portmanteau(), 1e-12);
    // χ² of two degrees of freedom has the tail exp(−x/2).
    assertEquals(Math.exp(-found.portmanteau() / 2), found.chanceOfCorrelation(), 1e-12);
  }

  @Test
  void whiteNumbers_areRejectedAsOftenAsTheChanceSays() {
    SplittableRandom random = new SplittableRandom(21);
    int logs = 2000;
    int correlated = 0;
    int large = 0;
    for (int log = 0; log < logs; log++) {
      Whiteness found = Whiteness.of(numbers(200, 0, random));
      correlated += found.chanceOfCorrelation() < 0.05 ? 1 : 0;
      large += found.chanceOfSquares() < 0.05 ? 1 : 0;
    }
    // Four standard deviations of a binomial are 0.02; the portmanteau is known to reject somewhat
    // more than it says in finite samples.
    assertEquals(0.055, correlated / (double) logs, 0.02);
    assertEquals(0.05, large / (double) logs, 0.02);
  }

  @Test
  void numbersWithMemory_areRejected() {
    Whiteness found = Whiteness.of(numbers(200, 0.5, new SplittableRandom(22)));
    assertTrue(found.chanceOfCorrelation() < 1e-6, found::toString);
  }

  @Test
  void tooFewNumbers_areNotTested() {
    Whiteness found = Whiteness.of(1, 2, 3);
    assertEquals(0, found.lags());
    assertEquals(1, found.chanceOfCorrelation());
    assertThrows(IllegalArgumentException.class, Whiteness::of);
    assertThrows(IllegalArgumentException.class, () -> Whiteness.of(1, Double.NaN));
  }

  private static double[] numbers(int count, double memory, SplittableRandom random) {
    double[] numbers = new double[count];
    for (int k = 0; k < count; k++) {
      double before = k == 0 ? 0 : numbers[k - 1];
      numbers[k] = memory * before + StudentProposal.normal(random);
    }
    return numbers;
  }
}
