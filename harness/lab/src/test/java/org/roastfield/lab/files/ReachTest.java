package org.roastfield.lab.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReachTest {

  private static final double PRESSURE = 101_325;

  @Test
  void startAirWallsAndGrate_boundWhatACutCanReach() {
    FaceSetup dry = face(383.15, 393.15, 0, Optional.empty());
    assertEquals(new Reach(278.15, 393.15), Reach.of(278.15).with(dry, PRESSURE));
    FaceSetup grate = face(293.15, 293.15, 0, Optional.of(new ContactSetup(533.15, 300, 0.25)));
    assertEquals(
        new Reach(278.15, 533.15), Reach.of(278.15).with(dry, PRESSURE).with(grate, PRESSURE));
  }

  /**
   * A wet face in air of 60 °C with 0.00755 kg/kg cools to where it no longer evaporates: at 1215
   * Pa over a water activity of 0.98 that is 10.1 °C, by the tables of saturation pressure (1228 Pa
   * at 10 °C, 1312 Pa at 11 °C).
   */
  @Test
  void dewPoint_isTheColdestThatEvaporationReaches() {
    FaceSetup wet = face(333.15, 333.15, 0.3, Optional.empty());
    Reach reach = Reach.of(293.15).with(wet, PRESSURE);
    assertEquals(283.25, reach.coldest(), 0.1);
    assertEquals(333.15, reach.hottest());
  }

  private static FaceSetup face(
      double air, double walls, double wetness, Optional<ContactSetup> contact) {
    return new FaceSetup(
        air,
        walls,
        0.00755,
        new HeatTransfer.Stated(6),
        0.92,
        wetness,
        0.98,
        contact,
        Optional.empty(),
        CoverSetup.NONE,
        0);
  }
}
