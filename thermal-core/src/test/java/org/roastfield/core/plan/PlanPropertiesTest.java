package org.roastfield.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roastfield.core.units.Temperatures;

/** What every plan must obey, whatever its numbers. */
class PlanPropertiesTest {

  private static final Planner PLANNER = Planner.withDefaults();

  /** So many that few of them decide no look: of 24, two plans of ten had it otherwise. */
  private static final int DRAWS = 60;

  /** Leads so far apart are tried from each other; see {@link PullChoice}. */
  private static final double HALF_AN_HOUR = 1800;

  private static Plan loin(double diameter, double wish, Service service, int seed) {
    double air = Temperatures.celsius(120);
    return PLANNER.plan(
        PlanRequest.of(
                PlanCooks.loin(diameter / 1000, air),
                PlanCooks.prior(),
                CoreWish.of(Temperatures.celsius(wish)))
            .with(service)
            .withDraws(DRAWS, seed));
  }

  /** Of a service that is later from now on, whether there is time enough or not. */
  @Property(tries = 10)
  void laterService_neverStartsEarlier(
      @ForAll @DoubleRange(min = 60, max = 100) double diameter,
      @ForAll @DoubleRange(min = 3600, max = 20_000) double left,
      @ForAll @DoubleRange(min = 60, max = 5400) double later,
      @ForAll @IntRange(max = 1000) int seed) {
    Plan plan = loin(diameter, 60, Service.usual().withEarliestOn(-left), seed);
    Plan after = loin(diameter, 60, Service.usual().withEarliestOn(-left - later), seed);
    double start = left - plan.lead();
    assertTrue(left + later - after.lead() >= start - 1e-6, plan.lead() + " " + after.lead());
  }

  /**
   * On the gentle heat. How long it waits for its sear after that is nearly free: of 60 and 68 mm
   * at seed 51 (none of 200 other pairs) the thinner one goes on four minutes earlier. By no more
   * than half an hour, which is how far leads are tried from each other.
   */
  @Property(tries = 10)
  void thickerCut_takesLonger(
      @ForAll @DoubleRange(min = 60, max = 90) double diameter,
      @ForAll @DoubleRange(min = 8, max = 20) double more,
      @ForAll @IntRange(max = 1000) int seed) {
    Plan plan = loin(diameter, 60, Service.usual(), seed);
    Plan thicker = loin(diameter + more, 60, Service.usual(), seed);
    assertTrue(heating(thicker) > heating(plan), heating(plan) + " " + heating(thicker));
    assertTrue(thicker.lead() > plan.lead() - HALF_AN_HOUR, plan.lead() + " " + thicker.lead());
  }

  /** By more than those ten minutes move a reading, since a longer wait asks for a higher one. */
  @Property(tries = 10)
  void hotterWish_isPulledLater_andHotter(
      @ForAll @DoubleRange(min = 52, max = 60) double wish,
      @ForAll @DoubleRange(min = 4, max = 6) double more,
      @ForAll @IntRange(max = 1000) int seed) {
    Plan plan = loin(80, wish, Service.usual(), seed);
    Plan hotter = loin(80, wish + more, Service.usual(), seed);
    assertTrue(hotter.reading() > plan.reading());
    assertTrue(heating(hotter) > heating(plan));
  }

  private static double heating(Plan plan) {
    return plan.milestone(Milestone.Kind.PULL).time().median() + plan.lead();
  }

  /**
   * Surface and core differ by q L/(4 k), at most 1.6 K at 600 W/m² and 5 mm; a tenth of that is
   * left to rise while the cold comes in.
   */
  @Property(tries = 10)
  void thinSliceInTheCold_hasNoCarryover(
      @ForAll @DoubleRange(min = 2, max = 5) double thickness,
      @ForAll @DoubleRange(min = 30, max = 50) double wish,
      @ForAll @IntRange(max = 1000) int seed) {
    Plan plan =
        PLANNER.plan(
            PlanRequest.of(
                    PlanCooks.coldSlice(thickness / 1000),
                    PlanCooks.prior(),
                    CoreWish.of(Temperatures.celsius(wish)))
                .withDraws(24, seed));
    assertEquals(plan.reading(), plan.finalCore().median(), 0.2);
    assertEquals(Temperatures.celsius(wish), plan.reading(), 0.3);
  }
}
