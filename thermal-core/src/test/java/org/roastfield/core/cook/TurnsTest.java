package org.roastfield.core.cook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.roastfield.core.surface.Contact;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.SurfaceFlux;
import org.roastfield.core.surface.SurfaceLaw;

class TurnsTest {

  private static final SurfaceLaw AIR = new Contact(20, Signal.constant(400));
  private static final SurfaceLaw GRATE = new Contact(300, Signal.constant(500));

  @Test
  void flips_changeTheFacesOverAtEachTurn() {
    List<Stage> stages = Turns.every(45, 3).flips("sear", AIR, GRATE);
    assertEquals(3, stages.size());
    for (int i = 0; i < 3; i++) {
      assertSame(i % 2 == 0 ? AIR : GRATE, stages.get(i).upper());
      assertSame(i % 2 == 0 ? GRATE : AIR, stages.get(i).lower());
      assertEquals(StageEnd.after(45), stages.get(i).end());
      assertEquals("sear, turn " + (i + 1), stages.get(i).name());
    }
  }

  @Test
  void turnsAtGivenTimes_makeLegsBetweenThem() {
    Turns turns = Turns.at(200, 30, 90, 120);
    assertEquals(List.of(30.0, 60.0, 30.0, 80.0), turns.legs());
    assertEquals(200, turns.duration(), 1e-12);
    assertEquals(List.of(75.0), Turns.at(75).legs());
  }

  @Test
  void rolls_putOneSideOnOnceARound() {
    List<Stage> stages = new Turns(List.of(10.0, 20.0, 30.0, 40.0)).rolls("sear", GRATE, AIR, 2);
    assertEquals(4, stages.size());
    assertEquals("sear, round 2 off", stages.get(3).name());
    assertSame(GRATE, stages.get(2).upper());
    assertSame(AIR, stages.get(3).lower());
    assertEquals(StageEnd.after(30), stages.get(2).end());
    assertEquals(StageEnd.after(40), stages.get(3).end());
    assertEquals(2, Turns.every(10, 2).rolls("sear", GRATE, AIR, 1).size());
  }

  @Test
  void stageCutAtTimes_keepsItsEndForTheLastLeg() {
    Stage stage = Stage.ofFaces("pit", AIR, GRATE, StageEnd.at(900));
    List<Stage> legs = stage.cutAt(100, 160);
    assertEquals(
        List.of("pit, leg 1", "pit, leg 2", "pit"), legs.stream().map(Stage::name).toList());
    assertEquals(StageEnd.at(160), legs.get(1).end());
    assertSame(GRATE, legs.get(1).lower());
    assertEquals(StageEnd.at(900), legs.get(2).end());
    assertSame(AIR, legs.get(2).upper());
    assertEquals(List.of(false, true, true), legs.stream().map(Stage::continued).toList());
    assertRefused("times must increase", () -> stage.cutAt(100, 100));
    Stage lasting = Stage.allRound("pit", AIR, StageEnd.after(900));
    assertRefused("end of a stage that is cut must not be a duration", () -> lasting.cutAt(5));
  }

  /** A law that holds water, as far as a stage asks. */
  private record Holding() implements SurfaceLaw {
    @Override
    public void evaluate(double surfaceTemperature, double time, SurfaceFlux flux) {}

    @Override
    public boolean holdsWater() {
      return true;
    }
  }

  @Test
  void wetting_isForFacesThatHoldWater() {
    Stage dry = Stage.allRound("pit", AIR, StageEnd.at(900));
    assertRefused(
        "wetting must be 0 on a face whose law holds no water, was 0.05 kg/m²",
        () -> dry.with(Wetting.allRound(0.05)));
    assertRefused("upper must", () -> new Wetting(-1, 0));
    assertRefused("lower must", () -> new Wetting(0, Double.NaN));
    Stage wetted =
        Stage.ofFaces("pit", new Holding(), AIR, StageEnd.at(900)).with(new Wetting(0.05, 0));
    List<Stage> legs = wetted.cutAt(100);
    assertEquals(new Wetting(0.05, 0), legs.get(0).wetting());
    assertEquals(Wetting.NONE, legs.get(1).wetting());
  }

  @Test
  void wrongTurns_areRefusedWithRuleAndValue() {
    assertRefused("number of legs must be in [1, 10000], was 0", () -> new Turns(List.of()));
    assertRefused("legs[1] must be in", () -> new Turns(List.of(1.0, 0.0)));
    assertRefused("legs[0] must be in", () -> Turns.every(Double.NaN, 2));
    assertRefused(
        "times[1] must be after 30.0 and before the stage's end at 60.0 s, was 30.0",
        () -> Turns.at(60, 30, 30));
    assertRefused("times[0] must be after 0.0", () -> Turns.at(60, 60));
    assertRefused("times[0] must be after 0.0", () -> Turns.at(60, Double.NaN));
    assertRefused(
        "sides must divide the 5 legs, was 2",
        () -> Turns.every(10, 5).rolls("sear", GRATE, AIR, 2));
    assertRefused(
        "sides must be in [1, 5], was 6", () -> Turns.every(10, 5).rolls("sear", GRATE, AIR, 6));
  }

  private static void assertRefused(String start, Runnable action) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, action::run);
    assertTrue(String.valueOf(e.getMessage()).startsWith(start), e::getMessage);
  }
}
