package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.outcome.DonenessScale;
import org.roastfield.core.units.Temperatures;

class FireCheckTest {

  private static final PlanRequest STATED =
      PlanRequest.of(PlanCooks.loin(), PlanCooks.prior(), CoreWish.of(DonenessScale.TRADE, 4))
          .with(Service.usual().withLatest(900))
          .withDraws(500, 3);

  private static final PlanRequest KEPT =
      STATED.with(
          PlanCooks.loin()
              .with(
                  Fires.of(
                      kelvin ->
                          PlanCooks.loin(0.096, Temperatures.celsius(110) + kelvin).cooks())));

  @Test
  void laterBands_haveTheirChange() {
    FireCheck check = new FireCheck(300, 0, List.of(3600.0, 4200.0), List.of(-20.0, 0.0, 40.0));
    assertEquals(-20, check.hotterAt(3600), 0);
    assertEquals(0, check.hotterAt(3601), 0);
    assertEquals(40, check.hotterAt(Double.POSITIVE_INFINITY), 0);
  }

  /** 20 K at 5 K in ten minutes take forty more. */
  @Test
  void display_isDrawnOnAtItsPace() {
    FireCheck check = new FireCheck(300, 20, List.of(), List.of(0.0));
    assertEquals(6000, check.drawnOn(3600, 5.0 / 600), 1e-9);
    assertEquals(Double.POSITIVE_INFINITY, check.drawnOn(Double.POSITIVE_INFINITY, 0), 0);
    assertEquals(3600, FireCheck.always(300, 0).drawnOn(3600, 0), 0);
    Arrivals arrivals =
        new Arrivals(new double[] {3000, 900}, new double[] {3600, Double.POSITIVE_INFINITY});
    assertEquals(6000, arrivals.drawnOn(0, check), 1e-9);
    assertEquals(Double.POSITIVE_INFINITY, arrivals.drawnOn(1, check), 0);
  }

  @Test
  void bandsThatDoNotFit_areRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new FireCheck(300, 0, List.of(1.0), List.of(0.0)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new FireCheck(300, 0, List.of(2.0, 1.0), List.of(0.0, 1.0, 2.0)));
    assertThrows(
        IllegalArgumentException.class, () -> new FireCheck(300, -1, List.of(), List.of(0.0)));
    assertThrows(IllegalArgumentException.class, () -> new Fires(kelvin -> point -> null, -1, 0));
  }

  /** Later is more by a lean above zero, but for no more than the most; never got there is none. */
  @Test
  void look_movesTheReadingOfThePull_soFarAndNoFarther() {
    FireCheck check = new FireCheck(300, 0, List.of(), List.of(0.0)).leaning(3600, 0.5 / 600);
    assertEquals(0, check.raisedAt(3600), 0);
    assertEquals(0.5, check.raisedAt(4200), 1e-12);
    assertEquals(-1, check.raisedAt(2400), 1e-12);
    assertEquals(FireCheck.MOST_RAISED, check.raisedAt(36_000), 0);
    assertEquals(-FireCheck.MOST_RAISED, check.leaning(3600, -1).raisedAt(36_000), 0);
    assertEquals(0, check.raisedAt(Double.POSITIVE_INFINITY), 0);
    assertEquals(0, FireCheck.always(300, 0).raisedAt(36_000), 0);
    assertThrows(IllegalArgumentException.class, () -> check.leaning(0, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> check.leaning(Double.POSITIVE_INFINITY, 0));
  }

  /** The later, the hotter; as stated in the middle; and the promised window is hit more often. */
  @Test
  void fireKeptByTheDisplay_hitsTheWindowMoreOften() {
    Plan stated = Planner.withDefaults().plan(STATED);
    Plan kept = Planner.withDefaults().plan(KEPT);
    assertTrue(stated.check().isEmpty());
    FireCheck check = kept.check().orElseThrow();
    List<Double> hotter = check.hotter();
    for (int band = 1; band < hotter.size(); band++) {
      assertTrue(hotter.get(band) > hotter.get(band - 1), hotter.toString());
    }
    Spread looked = kept.milestone(Milestone.Kind.CHECK).time();
    assertTrue(check.hotter().contains(0.0), check.toString());
    assertTrue(window(kept) > window(stated) + 0.02, window(kept) + " " + window(stated));
    assertTrue(looked.median() < kept.milestone(Milestone.Kind.NEAR).time().median());
  }

  private static double window(Plan plan) {
    return plan.chanceReady() - plan.chanceHeldTooLong();
  }
}
