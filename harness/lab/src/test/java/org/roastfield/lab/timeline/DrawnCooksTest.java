package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookTexts;

class DrawnCooksTest {

  private static final ComputedCook LOIN = computed(Published.porkLoin());

  private static ComputedCook computed(CookFile file) {
    return ComputedCook.of(file, Simulator.withDefaults().run(file.cook()).orElseThrow());
  }

  private static Spread.Row row(Spread spread, String subject) {
    return spread.rows().stream()
        .filter(row -> row.subject().equals(subject))
        .findFirst()
        .orElseThrow();
  }

  /** The pull holds the core: what spreads is the rise after it, and what the sear does. */
  @Test
  void spread_isAroundTheCookAsStated() {
    Spread spread = DrawnCooks.spread(LOIN, 60, 3);
    assertEquals(60, spread.asked());
    assertTrue(spread.computed() >= 55, "" + spread.computed());
    Spread.Row core = row(spread, "highest core");
    double stated = LOIN.inside().outcomes().highestCore();
    assertTrue(core.low() < stated && stated < core.high());
    assertTrue(core.high() - core.low() > 1 && core.high() - core.low() < 15);
    Spread.Row loss = row(spread, "lost of the raw mass");
    double lost = LOIN.inside().outcomes().juice().total();
    assertTrue(loss.low() < lost && lost < loss.high());
    assertTrue(loss.high() - loss.low() > 0.03);
    for (Safety safety : spread.safety()) {
      for (Finding finding : safety.findings()) {
        double share = finding.chance().orElseThrow();
        assertEquals(share * spread.computed(), Math.rint(share * spread.computed()), 1e-9);
      }
    }
    double chance = spread.safety().get(0).findings().get(0).chance().orElseThrow();
    assertTrue(chance > 0.02 && chance < 0.98, "" + chance);
  }

  @Test
  void sameSeed_isTheSameSpread_andMoreMembersKeepTheFirst() {
    assertEquals(DrawnCooks.spread(LOIN, 8, 5).rows(), DrawnCooks.spread(LOIN, 8, 5).rows());
    assertNotEquals(DrawnCooks.spread(LOIN, 8, 5).rows(), DrawnCooks.spread(LOIN, 8, 6).rows());
  }

  @Test
  void cookThatHardlyEverEnds_saysHowManyWereLeftOut() {
    CookFile slow = CookTexts.read(CookTexts.SLAB.replace("at-latest: 3 h", "at-latest: 70 min"));
    Spread spread = DrawnCooks.spread(computed(slow), 30, 1);
    assertTrue(spread.computed() < 30 && spread.computed() > 0, "" + spread.computed());
    assertTrue(spread.words().contains("the others are left out"));
  }

  @Test
  void noMembers_areRefused() {
    assertThrows(IllegalArgumentException.class, () -> DrawnCooks.spread(LOIN, 0, 1));
  }
}
