package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.roastfield.core.outcome.CookedCut;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.outcome.CutOutcomes;
import org.roastfield.core.outcome.Doneness;
import org.roastfield.core.outcome.Safety;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookTexts;
import org.roastfield.lab.files.Food;

class InsideTest {

  private static SimulationResult run(CookFile file) {
    return Simulator.withDefaults().run(file.cook()).orElseThrow();
  }

  private static List<Caution> cautions(CookFile file) {
    return Cautions.of(file, Inside.of(file, run(file)), TemperatureScale.CELSIUS);
  }

  @ParameterizedTest
  @CsvSource({"intact, 1", "tenderised, 2", "rolled, 2", "ground, 2"})
  void handling_decidesTheMinima(String handling, int minima) {
    CookFile file =
        CookTexts.read(CookTexts.SLAB.replace("food: beef", "food: beef\n  handling: " + handling));
    CutKind kind = file.notes().handling().orElseThrow();
    assertEquals(handling, kind.word());
    Inside inside = Inside.of(file, run(file));
    assertEquals(List.of(kind), inside.safety().stream().map(Safety::kind).toList());
    List<Caution> cautions = cautions(file);
    assertEquals(
        minima, cautions.stream().filter(one -> one.subject().equals("Published minimum")).count());
    assertTrue(cautions.stream().anyMatch(one -> one.text().contains(kind.caution())));
    assertEquals(
        kind.hasHoldTables(),
        cautions.stream().anyMatch(one -> one.subject().equals("Hold times")));
    assertTrue(cautions.stream().noneMatch(one -> one.subject().equals("Opened meat")));
  }

  @Test
  void unstatedHandling_asksForMore() {
    CookFile file = CookTexts.read(CookTexts.SLAB);
    assertEquals(Optional.empty(), file.notes().handling());
    List<Caution> cautions = cautions(file);
    assertTrue(cautions.stream().anyMatch(one -> one.subject().equals("Opened meat")));
    assertTrue(
        cautions.stream()
            .anyMatch(one -> one.text().contains("mechanically tenderised meat, 68.3")));
  }

  @Test
  void noCautionSaysTheSameTwice() {
    for (Caution one : cautions(Published.porkLoin())) {
      List<String> sentences = List.of(one.text().split("(?<=\\.) ", -1));
      assertEquals(sentences.size(), sentences.stream().distinct().count(), one.text());
    }
    assertEquals(
        1,
        cautions(Published.porkLoin()).stream()
            .filter(one -> one.subject().equals("Hold times"))
            .count());
  }

  @Test
  void everyNumber_hasAStatusAndASource() {
    for (Inside.Line line : Inside.of(Published.porkLoin(), run(Published.porkLoin())).numbers()) {
      assertFalse(line.source().isBlank(), line.subject());
      assertFalse(line.text().isBlank(), line.subject());
    }
  }

  @Test
  void rolledLegOfTheBoathouse_saysSo() {
    CookFile leg = CookFileReader.parse("leg.yaml", Published.lambLegBytes());
    assertEquals(Optional.of(CutKind.ROLLED), leg.notes().handling());
    assertTrue(
        cautions(leg).stream()
            .anyMatch(one -> one.text().contains("A face of the meat lies inside")));
  }

  @Test
  void stationsOfATaper_haveTheirOwnSlice() {
    CookFile leg = CookFileReader.parse("leg.yaml", Published.lambLegBytes());
    List<Station> stations = Stations.of(leg, run(leg));
    assertEquals(3, stations.size());
    for (Station station : stations) {
      Doneness doneness = station.inside().doneness().get(0);
      assertEquals(1, doneness.shares().stream().mapToDouble(share -> share).sum(), 1e-12);
      assertEquals(
          station.warmestCore(), station.inside().outcomes().highestCore(), 0.02, station.name());
      assertEquals(station.coreAtEnd(), station.inside().outcomes().lastCore(), 1e-6);
    }
    assertTrue(
        stations.get(0).inside().outcomes().coldest()
            < stations.get(2).inside().outcomes().coldest() - 2);
    assertNotEquals(
        stations.get(0).inside().doneness().get(0).target(),
        stations.get(2).inside().doneness().get(0).target());
  }

  /** A larger cut of the same file: its own mass, not that of the file. */
  @Test
  void outcomesOfAnotherSize_areByItsOwnMass() {
    CookFile stated = CookTexts.read(CookTexts.SLAB);
    SimulationResult result = run(stated);
    CutOutcomes outcomes = Inside.outcomes(stated, CookedCut.of(result), result);
    CookFile other = CookTexts.read(CookTexts.SLAB.replace("thickness: 40 mm", "thickness: 50 mm"));
    SimulationResult thick = run(other);
    CutOutcomes through = Inside.outcomes(stated, CookedCut.of(thick), thick);
    CutOutcomes own = Inside.outcomes(other, CookedCut.of(thick), thick);
    assertEquals(own.juice().evaporated(), through.juice().evaporated(), 1e-12);
    assertTrue(own.juice().evaporated() != outcomes.juice().evaporated());
  }

  @Test
  void chances_standBesideTheFindings() {
    CookFile file = Published.porkLoin();
    SimulationResult result = run(file);
    Inside inside = Inside.of(file, result);
    List<CutOutcomes> members = new ArrayList<>();
    for (String pull : List.of("40 °C", "48 °C", "52 °C", "58 °C", "62 °C")) {
      String text = new String(Published.porkLoinBytes(), StandardCharsets.UTF_8);
      String changed =
          text.replace("core: 52 °C", "core: " + pull)
              .replace("at: 2026-06-13T18:20", "after: 45 min");
      CookFile other = CookFileReader.parse("cook.yaml", changed.getBytes(StandardCharsets.UTF_8));
      SimulationResult computed = run(other);
      members.add(Inside.outcomes(file, CookedCut.of(computed), computed));
    }
    Spread spread = Spread.of(Food.PORK, inside, 6, 7, members);
    List<Caution> cautions = Cautions.of(file, inside.with(spread), TemperatureScale.CELSIUS);
    long met = members.stream().filter(one -> one.safety().get(0).findings().get(0).met()).count();
    assertTrue(met > 0 && met < 5);
    String minimum = cautions.get(1).text();
    assertTrue(
        minimum.contains(
            " With inputs drawn around the stated ones "
                + met
                + " of 5 cooks meet it: "
                + 20 * met
                + " %."),
        minimum);
    assertTrue(spread.words().contains("5 were computed; the others are left out."));
    Spread.Row core = spread.rows().get(0);
    assertEquals("highest core", core.subject());
    assertTrue(core.low() < core.median() && core.median() < core.high());
    assertEquals(inside.outcomes().highestCore(), core.median(), 0.02);
    assertTrue(core.text(TemperatureScale.CELSIUS).endsWith(" °C"));
  }
}
