package org.roastfield.lab.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.Published;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookTexts;

class TimelineTest {

  @Test
  void milestonesOfThePorkLoin_areItsStagesAndTheCarryoverPeak() {
    CookFile file = Published.porkLoin();
    SimulationResult result = run(file);
    List<Milestone> milestones = Timeline.of(file, result, TemperatureScale.CELSIUS);
    assertEquals(
        List.of("cut goes on", "gentle heat ends", "sear ends", "core is warmest", "rest ends"),
        milestones.stream().map(Milestone::name).toList());
    Milestone gentle = milestones.get(1);
    assertEquals(325.15, gentle.core(), 0.01);
    assertEquals(file.clockAt(gentle.time()), gentle.clock());
    Milestone peak = milestones.get(3);
    assertEquals(CoreHistory.highest(result), peak.core(), 1e-6);
    assertTrue(peak.note().matches("carryover \\d+\\.\\d K since sear ended"), peak.note());
    assertEquals("at 2026-06-13T18:20", milestones.get(4).note());
    assertEquals(11_400, milestones.get(4).time(), 1e-6);
  }

  @Test
  void coreThatStillRises_isSaidToDoSo() {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("after: 20 min", "after: 30 s"));
    List<Milestone> milestones = Timeline.of(file, run(file), TemperatureScale.FAHRENHEIT);
    Milestone last = milestones.get(milestones.size() - 1);
    assertTrue(
        last.note().matches("after 30 s; core still rising at the end, so far by \\d\\.\\d °F"),
        last.note());
  }

  @Test
  void stagesAfterAFailure_haveNoMilestones() {
    CookFile file = CookTexts.read(CookTexts.SLAB.replace("at-latest: 3 h", "at-latest: 3 min"));
    Outcome.Failed failed = (Outcome.Failed) Simulator.withDefaults().run(file.cook());
    assertEquals(1, Timeline.of(file, failed.partial(), TemperatureScale.CELSIUS).size());
  }

  @Test
  void firstRise_isWhereTheTraceCrosses() {
    SimulationResult result = run(CookTexts.read(CookTexts.SLAB));
    double time = CoreHistory.firstRise(result.core(), 300).orElseThrow();
    assertEquals(300, result.core().at(time), 1e-3);
    assertEquals(OptionalDouble.of(0), CoreHistory.firstRise(result.core(), 278));
    assertEquals(OptionalDouble.empty(), CoreHistory.firstRise(result.core(), 350));
  }

  private static SimulationResult run(CookFile file) {
    return Simulator.withDefaults().run(file.cook()).orElseThrow();
  }
}
