package org.roastfield.core.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.FireDemand.Sear;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.support.UniformDraws;

/** Times and fuel of a cook, and which way they go. */
@Domain(DomainContext.Global.class)
@Domain(UniformDraws.class)
class FireNeedsTest {

  private static final Outside OUTSIDE = new Outside(285, 0, 0.006, MoistAir.STANDARD_PRESSURE);
  private static final double HOUR = 3600;
  private static final FirePit PIT = FirePit.brickAndSteel();
  private static final Sear COVERED = new Sear(Sear.Place.COVERED, 540, 600);

  private static FireDemand demand(double setting, double hours) {
    return FireDemand.gentle(OUTSIDE, 1, setting, hours * HOUR).withLoad(200);
  }

  /** What the needs say, seen in a run of one's own. */
  @Test
  void needs_areThoseOfTheCourse() {
    FireNeeds needs = FireNeeds.of(PIT, demand(390, 3).withSear(COVERED));
    double on = needs.heatUp();
    double off = on + 3 * HOUR;
    double sear = off + needs.ramp();
    FireCourse course =
        PIT.run(
            OUTSIDE,
            PIT.cold(OUTSIDE, 1),
            List.of(
                Tending.hold(0, 390),
                Tending.hold(on, 390).withLoad(200),
                Tending.wide(off),
                Tending.hold(sear, 540)),
            sear + 600);
    assertEquals(
        PIT.held(OUTSIDE, 390, 0).wallTemperature() - 15, course.wallTemperature(on), 0.05);
    assertEquals(539, course.airTemperature(sear), 0.05);
    assertTrue(course.airTemperature(sear - 60) < 539);
    assertEquals(course.burnt(sear + 600), needs.burnt(), 1e-6);
    assertEquals(needs.lighting() + on, needs.beforeOn());
  }

  /** With its charge the fire does as one that is kept stoked; with a tenth less it falls short. */
  @Test
  void charge_isJustEnough() {
    FireDemand demand = demand(390, 4);
    FireNeeds needs = FireNeeds.of(PIT, demand);
    double burning = needs.fuel() * PIT.bed().usable();
    double end = needs.heatUp() + 4 * HOUR;
    List<Tending> deeds =
        List.of(Tending.hold(0, 390), Tending.hold(needs.heatUp(), 390).withLoad(200));
    FireState cold = PIT.cold(OUTSIDE, 1);
    FireCourse enough = PIT.run(OUTSIDE, cold.withFuel(burning), deeds, end);
    assertEquals(390, enough.airTemperature(end), 0.1);
    FireCourse less = PIT.run(OUTSIDE, cold.withFuel(needs.burnt()), deeds, end);
    assertTrue(less.airTemperature(end) < 385, "coals must still glow at the end");
  }

  @Property(tries = 60)
  void hotter_longer_windier_takesMoreFuel(
      @ForAll @DoubleRange(min = 360, max = 430) double setting,
      @ForAll @DoubleRange(min = 1, max = 8) double hours,
      @ForAll @DoubleRange(min = 0, max = 3) double wind) {
    FireDemand demand = demand(setting, hours).in(OUTSIDE.withWind(wind));
    FireNeeds needs = FireNeeds.of(PIT, demand);
    FireNeeds hotter = FireNeeds.of(PIT, demand(setting + 15, hours).in(OUTSIDE.withWind(wind)));
    FireNeeds longer = FireNeeds.of(PIT, demand(setting, hours + 0.5).in(OUTSIDE.withWind(wind)));
    FireNeeds windier = FireNeeds.of(PIT, demand.in(OUTSIDE.withWind(wind + 1)));
    assertTrue(hotter.burnt() > needs.burnt());
    assertTrue(hotter.heatUp() > needs.heatUp());
    assertTrue(longer.burnt() > needs.burnt());
    assertEquals(needs.heatUp(), longer.heatUp());
    assertTrue(windier.burnt() > needs.burnt());
    assertTrue(needs.fuel() > needs.burnt());
  }

  @Property(tries = 60)
  void lid_costsFuelAndHeat(
      @ForAll @DoubleRange(min = 360, max = 430) double setting,
      @ForAll @DoubleRange(min = 10, max = 600) double seconds) {
    LidCost cost = LidCost.of(PIT, OUTSIDE, setting, 200, seconds);
    LidCost twice = LidCost.of(PIT, OUTSIDE, setting, 200, 2 * seconds);
    assertTrue(cost.fuel() > 0);
    assertTrue(cost.wallFall() > 0);
    assertTrue(twice.fuel() > cost.fuel());
    double open = OUTSIDE.temperature() + 35;
    double fallen = (setting - open) * (1 - StrictMath.exp(-seconds / Lid.FALL));
    assertEquals(fallen, cost.gasFall(), 1e-6);
    FireDemand closed = demand(setting, 3);
    FireDemand opened = closed.withOpenings(List.of(new Lid.Opening(3600, seconds)));
    assertTrue(FireNeeds.of(PIT, opened).burnt() > FireNeeds.of(PIT, closed).burnt());
  }

  /** Half of the glowing coals that warm it take longer; a hot one is warm at once. */
  @Test
  void fewerCoals_takeLonger() {
    FireDemand few = FireDemand.gentle(OUTSIDE, 0.1, 400, HOUR);
    FireDemand many = FireDemand.gentle(OUTSIDE, 1, 400, HOUR);
    assertTrue(FireNeeds.of(PIT, few).heatUp() > FireNeeds.of(PIT, many).heatUp());
  }

  @Test
  void settingOutOfReach_isNeverWarm() {
    FirePit narrow = new FirePit(PIT.walls(), new FirePit.Vents(1e-4, 0.5, 0.5), PIT.bed());
    FireNeeds needs = FireNeeds.of(narrow, demand(500, 1));
    assertTrue(Double.isNaN(needs.heatUp()));
    assertTrue(Double.isNaN(needs.fuel()));
  }

  @Test
  void multipliers_moveThePit() {
    ParameterSet set = FireParameters.ofPit();
    double[] ones = new double[set.size()];
    java.util.Arrays.fill(ones, 1);
    assertEquals(PIT, FireParameters.pit(PIT, set, ones));
    ones[set.index("fire-wall-capacity")] = 2;
    FirePit heavier = FireParameters.pit(PIT, set, ones);
    assertEquals(2 * PIT.walls().capacity(), heavier.walls().capacity());
    FireNeeds needs = FireNeeds.of(PIT, demand(400, 2));
    FireNeeds slow = FireNeeds.of(heavier, demand(400, 2));
    assertTrue(slow.heatUp() > needs.heatUp());
    assertTrue(slow.burnt() > needs.burnt());
    assertThrows(
        IllegalArgumentException.class, () -> FireParameters.pit(PIT, set, new double[] {1}));
  }

  @Test
  void openingPastTheEnd_isRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> demand(400, 1).withOpenings(List.of(new Lid.Opening(3500, 200))));
    assertEquals(
        "openings must end before the gentle heat, after 3600.0 s, was 3700.0",
        refusal.getMessage());
  }
}
