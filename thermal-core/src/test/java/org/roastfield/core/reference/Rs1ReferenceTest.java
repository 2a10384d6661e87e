package org.roastfield.core.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.roastfield.core.reference.Rs1Reference.AfterDuration;
import org.roastfield.core.reference.Rs1Reference.CentreReaches;
import org.roastfield.core.reference.Rs1Reference.Leg;
import org.roastfield.core.reference.Rs1Reference.Peak;
import org.roastfield.core.reference.Rs1Reference.Surroundings;

class Rs1ReferenceTest {
  static Stream<Rs1Reference> cases() {
    return Rs1Reference.names().stream().map(Rs1Reference::load);
  }

  @ParameterizedTest
  @CsvSource({"C1, cylinder, 1, 0.045", "S1, slab, 0, 0.025", "P1, sphere, 2, 0.05"})
  void body_isThatOfTheSpecification(String name, String shape, int exponent, double radius) {
    Rs1Reference reference = Rs1Reference.load(name);
    assertEquals(new Rs1Reference.Body(shape, exponent, radius), reference.body());
    assertEquals(new Rs1Reference.Material(0.48, 1060, 3450, 0.9, 0.99), reference.material());
    assertEquals(6, reference.startCelsius());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void stages_areThoseOfTheSpecification(Rs1Reference reference) {
    assertEquals(
        List.of("roast", "sear", "rest"),
        reference.stages().stream().map(Rs1Reference.Stage::name).toList());
    assertEquals(new CentreReaches(48, 36_000), reference.stage("roast").end());
    assertEquals(new AfterDuration(240), reference.stage("sear").end());
    assertEquals(new AfterDuration(1200), reference.stage("rest").end());

    Surroundings pit = new Surroundings(115, 4, 1500);
    assertEquals(
        List.of(new Leg(Double.POSITIVE_INFINITY, 17, 0.35, 1500, pit, pit)),
        reference.stage("roast").legs());
    Surroundings room = new Surroundings(22, 0, 1);
    assertEquals(
        List.of(new Leg(Double.POSITIVE_INFINITY, 8, 0.12, 1200, room, room)),
        reference.stage("rest").legs());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void sear_alternatesContactAndOff(Rs1Reference reference) {
    Surroundings plate = new Surroundings(250, 0, 1);
    Surroundings off = new Surroundings(190, 0, 1);
    List<Leg> legs = reference.stage("sear").legs();
    assertEquals(8, legs.size());
    for (int i = 0; i < legs.size(); i += 2) {
      assertEquals(new Leg(30, 300, 0, 1500, plate, plate), legs.get(i));
      assertEquals(new Leg(30, 25, 0, 1500, off, off), legs.get(i + 1));
    }
  }

  @Test
  void chamber_swingsAsStated() {
    Surroundings air = Rs1Reference.load("C1").stage("roast").legs().get(0).air();
    assertEquals(115, air.celsiusAt(0));
    assertEquals(119, air.celsiusAt(375), 1e-12);
    assertEquals(111, air.celsiusAt(1125), 1e-12);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void stageEnds_followFromTheEvent(Rs1Reference reference) {
    double event = reference.eventSeconds();
    assertEquals(3, reference.stageEnds().size());
    assertEquals(event, reference.stageEnds().get(0).seconds());
    assertEquals(48, reference.stageEnds().get(0).centreCelsius(), 1e-11);
    assertEquals(event + 240, reference.stageEnds().get(1).seconds(), 1e-9);
    assertEquals(event + 1440, reference.stageEnds().get(2).seconds(), 1e-9);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void minutes_runFromTheStartToTheEnd(Rs1Reference reference) {
    int count = (int) Math.floor((reference.eventSeconds() + 1440) / 60) + 1;
    assertEquals(count, reference.minutes().size());
    for (int i = 0; i < count; i++) {
      Rs1Reference.MinuteState state = reference.minutes().get(i);
      assertEquals(60.0 * i, state.seconds());
      assertEquals(stageAt(reference, state.seconds()), state.stage());
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void searAndRest_endWhereTheStagesEnd(Rs1Reference reference) {
    for (Rs1Reference.StageEndState end : reference.stageEnds().subList(1, 3)) {
      List<Rs1Reference.StageState> states =
          reference.searAndRest().stream()
              .filter(state -> state.stage().equals(end.stage()))
              .toList();
      Rs1Reference.StageState last = states.get(states.size() - 1);
      AfterDuration length =
          assertInstanceOf(AfterDuration.class, reference.stage(end.stage()).end());
      assertEquals(length.seconds(), last.secondsInStage());
      // The tables are rounded to 1e-6 K.
      assertEquals(end.centreCelsius(), last.centreCelsius(), 1e-6);
      assertEquals(end.middleCelsius(), last.middleCelsius(), 1e-6);
      assertEquals(end.surfaceCelsius(), last.surfaceCelsius(), 1e-6);
    }
  }

  @Test
  void slab_peaksWithinTheRest() {
    Rs1Reference reference = Rs1Reference.load("S1");
    Rs1Reference.RestPeak peak = reference.restPeak();
    assertTrue(peak.interior());
    assertTrue(peak.ifRestGoesOn().isEmpty());
    assertPeakTimesAgree(reference, peak.withinRest());
    assertTrue(peak.withinRest().secondsInRest() < 1200);
    assertTrue(peak.withinRest().centreCelsius() > reference.stageEnds().get(2).centreCelsius());
  }

  @ParameterizedTest
  @CsvSource({"C1", "P1"})
  void cylinderAndSphere_stillRiseAtTheEndOfTheRest(String name) {
    Rs1Reference reference = Rs1Reference.load(name);
    Rs1Reference.RestPeak peak = reference.restPeak();
    assertFalse(peak.interior());
    assertEquals(1200, peak.withinRest().secondsInRest());
    assertEquals(
        reference.stageEnds().get(2).centreCelsius(), peak.withinRest().centreCelsius(), 1e-9);
    Peak later = peak.ifRestGoesOn().orElseThrow();
    assertPeakTimesAgree(reference, later);
    assertTrue(later.secondsInRest() > 1200);
    assertTrue(later.centreCelsius() > peak.withinRest().centreCelsius());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void energies_close(Rs1Reference reference) {
    assertEquals(3, reference.energies().size());
    for (Rs1Reference.StageEnergy energy : reference.energies()) {
      double fromLaws = energy.convectionIn() + energy.radiationIn() + energy.latentIn();
      assertEquals(energy.conductionIn(), fromLaws, 3e-9, energy.stage());
      assertEquals(energy.enthalpyChange(), energy.conductionIn(), 3e-9, energy.stage());
      // L = 2.40e6 J/kg in spec.md.
      assertEquals(-energy.latentIn(), 2.40 * energy.waterLostKilogramsPerSquareMetre(), 1e-9);
    }
  }

  @Test
  void unknownNamesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> Rs1Reference.load("X9"));
    Rs1Reference reference = Rs1Reference.load("C1");
    assertThrows(IllegalArgumentException.class, () -> reference.stage("smoke"));
  }

  private static String stageAt(Rs1Reference reference, double seconds) {
    double event = reference.eventSeconds();
    if (seconds <= event) {
      return "roast";
    }
    return seconds <= event + 240 ? "sear" : "rest";
  }

  private static void assertPeakTimesAgree(Rs1Reference reference, Peak peak) {
    assertEquals(reference.eventSeconds() + 240 + peak.secondsInRest(), peak.seconds(), 1e-6);
  }
}
