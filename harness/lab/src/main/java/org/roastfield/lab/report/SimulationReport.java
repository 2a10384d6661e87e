package org.roastfield.lab.report;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.simulation.EnergyBalance;
import org.roastfield.core.simulation.Note;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.WaterBalance;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.timeline.Caution;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.Milestone;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * A computed cook as one HTML file: timetable with cautions beside it, pictures, balances,
 * assumptions.
 */
public final class SimulationReport {

  private static final String MADE_UP =
      "Made-up numbers: a demonstration, not a cook that took place";

  private static final double GRAMS = 1000;

  private SimulationReport() {}

  /**
   * The report.
   *
   * @param cook what was asked for and what came of it, with at least one completed stage
   * @param milestones in order of time
   * @param manifest what the result was made from
   * @return a file that needs no script, no network and no other file; the same arguments give the
   *     same text
   * @throws IllegalArgumentException if no stage was completed
   */
  public static String html(ComputedCook cook, List<Milestone> milestones, RunManifest manifest) {
    CookFile cookFile = cook.file();
    SimulationResult result = cook.result();
    CookPictures pictures = new CookPictures(cookFile, result);
    List<Caution> cautions = Cautions.of(cookFile, cook.inside(), TemperatureScale.CELSIUS);
    Page page =
        Page.start(
            cookFile.name(),
            "Computed cook",
            cookFile.madeUp() ? List.of(MADE_UP) : List.of(),
            List.of(lead(cookFile)));
    page.section("Timetable", part -> timetable(part, milestones, cautions, result));
    page.section("Temperatures", part -> temperatures(part, pictures));
    page.section("The slice", part -> InsideParts.slice(part, cook));
    page.section("Against what is published", part -> InsideParts.published(part, cook));
    page.section("Heat and water", part -> part.table(balance(cookFile, result)));
    List<Note> notes = result.notes().stream().filter(note -> !Cautions.says(note)).toList();
    if (!notes.isEmpty()) {
      page.section("Notes", part -> part.table(notes(notes)));
    }
    page.section("What was assumed", part -> assumptions(part, cookFile));
    page.section("What it was made from", part -> ReportParts.manifest(part, manifest));
    return page.finished();
  }

  /**
   * Temperatures over time as an SVG file with its styles inside.
   *
   * @param result of {@code cookFile}, with at least one completed stage
   */
  public static String traces(CookFile cookFile, SimulationResult result) {
    return new CookPictures(cookFile, result).whole().panels().get(0).standalone();
  }

  /**
   * Temperature over depth and time as an SVG file with its styles inside.
   *
   * @param result of {@code cookFile}, with at least one completed stage
   */
  public static String map(CookFile cookFile, SimulationResult result) {
    return new CookPictures(cookFile, result).map().panels().get(0).standalone();
  }

  private static String lead(CookFile file) {
    TimeBase base = TimeBase.clock(file.starts());
    return "The cut goes on at "
        + base.text(0)
        + " on "
        + file.starts().toLocalDate()
        + ". Computed from "
        + file.fileName()
        + "; nothing on this page was measured.";
  }

  private static void timetable(
      Page page, List<Milestone> milestones, List<Caution> cautions, SimulationResult result) {
    String face = result.cook().isSymmetric() ? "surface" : "upper face";
    page.beside(
        List.of(
            part -> part.table(timetable(milestones, face)),
            part -> ReportParts.cautions(part, cautions)));
  }

  private static Table timetable(List<Milestone> milestones, String face) {
    List<List<String>> rows = new ArrayList<>();
    for (Milestone milestone : milestones) {
      rows.add(
          List.of(
              TimeBase.clock(milestone.clock()).text(0),
              Numbers.duration(milestone.time()),
              milestone.name() + (milestone.note().isEmpty() ? "" : ": " + milestone.note()),
              Numbers.bothScales(milestone.core()),
              Numbers.bothScales(milestone.surface())));
    }
    return Table.ofWords(
        "Estimated milestones", List.of("clock", "since start", "what", "core", face), rows);
  }

  private static void temperatures(Page page, CookPictures pictures) {
    page.figure(pictures.whole());
    pictures.close().ifPresent(page::figure);
    page.figure(pictures.map());
    page.figure(pictures.profiles());
  }

  private static Table balance(CookFile file, SimulationResult result) {
    EnergyBalance energy = result.energy();
    Moisture moisture = file.moisture();
    WaterBalance water = result.water(moisture);
    boolean symmetric = result.cook().isSymmetric();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("heat stored in the cut", kilojoules(energy.stored())));
    rows.add(
        List.of(
            symmetric ? "heat through the surface" : "heat through the upper face",
            kilojoules(energy.throughUpper())));
    if (!symmetric) {
      rows.add(List.of("heat through the lower face", kilojoules(energy.throughLower())));
    }
    rows.add(
        List.of(
            "heat unaccounted for, share of the turnover",
            Numbers.scientific(energy.relativeResidual())));
    String above = symmetric ? "" : " from the upper face";
    rows.add(List.of("water evaporated" + above, grams(water.evaporatedUpper())));
    rows.add(List.of("water dripped" + above, grams(water.drippedUpper())));
    if (!symmetric) {
      rows.add(List.of("water evaporated from the lower face", grams(water.evaporatedLower())));
      rows.add(List.of("water dripped from the lower face", grams(water.drippedLower())));
    }
    file.extent().ifPresent(extent -> addWhole(rows, extent, result, moisture));
    return Table.ofWords(
        "Balances of the whole cook, for each square metre of face unless stated",
        List.of("what", "how much"),
        rows);
  }

  private static Table notes(List<Note> notes) {
    List<List<String>> rows =
        notes.stream().map(note -> List.of(note.subject(), note.text())).toList();
    return Table.ofFileText("What a reader must know", List.of("about", "note"), rows);
  }

  private static void assumptions(Page page, CookFile file) {
    page.paragraph(
        "The numbers above hold as far as these do. Heat transfer, wetness and the temperature of"
            + " the walls are the least certain.");
    page.table(ReportParts.facts(file))
        .table(ReportParts.surroundings(file, TemperatureScale.CELSIUS));
  }

  private static void addWhole(
      List<List<String>> rows, Extent extent, SimulationResult result, Moisture moisture) {
    String of = " of " + Numbers.decimal(GRAMS * extent.mass(), 0) + " g";
    double evaporated = GRAMS * extent.evaporatedMass(result);
    double dripped = GRAMS * extent.drippedMass(result, moisture);
    rows.add(
        List.of("water evaporated from the whole cut", Numbers.decimal(evaporated, 0) + " g" + of));
    rows.add(List.of("water dripped from the whole cut", Numbers.decimal(dripped, 0) + " g" + of));
  }

  private static String grams(double kilograms) {
    return Numbers.decimal(GRAMS * kilograms, 0) + " g/m²";
  }

  private static String kilojoules(double joules) {
    return Numbers.decimal(joules / 1000, 1) + " kJ/m²";
  }
}
