package org.roastfield.lab.command;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.simulation.Note;
import org.roastfield.core.simulation.ProbeTrace;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.WaterBalance;
import org.roastfield.core.surface.FaceWater;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Milestone;
import org.roastfield.lab.timeline.StageAir;
import org.roastfield.lab.timeline.Station;
import org.roastfield.lab.timeline.Stations;
import org.roastfield.lab.timeline.TemperatureScale;
import org.roastfield.lab.timeline.Timeline;

/** A computed cook as text for a screen. */
final class TimelineText {

  private TimelineText() {}

  static String of(ComputedCook computed, TemperatureScale scale) {
    CookFile cook = computed.file();
    SimulationResult result = computed.result();
    List<Station> stations = computed.stations();
    StringBuilder text = new StringBuilder();
    text.append(cook.name()).append(cook.madeUp() ? " (numbers made up, not measured)" : "");
    text.append('\n').append('\n');
    String face = result.cook().isSymmetric() ? "surface" : "upper face";
    List<Milestone> milestones = Timeline.of(cook, result, scale);
    text.append(milestones(cook, milestones, scale, face)).append('\n');
    if (!stations.isEmpty()) {
      text.append(stations(result, stations, scale)).append('\n');
    }
    text.append(probes(cook, result, milestones, scale));
    text.append(balances(cook, result)).append('\n');
    List<Note> notes = result.notes().stream().filter(note -> !Cautions.says(note)).toList();
    if (!notes.isEmpty()) {
      text.append("Notes\n");
      for (Note note : notes) {
        text.append("  ").append(note.subject()).append(": ").append(note.text()).append('\n');
      }
      text.append('\n');
    }
    text.append(InsideText.of(computed, scale)).append('\n');
    text.append(CautionText.of(Cautions.of(cook, computed.inside(), scale)));
    return text.append('\n').toString();
  }

  private static String milestones(
      CookFile cook, List<Milestone> milestones, TemperatureScale scale, String face) {
    TextTable table = new TextTable(false, true, true, true, false);
    table.add("clock", "hours", "core", face, "estimated");
    for (Milestone milestone : milestones) {
      String note = milestone.note().isEmpty() ? "" : " (" + milestone.note() + ")";
      table.add(
          Times.clock(cook.starts(), milestone.clock()),
          Times.hours(milestone.time()),
          scale.text(milestone.core()),
          scale.text(milestone.surface()),
          milestone.name() + note);
    }
    return table.toString();
  }

  private static String stations(
      SimulationResult result, List<Station> stations, TemperatureScale scale) {
    TextTable table = new TextTable(false, true, true, true, true, true);
    String longest = Stations.longest(result).name();
    table.add(
        "station", "across", "core, end of " + longest, "core, warmest", "core, end", "evaporated");
    for (Station station : stations) {
      table.add(
          station.name(),
          String.format(Locale.ROOT, "%.0f mm", 1000 * station.diameter()),
          scale.text(station.coreAtLongestEnd()),
          scale.text(station.warmestCore()),
          scale.text(station.coreAtEnd()),
          String.format(Locale.ROOT, "%.2f kg/m²", station.evaporated()));
    }
    return table.toString();
  }

  /** What instruments show beside the truth; nothing where every probe is ideal. */
  private static String probes(
      CookFile cook, SimulationResult result, List<Milestone> milestones, TemperatureScale scale) {
    StringBuilder text = new StringBuilder();
    for (Probe probe : result.cook().probes()) {
      if (!probe.instrument().isIdeal()) {
        TextTable table = new TextTable(false, true, true, true, true);
        table.add("clock", "hours", "shows", "true there", "true core");
        ProbeTrace shown = result.shownBy(probe, new StageAir(cook, result));
        for (Milestone milestone : milestones) {
          double time = Math.min(milestone.time(), result.endTime());
          table.add(
              Times.clock(cook.starts(), milestone.clock()),
              Times.hours(milestone.time()),
              scale.text(shown.at(time)),
              scale.text(shown.tip().at(time)),
              scale.text(shown.core().at(time)));
        }
        text.append("Probe ").append(probe.name()).append('\n').append(table).append('\n');
      }
    }
    return text.toString();
  }

  private static String balances(CookFile cook, SimulationResult result) {
    TextTable table = new TextTable(false, false);
    Moisture moisture = cook.moisture();
    WaterBalance water = result.water(moisture);
    table.add(
        "evaporated",
        water(
            cook,
            water.evaporatedUpper() + water.evaporatedLower(),
            extent -> extent.evaporatedMass(result)));
    table.add(
        "dripped",
        water(
            cook,
            water.drippedUpper() + water.drippedLower(),
            extent -> extent.drippedMass(result, moisture)));
    result.upperFaceWater().ifPresent(face -> table.add("on the face", held(face)));
    table.add(
        "energy residual",
        String.format(
            Locale.ROOT, "%.1e of the turnover", Math.abs(result.energy().relativeResidual())));
    table.add("steps", Long.toString(result.work().acceptedSteps()));
    return table.toString();
  }

  private static String held(FaceWater water) {
    return water.crust() > 0
        ? String.format(Locale.ROOT, "a crust of %.1f mm", 1000 * water.crust())
        : String.format(Locale.ROOT, "%.2f kg/m² of water", water.held());
  }

  private static String water(CookFile cook, double sum, ToDoubleFunction<Extent> whole) {
    String perArea = String.format(Locale.ROOT, "%.2f kg/m²", sum);
    return cook.extent()
        .map(extent -> perArea + ofCut(extent, whole.applyAsDouble(extent)))
        .orElse(perArea);
  }

  private static String ofCut(Extent extent, double mass) {
    return String.format(
        Locale.ROOT,
        ", which is %.0f g or %.1f %% of %.2f kg",
        mass * 1000,
        100 * mass / extent.mass(),
        extent.mass());
  }
}
