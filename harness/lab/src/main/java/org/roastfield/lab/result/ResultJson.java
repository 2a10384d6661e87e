package org.roastfield.lab.result;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.simulation.EnergyBalance;
import org.roastfield.core.simulation.Note;
import org.roastfield.core.simulation.Outcome;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.WaterBalance;
import org.roastfield.core.simulation.WorkCounters;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.Fact;
import org.roastfield.lab.timeline.Caution;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.ComputedCook;
import org.roastfield.lab.timeline.CoreHistory;
import org.roastfield.lab.timeline.Milestone;
import org.roastfield.lab.timeline.StageAir;
import org.roastfield.lab.timeline.Station;
import org.roastfield.lab.timeline.TemperatureScale;

/**
 * The result of a simulated cook as JSON. Temperatures are in °C whatever the display, and every
 * key says its unit.
 */
public final class ResultJson {

  /** Name of the schema. */
  public static final String SCHEMA = "roastfield-result";

  private ResultJson() {}

  /** Text of result.json for a completed cook. */
  public static String text(ComputedCook computed, List<Milestone> milestones) {
    CookFile file = computed.file();
    SimulationResult result = computed.result();
    List<Station> stations = computed.stations();
    ObjectNode root = Json.document(SCHEMA, 1).put("status", "completed");
    root.set("cook", cook(file));
    addMilestones(root.putArray("milestones"), milestones);
    if (!stations.isEmpty()) {
      addStations(root.putArray("stations"), stations);
    }
    root.put("highest_core_degC", Json.celsius(CoreHistory.highest(result)));
    root.set("energy", energy(result.energy()));
    root.set("water", water(result, file));
    root.set("work", work(result.work()));
    root.set("inside", InsideJson.of(computed.inside()));
    addNotes(root, result);
    addCautions(root, Cautions.of(file, computed.inside(), TemperatureScale.CELSIUS));
    root.set("traces", TraceJson.traces(result, new StageAir(file, result)));
    root.set("profiles", TraceJson.profiles(result));
    return Json.text(root);
  }

  /** Text for a cook that could not be computed to its end. */
  public static String failure(CookFile file, Outcome.Failed failed) {
    ObjectNode root = Json.document(SCHEMA, 1).put("status", "failed");
    root.set("cook", cook(file));
    root.put("reason", failed.reason().name())
        .put("stage", failed.stage())
        .put("time_s", Json.seconds(failed.time()))
        .put("message", failed.message())
        .put("advice", failed.advice());
    return Json.text(root);
  }

  private static ObjectNode cook(CookFile file) {
    ObjectNode cook =
        Json.object()
            .put("name", file.name())
            .put("file", file.fileName())
            .put("made_up", file.madeUp())
            .put("food", file.food().word())
            .put("starts", file.starts().toString())
            .put("pressure_Pa", Json.rounded(file.pressure(), 1e2));
    addFacts(cook.putArray("facts"), file.facts());
    ArrayNode stages = cook.putArray("stages");
    file.stages()
        .forEach(
            stage -> {
              ObjectNode node = stages.addObject().put("name", stage.name());
              node.put("end", stage.end());
              addFacts(node.putArray("facts"), stage.facts());
            });
    return cook;
  }

  private static void addFacts(ArrayNode array, List<Fact> facts) {
    facts.forEach(
        fact -> array.addObject().put("subject", fact.subject()).put("text", fact.text()));
  }

  private static void addMilestones(ArrayNode array, List<Milestone> milestones) {
    for (Milestone milestone : milestones) {
      array
          .addObject()
          .put("name", milestone.name())
          .put("time_s", Json.seconds(milestone.time()))
          .put("clock", milestone.clock().toString())
          .put("core_degC", Json.celsius(milestone.core()))
          .put("surface_degC", Json.celsius(milestone.surface()))
          .put("note", milestone.note());
    }
  }

  private static void addStations(ArrayNode array, List<Station> stations) {
    for (Station station : stations) {
      ObjectNode node = array.addObject();
      node.put("name", station.name())
          .put("position_m", station.position())
          .put("diameter_m", station.diameter())
          .put("core_at_end_of_longest_stage_degC", Json.celsius(station.coreAtLongestEnd()))
          .put("highest_core_degC", Json.celsius(station.warmestCore()))
          .put("core_at_end_degC", Json.celsius(station.coreAtEnd()))
          .put("evaporated_kg_per_m2", station.evaporated());
      node.set("inside", InsideJson.of(station.inside()));
    }
  }

  static ObjectNode energy(EnergyBalance energy) {
    return Json.object()
        .put("stored_J_per_m2", energy.stored())
        .put("through_upper_J_per_m2", energy.throughUpper())
        .put("through_lower_J_per_m2", energy.throughLower())
        .put("turnover_J_per_m2", energy.turnover())
        .put("residual_J_per_m2", energy.residual())
        .put("relative_residual", energy.relativeResidual());
  }

  private static ObjectNode water(SimulationResult result, CookFile file) {
    Moisture moisture = file.moisture();
    WaterBalance water = result.water(moisture);
    ObjectNode node =
        Json.object()
            .put("evaporated_upper_kg_per_m2", water.evaporatedUpper())
            .put("evaporated_lower_kg_per_m2", water.evaporatedLower())
            .put("dripped_upper_kg_per_m2", water.drippedUpper())
            .put("dripped_lower_kg_per_m2", water.drippedLower());
    result
        .upperFaceWater()
        .ifPresent(
            held ->
                node.put("held_upper_kg_per_m2", Math.max(0, held.held()))
                    .put("crust_upper_mm", 1000 * held.crust())
                    .put("water_residual", held.relativeResidual()));
    file.extent()
        .ifPresent(
            extent ->
                node.put("evaporated_kg", extent.evaporatedMass(result))
                    .put("dripped_kg", extent.drippedMass(result, moisture))
                    .put("mass_kg", Json.rounded(extent.mass(), 1e4)));
    return node;
  }

  static ObjectNode work(WorkCounters work) {
    return Json.object()
        .put("accepted_steps", work.acceptedSteps())
        .put("rejected_steps", work.rejectedSteps())
        .put("solves", work.solves())
        .put("factorisations", work.factorisations())
        .put("flux_evaluations", work.fluxEvaluations());
  }

  static void addNotes(ObjectNode root, SimulationResult result) {
    ArrayNode array = root.putArray("notes");
    for (Note note : result.notes()) {
      array.addObject().put("subject", note.subject()).put("text", note.text());
    }
  }

  static void addCautions(ObjectNode root, List<Caution> cautions) {
    ArrayNode array = root.putArray("cautions");
    for (Caution caution : cautions) {
      array
          .addObject()
          .put("subject", caution.subject())
          .put("text", caution.text())
          .put("source", caution.source());
    }
  }
}
