package org.roastfield.lab.synthetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.Afterwards;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;

class SyntheticCookTest {

  private static final SyntheticCooker AS_STATED =
      new SyntheticCooker(
          "as-stated",
          "a cooker as cook files state it",
          1,
          0,
          0.035,
          0,
          Temperatures.celsius(260),
          60,
          new Fire(0, 1800, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));

  private static final SyntheticCooker PIT = SyntheticCooker.boathouse().get(0);

  /**
   * With stated values the truth is what the cook file says, so a fit of that file can find it: the
   * same equations, built here and by the reader. Temperatures agree to what °C and K differ in the
   * last digits.
   */
  @ParameterizedTest
  @EnumSource(ScenarioCut.class)
  void truthOfStatedValues_isTheCookFile(ScenarioCut cut) {
    SyntheticCook recipe = recipe(cut, AS_STATED, 1, Set.of());
    TrueCook truth =
        new TrueCook(
            cut,
            AS_STATED,
            TrueValues.STATED,
            TrueDeparture.drawn(Set.of(), 1, TrueCook.LONGEST),
            Signal.constant(Temperatures.celsius(recipe.setting())));
    CookFile file =
        CookFileReader.parse("cook.yaml", CookText.yaml(recipe).getBytes(StandardCharsets.UTF_8));
    Simulator simulator = Simulator.with(truth.settings());
    SimulationResult expected = simulator.run(file.cook()).orElseThrow();
    SimulationResult actual = simulator.run(truth.cook()).orElseThrow();
    assertEquals(expected.endTime(), actual.endTime(), 1e-6);
    for (int i = 0; i <= 20; i++) {
      double time = Math.min(expected.endTime(), actual.endTime()) * i / 20;
      assertEquals(expected.core().at(time), actual.core().at(time), 1e-8, "core at " + time);
      assertEquals(expected.upperSurface().at(time), actual.upperSurface().at(time), 1e-6);
    }
  }

  /**
   * Beside its own effect nothing changes: the parameters, the fire and the probe are the same. The
   * effect may be small: more convection also dries a wet face more, which keeps it near the wet
   * bulb.
   */
  @ParameterizedTest
  @EnumSource(Departure.class)
  void departure_changesTheLog_butNotWhatElseIsTrue(Departure departure) {
    ScenarioCut cut = departure == Departure.TAPER ? ScenarioCut.LAMB_LEG : ScenarioCut.PORK_LOIN;
    MadeCook plain = made(recipe(cut, PIT, 11, Set.of()));
    MadeCook departed = made(recipe(cut, PIT, 11, Set.of(departure)));
    assertEquals(plain.values(), departed.values());
    double largest = largestDifference(core(plain), core(departed));
    if (departure == Departure.FINER_GRID) {
      assertTrue(largest <= 0.21, "a grid moves a reading by two last digits, not " + largest);
      assertTrue(coreDifference(plain, departed) > 0);
    } else {
      assertTrue(largest > 0.15, "rounding alone moves a reading by 0.1 K, was " + largest);
    }
  }

  /**
   * Reading less true core of a quiet probe in the middle is its bias: mean within four standard
   * errors of errors that are independent over two correlation times.
   */
  @Test
  void readings_areTheTruthWithTheProbesErrors() {
    MadeCook made = made(recipe(ScenarioCut.PORK_LOIN, PIT, 3, Set.of()));
    LogChannel core = core(made);
    TrueValues values = made.values();
    double sum = 0;
    SimulationResult result = made.result();
    TrueCook truth =
        new TrueCook(
            ScenarioCut.PORK_LOIN,
            PIT,
            values,
            TrueDeparture.drawn(Set.of(), 3, 1),
            Signal.constant(300));
    for (int i = 0; i < core.size(); i++) {
      double shown = result.shownBy(truth.probe(values.probeOffset())).at(core.time(i));
      sum += core.temperature(i) - shown;
    }
    double independent = result.endTime() / (2 * values.wanderTime());
    assertEquals(0, sum / core.size(), 4 * values.wander() / Math.sqrt(independent));
    assertTrue(core.missing() > 0, "some readings are lost");
  }

  @Test
  void readings_haveTenths() {
    LogChannel core = core(made(recipe(ScenarioCut.BISON_STRIP, PIT, 4, Set.of())));
    for (int i = 0; i < core.size(); i++) {
      double tenths = 10 * Temperatures.toCelsius(core.temperature(i));
      assertEquals(Math.rint(tenths), tenths, 1e-9);
    }
  }

  /** The chamber shows what is stated, with its drift and bias: within four standard errors. */
  @Test
  void chamberLog_endsWithTheGentleHeat_andIsBiased() {
    SyntheticCooker steady =
        new SyntheticCooker(
            "steady",
            "no drift",
            1,
            0,
            0.035,
            5,
            Temperatures.celsius(260),
            60,
            new Fire(0, 1800, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
    MadeCook made = made(recipe(ScenarioCut.PORK_LOIN, steady, 5, Set.of()));
    LogChannel chamber = made.log().readings().channel(CookLog.CHAMBER).orElseThrow();
    double sum = 0;
    for (int i = 0; i < chamber.size(); i++) {
      sum += Temperatures.toCelsius(chamber.temperature(i));
    }
    assertEquals(110 + 5, sum / chamber.size(), 4 * 0.3 / Math.sqrt(chamber.size()));
    double pulled = made.milestones().get(0).time();
    assertEquals("gentle heat ends", made.milestones().get(0).name());
    assertTrue(chamber.time(chamber.size() - 1) <= pulled);
    assertTrue(core(made).time(core(made).size() - 1) > pulled);
  }

  /**
   * Before: what a ruler's size and the density of the catalogue give, with the true size's cube;
   * after: less by what the core's balance of water says left the surface. The scale is within four
   * deviations and half a step.
   */
  @ParameterizedTest
  @EnumSource(ScenarioCut.class)
  void weights_areTheCutLessWhatEvaporatedAndDripped_asAScaleShowsThem(ScenarioCut cut) {
    MadeCook made = made(recipe(cut, PIT, 8, Set.of()));
    if (cut == ScenarioCut.LAMB_LEG) {
      assertTrue(made.weights().isEmpty() && made.log().afterwards().isEmpty());
      return;
    }
    CookFile stated =
        CookFileReader.parse(
            "cook.yaml",
            CookText.yaml(recipe(cut, PIT, 8, Set.of())).getBytes(StandardCharsets.UTF_8));
    double size = made.values().size();
    Extent whole = stated.extent().orElseThrow();
    MadeCook.TrueWeights weights = made.weights().orElseThrow();
    assertEquals(whole.mass() * size * size * size, weights.before(), 1e-9);
    double area = whole.area() * size * size;
    Extent really = new Extent(area, 0);
    double evaporated = really.evaporatedMass(made.result());
    double dripped = really.drippedMass(made.result(), stated.moisture());
    assertEquals(evaporated + dripped, weights.before() - weights.after(), 1e-9);
    assertTrue(evaporated > 0.03 * weights.before() && evaporated < 0.35 * weights.before());
    double pressedOut = made.result().water().upper().pressedOut();
    assertEquals(cut == ScenarioCut.BEETROOT, pressedOut == 0);
    Afterwards weighed = made.log().afterwards().orElseThrow();
    assertEquals(weights.before(), weighed.weightBefore().orElseThrow(), 0.0225);
    assertEquals(weights.after(), weighed.weightAfter().orElseThrow(), 0.0225);
    double steps = 200 * weighed.weightAfter().orElseThrow();
    assertEquals(Math.rint(steps), steps, 1e-9);
  }

  @Test
  void lidAndFuel_areLogged() {
    MadeCook made = made(recipe(ScenarioCut.PORK_LOIN, PIT, 2, Set.of()));
    List<LogEvent.Kind> kinds = made.log().events().stream().map(LogEvent::kind).toList();
    assertTrue(kinds.contains(LogEvent.Kind.LID_OPENED), kinds.toString());
    assertEquals(LogEvent.Kind.TAKEN_OFF, kinds.get(kinds.size() - 1));
  }

  /** A core that stands still is no reason to leave a cook out. */
  @Test
  void stall_isGivenUp_andKept() {
    SyntheticCook recipe =
        new SyntheticCook(
            "syn-stall", ScenarioCut.BEETROOT, PIT, 70, 6, SyntheticCook.Split.FIT, Set.of());
    MadeCook made = made(recipe);
    assertEquals("gentle heat given up", made.milestones().get(0).name());
    assertEquals(36_000, made.milestones().get(0).time());
  }

  @Test
  void cookersFromThePriors_differ_andGiveCooksOfTheirOwn() {
    SyntheticCooker one = SyntheticCooker.drawn(1);
    assertEquals(one, SyntheticCooker.drawn(1));
    assertTrue(one.convection() != SyntheticCooker.drawn(2).convection());
    List<SyntheticCook> cooks =
        SyntheticCook.on(one, 60, 6, List.of(ScenarioCut.PORK_LOIN, ScenarioCut.BISON_STRIP));
    assertEquals(6, cooks.stream().map(SyntheticCook::values).distinct().count());
    assertEquals(ScenarioCut.BISON_STRIP, cooks.get(3).cut());
  }

  @Test
  void impossibleRecipes_areRefused() {
    assertRefused(
        "id must be syn- and then lower-case letters, digits and hyphens, was \"loin\"",
        () -> new SyntheticCook("loin", ScenarioCut.PORK_LOIN, PIT, 110, 1, fit(), Set.of()));
    assertRefused(
        "setting must be in [60, 250] degrees Celsius, was 20.0",
        () -> new SyntheticCook("syn-a", ScenarioCut.PORK_LOIN, PIT, 20, 1, fit(), Set.of()));
    assertRefused(
        "departures of beetroot cannot be taper",
        () -> recipe(ScenarioCut.BEETROOT, PIT, 1, EnumSet.of(Departure.TAPER)));
    assertRefused("deviation must be at least 0, was -1.0", () -> new Fire(-1, 1, 1, 1));
    assertRefused("sagInterval must be above 0, was 0.0", () -> new Fire(1, 1, 1, 0));
  }

  private static void assertRefused(
      String message, org.junit.jupiter.api.function.Executable executable) {
    assertEquals(message, assertThrows(IllegalArgumentException.class, executable).getMessage());
  }

  private static SyntheticCook.Split fit() {
    return SyntheticCook.Split.FIT;
  }

  private static SyntheticCook recipe(
      ScenarioCut cut, SyntheticCooker cooker, long seed, Set<Departure> departures) {
    return new SyntheticCook("syn-test", cut, cooker, cut.setting(), seed, fit(), departures);
  }

  private static MadeCook made(SyntheticCook recipe) {
    return assertInstanceOf(MadeCook.class, recipe.make());
  }

  private static LogChannel core(MadeCook made) {
    return made.log().readings().channel(CookLog.CORE).orElseThrow();
  }

  private static double largestDifference(LogChannel a, LogChannel b) {
    double largest = 0;
    int j = 0;
    for (int i = 0; i < a.size(); i++) {
      while (j < b.size() - 1 && b.time(j) < a.time(i)) {
        j++;
      }
      if (b.time(j) == a.time(i)) {
        largest = Math.max(largest, Math.abs(a.temperature(i) - b.temperature(j)));
      }
    }
    return largest;
  }

  private static double coreDifference(MadeCook a, MadeCook b) {
    double time = 0.5 * Math.min(a.result().endTime(), b.result().endTime());
    return Math.abs(a.result().core().at(time) - b.result().core().at(time));
  }
}
