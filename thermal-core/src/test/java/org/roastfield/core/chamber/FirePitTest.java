package org.roastfield.core.chamber;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.surface.Signal;

/** The lumped pit against closed forms, and its heat balance. */
class FirePitTest {

  private static final Outside OUTSIDE = new Outside(285, 1.5, 0.006, MoistAir.STANDARD_PRESSURE);
  private static final double HOUR = 3600;

  static Stream<FirePit> pits() {
    return Stream.of(FirePit.thinSteel(), FirePit.brickAndSteel(), FirePit.ceramic());
  }

  /** Vents for far more air than the bed takes, so that its power stays what it is. */
  private static FirePit airy(FirePit pit) {
    return new FirePit(pit.walls(), new FirePit.Vents(1, 0.5, pit.vents().airUse()), pit.bed());
  }

  /** Gas = a + b wall and a constant power make the wall's equation linear: one exponential. */
  @ParameterizedTest
  @MethodSource("pits")
  void constantFire_heatsTheWallByAnExponential(FirePit pit) {
    FireState cold = pit.cold(OUTSIDE, 100);
    FireCourse course =
        airy(pit).run(OUTSIDE, cold, List.of(Tending.wide(0).withLoad(300)), 4 * HOUR);
    double watt = pit.bed().power();
    double conductance = pit.walls().area() * pit.walls().exchange();
    double flow = 1050 * watt / (pit.vents().airUse() * 3.0e6);
    double outwards = pit.walls().area() * (pit.walls().loss() + 4 * 1.5);
    double direct = pit.bed().radiantShare() * watt;
    double gasHeat = watt - direct - 300;
    double serial = conductance * flow / (conductance + flow);
    double rate = (serial + outwards) / pit.walls().capacity();
    double settled =
        285 + (direct + gasHeat * conductance / (conductance + flow)) / (serial + outwards);
    for (double t : new double[] {60, 600, HOUR, 4 * HOUR}) {
      double wall = settled + (285 - settled) * StrictMath.exp(-rate * t);
      assertEquals(wall, course.wallTemperature(t), 0.02, "wall after " + t);
      double gas = (gasHeat + flow * 285 + conductance * wall) / (conductance + flow);
      if (t > 20 * pit.walls().settling()) {
        assertEquals(gas, course.airTemperature(t), 0.02, "gas after " + t);
      }
      assertEquals(watt, course.power(t), 1e-8 * watt, "within the fourth power of bed over air");
    }
  }

  @ParameterizedTest
  @MethodSource("pits")
  void heldFire_settlesWhereTheBalanceSays(FirePit pit) {
    FirePit.Held held = pit.held(OUTSIDE, 383, 250);
    Tending hold = Tending.hold(0, 383).withLoad(250);
    FireCourse course = pit.run(OUTSIDE, pit.cold(OUTSIDE, 1), List.of(hold), 40 * HOUR);
    assertEquals(383, course.airTemperature(40 * HOUR), 1e-4);
    assertEquals(held.wallTemperature(), course.wallTemperature(40 * HOUR), 0.01);
    assertEquals(held.power(), course.power(40 * HOUR), 2e-4 * held.power());
    double walls =
        pit.walls().area() * (pit.walls().loss() + 4 * 1.5) * (held.wallTemperature() - 285);
    double gas = 1050 * held.power() / (pit.vents().airUse() * 3.0e6) * (383 - 285);
    assertEquals(held.power(), walls + gas + 250, 1e-9 * held.power(), "steady balance");
  }

  /** Where vents limit it, the power is that of the air which the column of gas draws. */
  @Test
  void narrowVents_limitTheFireByTheirDraught() {
    FirePit pit = FirePit.thinSteel();
    Tending narrow = Tending.wide(0).withVents(0.3);
    FireCourse course = pit.run(OUTSIDE, pit.cold(OUTSIDE, 1), List.of(narrow), 10 * HOUR);
    double end = 10 * HOUR;
    double gas = course.airTemperature(end);
    double density = OUTSIDE.density();
    double pull = 9.80665 * 0.4 * density * (1 - 285 / gas);
    double byAir = 0.6 * 3.0e6 * 0.6 * 0.3 * 25e-4 * Math.sqrt(2 * density * pull);
    double wanted = 1.5 * byAir;
    double strength = wanted / Math.pow(1 + Math.pow(wanted / 9.5e3, 4), 0.25);
    double power = byAir / Math.pow(1 + Math.pow(byAir / strength, 4), 0.25);
    assertEquals(power, course.power(end), 1e-5 * power);
    double air = power / (0.6 * 3.0e6);
    double toWalls = 1.1 * 25 * (gas - course.wallTemperature(end));
    assertEquals(
        0.55 * course.power(end),
        air * 1050 * (gas - 285) + toWalls,
        1e-5 * course.power(end),
        "balance of the gas");
  }

  /** The wall under an open lid: constant gas, a fire that does not change. */
  @Test
  void openLid_coolsTheWallByAnExponential() {
    FirePit pit = FirePit.brickAndSteel();
    double full = pit.bed().power();
    FireState hot = new FireState(400, 400, full, Double.POSITIVE_INFINITY);
    FireCourse course = pit.run(OUTSIDE, hot, List.of(Tending.wide(0).withOpenLid()), 1800);
    double conductance = 1.6 * 25;
    double outwards = 1.6 * (5 + 6) + 25;
    double rate = (conductance + outwards) / 60e3;
    double settled = 285 + (0.5 * 0.45 * full + conductance * 35) / (conductance + outwards);
    for (double t : new double[] {30, 300, 1800}) {
      assertEquals(
          settled + (400 - settled) * StrictMath.exp(-rate * t), course.wallTemperature(t), 0.01);
    }
    assertEquals(320 + 80 * StrictMath.exp(-2), course.airTemperature(10), 1e-6);
    assertEquals(320, course.airTemperature(120), 1e-6);
  }

  /** Glowing spreads towards what the bed can be, by one exponential. */
  @Test
  void glowing_spreadsByAnExponential() {
    FirePit pit = airy(FirePit.thinSteel());
    FireCourse course =
        pit.run(OUTSIDE, pit.cold(OUTSIDE, 0.2), List.of(Tending.wide(0)), 2 * HOUR);
    double begun = 0.2 * 29e6 / 3100;
    for (double t : new double[] {100, 900, 5000}) {
      double strength = 9.5e3 + (begun - 9.5e3) * StrictMath.exp(-t / 900);
      assertEquals(strength, course.power(t), 1e-4 * strength);
    }
  }

  @ParameterizedTest
  @MethodSource("pits")
  void heat_isAccountedFor(FirePit pit) {
    List<Tending> deeds =
        List.of(
            Tending.hold(0, 400),
            Tending.hold(3000, 400).withLoad(200),
            Tending.hold(5000, 400).withOpenLid(),
            Tending.hold(5100, 400).withLoad(200),
            Tending.wide(9000),
            Tending.hold(12_000, 350));
    FireCourse course = pit.run(OUTSIDE, pit.cold(OUTSIDE, 0.7).withFuel(2.5), deeds, 20_000);
    FireBalance balance = course.balance();
    assertEquals(0, balance.residual(), 1e-14);
    double released = 0;
    double out = 0;
    double outwards = pit.walls().area() * (pit.walls().loss() + 6);
    for (int k = 0; k < 200_000; k++) {
      double t = 0.1 * (k + 0.5);
      released += 0.1 * course.power(t);
      out += 0.1 * outwards * (course.wallTemperature(t) - 285);
    }
    assertEquals(released, balance.released(), 1e-4 * released);
    assertEquals(out, balance.throughWalls(), 1e-4 * out);
    assertEquals(200 * (2000 + 3900), balance.load(), 1e-6 * balance.load());
    assertEquals(
        pit.walls().capacity() * (course.wallTemperature(20_000) - 285),
        balance.stored(),
        1e-9 * Math.abs(balance.stored()));
  }

  @Test
  void fuelThatRunsOut_letsThePitCool() {
    FirePit pit = FirePit.thinSteel();
    FireCourse course =
        pit.run(
            OUTSIDE,
            pit.cold(OUTSIDE, 0.4).withFuel(0.5),
            List.of(Tending.hold(0, 383)),
            12 * HOUR);
    assertEquals(383, course.airTemperature(HOUR), 0.01);
    assertTrue(course.airTemperature(12 * HOUR) < 290);
    assertTrue(course.burnt(12 * HOUR) < 0.5);
    assertEquals(0.5, course.burnt(12 * HOUR), 0.001);
    assertEquals(0, course.balance().residual(), 1e-14);
  }

  /** Runs that end and go on are one run; what is left is the error of the steps. */
  @Test
  void state_carriesEverything() {
    FirePit pit = FirePit.brickAndSteel();
    FireState cold = pit.cold(OUTSIDE, 0.8).withFuel(3);
    Tending hold = Tending.hold(0, 420);
    FireCourse whole = pit.run(OUTSIDE, cold, List.of(hold), 3 * HOUR);
    FireCourse first = pit.run(OUTSIDE, cold, List.of(hold), 1000);
    FireCourse rest = pit.run(OUTSIDE, first.state(1000), List.of(hold.at(1000)), 3 * HOUR);
    for (double t : new double[] {1000, 1500, 4000, 3 * HOUR}) {
      assertEquals(whole.airTemperature(t), rest.airTemperature(t), 0.02);
      assertEquals(whole.wallTemperature(t), rest.wallTemperature(t), 0.02);
    }
    assertEquals(whole.burnt(3 * HOUR), first.burnt(1000) + rest.burnt(3 * HOUR), 1e-5);
  }

  @Test
  void signals_followTheCourse() {
    FirePit pit = FirePit.thinSteel();
    Tending hold = Tending.hold(0, 400);
    List<Tending> deeds = List.of(hold, hold.at(4000).withOpenLid(), hold.at(4060));
    FireCourse course = pit.run(OUTSIDE, pit.cold(OUTSIDE, 0.5), deeds, 8000);
    Chamber chamber = course.chamber(Draught.Fuel.CHARCOAL, 1000);
    Signal air = chamber.airTemperature();
    for (double t = 0; t <= 8000; t += 7.3) {
      assertEquals(course.airTemperature(t), air.at(t - 1000), 0.05, "gas at " + t);
      assertEquals(course.wallTemperature(t), chamber.wallTemperature().at(t - 1000), 0.05);
    }
    assertEquals(120, air.shortestPeriod(), 1e-9, "no opening is stepped over");
  }

  @Test
  void tendingThatGoesBack_isRefused() {
    FirePit pit = FirePit.thinSteel();
    List<Tending> deeds = List.of(Tending.hold(0, 383), Tending.hold(0, 400));
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> pit.run(OUTSIDE, pit.cold(OUTSIDE, 1), deeds, HOUR));
    assertEquals(
        "tending must go on in time, but step 0 from 0.0 s ends at 0.0 s", refusal.getMessage());
  }

  @Test
  void settingBeyondTheFlame_isRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class, () -> FirePit.thinSteel().held(OUTSIDE, 3000, 0));
    assertEquals(
        "setting must be one that a fire with this air can hold, was 3000.0", refusal.getMessage());
  }
}
