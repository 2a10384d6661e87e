package org.roastfield.lab.synthetic;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.roastfield.core.simulation.WaterBalance;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.result.Json;

/** The truth of a made-up cook as JSON. */
public final class TruthJson {

  private TruthJson() {}

  /** Text of the truth: parameters to nine digits, the core to a thousandth of a kelvin. */
  public static String text(MadeCook made) {
    SyntheticCook recipe = made.recipe();
    ObjectNode root = Json.document("roastfield-truth", 1);
    root.put("id", recipe.id())
        .put("made_up", true)
        .put("license", "Apache-2.0")
        .put("split", recipe.split().word())
        .put("cut", recipe.cut().word())
        .put("setting_degC", recipe.setting())
        .put("seed", recipe.seed());
    ArrayNode departures = root.putArray("departures");
    recipe.departures().forEach(departure -> departures.add(departure.word()));
    ObjectNode numbers = root.putObject("departure_values");
    made.departure().forEach(fact -> numbers.put(fact.name(), digits(fact.value())));
    cooker(root.putObject("cooker"), recipe.cooker());
    values(root.putObject("values"), made.values());
    ArrayNode milestones = root.putArray("milestones");
    for (MadeCook.TrueMilestone milestone : made.milestones()) {
      milestones
          .addObject()
          .put("name", milestone.name())
          .put("time_s", Json.seconds(milestone.time()))
          .put("core_degC", Json.rounded(Temperatures.toCelsius(milestone.core()), 1e3));
    }
    WaterBalance water = made.result().water();
    root.put("evaporated_kg_per_m2", Json.rounded(water.evaporatedUpper(), 1e5));
    root.put("dripped_kg_per_m2", Json.rounded(water.drippedUpper(), 1e5));
    made.weights()
        .ifPresent(
            weights ->
                root.putObject("weights")
                    .put("before_kg", Json.rounded(weights.before(), 1e6))
                    .put("after_kg", Json.rounded(weights.after(), 1e6)));
    trace(root.putObject("core"), made);
    return Json.text(root);
  }

  private static void cooker(ObjectNode node, SyntheticCooker cooker) {
    node.put("id", cooker.id())
        .put("convection_factor", digits(cooker.convection()))
        .put("wall_offset_K", digits(cooker.wallOffset()))
        .put("humidity_ratio", digits(cooker.humidityRatio()))
        .put("chamber_probe_bias_K", digits(cooker.chamberBias()))
        .put("grate_degC", Json.celsius(cooker.grate()))
        .put("drift_K", digits(cooker.fire().deviation()))
        .put("drift_time_s", digits(cooker.fire().correlationTime()));
  }

  private static void values(ObjectNode node, TrueValues values) {
    node.put("size_factor", digits(values.size()))
        .put("diffusivity_factor", digits(values.diffusivity()))
        .put("start_degC", digits(Temperatures.toCelsius(values.startTemperature())))
        .put("emissivity", digits(values.emissivity()))
        .put("drive_factor", digits(values.drive()))
        .put("convection_factor_of_cook", digits(values.convection()))
        .put("bars_share", digits(values.bars()))
        .put("rest_coefficient_W_per_m2K", digits(values.rest()))
        .put("probe_bias_K", digits(values.probeBias()))
        .put("probe_offset_m", digits(values.probeOffset()))
        .put("probe_response_s", digits(values.probeResponse()))
        .put("probe_noise_K", digits(values.noise()))
        .put("probe_wander_K", digits(values.wander()))
        .put("probe_wander_time_s", digits(values.wanderTime()));
  }

  /** The true middle at the times of the log's rows. */
  private static void trace(ObjectNode node, MadeCook made) {
    CookLog log = made.log().readings();
    double interval = made.recipe().cooker().readingInterval();
    node.put("interval_s", interval);
    ArrayNode core = node.putArray("degC");
    for (int i = 0; i < log.rows(); i++) {
      core.add(Json.rounded(Temperatures.toCelsius(made.result().core().at(i * interval)), 1e3));
    }
  }

  private static double digits(double value) {
    return Json.rounded(value, 1e9);
  }
}
