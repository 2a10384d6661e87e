package org.roastfield.lab.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roastfield.lab.files.PlanWishes;

class PurchaseTest {

  /** 24 plates of 150 g are 3.6 kg cooked, 4.8 kg boneless, 6 kg with bone, 6.25 kg untrimmed. */
  @Example
  void weightIsGrossedUp_stepByStep() {
    Purchase purchase = new Purchase(24, 0.150, 0.04, 0.20, 0.75);
    assertEquals(6.25, purchase.bought(), 1e-12);
    assertEquals(6.0, purchase.cooked(), 1e-12);
    assertEquals(24, purchase.fedBy(6.0));
    assertEquals(12, purchase.fedBy(3.1));
  }

  @Example
  void whatIsNotSaid_isAssumed() {
    OptionalDouble none = OptionalDouble.empty();
    Purchase purchase = Purchase.of(new PlanWishes.Plates(2, none, none, none), 0.7);
    assertEquals(new Purchase(2, Purchase.PORTION, Purchase.TRIM, Purchase.BONE, 0.7), purchase);
  }

  @Property
  void weightThatIsBought_feedsThem(
      @ForAll @IntRange(min = 1, max = 500) int people,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double portion,
      @ForAll @DoubleRange(max = 0.5) double share,
      @ForAll @DoubleRange(min = 0.4, max = 1) double yield) {
    Purchase purchase = new Purchase(people, portion, share, share / 2, yield);
    assertEquals(people, purchase.fedBy(purchase.cooked()));
    assertTrue(purchase.bought() >= purchase.cooked());
  }

  @Example
  void nothingLeft_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Purchase(1, 0.1, 1, 0, 0.7));
    assertThrows(IllegalArgumentException.class, () -> new Purchase(1, 0.1, 0, 0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Purchase(0, 0.1, 0, 0, 0.7));
  }
}
