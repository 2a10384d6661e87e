package org.roastfield.core.chamber;

import java.util.ArrayList;
import java.util.List;

/**
 * What a fire needs for a cook: times and fuel, eqs. (81) and (82).
 *
 * @param lighting from the match to coals in the pit [s]
 * @param heatUp from coals in the pit to gas at the setting, and walls within 15 K of where they
 *     settle [s]; NaN if they never get there
 * @param ramp from open vents to a fire fit for the sear [s]; 0 without a sear, NaN if it never is
 * @param burnt fuel that burns up to the end [kg]; NaN if a wait has no end
 * @param fuel to begin with so that the coals are never short [kg], ash and crumbs counted
 */
public record FireNeeds(double lighting, double heatUp, double ramp, double burnt, double fuel) {

  /** Longest wait for a fire that is computed [s]: six hours. */
  public static final double LONGEST_WAIT = 21_600;

  /** Gas counts as at its setting from so much below it on [K]. */
  private static final double NEAR = 1;

  /** Walls count as warm from so much below where they settle on [K]: assumed. */
  private static final double WALL_NEAR = 15;

  private static final double FIRST_WAIT = LONGEST_WAIT / 9;
  private static final double LONGER = 3;

  /** From the match to when the cut goes on [s]. */
  public double beforeOn() {
    return lighting + heatUp;
  }

  /** Computes them. */
  public static FireNeeds of(FirePit pit, FireDemand demand) {
    double lighting = pit.bed().lighting();
    FireState cold = pit.cold(demand.outside(), demand.glowing());
    double on = timeOn(pit, demand, cold);
    if (Double.isNaN(on)) {
      return new FireNeeds(lighting, on, Double.NaN, Double.NaN, Double.NaN);
    }
    List<Tending> deeds = new ArrayList<>();
    if (on > 0) {
      deeds.add(Tending.hold(0, demand.setting()));
    }
    gentle(deeds, demand, on);
    if (demand.sear().isPresent()) {
      return withSear(pit, demand, cold, deeds, on, demand.sear().orElseThrow());
    }
    double off = on + demand.gentle();
    FireCourse course = pit.run(demand.outside(), cold, deeds, Math.max(off, on + 1));
    return new FireNeeds(lighting, on, 0, course.burnt(off), course.charge(off));
  }

  private static double timeOn(FirePit pit, FireDemand demand, FireState cold) {
    double wall = pit.held(demand.outside(), demand.setting(), 0).wallTemperature();
    List<Tending> hold = List.of(Tending.hold(0, demand.setting()));
    double on = Double.NaN;
    for (double wait = FIRST_WAIT; Double.isNaN(on) && wait <= LONGEST_WAIT; wait *= LONGER) {
      FireCourse warming = pit.run(demand.outside(), cold, hold, wait);
      on = warming.timeOfGasAndWalls(demand.setting() - NEAR, wall - WALL_NEAR);
    }
    return on;
  }

  private static FireNeeds withSear(
      FirePit pit,
      FireDemand demand,
      FireState cold,
      List<Tending> deeds,
      double on,
      FireDemand.Sear sear) {
    double off = on + demand.gentle();
    deeds.add(Tending.wide(off));
    double ready = Double.NaN;
    boolean open = sear.place() == FireDemand.Sear.Place.OPEN;
    for (double wait = FIRST_WAIT; Double.isNaN(ready) && wait <= LONGEST_WAIT; wait *= LONGER) {
      FireCourse ramping = pit.run(demand.outside(), cold, deeds, off + wait);
      ready =
          open
              ? ramping.timeOfStrength(sear.target(), off)
              : ramping.timeOfAir(sear.target() - NEAR, off);
    }
    double lighting = pit.bed().lighting();
    if (Double.isNaN(ready)) {
      return new FireNeeds(lighting, on, ready, Double.NaN, Double.NaN);
    }
    if (!(ready > off)) {
      deeds.remove(deeds.size() - 1);
    }
    deeds.add(open ? Tending.wide(ready).withOpenLid() : Tending.hold(ready, sear.target()));
    double end = ready + sear.duration();
    FireCourse course = pit.run(demand.outside(), cold, deeds, end);
    return new FireNeeds(lighting, on, ready - off, course.burnt(end), course.charge(end));
  }

  /** Deeds of the gentle heat from {@code on}. */
  private static void gentle(List<Tending> deeds, FireDemand demand, double on) {
    Tending closed = Tending.hold(on, demand.setting()).withLoad(demand.load());
    if (demand.gentle() > 0) {
      deeds.add(closed);
    }
    for (Lid.Opening opening : demand.openings()) {
      double opens = on + opening.opens();
      if (opening.opens() == 0) {
        deeds.remove(deeds.size() - 1);
      }
      deeds.add(closed.at(opens).withOpenLid());
      deeds.add(closed.at(opens + opening.duration()));
    }
    if (deeds.isEmpty()) {
      deeds.add(closed);
    }
  }
}
