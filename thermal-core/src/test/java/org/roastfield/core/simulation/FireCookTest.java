package org.roastfield.core.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.Chamber;
import org.roastfield.core.chamber.Draught;
import org.roastfield.core.chamber.FireCourse;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.chamber.Tending;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.material.Material;
import org.roastfield.core.shape.Cylinder;
import org.roastfield.core.surface.SurfaceLaw;

/** Cooks in the air and between the walls of a computed fire. */
class FireCookTest {

  private static final Outside OUTSIDE = new Outside(288, 0, 0.007, MoistAir.STANDARD_PRESSURE);
  private static final double GOES_ON = 3600;
  private static final double HOURS = 3 * 3600.0;

  private static FireCourse course(double openFor) {
    Tending hold = Tending.hold(0, 383);
    List<Tending> deeds =
        openFor > 0
            ? List.of(hold, hold.at(6000).withOpenLid(), hold.at(6000 + openFor))
            : List.of(hold);
    FirePit pit = FirePit.brickAndSteel();
    return pit.run(OUTSIDE, pit.cold(OUTSIDE, 1), deeds, GOES_ON + HOURS + 3600);
  }

  private static double core(Chamber chamber) {
    SurfaceLaw law = chamber.around(7, 0.9, 0.3, 0.98);
    List<Stage> legs = Stage.allRound("gentle", law, StageEnd.at(HOURS)).cutAt(2400, 2700);
    Cut cut = new Cut(new Cylinder(0.04), Material.constant("meat", 0.48, 1060, 3520), 278);
    Cook cook = new Cook(cut, legs, List.of());
    return Simulator.withDefaults().run(cook).orElseThrow().core().at(HOURS);
  }

  /** A fire that has settled is a steady chamber, walls included. */
  @Test
  void settledFire_isASteadyChamber() {
    Chamber fire = course(0).chamber(Draught.Fuel.CHARCOAL, GOES_ON);
    FirePit.Held held = FirePit.brickAndSteel().held(OUTSIDE, 383, 0);
    Chamber steady =
        new Chamber(
            time -> 383, time -> held.wallTemperature(), fire.vapourPressure(), fire.pressure());
    double warmingWalls = core(steady) - core(fire);
    assertEquals(0, warmingWalls, 0.5, "walls still warm up a little");
    assertTrue(warmingWalls > 0);
  }

  @Test
  void openLid_setsTheCoreBack() {
    double closed = core(course(0).chamber(Draught.Fuel.CHARCOAL, GOES_ON));
    double opened = core(course(300).chamber(Draught.Fuel.CHARCOAL, GOES_ON));
    assertTrue(opened < closed - 0.1, opened + " " + closed);
    assertTrue(opened > closed - 3, opened + " " + closed);
  }
}
